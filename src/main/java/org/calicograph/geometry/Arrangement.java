package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Drafting lines cut where they meet, and the faces between them.
 *
 * @param edges the pieces of line, each between two meeting points, none twice
 * @param faces the bounded faces, from the top down and then from the left
 * @param loose edges that bound no face: they end in the open, or lead from one figure to another
 */
public record Arrangement(List<Segment> edges, List<Region> faces, List<Segment> loose) {

    private static final double CHORD = 1e-3;

    public Arrangement {
        edges = List.copyOf(edges);
        faces = List.copyOf(faces);
        loose = List.copyOf(loose);
    }

    /** The arrangement of all the segments of the paths, open or closed. */
    public static Arrangement of(Collection<Path> paths) {
        List<Segment> all = new ArrayList<>();
        paths.forEach(p -> all.addAll(p.segments()));
        return ofSegments(all);
    }

    /** The faces that straight lines, given as their ends, part the plane into. */
    public static Arrangement ofSegments(List<Segment> segments) {
        List<Segment> edges = pieces(segments);
        Map<List<Coordinate>, Segment> chords = new HashMap<>();
        Polygonizer polygonizer = new Polygonizer();
        for (Segment edge : edges) {
            Coordinate[] line = Polygons.coordinates(new Path(List.of(edge)).flattened(CHORD));
            for (int i = 1; i < line.length; i++) {
                chords.put(List.of(line[i - 1], line[i]), edge);
                chords.put(List.of(line[i], line[i - 1]), edge.reversed());
            }
            polygonizer.add(Polygons.FACTORY.createLineString(line));
        }
        List<Region> faces = new ArrayList<>();
        for (Object polygon : polygonizer.getPolygons()) {
            faces.add(face((Polygon) polygon, chords));
        }
        faces.sort(Comparator.comparingDouble((Region r) -> grid(r.bounds().top()))
                .thenComparingDouble(r -> grid(r.bounds().left()))
                .thenComparingDouble(r -> grid(r.centroid().y()))
                .thenComparingDouble(r -> grid(r.centroid().x())));
        return new Arrangement(edges, faces, loose(polygonizer, chords));
    }

    /** The segments cut where they meet, none twice, without looking for faces. Those shorter than {@link Point#TOLERANCE} go. */
    public static List<Segment> pieces(List<? extends Segment> segments) {
        return cut(segments.stream().filter(s -> s.length() > Point.TOLERANCE).map(s -> (Segment) s).toList());
    }

    private static final Comparator<Point> TOP_LEFT = Comparator.comparingDouble((Point p) -> grid(p.y())).thenComparingDouble(p -> grid(p.x()));

    private static double grid(double inches) {
        return Math.rint(inches * 1e4);
    }

    private static List<Segment> loose(Polygonizer polygonizer, Map<List<Coordinate>, Segment> chords) {
        List<Segment> loose = new ArrayList<>();
        for (Collection<?> lines : List.of(polygonizer.getDangles(), polygonizer.getCutEdges())) {
            for (Object line : lines) {
                Coordinate[] c = ((LineString) line).getCoordinates();
                loose.add(chords.get(List.of(c[0], c[1])));
            }
        }
        loose.sort(Comparator.comparing(Segment::from, TOP_LEFT).thenComparing(Segment::middle, TOP_LEFT));
        return loose;
    }

    /** Cuts every segment at its meetings with the others, and leaves out what is drawn twice. */
    private static List<Segment> cut(List<Segment> segments) {
        STRtree near = new STRtree();
        for (int i = 0; i < segments.size(); i++) {
            near.insert(envelope(segments.get(i).bounds()), i);
        }
        near.build();
        Meetings meetings = new Meetings();
        List<Segment> pieces = new ArrayList<>();
        Map<List<Point>, Segment> seen = new HashMap<>();
        for (int i = 0; i < segments.size(); i++) {
            Segment s = segments.get(i);
            TreeSet<Double> shares = new TreeSet<>(List.of(0.0, 1.0));
            for (Object j : near.query(envelope(s.bounds()))) {
                if ((int) j != i) {
                    for (Crossing c : Crossing.of(s, segments.get((int) j))) {
                        shares.add(c.first());
                    }
                }
            }
            Point last = meetings.at(s.from());
            double lastShare = 0;
            for (double share : shares) {
                Point next = meetings.at(s.at(share));
                if (share == 0 || next.equals(last) && s.between(lastShare, share).length() < 4 * Point.TOLERANCE) {
                    continue;
                }
                Segment piece = s.between(lastShare, share).withEnds(last, next);
                Point middle = meetings.at(piece.middle());
                if (seen.putIfAbsent(key(last, next, middle), piece) == null) {
                    pieces.add(piece);
                }
                last = next;
                lastShare = share;
            }
        }
        return pieces;
    }

    private static List<Point> key(Point a, Point b, Point middle) {
        boolean inOrder = a.x() < b.x() || a.x() == b.x() && a.y() <= b.y();
        return inOrder ? List.of(a, b, middle) : List.of(b, a, middle);
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.left() - Point.TOLERANCE, box.right() + Point.TOLERANCE, box.top() - Point.TOLERANCE, box.bottom() + Point.TOLERANCE);
    }

    private static Region face(Polygon polygon, Map<List<Coordinate>, Segment> chords) {
        List<Path> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            holes.add(ring(polygon.getInteriorRingN(i).getCoordinates(), chords));
        }
        return new Region(ring(polygon.getExteriorRing().getCoordinates(), chords), holes);
    }

    private static Path ring(Coordinate[] corners, Map<List<Coordinate>, Segment> chords) {
        List<Segment> run = new ArrayList<>();
        for (int i = 1; i < corners.length; i++) {
            Segment edge = chords.get(List.of(corners[i - 1], corners[i]));
            if (run.isEmpty() || !run.get(run.size() - 1).equals(edge)) {
                run.add(edge);
            }
        }
        // The ring may begin in the middle of a curve: its first and last chords are then of one edge.
        if (run.size() > 1 && run.get(0).equals(run.get(run.size() - 1))) {
            run.remove(run.size() - 1);
        }
        return new Path(fromTopLeft(new Path(run).joined().segments()));
    }

    /** The ring found begins anywhere; that it begin at its topmost corner, of those the leftmost, makes it the same in every run. */
    private static List<Segment> fromTopLeft(List<Segment> ring) {
        int first = 0;
        for (int i = 1; i < ring.size(); i++) {
            if (TOP_LEFT.compare(ring.get(i).from(), ring.get(first).from()) < 0) {
                first = i;
            }
        }
        List<Segment> turned = new ArrayList<>(ring.subList(first, ring.size()));
        turned.addAll(ring.subList(0, first));
        return turned;
    }
}
