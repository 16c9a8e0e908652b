package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Fills of a quilter's hand: matchsticks, pebbles, spirals, ribbons, quarter fans. All stay within their region. */
public final class Fills {

    private static final double CHORD = 5e-4;
    private static final int MOST_PEBBLES = 60_000;

    private Fills() { }

    /**
     * Matchsticks: lines side by side, as uneven as a hand makes them.
     *
     * @param spacing on average; no two neighbours are farther apart than 1 1/2 times as much
     * @param along   their direction: zero is level, a quarter turn upright
     * @param shuffle another number gives other lines, the same number the same
     */
    public static List<Path> matchsticks(Region region, Length spacing, Angle along, long shuffle) {
        double step = spacing(spacing);
        Random chance = new Random(shuffle);
        Box b = region.bounds();
        double reach = Math.hypot(b.width(), b.height()) / 2 + step;
        Point u = Point.polar(1, along);
        Point v = u.quarterTurned();
        List<Path> lines = new ArrayList<>();
        for (double at = -reach; at <= reach; at += step) {
            // Either end may lie a quarter of the spacing off its place: neighbours never cross, nor part by more than half as much again.
            double one = at + (chance.nextDouble() - 0.5) * step / 2;
            double other = at + (chance.nextDouble() - 0.5) * step / 2;
            lines.add(Path.through(b.centre().plus(v.times(one)).minus(u.times(reach)), b.centre().plus(v.times(other)).plus(u.times(reach))));
        }
        return Trim.within(region).of(lines);
    }

    /**
     * Pebbles: circles of which each touches another or comes up to the edge, and none cross.
     *
     * @param smallest the least width of a pebble; no place is left in which one a quarter wider would go
     * @param largest  the greatest
     * @param shuffle  another number lays other pebbles, the same number the same
     */
    public static List<Path> pebbles(Region region, Length smallest, Length largest, long shuffle) {
        double least = spacing(smallest) / 2;
        double most = largest.inInches() / 2;
        if (most < least) {
            throw new IllegalArgumentException("pebbles from " + smallest + " to " + largest + " wide can't be laid; give the smaller width first");
        }
        Box b = region.bounds();
        // A place is at most so far from one that is tried that a pebble a quarter wider than the smallest would be found.
        double pitch = least / 4 * Math.sqrt(2);
        long tries = (long) Math.ceil(b.width() / pitch) * (long) Math.ceil(b.height() / pitch);
        if (tries > 40L * MOST_PEBBLES) {
            throw new IllegalArgumentException("pebbles of " + smallest + " on " + Length.inches(b.width()) + " x " + Length.inches(b.height())
                    + " are too many; make them larger, or fill a smaller region");
        }
        Polygon area = Polygons.of(region, CHORD);
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        IndexedFacetDistance edge = new IndexedFacetDistance(area.getBoundary());
        List<Point> places = new ArrayList<>();
        for (double y = b.top() + pitch / 2; y < b.bottom(); y += pitch) {
            for (double x = b.left() + pitch / 2; x < b.right(); x += pitch) {
                if (inside.locate(new Coordinate(x, y)) == Location.INTERIOR) {
                    places.add(new Point(x, y));
                }
            }
        }
        Collections.shuffle(places, new Random(shuffle));
        Shingle shingle = new Shingle(b, most);
        List<Path> circles = new ArrayList<>();
        double[] toEdge = places.stream().mapToDouble(p -> edge.distance(Polygons.point(p)) - CHORD).toArray();
        // Round by round smaller ones are let in, so that the large ones find their place. Where there would be room for more than the
        // largest nothing is near yet to touch: such a place waits until its neighbours lie.
        for (double floor = most; ; floor = Math.max(least, floor * 0.8)) {
            boolean more = true;
            while (more) {
                more = false;
                boolean begins = circles.isEmpty();
                for (int i = 0; i < toEdge.length; i++) {
                    double room = Math.min(toEdge[i], shingle.room(places.get(i), 1.01 * most));
                    if (room >= floor && (room <= most || begins)) {
                        double radius = Math.min(most, room);
                        shingle.add(places.get(i), radius);
                        circles.add(Path.circle(places.get(i), radius));
                        more = true;
                        begins = false;
                    }
                }
            }
            if (floor <= least) {
                return List.copyOf(circles);
            }
        }
    }

    /** The pebbles that lie, by squares of the region, so that only near ones are asked. */
    private static final class Shingle {
        private record Pebble(Point at, double radius) { }

        private final Box box;
        private final double side;
        private final int across;
        private final List<List<Pebble>> squares = new ArrayList<>();

