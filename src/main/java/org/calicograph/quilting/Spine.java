package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.quilting.filling.Biarcs;

/**
 * A smooth curve to grow a design along. What is drawn beside a level line, {@code x} along it and
 * {@code y} to its right, is bent to lie beside the curve.
 */
public final class Spine {

    private static final double ACCURACY = 1e-4;

    private final Path path;
    private final List<Segment> parts = new ArrayList<>();
    private final List<Double> begins = new ArrayList<>();
    private final double length;

    private Spine(Path path) {
        for (Segment s : path.segments()) {
            parts.addAll(s instanceof Cubic c ? Biarcs.of(c, ACCURACY) : List.of(s));
        }
        double sum = 0;
        for (Segment s : parts) {
            begins.add(sum);
            sum += s.length();
        }
        length = sum;
        this.path = new Path(parts);
    }

    /** @throws IllegalArgumentException if the path has a sharp corner, naming the place */
    public static Spine along(Path path) {
        Spine spine = new Spine(path);
        int n = spine.parts.size();
        for (int i = 0; i < (path.isClosed() ? n : n - 1); i++) {
            Point u = spine.parts.get(i).heading(1);
            Point v = spine.parts.get((i + 1) % n).heading(0);
            double turn = Math.abs(Math.atan2(u.cross(v), u.dot(v)));
            if (turn > 0.09) {
                throw new IllegalArgumentException("the spine turns sharply by " + Angle.degrees(Math.rint(Math.toDegrees(turn))) + " at "
                        + spine.parts.get(i).to() + "; round that corner with an arc");
            }
        }
        return spine;
    }

    /** Round an upright rectangle, clockwise from the left end of its top, with corners of a radius in inches. */
    public static Spine around(Box box, double radius) {
        if (!(radius > 0 && 2 * radius <= Math.min(box.width(), box.height()) + 1e-9)) {
            throw new IllegalArgumentException("corners of radius " + radius + " in don't fit a box of " + box.width() + " x " + box.height()
                    + " in; use a radius above 0 and at most half the shorter side");
        }
        double k = Math.tan(Math.PI / 8);
        var pen = Path.from(box.left() + radius, box.top());
        Point[][] sides = {
            {Point.of(box.right() - radius, box.top()), Point.of(box.right(), box.top() + radius)},
            {Point.of(box.right(), box.bottom() - radius), Point.of(box.right() - radius, box.bottom())},
            {Point.of(box.left() + radius, box.bottom()), Point.of(box.left(), box.bottom() - radius)},
            {Point.of(box.left(), box.top() + radius), Point.of(box.left() + radius, box.top())}};
        for (Point[] side : sides) {
            pen = pen.here().near(side[0], 1e-9) ? pen : pen.lineTo(side[0]);
            pen = pen.arcTo(side[1], k);
        }
        return new Spine(pen.open());
    }

    /** The curve itself, its cubics as arcs within 1e-4 in. */
    public Path path() {
        return path;
    }

    /** How long it is, in inches. */
    public double length() {
        return length;
    }

    /** True if it comes back to its beginning. */
    public boolean isClosed() {
        return path.isClosed();
    }

