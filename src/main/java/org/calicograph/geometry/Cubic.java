package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic Bezier curve.
 *
 * @param lead  the control point that the curve leaves towards
 * @param trail the control point that it arrives from
 */
public record Cubic(Point from, Point lead, Point trail, Point to) implements Segment {

    @Override
    public Point at(double t) {
        if (t == 0) {
            return from;
        }
        if (t == 1) {
            return to;
        }
        double u = 1 - t;
        double a = u * u * u;
        double b = 3 * u * u * t;
        double c = 3 * u * t * t;
        double d = t * t * t;
        return new Point(a * from.x() + b * lead.x() + c * trail.x() + d * to.x(),
                a * from.y() + b * lead.y() + c * trail.y() + d * to.y());
    }

    @Override
    public Point heading(double t) {
        double u = 1 - t;
        Point h = lead.minus(from).times(u * u).plus(trail.minus(lead).times(2 * u * t)).plus(to.minus(trail).times(t * t));
        if (h.norm() > 1e-12) {
            return h;
        }
        return t < 0.5 ? at(t + 1e-4).minus(at(t)) : at(t).minus(at(t - 1e-4));
    }

    @Override
    public double length() {
        return length(this, 0);
    }

    private static double length(Cubic c, int depth) {
        double chord = c.from.distance(c.to);
        double net = c.from.distance(c.lead) + c.lead.distance(c.trail) + c.trail.distance(c.to);
        if (depth >= 16 || net - chord <= 1e-7 * net) {
            return (2 * chord + 2 * net) / 4;
        }
        return length(c.between(0, 0.5), depth + 1) + length(c.between(0.5, 1), depth + 1);
    }

    @Override
    public Cubic reversed() {
        return new Cubic(to, trail, lead, from);
    }

    @Override
    public Cubic withEnds(Point start, Point end) {
        return new Cubic(start, lead, trail, end);
    }

    @Override
    public Cubic between(double start, double end) {
        Point p = at(start);
        Point q = at(end);
        double third = (end - start) / 3;
        return new Cubic(p, p.plus(velocity(start).times(third)), q.minus(velocity(end).times(third)), q);
    }

    private Point velocity(double t) {
        double u = 1 - t;
        return lead.minus(from).times(3 * u * u).plus(trail.minus(lead).times(6 * u * t)).plus(to.minus(trail).times(3 * t * t));
    }

    @Override
    public List<Cubic> transformed(Transform t) {
        return List.of(new Cubic(t.of(from), t.of(lead), t.of(trail), t.of(to)));
    }

    /** The box of the control points, which holds the curve. */
    Box net() {
        return Box.around(List.of(from, lead, trail, to));
    }

    @Override
    public Box bounds() {
        List<Point> points = new ArrayList<>(List.of(from, to));
        addTurns(points, lead.x() - from.x(), trail.x() - lead.x(), to.x() - trail.x());
        addTurns(points, lead.y() - from.y(), trail.y() - lead.y(), to.y() - trail.y());
        return Box.around(points);
    }

    private void addTurns(List<Point> points, double d0, double d1, double d2) {
        double a = d0 - 2 * d1 + d2;
        double b = 2 * (d1 - d0);
        double c = d0;
        if (Math.abs(a) < 1e-14) {
            addTurn(points, -c / b);
            return;
        }
        double root = Math.sqrt(b * b - 4 * a * c);
        addTurn(points, (-b + root) / (2 * a));
        addTurn(points, (-b - root) / (2 * a));
    }

    private void addTurn(List<Point> points, double t) {
        if (t > 0 && t < 1) {
            points.add(at(t));
        }
    }

    @Override
    public double areaTerm() {
        return (6 * from.cross(lead) + 3 * from.cross(trail) + from.cross(to)
                + 3 * lead.cross(trail) + 3 * lead.cross(to) + 6 * trail.cross(to)) / 20;
    }

    @Override
    public void flatten(double accuracy, List<Point> into) {
        Point second = from.minus(lead.times(2)).plus(trail);
        Point third = lead.minus(trail.times(2)).plus(to);
        double bend = Math.max(second.norm(), third.norm());
        int parts = (int) Math.max(1, Math.ceil(Math.sqrt(0.75 * bend / accuracy)));
        for (int i = 1; i < parts; i++) {
            into.add(at((double) i / parts));
        }
        into.add(to);
    }
}
