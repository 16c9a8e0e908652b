package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/** Overall lines cut off at the edge of a region: grids, fans, clamshells, rays and rings. */
public final class Lines {

    private Lines() { }

    /**
     * Parallel lines.
     *
     * @param spacing square across the lines
     * @param along   their direction: zero is level, a quarter turn upright
     */
    public static List<Path> parallel(Region region, Length spacing, Angle along) {
        double step = spacing(spacing);
        Box b = region.bounds();
        double reach = Math.hypot(b.width(), b.height()) / 2 + step;
        Point u = Point.polar(1, along);
        Point v = u.quarterTurned();
        List<Path> lines = new ArrayList<>();
        for (int k = (int) Math.floor(-reach / step); k <= reach / step; k++) {
            // Half a step off the centre, so that the region is symmetrical about its lines' middle gap.
            Point c = b.centre().plus(v.times((k + 0.5) * step));
            lines.add(Path.through(c.minus(u.times(reach)), c.plus(u.times(reach))));
        }
        return Trim.within(region).of(lines);
    }

    /** Level and upright lines: squares. */
    public static List<Path> grid(Region region, Length spacing) {
        return crossed(region, spacing, Angle.ZERO, Angle.QUARTER);
    }

    /** Lines at 45 degrees both ways: squares on point, also called cross-hatching. */
    public static List<Path> diagonalGrid(Region region, Length spacing) {
        return crossed(region, spacing, Angle.degrees(45), Angle.degrees(-45));
    }

    /** Lines at 60 degrees both ways: diamonds that hang from their sharp points. */
    public static List<Path> hangingDiamonds(Region region, Length spacing) {
        return crossed(region, spacing, Angle.degrees(60), Angle.degrees(-60));
    }

    private static List<Path> crossed(Region region, Length spacing, Angle one, Angle other) {
        List<Path> lines = new ArrayList<>(parallel(region, spacing, one));
        lines.addAll(parallel(region, spacing, other));
        return List.copyOf(lines);
    }

    /** Straight lines from a centre, the first in the given direction, beginning at a distance from it. */
    public static List<Path> rays(Region region, Point centre, int count, Angle first, Length from) {
        if (count < 1 || from.compareTo(Length.ZERO) < 0) {
            throw new IllegalArgumentException(count + " rays that begin " + from + " from their centre can't be drawn; use 1 or more and a distance of 0 or more");
        }
        Box b = region.bounds();
        double reach = Math.hypot(b.width(), b.height()) + centre.distance(b.centre());
        List<Path> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point u = Point.polar(1, first.plus(Angle.turn(i, count)));
            lines.add(Path.through(centre.plus(u.times(from.inInches())), centre.plus(u.times(reach))));
        }
        return Trim.within(region).of(lines);
    }

    /** Rings about a centre, out to the farthest corner. */
    public static List<Path> rings(Region region, Point centre, Length spacing) {
        double step = spacing(spacing);
        Box b = region.bounds();
        double reach = Math.hypot(b.width(), b.height()) + centre.distance(b.centre());
        List<Path> lines = new ArrayList<>();
        for (int k = 1; k * step < reach; k++) {
            lines.add(Path.circle(centre, k * step));
        }
        return Trim.within(region).of(lines);
    }

    /** Clamshells of a radius: half circles in rows, each row half a shell along from the one below. */
    public static List<Path> clamshells(Region region, Length radius) {
        double r = spacing(radius);
        List<Path> lines = new ArrayList<>();
        Box b = region.bounds();
        int rows = (int) Math.ceil(b.height() / r) + 1;
        for (int row = 0; row <= rows; row++) {
            double y = b.bottom() - row * r + r / 2;
            double shift = row % 2 == 0 ? 0 : r;
            for (double x = b.left() - 2 * r + shift; x < b.right() + 2 * r; x += 2 * r) {
                lines.add(new Path(List.of(new Arc(Point.of(x - r, y), Point.of(x + r, y), 1))));
            }
        }
        return Trim.within(region).of(lines);
    }

    /**
     * Fans of concentric arcs, as swung from the elbow: each fan lies before its left neighbour, each
     * row before the row above. The trade calls the pattern Baptist fan.
     *
     * @param arcs    in one fan, at least 2
     * @param spacing between its arcs
     */
    public static List<Path> fans(Region region, int arcs, Length spacing) {
        if (arcs < 2) {
            throw new IllegalArgumentException("a fan of " + arcs + " arcs is no fan; give it 2 or more");
        }
        double step = spacing(spacing);
        double r = arcs * step;
        double rise = r * Math.sqrt(3) / 2; // neighbours' outer arcs cross on the base line of the row above
        Box b = region.bounds();
        List<Path> lines = new ArrayList<>();
        int rows = (int) Math.ceil(b.height() / rise) + 1;
        for (int row = 0; row <= rows; row++) {
            double y = b.bottom() - row * rise;
            double shift = row % 2 == 0 ? 0 : r / 2;
            for (double x = b.left() - 2 * r + shift; x < b.right() + 2 * r; x += r) {
                List<Point> before = new ArrayList<>(List.of(Point.of(x + r, y)));
                for (double dx : new double[] {-1.5 * r, -0.5 * r, 0.5 * r, 1.5 * r}) {
                    before.add(Point.of(x + dx, y + rise));
                }
                for (int k = 1; k <= arcs; k++) {
                    lines.addAll(upperHalfOutside(Point.of(x, y), k * step, before, r));
                }
            }
        }
        return Trim.within(region).of(lines);
    }

    /** The parts of the upper half of a circle that lie outside discs of one radius. */
    private static List<Path> upperHalfOutside(Point centre, double radius, List<Point> discs, double disc) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(Math.PI, 2 * Math.PI));
        for (Point p : discs) {
            double d = p.distance(centre);
            double cos = (d * d + radius * radius - disc * disc) / (2 * d * radius);
            if (Math.abs(cos) < 1) {
                for (double side : new double[] {Math.acos(cos), -Math.acos(cos)}) {
                    double a = Math.atan2(p.y() - centre.y(), p.x() - centre.x()) + side;
                    a -= 2 * Math.PI * Math.floor(a / (2 * Math.PI));
                    if (a > Math.PI && a < 2 * Math.PI) {
                        cuts.add(a);
                    }
                }
            }
        }
        List<Path> parts = new ArrayList<>();
        double last = Double.NaN;
        for (double a : cuts) {
            if (!Double.isNaN(last) && a - last > 1e-7) {
                Point middle = centre.plus(Point.polar(radius, Angle.radians((a + last) / 2)));
                if (discs.stream().allMatch(p -> p.distance(middle) > disc - 1e-9)) {
                    parts.add(new Path(List.of(Arc.about(centre, centre.plus(Point.polar(radius, Angle.radians(last))), Angle.radians(a - last)))));
                }
            }
            last = a;
        }
        return parts;
    }

    private static double spacing(Length spacing) {
        if (!spacing.isPositive()) {
            throw new IllegalArgumentException("lines " + spacing + " apart can't be drawn; use a spacing above 0");
        }
        return spacing.inInches();
    }
}
