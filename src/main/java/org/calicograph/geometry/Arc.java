package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Angle;

/**
 * An arc of a circle, held by its ends and its bulge, so that its ends are exact.
 *
 * @param bulge the tangent of a quarter of the sweep: above 0 clockwise on the page, 1 a half circle
 */
public record Arc(Point from, Point to, double bulge) implements Segment {

    public Arc {
        if (!Double.isFinite(bulge) || Math.abs(bulge) < 1e-12) {
            throw new IllegalArgumentException("an arc with a bulge of " + bulge + " is straight; use a line");
        }
        if (from.equals(to)) {
            throw new IllegalArgumentException("an arc from " + from + " back to itself has no circle; draw it as two halves");
        }
    }

    /** The arc about a centre from a point, through a sweep of less than a full turn; clockwise if positive. */
    public static Arc about(Point centre, Point from, Angle sweep) {
        if (Math.abs(sweep.degrees()) >= 360) {
            throw new IllegalArgumentException("an arc of " + sweep + " is a circle or more; use Path.circle");
        }
        return new Arc(from, Transform.turn(sweep, centre).of(from), Math.tan(sweep.inRadians() / 4));
    }

    /** The arc from one point to another that passes through a third. */
    public static Segment through(Point from, Point by, Point to) {
        Point u = from.minus(by);
        Point v = to.minus(by);
        double cross = v.cross(u);
        if (Math.abs(cross) <= 1e-12 * u.norm() * v.norm()) {
            return new Line(from, to);
        }
        // The angle at the third point stands on the rest of the circle: sweep = 2 (pi - angle).
        double angle = Math.atan2(Math.abs(cross), u.dot(v));
        double sweep = 2 * (Math.PI - angle);
        return new Arc(from, to, Math.signum(cross) * Math.tan(sweep / 4));
    }

    /** Radians of turning; above 0 is clockwise on the page. */
    public double sweep() {
        return 4 * Math.atan(bulge);
    }

    /** The radius in inches. */
    public double radius() {
        return from.distance(to) * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    }

    /** The middle of the circle that the arc is a part of. */
    public Point centre() {
        Point half = to.minus(from).times(0.5);
        return from.plus(half).plus(half.quarterTurned().times((1 - bulge * bulge) / (2 * bulge)));
    }

    @Override
    public Point at(double share) {
        if (share == 0) {
            return from;
        }
        if (share == 1) {
            return to;
        }
        return Transform.turn(Angle.radians(sweep() * share), centre()).of(from);
    }

    @Override
    public Point heading(double share) {
        return at(share).minus(centre()).quarterTurned().times(Math.signum(bulge));
    }

    @Override
    public double length() {
        return radius() * Math.abs(sweep());
    }

    @Override
    public Arc reversed() {
        return new Arc(to, from, -bulge);
    }

    @Override
    public Arc withEnds(Point start, Point end) {
        return new Arc(start, end, bulge);
    }

    @Override
    public Segment between(double start, double end) {
        double part = Math.tan(sweep() * (end - start) / 4);
        return Math.abs(part) < 1e-12 ? new Line(at(start), at(end)) : new Arc(at(start), at(end), part);
    }

    /** The share of the way at which the arc passes the direction of a point from its centre; may lie outside 0 to 1. */
    double shareTowards(Point p) {
        Point c = centre();
        Point u = from.minus(c);
        Point v = p.minus(c);
        double turn = Math.atan2(u.cross(v), u.dot(v)) * Math.signum(bulge);
        double whole = Math.abs(sweep());
        if (turn < -1e-9 * Math.PI) {
            turn += 2 * Math.PI;
        }
        if (turn > whole && turn - 2 * Math.PI > -1e-7) {
            turn -= 2 * Math.PI;
        }
        return turn / whole;
    }

    @Override
    public List<? extends Segment> transformed(Transform t) {
        if (t.keepsCircles()) {
            return List.of(new Arc(t.of(from), t.of(to), t.mirrors() ? -bulge : bulge));
        }
        List<Cubic> cubics = new ArrayList<>();
        for (Cubic cubic : asCubics()) {
            cubics.addAll(cubic.transformed(t));
        }
        return cubics;
    }

    /** The arc as cubics of at most an eighth of a circle each, within 1e-5 of the radius. */
    public List<Cubic> asCubics() {
        int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep()) / (Math.PI / 4) - 1e-9));
        double handle = 4.0 / 3 * Math.tan(sweep() / parts / 4);
        Point c = centre();
        List<Cubic> cubics = new ArrayList<>();
        Point start = from;
        for (int i = 1; i <= parts; i++) {
            Point end = at((double) i / parts);
            cubics.add(new Cubic(start, start.plus(start.minus(c).quarterTurned().times(handle)),
                    end.minus(end.minus(c).quarterTurned().times(handle)), end));
            start = end;
        }
        return cubics;
    }

    @Override
    public Box bounds() {
        List<Point> points = new ArrayList<>(List.of(from, to));
        Point c = centre();
        double r = radius();
        for (int quarter = 0; quarter < 4; quarter++) {
            Point p = c.plus(Point.polar(r, Angle.QUARTER.times(quarter)));
            double share = shareTowards(p);
            if (share > 0 && share < 1) {
                points.add(p);
            }
        }
        return Box.around(points);
    }

    @Override
    public double areaTerm() {
        double s = sweep();
        double r = radius();
        return from.cross(to) / 2 + r * r * (s - Math.sin(s)) / 2;
    }

    @Override
    public void flatten(double accuracy, List<Point> into) {
        double r = radius();
        double step = accuracy >= r ? Math.PI / 2 : 2 * Math.acos(1 - accuracy / r);
        int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep()) / step));
        for (int i = 1; i < parts; i++) {
            into.add(at((double) i / parts));
        }
        into.add(to);
    }
}