    /** The tightest bend to the right (towards y above 0) or left: how far a design may reach on that side, in inches. */
    public double reach(boolean right) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment s : parts) {
            if (s instanceof Arc arc && (arc.bulge() > 0) == right) {
                least = Math.min(least, arc.radius());
            }
        }
        return least;
    }

    /** Part of the spine that bends evenly: 1 / radius, above 0 to the right. */
    record Stretch(double from, double to, double curvature) { }

    /** The spine cut wherever it begins to bend otherwise all at once, by more than a curvature. */
    List<Stretch> stretches(double sharply) {
        List<Stretch> all = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            double to = begins.get(i) + parts.get(i).length();
            double curvature = curvature(parts.get(i));
            Stretch last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null && Math.abs(last.curvature() - curvature) <= sharply) {
                all.set(all.size() - 1, new Stretch(last.from(), to, curvature));
            } else {
                all.add(new Stretch(begins.get(i), to, curvature));
            }
        }
        return all;
    }

    private static double curvature(Segment s) {
        return s instanceof Arc arc ? Math.signum(arc.bulge()) / arc.radius() : 0;
    }

    /** How it bends there: 1 / radius, above 0 to the right. */
    double curvatureAt(double x) {
        return frame(x).curvature();
    }

    private record Frame(Point at, Point along, double curvature) { }

    private Frame frame(double distance) {
        double d = isClosed() ? distance - length * Math.floor(distance / length) : distance;
        int i = begins.size() - 1;
        while (i > 0 && begins.get(i) > d) {
            i--;
        }
        Segment s = parts.get(i);
        double share = (d - begins.get(i)) / s.length();
        double curvature = curvature(s);
        if (share >= 0 && share <= 1) {
            return new Frame(s.at(share), s.heading(share).unit(), curvature);
        }
        Point end = s.at(share < 0 ? 0 : 1);
        Point u = s.heading(share < 0 ? 0 : 1).unit();
        return new Frame(end.plus(u.times(share < 0 ? d - begins.get(i) : d - begins.get(i) - s.length())), u, 0);
    }

    /** The point {@code x} along the spine and {@code y} to its right. Beyond the ends of an open spine it runs on straight. */
    public Point at(double x, double y) {
        Frame f = frame(x);
        return f.at().plus(f.along().quarterTurned().times(y));
    }

    /** The line that keeps a distance to the right of the spine, or to its left where that is below 0; arcs stay arcs. */
    Path beside(double y) {
        List<Segment> out = new ArrayList<>();
        Point first = parts.get(0).from().plus(parts.get(0).heading(0).unit().quarterTurned().times(y));
        Point here = first;
        for (int i = 0; i < parts.size(); i++) {
            Segment s = parts.get(i);
            Point to = isClosed() && i == parts.size() - 1 ? first : s.to().plus(s.heading(1).unit().quarterTurned().times(y));
            out.add(s instanceof Arc arc ? new Arc(here, to, arc.bulge()) : new org.calicograph.geometry.Line(here, to));
            here = to;
        }
        return new Path(out);
    }

    /** The direction of travel, of one inch. */
    public Point heading(double x) {
        return frame(x).along();
    }

    /** A step beside the spine, where that bends as it does at the middle of a piece. */
    private Point carried(Point at, Point step, double middle) {
        Frame f = frame(at.x());
        return f.along().times(step.x() * (1 - at.y() * frame(middle).curvature())).plus(f.along().quarterTurned().times(step.y()));
    }

    /** Where a level curve is cut before it is bent: into short pieces, and wherever the spine begins to bend otherwise. */
    private List<Double> cuts(Cubic level) {
        java.util.TreeSet<Double> cuts = new java.util.TreeSet<>(List.of(0.0, 1.0));
        int pieces = Math.max(1, Math.min(12, (int) Math.ceil(level.length() / 0.75)));
        for (int i = 1; i < pieces; i++) {
            cuts.add((double) i / pieces);
        }
        double turns = isClosed() ? length : 0;
        for (int i = 0; i < parts.size(); i++) {
            if (i > 0 || isClosed()) {
                double before = curvature(parts.get((i + parts.size() - 1) % parts.size()));
                if (Math.abs(before - curvature(parts.get(i))) > 1e-9) {
                    for (double at : new double[] {begins.get(i) - turns, begins.get(i), begins.get(i) + turns}) {
                        crossing(level, at, cuts);
                    }
                }
            }
        }
        List<Double> all = new ArrayList<>();
        for (double t : cuts) {
            if (all.isEmpty() || t - all.get(all.size() - 1) > 1e-6) {
                all.add(t);
            }
        }
        all.set(all.size() - 1, 1.0);
        return all;
    }

    private static void crossing(Cubic level, double x, java.util.TreeSet<Double> cuts) {
        int steps = 8;
        for (int i = 0; i < steps; i++) {
            double low = (double) i / steps;
            double high = (i + 1.0) / steps;
            boolean rising = level.at(low).x() < x;
            if (rising == level.at(high).x() < x) {
                continue;
            }
            for (int k = 0; k < 40; k++) {
                double mid = (low + high) / 2;
                if (level.at(mid).x() < x == rising) {
                    low = mid;
                } else {
                    high = mid;
                }
            }
            cuts.add((low + high) / 2);
        }
    }

    /**
     * A path drawn beside a level line, bent to lie beside the spine; within about a hundredth of the
     * size of its segments where the spine bends no more sharply than the path is high.
     */
    public Path bent(Path level) {
        List<Segment> out = new ArrayList<>();
        Point here = at(level.start().x(), level.start().y());
        Point first = here;
        for (Segment s : level.segments()) {
            List<Cubic> cubics = s instanceof Cubic c ? List.of(c) : s instanceof Arc a ? a.asCubics()
                    : List.of(new Cubic(s.from(), s.at(1 / 3.0), s.at(2 / 3.0), s.to()));
            for (Cubic whole : cubics) {
                List<Double> cuts = cuts(whole);
                for (int i = 1; i < cuts.size(); i++) {
                    Cubic c = whole.between(cuts.get(i - 1), cuts.get(i));
                    Point to = at(c.to().x(), c.to().y());
                    if (level.isClosed() && c.to().near(level.end(), 1e-9) && i == cuts.size() - 1 && s == level.segments().get(level.segments().size() - 1)
                            && whole == cubics.get(cubics.size() - 1)) {
                        to = first;
                    }
                    double middle = c.at(0.5).x();
                    out.add(new Cubic(here, here.plus(carried(c.from(), c.lead().minus(c.from()), middle)),
                            to.minus(carried(c.to(), c.to().minus(c.trail()), middle)), to));
                    here = to;
                }
            }
        }
        return new Path(out);
    }
}
