package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** A smooth line of arcs through points: two arcs from each to the next, without a bend where they join (Bolton 1975). */
public final class Biarcs {

    private static final double STRAIGHT = 1e-7;
    private static final int DEEPEST = 14;

    private Biarcs() { }

    /**
     * A closed path.
     *
     * @param points   in order, the first not repeated
     * @param headings of one inch, one for each point
     */
    static Path closed(List<Point> points, List<Point> headings) {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            int next = (i + 1) % points.size();
            join(points.get(i), headings.get(i), points.get(next), headings.get(next), out);
        }
        return new Path(out);
    }

    /** A cubic as arcs that stray from it by at most the accuracy in inches, about; they begin, end and join in its own directions. */
    public static List<Segment> of(Cubic cubic, double accuracy) {
        List<Segment> out = new ArrayList<>();
        split(cubic, accuracy, 0, out);
        return out;
    }

    private static void split(Cubic c, double accuracy, int depth, List<Segment> out) {
        List<Segment> arcs = new ArrayList<>();
        if (!c.from().near(c.to(), 1e-9)) {
            join(c.from(), c.heading(0).unit(), c.to(), c.heading(1).unit(), arcs);
            if (depth >= DEEPEST || fits(c, arcs, accuracy)) {
                out.addAll(arcs);
                return;
            }
        } else if (depth >= DEEPEST) {
            out.add(new Line(c.from(), c.to()));
            return;
        }
        split(c.between(0, 0.5), accuracy, depth + 1, out);
        split(c.between(0.5, 1), accuracy, depth + 1, out);
    }

    private static boolean fits(Cubic c, List<Segment> arcs, double accuracy) {
        double turn = 0;
        for (Segment s : arcs) {
            turn += s instanceof Arc a ? Math.abs(a.sweep()) : 0;
            if (s instanceof Line && Math.abs(c.heading(0).unit().cross(c.heading(1).unit())) > 1e-6) {
                return false;
            }
        }
        for (double t : new double[] {0.15, 0.3, 0.5, 0.7, 0.85}) {
            Point p = c.at(t);
            if (arcs.stream().allMatch(s -> off(p, s) > accuracy)) {
                return false;
            }
        }
        return turn <= Math.PI / 2;
    }

    private static double off(Point p, Segment s) {
        if (s instanceof Arc a) {
            return Math.abs(p.distance(a.centre()) - a.radius());
        }
        return Math.abs(s.heading(0).unit().cross(p.minus(s.from())));
    }

    private static void join(Point p, Point u, Point q, Point v, List<Segment> out) {
        Point way = q.minus(p);
        if (Math.abs(u.cross(way)) + Math.abs(v.cross(way)) < 1e-9 * way.norm() && u.dot(way) > 0 && v.dot(way) > 0) {
            out.add(new Line(p, q));
            return;
        }
        Point sum = u.plus(v);
        double bend = 2 * (1 - u.dot(v));
        double along = way.dot(sum);
        double reach = bend < 1e-9 ? way.dot(way) / (4 * way.dot(v))
                : (-along + Math.sqrt(along * along + bend * way.dot(way))) / bend;
        if (!(reach > 0) || reach > 2 * way.norm()) {
            out.add(new Line(p, q));
            return;
        }
        Point middle = p.plus(u.times(reach)).midway(q.minus(v.times(reach)));
        out.add(arc(p, middle, u));
        out.add(arc(q, middle, v.times(-1)).reversed());
    }

    private static Segment arc(Point from, Point to, Point heading) {
        Point chord = to.minus(from);
        double bulge = Math.tan(Math.atan2(heading.cross(chord), heading.dot(chord)) / 2);
        return Math.abs(bulge) < STRAIGHT ? new Line(from, to) : new Arc(from, to, bulge);
    }
}
