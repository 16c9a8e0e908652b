package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/**
 * A shape as a walk around it: lengths, bends and turns from a corner that the shape itself picks, so
 * that congruent outlines are equal values. Mirror images are not, unless the shape is its own mirror
 * image. Lengths are told apart to 0.001 in, angles to 0.05 degrees.
 *
 * @param steps per edge: length, sagitta of its bend, turn at its end, all rounded
 * @param lie   the direction of the first edge against the grain, modulo a quarter turn
 */
record Outline(List<Step> steps, int lie) {

    record Step(int length, int bend, int turn) implements Comparable<Step> {
        private static final Comparator<Step> ORDER = Comparator.comparingInt(Step::length).thenComparingInt(Step::bend)
                .thenComparingInt(Step::turn);

        @Override
        public int compareTo(Step other) {
            return ORDER.compare(this, other);
        }
    }

    private static final double LENGTHS = 500;
    private static final double ANGLES = 10;

    /** The outline of a closed path, in a frame whose axes are the grain. */
    static Outline of(Path closed) {
        List<Segment> s = closed.clockwise().joined().segments();
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < s.size(); i++) {
            double turn = Math.toDegrees(s.get(i).turnInto(s.get((i + 1) % s.size())));
            Point chord = s.get(i).to().minus(s.get(i).from());
            double bend = s.get(i).middle().minus(s.get(i).from()).cross(chord) / Math.max(1e-9, chord.norm());
            steps.add(new Step(round(s.get(i).length(), LENGTHS), round(bend, LENGTHS), round(turn, ANGLES)));
        }
        List<Step> best = steps;
        int lie = lie(s.get(0));
        for (int k = 0; k < steps.size(); k++) {
            List<Step> turned = new ArrayList<>(steps.subList(k, steps.size()));
            turned.addAll(steps.subList(0, k));
            int order = compare(turned, best);
            if (order < 0 || order == 0 && lie(s.get(k)) < lie) {
                best = turned;
                lie = lie(s.get(k));
            }
        }
        return new Outline(List.copyOf(best), lie);
    }

    private static int lie(Segment s) {
        double degrees = s.to().minus(s.from()).direction().degrees();
        int quarter = round(90, ANGLES);
        return Math.floorMod(round(degrees, ANGLES), quarter);
    }

    private static int round(double value, double steps) {
        return (int) Math.round(value * steps);
    }

    private static int compare(List<Step> a, List<Step> b) {
        for (int i = 0; i < a.size(); i++) {
            int order = a.get(i).compareTo(b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** True if every edge is straight. */
    boolean isStraight() {
        return steps.stream().allMatch(s -> s.bend() == 0);
    }
}
