package org.calicograph.seams;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/**
 * Which way each straight seam is pressed, so that seams that meet across a later one lie opposite and nest.
 *
 * @param conflicts points where no choice makes the seams nest; one of them is pressed open there
 */
public record Pressing(List<Pressed> seams, List<Point> conflicts) {

    /**
     * A seam and the way its allowance goes.
     *
     * @param toward across the seam, one inch long
     */
    public record Pressed(Line seam, Point toward) { }

    private static final double TOUCH = 2 * Neighbours.TOUCH;

    public Pressing {
        seams = List.copyOf(seams);
        conflicts = List.copyOf(conflicts);
    }

    /** Two seams that end at one point of a later seam, from both sides of it. */
    private record Meeting(int a, int b, Point at) { }

    /**
     * The meetings split the seams into two camps, which is what {@link Pressing} colours; each group of
     * seams that hang together is then turned so that most of it goes to the darker side.
     *
     * @param lightness of a patch, by its id: greater is lighter
     */
    public static Pressing of(Unit unit, ToDoubleFunction<String> lightness) {
        List<Line> lines = new ArrayList<>();
        for (Unit.Sewn s : unit.steps()) {
            for (List<Segment> seam : s.seams()) {
                seam.stream().filter(Line.class::isInstance).map(Line.class::cast).filter(l -> s.kind() == SeamKind.STRAIGHT).forEach(lines::add);
            }
        }
        List<Meeting> meetings = meetings(lines);
        int[] sign = new int[lines.size()];
        List<Point> conflicts = new ArrayList<>();
        for (int root = 0; root < lines.size(); root++) {
            if (sign[root] == 0) {
                List<Integer> group = camp(root, meetings, sign, conflicts);
                double liking = 0;
                for (int i : group) {
                    liking += sign[i] * lighterBehind(lines.get(i), unit, lightness);
                }
                if (liking < 0) {
                    group.forEach(i -> sign[i] = -sign[i]);
                }
            }
        }
        List<Pressed> pressed = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            pressed.add(new Pressed(lines.get(i), normal(lines.get(i)).times(sign[i])));
        }
        return new Pressing(pressed, conflicts.stream().distinct().toList());
    }

    private static List<Integer> camp(int root, List<Meeting> meetings, int[] sign, List<Point> conflicts) {
        List<Integer> group = new ArrayList<>();
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(root));
        sign[root] = 1;
        while (!open.isEmpty()) {
            int i = open.poll();
            group.add(i);
            for (Meeting m : meetings) {
                if (m.a() != i && m.b() != i) {
                    continue;
                }
                int other = m.a() == i ? m.b() : m.a();
                if (sign[other] == 0) {
                    sign[other] = -sign[i];
                    open.add(other);
                } else if (sign[other] == sign[i] && other > i) {
                    conflicts.add(m.at());
                }
            }
        }
        return group;
    }

    private static List<Meeting> meetings(List<Line> lines) {
        List<Meeting> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                Line a = lines.get(i);
                Line b = lines.get(j);
                if (Math.abs(a.heading(0).unit().cross(b.heading(0).unit())) > 1e-3) {
                    continue;
                }
                for (Point p : List.of(a.from(), a.to())) {
                    if ((b.from().near(p, TOUCH) || b.to().near(p, TOUCH)) && crossed(p, a, lines)) {
                        found.add(new Meeting(i, j, p));
                    }
                }
            }
        }
        return found;
    }

    /** True if another seam runs through the point. */
    private static boolean crossed(Point p, Line not, List<Line> lines) {
        for (Line l : lines) {
            Point u = l.heading(0).unit();
            double along = p.minus(l.from()).dot(u);
            if (Math.abs(p.minus(l.from()).cross(u)) < TOUCH && along > TOUCH && along < l.length() - TOUCH
                    && Math.abs(u.cross(not.heading(0).unit())) > 1e-3) {
                return true;
            }
        }
        return false;
    }

    /** The same for parallel lines, whichever way they run. */
    private static Point normal(Line line) {
        Point u = line.heading(0).unit();
        boolean back = u.x() < -1e-6 || Math.abs(u.x()) <= 1e-6 && u.y() < 0;
        return (back ? u.times(-1) : u).quarterTurned();
    }

    /** How much lighter the patches before the seam are than those that its normal points at. */
    private static double lighterBehind(Line line, Unit unit, ToDoubleFunction<String> lightness) {
        Point step = normal(line).times(Math.min(0.1, line.length() / 10));
        return at(line.middle().minus(step), unit, lightness) - at(line.middle().plus(step), unit, lightness);
    }

    private static double at(Point p, Unit unit, ToDoubleFunction<String> lightness) {
        return unit.singles().stream().filter(s -> s.shape().bounds().contains(p) && s.shape().contains(p)).findFirst()
                .map(s -> lightness.applyAsDouble(s.id())).orElse(0.5);
    }

    /** The conflicts in words; empty if all seams nest. */
    public String words() {
        if (conflicts.isEmpty()) {
            return "";
        }
        StringBuilder out = new StringBuilder("Seams can't all nest; press one of them open ");
        for (int i = 0; i < Math.min(6, conflicts.size()); i++) {
            out.append(i == 0 ? "" : ", ").append(String.format(Locale.ROOT, "%.2f in from the left and %.2f in from the top",
                    conflicts.get(i).x(), conflicts.get(i).y()));
        }
        return out.append(conflicts.size() > 6 ? " and at " + (conflicts.size() - 6) + " more places." : ".").toString();
    }
}