        Shingle(Box box, double most) {
            this.box = box;
            side = 2 * most;
            across = (int) Math.ceil(box.width() / side) + 1;
            int down = (int) Math.ceil(box.height() / side) + 1;
            for (int i = 0; i < across * down; i++) {
                squares.add(new ArrayList<>(4));
            }
        }

        void add(Point at, double radius) {
            squares.get(index(column(at), row(at))).add(new Pebble(at, radius));
        }

        /** How large a pebble may be here; below 0 in another. */
        double room(Point at, double most) {
            double room = most;
            for (int c = Math.max(0, column(at) - 1); c <= Math.min(across - 1, column(at) + 1); c++) {
                for (int r = Math.max(0, row(at) - 1); r <= Math.min(squares.size() / across - 1, row(at) + 1); r++) {
                    for (Pebble p : squares.get(index(c, r))) {
                        room = Math.min(room, at.distance(p.at()) - p.radius());
                    }
                }
            }
            return room;
        }

        private int column(Point p) {
            return (int) ((p.x() - box.left()) / side);
        }

        private int row(Point p) {
            return (int) ((p.y() - box.top()) / side);
        }

        private int index(int column, int row) {
            return row * across + column;
        }
    }

    /** A spiral of half circles about a centre, out to the farthest corner, its rounds so far apart. */
    public static List<Path> spiral(Region region, Point centre, Length spacing) {
        double step = spacing(spacing);
        Box b = region.bounds();
        double reach = Math.hypot(b.width(), b.height()) / 2 + centre.distance(b.centre());
        List<Segment> arcs = new ArrayList<>();
        // Half circles about two middles half a spacing apart: each round is wider than the last by the spacing.
        double right = centre.x();
        for (int k = 1; k * step / 2 < reach + step; k++) {
            double next = k % 2 == 1 ? right - k * step : right + k * step;
            arcs.add(new Arc(new Point(right, centre.y()), new Point(next, centre.y()), 1));
            right = next;
        }
        return Trim.within(region).of(List.of(new Path(arcs)));
    }

    /**
     * Ribbons: pairs of waves that cross, row upon row.
     *
     * @param length from one crossing to the next
     * @param width  of a ribbon at its widest; rows touch
     */
    public static List<Path> ribbons(Region region, Length length, Length width) {
        double chord = spacing(length);
        double high = spacing(width);
        if (high > chord) {
            throw new IllegalArgumentException("ribbons " + width + " wide and " + length + " from crossing to crossing are no waves; make them longer than wide");
        }
        double bulge = high / chord; // half the width over half the chord
        Box b = region.bounds();
        List<Path> waves = new ArrayList<>();
        int columns = (int) Math.ceil(b.width() / chord) + 1;
        for (double y = b.top() + high / 2; y < b.bottom() + high / 2; y += high) {
            for (int way = -1; way <= 1; way += 2) {
                List<Segment> wave = new ArrayList<>();
                for (int k = 0; k < columns; k++) {
                    double x = b.left() + k * chord;
                    wave.add(new Arc(new Point(x, y), new Point(x + chord, y), (k % 2 == 0 ? way : -way) * bulge));
                }
                waves.add(new Path(wave));
            }
        }
        return Trim.within(region).of(waves);
    }

    /**
     * Quarter fans: in squares side by side, arcs about the lower left corner of each. The trade calls the pattern bishop's fan.
     *
     * @param arcs    along a side of a square, at least 2
     * @param spacing between the arcs; a square is so many times as wide
     */
    public static List<Path> quarterFans(Region region, int arcs, Length spacing) {
        double step = spacing(spacing);
        if (arcs < 2) {
            throw new IllegalArgumentException("a fan of " + arcs + " arcs is no fan; give it 2 or more");
        }
        double side = arcs * step;
        Box b = region.bounds();
        List<Path> lines = new ArrayList<>();
        for (int row = 0; b.bottom() - row * side > b.top(); row++) {
            for (int column = 0; b.left() + column * side < b.right(); column++) {
                Point corner = new Point(b.left() + column * side, b.bottom() - row * side);
                for (double r = step; r < side * Math.sqrt(2) - step / 4; r += step) {
                    double first = r <= side ? 0 : Math.acos(side / r); // beyond the side an arc begins and ends on the square's edges
                    double sweep = Math.PI / 2 - 2 * first;
                    lines.add(new Path(List.of(new Arc(corner.plus(new Point(r * Math.sin(first), -r * Math.cos(first))),
                            corner.plus(new Point(r * Math.cos(first), -r * Math.sin(first))), Math.tan(sweep / 4)))));
                }
            }
        }
        return Trim.within(region).of(lines);
    }

    private static double spacing(Length length) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("lines " + length + " apart can't be drawn; use a spacing above 0");
        }
        return length.inInches();
    }
}
