package org.calicograph.seams;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;

/** Which shapes share edges, and where. */
final class Neighbours {

    static final double TOUCH = 2e-3;
    private static final int STEPS = 64;

    private final List<Map<Integer, List<Segment>>> shared = new ArrayList<>();

    Neighbours(List<Region> shapes) {
        List<List<Segment>> edges = new ArrayList<>();
        for (Region r : shapes) {
            List<Segment> all = new ArrayList<>();
            for (Path p : r.paths()) {
                all.addAll(p.segments());
            }
            edges.add(all);
            shared.add(new HashMap<>());
        }
        List<Box> boxes = shapes.stream().map(r -> r.bounds().grownBy(TOUCH)).toList();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                if (boxes.get(i).touches(boxes.get(j))) {
                    List<Segment> both = between(edges.get(i), edges.get(j));
                    if (!both.isEmpty()) {
                        shared.get(i).put(j, both);
                        shared.get(j).put(i, both);
                    }
                }
            }
        }
    }

    private static List<Segment> between(List<Segment> a, List<Segment> b) {
        List<Segment> found = new ArrayList<>();
        for (Segment s : a) {
            for (Segment t : b) {
                if (s instanceof Line p && t instanceof Line q) {
                    overlap(p, q, found);
                } else if (!(s instanceof Line) && !(t instanceof Line) && s.bounds().grownBy(TOUCH).touches(t.bounds().grownBy(TOUCH))) {
                    curved(s, t, found);
                }
            }
        }
        return found;
    }

    private static void overlap(Line a, Line b, List<Segment> into) {
        Point u = a.heading(0).unit();
        if (Math.abs(u.cross(b.from().minus(a.from()))) > TOUCH || Math.abs(u.cross(b.to().minus(a.from()))) > TOUCH) {
            return;
        }
        double from = Math.max(0, Math.min(u.dot(b.from().minus(a.from())), u.dot(b.to().minus(a.from()))));
        double to = Math.min(a.length(), Math.max(u.dot(b.from().minus(a.from())), u.dot(b.to().minus(a.from()))));
        if (to - from > 2 * TOUCH) {
            into.add(new Line(a.from().plus(u.times(from)), a.from().plus(u.times(to))));
        }
    }

    /** What two curves share: the one that lies on the other whole, else the part of the first that does. */
    private static void curved(Segment a, Segment b, List<Segment> into) {
        double[] first = onOther(a, b);
        if (first[1] - first[0] == 1) {
            into.add(a);
            return;
        }
        double[] second = onOther(b, a);
        if (second[1] - second[0] == 1) {
            into.add(b);
        } else if (first[1] - first[0] > 1.5 / STEPS) {
            into.add(a.between(first[0], first[1]));
        }
    }

    /** The longest stretch of a curve that lies on another, as shares, told by points along it: curves that cross share none. */
    private static double[] onOther(Segment a, Segment b) {
        Predicate<Point> on = on(b);
        int start = 0;
        int first = 0;
        int last = 0;
        for (int i = 0; i <= STEPS; i++) {
            if (!on.test(a.at((double) i / STEPS))) {
                start = i + 1;
            } else if (i - start > last - first) {
                first = start;
                last = i;
            }
        }
        return last - first < 2 ? new double[] {0, 0} : new double[] {edge(a, on, first, -1), edge(a, on, last, 1)};
    }

    /** Where the stretch really ends, between a point that is on the other curve and the next, which isn't. */
    private static double edge(Segment a, Predicate<Point> other, int at, int way) {
        double on = (double) at / STEPS;
        if (at == 0 && way < 0 || at == STEPS && way > 0) {
            return on;
        }
        double off = (double) (at + way) / STEPS;
        for (int i = 0; i < 20; i++) {
            double half = (on + off) / 2;
            if (other.test(a.at(half))) {
                on = half;
            } else {
                off = half;
            }
        }
        return on;
    }

    /** Which points lie on a curve. */
    private static Predicate<Point> on(Segment curve) {
        if (curve instanceof Arc arc) {
            Point chord = arc.to().minus(arc.from()).unit();
            double side = Math.signum(chord.cross(arc.middle().minus(arc.from())));
            Point centre = arc.centre();
            double radius = arc.radius();
            return p -> Math.abs(p.distance(centre) - radius) < TOUCH && side * chord.cross(p.minus(arc.from())) > -TOUCH;
        }
        List<Point> chain = new ArrayList<>(List.of(curve.from()));
        curve.flatten(TOUCH / 4, chain);
        return p -> isOn(p, chain);
    }

    private static boolean isOn(Point p, List<Point> chain) {
        for (int i = 1; i < chain.size(); i++) {
            Point u = chain.get(i).minus(chain.get(i - 1));
            double share = Math.max(0, Math.min(1, p.minus(chain.get(i - 1)).dot(u) / Math.max(1e-18, u.dot(u))));
            if (p.distance(chain.get(i - 1).plus(u.times(share))) < TOUCH) {
                return true;
            }
        }
        return false;
    }

    /** What two groups of shapes share. */
    List<Segment> between(Collection<Integer> a, Collection<Integer> b) {
        List<Segment> all = new ArrayList<>();
        for (int i : a) {
            Map<Integer, List<Segment>> of = shared.get(i);
            for (int j : b) {
                all.addAll(of.getOrDefault(j, List.of()));
            }
        }
        return all;
    }

    /** The corners that a run of edges turns; 0 for one straight line, or -1 if it is in several pieces. */
    static int corners(List<Segment> run) {
        List<Segment> left = new ArrayList<>(run);
        List<Segment> chain = new ArrayList<>(List.of(left.remove(0)));
        boolean grew = true;
        while (grew && !left.isEmpty()) {
            grew = false;
            for (Segment s : left) {
                Point head = chain.get(0).from();
                Point tail = chain.get(chain.size() - 1).to();
                if (s.from().near(tail, 2 * TOUCH) || s.to().near(tail, 2 * TOUCH)) {
                    chain.add(s.from().near(tail, 2 * TOUCH) ? s : s.reversed());
                } else if (s.to().near(head, 2 * TOUCH) || s.from().near(head, 2 * TOUCH)) {
                    chain.add(0, s.to().near(head, 2 * TOUCH) ? s : s.reversed());
                } else {
                    continue;
                }
                left.remove(s);
                grew = true;
                break;
            }
        }
        if (!left.isEmpty()) {
            return -1;
        }
        int corners = 0;
        boolean closed = chain.size() > 2 && chain.get(0).from().near(chain.get(chain.size() - 1).to(), 2 * TOUCH);
        for (int i = 1; i < chain.size() + (closed ? 1 : 0); i++) {
            Point u = chain.get(i - 1).heading(1).unit();
            Point v = chain.get(i % chain.size()).heading(0).unit();
            corners += u.dot(v) > 0 && Math.abs(u.cross(v)) < 0.01 ? 0 : 1;
        }
        return corners;
    }
}
