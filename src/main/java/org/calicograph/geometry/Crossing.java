package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;

/** Where two segments meet: the shares of the way along each, ends included. */
record Crossing(double first, double second) {

    /** How near in inches is one point. */
    static final double TOUCH = 1e-7;

    static List<Crossing> of(Segment a, Segment b) {
        if (!a.bounds().grownBy(TOUCH).touches(b.bounds())) {
            return List.of();
        }
        List<Crossing> found = new ArrayList<>();
        if (a instanceof Line p && b instanceof Line q) {
            lines(p, q, found);
        } else if (a instanceof Line p && b instanceof Arc q) {
            lineAndArc(p, q, found, false);
        } else if (a instanceof Arc p && b instanceof Line q) {
            lineAndArc(q, p, found, true);
        } else if (a instanceof Arc p && b instanceof Arc q) {
            arcs(p, q, found);
        } else {
            bisected(a, 0, 1, b, 0, 1, found, 0);
        }
        addEnds(a, b, found);
        return found;
    }

    private static void lines(Line a, Line b, List<Crossing> found) {
        Point u = a.heading(0);
        Point v = b.heading(0);
        double cross = u.cross(v);
        if (Math.abs(cross) < 1e-12 * u.norm() * v.norm()) {
            return;
        }
        Point w = b.from().minus(a.from());
        add(a, w.cross(v) / cross, b, w.cross(u) / cross, found);
    }

    private static void lineAndArc(Line line, Arc arc, List<Crossing> found, boolean swapped) {
        Point u = line.heading(0);
        Point w = line.from().minus(arc.centre());
        double r = arc.radius();
        double a = u.dot(u);
        double b = w.dot(u);
        double c = (w.norm() - r) * (w.norm() + r);
        double inside = b * b - a * c;
        // A line that only grazes the circle touches it once.
        double root = Math.abs(inside) < 2 * TOUCH * r * a ? 0 : Math.sqrt(inside);
        if (Double.isNaN(root)) {
            return;
        }
        for (double t : root == 0 ? new double[] {-b / a} : new double[] {(-b - root) / a, (-b + root) / a}) {
            double s = arc.shareTowards(line.from().plus(u.times(t)));
            if (swapped) {
                add(arc, s, line, t, found);
            } else {
                add(line, t, arc, s, found);
            }
        }
    }

    private static void arcs(Arc a, Arc b, List<Crossing> found) {
        Point p = a.centre();
        Point q = b.centre();
        double d = p.distance(q);
        double ra = a.radius();
        double rb = b.radius();
        if (d < TOUCH || d > ra + rb + TOUCH || d < Math.abs(ra - rb) - TOUCH) {
            return;
        }
        double along = (d * d + (ra - rb) * (ra + rb)) / (2 * d);
        double up = Math.sqrt(Math.max(0, (ra - along) * (ra + along)));
        Point u = q.minus(p).unit();
        Point foot = p.plus(u.times(along));
        Point side = u.quarterTurned().times(up);
        for (Point x : up < TOUCH ? List.of(foot) : List.of(foot.plus(side), foot.minus(side))) {
            add(a, a.shareTowards(x), b, b.shareTowards(x), found);
        }
    }

    private static void bisected(Segment a, double a0, double a1, Segment b, double b0, double b1,
                                 List<Crossing> found, int depth) {
        Segment pa = a.between(a0, a1);
        Segment pb = b.between(b0, b1);
        if (!net(pa).grownBy(1e-10).touches(net(pb))) {
            return;
        }
        double am = (a0 + a1) / 2;
        double bm = (b0 + b1) / 2;
        if (depth > 40 || net(pa).width() + net(pa).height() + net(pb).width() + net(pb).height() < 2e-9) {
            add(a, am, b, bm, found);
            return;
        }
        if (found.size() > 64) {
            return;
        }
        for (double[] x : new double[][] {{a0, am}, {am, a1}}) {
            for (double[] y : new double[][] {{b0, bm}, {bm, b1}}) {
                bisected(a, x[0], x[1], b, y[0], y[1], found, depth + 1);
            }
        }
    }

    private static Box net(Segment s) {
        return s instanceof Cubic c ? c.net() : s.bounds();
    }

    /** Ends of one that lie on the other: they also part segments that run along each other. */
    private static void addEnds(Segment a, Segment b, List<Crossing> found) {
        for (int end = 0; end <= 1; end++) {
            addEnd(a.at(end), end, b, false, found);
            addEnd(b.at(end), end, a, true, found);
        }
    }

    private static void addEnd(Point end, int share, Segment on, boolean first, List<Crossing> found) {
        double s = Foot.of(end, on);
        if (on.at(s).near(end, TOUCH)) {
            found.add(first ? new Crossing(s, share) : new Crossing(share, s));
        }
    }

    private static void add(Segment a, double s, Segment b, double t, List<Crossing> found) {
        double sa = TOUCH / Math.max(a.length(), TOUCH);
        double sb = TOUCH / Math.max(b.length(), TOUCH);
        if (s < -sa || s > 1 + sa || t < -sb || t > 1 + sb) {
            return;
        }
        double u = Math.max(0, Math.min(1, s));
        double v = Math.max(0, Math.min(1, t));
        for (Crossing c : found) {
            if (a.at(c.first).near(a.at(u), TOUCH)) {
                return;
            }
        }
        found.add(new Crossing(u, v));
    }
}
