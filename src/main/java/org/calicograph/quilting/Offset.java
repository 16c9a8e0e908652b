package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * A region drawn in or let out by a distance, with corners kept sharp (mitred) and arcs kept as arcs.
 *
 * <p>Every edge is moved sideways: a line stays a line, an arc stays an arc of the same circle's centre,
 * a cubic becomes arcs within 1e-4 in. Edges that part at a corner are carried on to their mitre; a
 * mitre longer than {@link #MITRE} times the distance is cut off square. The moved edges are cut where
 * they cross, and a face counts if it lies nowhere nearer to the edge than the distance, mitres apart.
 * Where nothing is left, there is no region: an offset vanishes cleanly.
 */
public final class Offset {

    /** How many times the distance a mitre may reach, as is usual where lines are stroked (SVG: 4). */
    public static final double MITRE = 4;

    private static final double SLACK = 2e-5;
    private static final double CUBIC = 1e-4;
    private static final Comparator<Path> LEFT_FIRST = Comparator.comparingDouble((Path p) -> p.start().x()).thenComparingDouble(p -> p.start().y());

    private final double distance;
    private final Region region;
    private final boolean inward;
    private final STRtree edges = new STRtree();
    private final IndexedPointInAreaLocator area;
    private final List<Segment> moved = new ArrayList<>();
    private final List<Kite> kites = new ArrayList<>();
    private final STRtree kiteIndex = new STRtree();

    private Offset(Region region, double distance, boolean inward) {
        this.region = region;
        this.distance = distance;
        this.inward = inward;
        this.area = new IndexedPointInAreaLocator(Polygons.of(region, CUBIC));
        for (Path path : region.paths()) {
            List<Segment> ring = new ArrayList<>();
            for (Segment s : path.segments()) {
                ring.addAll(s instanceof Cubic c ? arcs(c, 0) : List.of(s));
            }
            ring.removeIf(s -> s.length() < 1e-9);
            ring.forEach(s -> edges.insert(envelope(s.bounds(), 0), s));
            move(ring);
        }
        edges.build();
        kites.forEach(k -> kiteIndex.insert(envelope(Box.around(k.corners()), 0), k));
        kiteIndex.build();
    }

    /** What is left of a region drawn in by a distance in inches; several where it falls apart, none where nothing is left. */
    public static List<Region> inward(Region region, double distance) {
        Box b = region.bounds();
        if (distance * 2 >= Math.min(b.width(), b.height())) {
            check(distance);
            return List.of();
        }
        return of(region, distance, true);
    }

    /** A region let out by a distance in inches; its holes grow smaller. */
    public static Region outward(Region region, double distance) {
        List<Region> grown = of(region, distance, false);
        Region largest = grown.get(0);
        for (Region r : grown) {
            largest = r.area().compareTo(largest.area()) > 0 ? r : largest;
        }
        return largest;
    }

    private static void check(double distance) {
        if (!(distance >= 0)) {
            throw new IllegalArgumentException("an offset of " + distance + " in has no side; use a distance above 0, inward or outward");
        }
    }

    private static List<Region> of(Region region, double distance, boolean inward) {
        check(distance);
        return distance == 0 ? List.of(region) : new Offset(region, distance, inward).faces();
    }

    // --- moving the edges. Regions keep their outline clockwise and holes anticlockwise: the inside lies
    // --- a quarter turn clockwise from the heading.

    private void move(List<Segment> ring) {
        for (int i = 0; i < ring.size(); i++) {
            Segment s = ring.get(i);
            parallel(s);
            join(s, ring.get((i + 1) % ring.size()));
        }
    }

    private Point side(Point heading) {
        Point in = heading.unit().quarterTurned().times(distance);
        return inward ? in : in.times(-1);
    }

    private void parallel(Segment s) {
        Point from = s.from().plus(side(s.heading(0)));
        Point to = s.to().plus(side(s.heading(1)));
        if (s instanceof Arc arc) {
            // Clockwise (bulge above 0) has its centre on the inside.
            boolean towardsCentre = (arc.bulge() > 0) == inward;
            if (towardsCentre && arc.radius() <= distance + 1e-9 || from.near(to, 1e-9)) {
                return;
            }
            moved.add(new Arc(from, to, arc.bulge()));
        } else if (!from.near(to, 1e-9)) {
            moved.add(new Line(from, to));
        }
    }

    private record Kite(List<Point> corners) {
        boolean holds(Point p) {
            int sign = 0;
            for (int i = 0; i < corners.size(); i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                double cross = b.minus(a).cross(p.minus(a)) / Math.max(1e-12, a.distance(b));
                if (Math.abs(cross) <= SLACK) {
                    return false;
                }
                int s = cross > 0 ? 1 : -1;
                if (sign != 0 && s != sign) {
                    return false;
                }
                sign = s;
            }
            return true;
        }
    }

    private void join(Segment a, Segment b) {
        Point u = a.heading(1).unit();
        Point v = b.heading(0).unit();
        double turn = a.turnInto(b);
        // The moved edges part where the ring turns away from the side they move to.
        boolean parts = inward ? turn < 0 : turn > 0;
        Point p = a.to().plus(side(u));
        Point q = a.to().plus(side(v));
        if (!parts || p.near(q, 1e-9)) {
            return;
        }
        double half = Math.abs(turn) / 2;
        double reach = distance / Math.cos(half);
        List<Point> way = new ArrayList<>();
        way.add(p);
        if (half < Math.PI / 2 - 1e-6 && reach <= MITRE * distance) {
            way.add(p.plus(u.times(distance * Math.tan(half))));
        } else {
            double stub = distance * Math.tan(half / 2);
            way.add(p.plus(u.times(stub)));
            way.add(q.minus(v.times(stub)));
        }
        way.add(q);
        for (int i = 1; i < way.size(); i++) {
            moved.add(new Line(way.get(i - 1), way.get(i)));
        }
        List<Point> corners = new ArrayList<>(way);
        corners.add(a.to());
        kites.add(new Kite(corners));
    }

    /** Arcs within {@link #CUBIC} of a cubic. */
    public static List<Segment> arcs(Cubic c, int depth) {
        Segment arc = c.from().near(c.to(), 1e-9) ? new Line(c.from(), c.to()) : Arc.through(c.from(), c.at(0.5), c.to());
        if (c.from().near(c.to(), 1e-9) && depth > 2 || depth >= 12 || fits(c, arc)) {
            return List.of(arc);
        }
        List<Segment> both = new ArrayList<>(arcs(c.between(0, 0.5), depth + 1));
        List<Segment> second = arcs(c.between(0.5, 1), depth + 1);
        // Exact joins: each half ends at the same computed point.
        both.addAll(second);
        return both;
    }

    private static boolean fits(Cubic c, Segment arc) {
        if (arc instanceof Arc a && Math.abs(a.sweep()) > Math.PI / 2) {
            return false;
        }
        for (double t : new double[] {0.15, 0.3, 0.7, 0.85}) {
            Point p = c.at(t);
            double off = arc instanceof Arc a ? Math.abs(p.distance(a.centre()) - a.radius())
                    : Math.abs(arc.heading(0).unit().cross(p.minus(arc.from())));
            if (off > CUBIC) {
                return false;
            }
        }
        return true;
    }

    // --- choosing the faces

    private List<Region> faces() {
        List<Segment> kept = new ArrayList<>();
        for (Segment piece : Arrangement.pieces(moved)) {
            if (isClear(piece.at(0.5), SLACK)) {
                kept.add(piece);
            }
        }
        List<Region> faces = new ArrayList<>();
        for (Region face : Arrangement.ofSegments(kept).faces()) {
            if (face.area().squareInches() > 1e-6 && belongs(face)) {
                faces.add(new Region(fromTheLeft(face.outer()), face.holes().stream().map(Offset::fromTheLeft).sorted(LEFT_FIRST).toList()));
            }
        }
        faces.sort(Comparator.comparing(Region::outer, LEFT_FIRST));
        return List.copyOf(faces);
    }

    /** A ring begun at its leftmost corner, so that the same input gives the same line. */
    private static Path fromTheLeft(Path ring) {
        List<Segment> segments = new ArrayList<>(ring.segments());
        Point first = segments.stream().map(Segment::from).min(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y)).orElseThrow();
        int begin = 0;
        while (!segments.get(begin).from().equals(first)) {
            begin++;
        }
        java.util.Collections.rotate(segments, -begin);
        return new Path(segments);
    }

    private boolean belongs(Region face) {
        Point p = face.inside();
        boolean clear = isClear(p, -SLACK);
        return inward == clear;
    }

    /** On the offset's side of the edge, at least the distance away (less the slack), and in no mitre. */
    private boolean isClear(Point p, double slack) {
        boolean inside = area.locate(new Coordinate(p.x(), p.y())) == Location.INTERIOR;
        if (inside != inward) {
            return false;
        }
        Envelope near = new Envelope(p.x() - distance, p.x() + distance, p.y() - distance, p.y() + distance);
        for (Object edge : edges.query(near)) {
            if (distance(p, (Segment) edge) < distance - slack) {
                return false;
            }
        }
        for (Object kite : kiteIndex.query(new Envelope(p.x(), p.x(), p.y(), p.y()))) {
            if (((Kite) kite).holds(p)) {
                return false;
            }
        }
        return true;
    }

    static double distance(Point p, Segment s) {
        if (s instanceof Arc arc) {
            Point c = arc.centre();
            Point u = arc.from().minus(c);
            Point v = p.minus(c);
            double turn = Math.atan2(u.cross(v), u.dot(v)) * Math.signum(arc.bulge());
            if ((turn < 0 ? turn + 2 * Math.PI : turn) <= Math.abs(arc.sweep())) {
                return Math.abs(v.norm() - arc.radius());
            }
            return Math.min(p.distance(arc.from()), p.distance(arc.to()));
        }
        Point u = s.to().minus(s.from());
        double t = Math.max(0, Math.min(1, p.minus(s.from()).dot(u) / u.dot(u)));
        return p.distance(s.from().plus(u.times(t)));
    }

    private static Envelope envelope(Box b, double margin) {
        return new Envelope(b.left() - margin, b.right() + margin, b.top() - margin, b.bottom() + margin);
    }

    @Override
    public String toString() {
        return (inward ? "inward " : "outward ") + distance + " in from " + region;
    }
}
