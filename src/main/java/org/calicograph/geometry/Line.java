package org.calicograph.geometry;

import java.util.List;

/** A straight line between two points. */
public record Line(Point from, Point to) implements Segment {

    @Override
    public Point at(double share) {
        return share == 1 ? to : from.towards(to, share);
    }

    @Override
    public Point heading(double share) {
        return to.minus(from);
    }

    @Override
    public double length() {
        return from.distance(to);
    }

    @Override
    public Line reversed() {
        return new Line(to, from);
    }

    @Override
    public Line withEnds(Point start, Point end) {
        return new Line(start, end);
    }

    @Override
    public Line between(double start, double end) {
        return new Line(at(start), at(end));
    }

    @Override
    public List<Line> transformed(Transform t) {
        return List.of(new Line(t.of(from), t.of(to)));
    }

    @Override
    public Box bounds() {
        return new Box(Math.min(from.x(), to.x()), Math.min(from.y(), to.y()),
                Math.max(from.x(), to.x()), Math.max(from.y(), to.y()));
    }

    @Override
    public double areaTerm() {
        return from.cross(to) / 2;
    }

    @Override
    public void flatten(double accuracy, List<Point> into) {
        into.add(to);
    }
}
