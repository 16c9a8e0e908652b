package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** A smooth line of arcs through points: two arcs from each to the next, without a bend where they join (Bolton 1975). */
final class Biarcs {

    private static final double STRAIGHT = 1e-7;

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

    private static void join(Point p, Point u, Point q, Point v, List<Segment> out) {
        Point way = q.minus(p);
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
