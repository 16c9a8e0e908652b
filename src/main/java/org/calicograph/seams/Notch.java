package org.calicograph.seams;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * A mark on a curved seam, at the same place on both patches, so that they are pinned together there.
 *
 * @param at      on the seam line
 * @param outward into this patch's seam allowance, one inch long
 */
public record Notch(Point at, Point outward) {

    /** Longer curves get marks at their quarters too. */
    private static final double LONG = 3;

    /**
     * The notches of every patch of a block that has any, by the patch's id: at the middle of every curved seam
     * that it shares with one neighbour, at the quarters too if that is longer than 3 in, and where one
     * neighbour ends and the next begins.
     */
    public static Map<String, List<Notch>> of(Block block) {
        List<Patch> patches = block.patches();
        Map<String, List<Notch>> found = new HashMap<>();
        if (patches.stream().allMatch(p -> p.shape().isStraight())) {
            return found;
        }
        Neighbours neighbours = new Neighbours(patches.stream().map(Patch::shape).toList());
        for (int i = 0; i < patches.size(); i++) {
            for (int j = i + 1; j < patches.size(); j++) {
                for (Segment s : neighbours.between(List.of(i), List.of(j))) {
                    if (!(s instanceof Line)) {
                        mark(s, patches.get(i), found);
                        mark(s, patches.get(j), found);
                    }
                }
            }
        }
        return found;
    }

    private static void mark(Segment seam, Patch patch, Map<String, List<Notch>> found) {
        List<Notch> own = found.computeIfAbsent(patch.id(), p -> new ArrayList<>());
        List<Double> shares = new ArrayList<>(seam.length() > LONG ? List.of(0.25, 0.5, 0.75) : List.of(0.5));
        for (double end : new double[] {0, 1}) {
            Point p = seam.at(end);
            if (!isCorner(p, patch.shape())) {
                shares.add(end);
            }
        }
        for (double share : shares) {
            Point at = seam.at(share);
            if (own.stream().noneMatch(n -> n.at().near(at, 2 * Neighbours.TOUCH))) {
                own.add(new Notch(at, outward(seam, share, patch.shape())));
            }
        }
    }

    /** True if the outline turns at the point; where one arc runs on in the next it doesn't. */
    private static boolean isCorner(Point p, Region shape) {
        List<Segment> s = shape.outer().segments();
        for (int i = 0; i < s.size(); i++) {
            if (s.get(i).to().near(p, 2 * Neighbours.TOUCH)) {
                Point in = s.get(i).heading(1).unit();
                Point out = s.get((i + 1) % s.size()).heading(0).unit();
                return in.dot(out) < 0 || Math.abs(in.cross(out)) > 0.02;
            }
        }
        return false;
    }

    private static Point outward(Segment seam, double share, Region shape) {
        Point normal = seam.heading(share).unit().quarterTurned();
        double probe = Math.min(0.02, seam.length() / 20);
        // Probed beside the middle of the seam, where both sides are surely a patch's own.
        Point beside = seam.at(0.5).plus(seam.heading(0.5).unit().quarterTurned().times(probe));
        return shape.contains(beside) ? normal.times(-1) : normal;
    }

    /** The same notch after a rigid move. */
    public Notch transformed(Transform t) {
        return new Notch(t.of(at), t.ofStep(outward).unit());
    }
}
