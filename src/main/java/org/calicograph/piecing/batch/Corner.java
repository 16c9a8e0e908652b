package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.calicograph.geometry.Point;
import org.calicograph.patchwork.Patch;

/**
 * A patch that is half of a square.
 *
 * @param cloth the name of its cloth
 * @param at    its right angle
 * @param left  an end of its long side
 * @param right the other end
 */
record Corner(String cloth, Point at, Point left, Point right) {

    private static final double NEAR = 2e-3;

    /** Empty if the patch is no such triangle. */
    static Optional<Corner> of(Patch patch) {
        if (!patch.shape().isStraight() || !patch.shape().holes().isEmpty()) {
            return Optional.empty();
        }
        List<Point> c = patch.shape().outer().joined().corners();
        if (c.size() != 3) {
            return Optional.empty();
        }
        for (int i = 0; i < 3; i++) {
            Point u = c.get((i + 1) % 3).minus(c.get(i));
            Point v = c.get((i + 2) % 3).minus(c.get(i));
            if (Math.abs(u.norm() - v.norm()) < NEAR && Math.abs(u.dot(v)) < NEAR * u.norm()) {
                return Optional.of(new Corner(patch.fabric().name(), c.get(i), c.get((i + 1) % 3), c.get((i + 2) % 3)));
            }
        }
        return Optional.empty();
    }

    double leg() {
        return at.distance(left);
    }

    double base() {
        return left.distance(right);
    }

    private static boolean same(Point a, Point b, Point c, Point d) {
        return a.near(c, NEAR) && b.near(d, NEAR) || a.near(d, NEAR) && b.near(c, NEAR);
    }

    boolean sharesBase(Corner other) {
        return same(left, right, other.left, other.right) && !at.near(other.at, NEAR);
    }

    /** True if the other's long side lies along one of these short sides, outside. */
    boolean hasOnLeg(Corner other) {
        return this != other && (same(other.left, other.right, at, left) || same(other.left, other.right, at, right)) && other.at.midway(at).distance(middle()) > NEAR
                && outside(other);
    }

    private boolean outside(Corner other) {
        Point leg = other.right.minus(other.left);
        double own = leg.cross(middle().minus(other.left));
        return own * leg.cross(other.at.minus(other.left)) < 0;
    }

    private Point middle() {
        return left.midway(right).midway(at);
    }

    /** True if this and the other, on the short sides of the goose, make a rectangle with it. */
    boolean makesCorner(Corner other, Corner goose) {
        return at.distance(other.at) > NEAR && Math.abs(at.distance(other.at) - goose.base()) < NEAR;
    }

    /** True if both have their right angle at one point. */
    boolean meets(Corner other) {
        return at.near(other.at, NEAR) && Math.abs(leg() - other.leg()) < NEAR;
    }

    /** The cloths of four that meet and fill a square, that of two that face each other first; empty if they make no hourglass. */
    static List<String> hourglass(List<Corner> four) {
        for (Corner one : four) {
            for (Corner across : four) {
                List<Corner> rest = four.stream().filter(c -> c != one && c != across).toList();
                if (one != across && one.cloth.equals(across.cloth) && one.faces(across) && rest.get(0).faces(rest.get(1))
                        && rest.stream().noneMatch(c -> c.cloth.equals(one.cloth))) {
                    List<String> others = rest.stream().map(Corner::cloth).distinct().sorted().toList();
                    // Of two cloths either may be called the first.
                    return others.size() == 1 ? Stream.of(one.cloth, others.get(0)).sorted().toList() : List.of(one.cloth, others.get(0), others.get(1));
                }
            }
        }
        return List.of();
    }

    private boolean faces(Corner other) {
        return left.midway(right).midway(other.left.midway(other.right)).near(at, NEAR);
    }
}
