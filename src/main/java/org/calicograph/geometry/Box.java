package org.calicograph.geometry;

import org.calicograph.measure.Length;

/**
 * An upright rectangle, in inches; the bounds of a thing on the page.
 */
public record Box(double left, double top, double right, double bottom) {

    public Box {
        if (!(left <= right && top <= bottom)) {
            throw new IllegalArgumentException("a box from (" + left + ", " + top + ") to (" + right + ", " + bottom
                    + ") is inside out; give the left before the right and the top before the bottom");
        }
    }

    /** A box from the upper left corner of the plane, so wide and so high. */
    public static Box of(Length width, Length height) {
        return new Box(0, 0, width.inInches(), height.inInches());
    }

    /** The smallest box that holds every point. */
    public static Box around(Iterable<Point> points) {
        double l = Double.POSITIVE_INFINITY;
        double t = Double.POSITIVE_INFINITY;
        double r = Double.NEGATIVE_INFINITY;
        double b = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            l = Math.min(l, p.x());
            t = Math.min(t, p.y());
            r = Math.max(r, p.x());
            b = Math.max(b, p.y());
        }
        return new Box(l, t, r, b);
    }

    /** How wide it is, in inches. */
    public double width() {
        return right - left;
    }

    /** How high it is, in inches. */
    public double height() {
        return bottom - top;
    }

    /** Its middle. */
    public Point centre() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    /** Its upper left corner. */
    public Point topLeft() {
        return new Point(left, top);
    }

    /** The smallest box that holds both. */
    public Box union(Box other) {
        return new Box(Math.min(left, other.left), Math.min(top, other.top),
                Math.max(right, other.right), Math.max(bottom, other.bottom));
    }

    /** Larger by a margin on every side, in inches. */
    public Box grownBy(double margin) {
        return new Box(left - margin, top - margin, right + margin, bottom + margin);
    }

    /** True if the two share at least a point of an edge. */
    public boolean touches(Box other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }

    /** True if the point lies within it or on its edge. */
    public boolean contains(Point p) {
        return p.x() >= left && p.x() <= right && p.y() >= top && p.y() <= bottom;
    }

    /** The bounds of this box once transformed. */
    public Box transformed(Transform t) {
        return around(java.util.List.of(t.of(new Point(left, top)), t.of(new Point(right, top)),
                t.of(new Point(right, bottom)), t.of(new Point(left, bottom))));
    }
}
