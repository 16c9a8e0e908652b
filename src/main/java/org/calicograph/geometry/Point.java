package org.calicograph.geometry;

import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A point on the page, or the step from one point to another.
 *
 * @param x inches to the right
 * @param y inches downwards
 */
public record Point(double x, double y) {

    /** Points no farther apart than this, in inches, are one point: in every path, closing, joining and meeting. */
    public static final double TOLERANCE = 1e-6;

    /** The upper left corner of the plane. */
    public static final Point ORIGIN = new Point(0, 0);

    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point at (" + x + ", " + y + ") is nowhere; use finite inches");
        }
        x += 0.0; // no negative zero: equal points must be equal values
        y += 0.0;
    }

    /** The point at x to the right and y down, in inches. */
    public static Point of(double x, double y) {
        return new Point(x, y);
    }

    /** The point so far to the right and so far down. */
    public static Point of(Length x, Length y) {
        return new Point(x.inInches(), y.inInches());
    }

    /** The point at a distance in a direction: 0 degrees is to the right, 90 degrees is down. */
    public static Point polar(double radius, Angle direction) {
        return new Point(radius * direction.cos(), radius * direction.sin());
    }

    /** The point moved by a step. */
    public Point plus(Point step) {
        return new Point(x + step.x, y + step.y);
    }

    /** The point moved by inches to the right and down. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The step from the other point to this one. */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    /** The step made so many times as long. */
    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    /** The point a share of the way to the other: 0 here, 1 there. */
    public Point towards(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    /** Halfway between the two. */
    public Point midway(Point other) {
        return towards(other, 0.5);
    }

    /** The scalar product of two steps: 0 where they stand at right angles. */
    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** The cross product: above 0 where the other lies clockwise of this, on the page. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    /** The distance from the origin, in inches. */
    public double norm() {
        return Math.hypot(x, y);
    }

    /** The distance to the other point, in inches. */
    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The same direction with a norm of one inch. */
    public Point unit() {
        double n = norm();
        if (n == 0) {
            throw new IllegalArgumentException("a step of no length has no direction; use two different points");
        }
        return new Point(x / n, y / n);
    }

    /** This step turned a quarter clockwise on the page. */
    public Point quarterTurned() {
        return new Point(-y, x);
    }

    /** The direction of this step: 0 degrees is to the right, 90 degrees is down. */
    public Angle direction() {
        return Angle.radians(Math.atan2(y, x));
    }

    /** True if the two are one point, within {@link #TOLERANCE}. */
    public boolean same(Point other) {
        return equals(other) || near(other, TOLERANCE);
    }

    /** True within the given distance, in inches. */
    public boolean near(Point other, double distance) {
        return distance(other) <= distance;
    }
}
