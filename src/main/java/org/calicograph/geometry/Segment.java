package org.calicograph.geometry;

import java.util.List;

/**
 * One piece of a path: a {@link Line}, an {@link Arc} of a circle or a {@link Cubic} curve, run from
 * its first point (share 0) to its last (share 1).
 */
public sealed interface Segment permits Line, Arc, Cubic {

    /** Turns so near half a turn, in radians, are told apart by what lies a little way along. */
    double CUSP = 1e-4;

    /** Where it begins. */
    Point from();

    /** Where it ends. */
    Point to();

    /** The point at a share of the way, from 0 to 1; even in length for lines and arcs. */
    Point at(double share);

    /** The direction of travel at a share of the way; its norm has no meaning, but is above 0. */
    Point heading(double share);

    /** The length, in inches; exact for lines and arcs, within 1e-9 of itself for cubics. */
    double length();

    /** The same line gone the other way. */
    Segment reversed();

    /** The same segment led to other ends, which are to be near its own. */
    Segment withEnds(Point start, Point end);

    /** The part between two shares, the first below the second. */
    Segment between(double start, double end);

    /** The same segment after a transform; an arc that would leave its circle becomes cubics. */
    List<? extends Segment> transformed(Transform transform);

    /** The smallest upright box that holds it. */
    Box bounds();

    /** This segment's part of the area of a closed path: half the integral of x dy - y dx. */
    double areaTerm();

    /**
     * Adds the points of a polyline that strays from this segment by at most the accuracy in inches,
     * without the first point and with the last.
     */
    void flatten(double accuracy, List<Point> into);

    /**
     * How far a path turns from the end of this segment into the next, in radians above -pi and up to pi; above 0 is clockwise on
     * the page. In a cusp, where a path goes back the way it came, the bend of the two tells on which side it goes back.
     *
     * @param next begins where this ends
     */
    default double turnInto(Segment next) {
        Point in = heading(1).unit();
        Point out = next.heading(0).unit();
        double turn = Math.atan2(in.cross(out), in.dot(out));
        if (Math.abs(turn) < Math.PI - CUSP) {
            return turn;
        }
        double near = 0.05 * Math.min(length(), next.length());
        Point before = to().minus(at(1 - near / length()));
        Point after = next.at(near / next.length()).minus(to());
        return before.cross(after) < 0 ? -Math.abs(turn) : Math.abs(turn);
    }

    /** The point halfway by share. */
    default Point middle() {
        return at(0.5);
    }
}
