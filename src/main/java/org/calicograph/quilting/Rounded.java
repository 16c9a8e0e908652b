package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/** Turns a closed polyline of many short chords into lines and arcs. */
final class Rounded {

    private Rounded() { }

    /** Runs of chords that lie on one circle, or one line, become one segment; no vertex is farther off than the tolerance. */
    static Path of(Path ring, double tolerance) {
        List<Point> points = new ArrayList<>(ring.joined().corners());
        int n = points.size();
        if (n < 4) {
            return ring;
        }
        // Begin at the middle of the longest chord, which is a line of its own.
        int longest = 0;
        for (int i = 0; i < n; i++) {
            if (points.get(i).distance(points.get((i + 1) % n)) > points.get(longest).distance(points.get((longest + 1) % n))) {
                longest = i;
            }
        }
        List<Point> turned = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            turned.add(points.get((longest + 1 + i) % n));
        }
        List<Segment> out = new ArrayList<>();
        int from = 0;
        while (from < n) {
            int to = from + 1;
            Segment best = new Line(turned.get(from), turned.get(to));
            while (to + 1 <= n) {
                Segment wider = through(turned, from, to + 1, tolerance);
                if (wider == null) {
                    break;
                }
                best = wider;
                to++;
            }
            out.add(best);
            from = to;
        }
        return new Path(out);
    }

    private static Segment through(List<Point> points, int from, int to, double tolerance) {
        Point a = points.get(from);
        Point b = points.get(to);
        Point m = points.get((from + to) / 2);
        if (a.near(b, 1e-9)) {
            return null;
        }
        Segment s = Arc.through(a, m, b);
        if (!(s instanceof Arc arc) || Math.abs(arc.sweep()) > 3.0) {
            return null;
        }
        Point centre = arc.centre();
        double radius = arc.radius();
        double last = 0;
        for (int i = from; i < to; i++) {
            Point p = points.get(i);
            Point q = points.get(i + 1);
            Point middle = p.towards(q, 0.5);
            if (Math.abs(p.distance(centre) - radius) > tolerance || Math.abs(middle.distance(centre) - radius) > tolerance) {
                return null;
            }
            Point u = p.minus(centre);
            Point v = q.minus(centre);
            double turn = Math.atan2(u.cross(v), u.dot(v)) * Math.signum(arc.bulge());
            if (turn <= 0) {
                return null;
            }
            last += turn;
        }
        return Math.abs(last - Math.abs(arc.sweep())) < 1e-6 ? s : null;
    }
}
