package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Angle;

/** Draws a path step by step; each step returns a pen of its own, so a pen can be kept and branched. */
public final class PathPen {

    private final Point start;
    private final List<Segment> segments;

    PathPen(Point start) {
        this(start, List.of());
    }

    private PathPen(Point start, List<Segment> segments) {
        this.start = start;
        this.segments = segments;
    }

    /** Where the pen stands. */
    public Point here() {
        return segments.isEmpty() ? start : segments.get(segments.size() - 1).to();
    }

    private PathPen with(Segment next) {
        List<Segment> all = new ArrayList<>(segments);
        all.add(next);
        return new PathPen(start, all);
    }

    /** Straight on to a point. */
    public PathPen lineTo(Point to) {
        return with(new Line(here(), to));
    }

    /** Straight on to x, y in inches. */
    public PathPen lineTo(double x, double y) {
        return lineTo(new Point(x, y));
    }

    /** Along a circle about a centre, clockwise if the sweep is positive. */
    public PathPen arcAbout(Point centre, Angle sweep) {
        return with(Arc.about(centre, here(), sweep));
    }

    /** Along the circle that passes through a point on the way. */
    public PathPen arcThrough(Point by, Point to) {
        return with(Arc.through(here(), by, to));
    }

    /** Along an arc to a point, by its bulge: the tangent of a quarter of its sweep, clockwise if positive. */
    public PathPen arcTo(Point to, double bulge) {
        return with(new Arc(here(), to, bulge));
    }

    /** On to a point by a cubic curve, which leaves towards the first point and arrives from the second. */
    public PathPen curveTo(Point lead, Point trail, Point to) {
        return with(new Cubic(here(), lead, trail, to));
    }

    /** The path as drawn, left open. */
    public Path open() {
        return new Path(segments);
    }

    /** The path closed by a straight line, if it does not end where it began. */
    public Path close() {
        return here().same(start) ? open() : lineTo(start).open();
    }
}
