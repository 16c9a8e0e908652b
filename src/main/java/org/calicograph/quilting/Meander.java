package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * A wandering line that fills a region evenly and never crosses itself (stippling, when small).
 *
 * <p>The region is cut into uneven squares; a random spanning tree opens doors between them, and the
 * line is the edge of what lies more than a set distance from every wall left standing. It closes on
 * itself, so it can begin anywhere. Where the region is narrower than the line needs it falls into
 * several loops, or none. The largest gap is measured, and the squares made smaller until it holds.
 */
public final class Meander {

    private static final double WALL = 0.225;
    private static final double ROUNDING = 0.165;
    private static final double UNEVEN = 0.24;
    private static final double CHORD = 2e-3;

    private final Region region;
    private final Polygon area;
    private final double side;
    private final Random random;

    private Meander(Region region, double side, long seed) {
        this.region = region;
        this.area = Polygons.of(region, CHORD);
        this.side = side;
        this.random = new Random(seed);
    }

    /** The lines, and the gap that they leave. */
    public record Fill(List<Path> lines, Gap gap) {
        public Fill {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param widest no circle wider than this fits between the lines and the region's edge
     * @param seed   another one gives another wandering
     */
    public static Fill fill(Region region, Length widest, long seed) {
        if (!widest.isPositive()) {
            throw new IllegalArgumentException("a meander with gaps of at most " + widest + " can't be sewn; use a width above 0");
        }
        Box b = region.bounds();
        double limit = widest.inInches();
        if (b.width() * b.height() / (limit * limit) > 4e6) {
            throw new IllegalArgumentException("a meander with gaps of at most " + widest + " over " + Length.inches(b.width()) + " x "
                    + Length.inches(b.height()) + " is too fine to draw; allow wider gaps");
        }
        Length accuracy = widest.times(0.02);
        double aim = limit - 2 * accuracy.inInches();
        double side = limit * 1.2;
        while (true) {
            List<Path> lines = new Meander(region, side, seed).lines();
            Gap gap = Gap.largest(region, lines, accuracy);
            if (gap.diameter() <= aim) {
                return new Fill(lines, gap);
            }
            side *= Math.max(0.6, Math.min(0.96, aim / gap.diameter()));
        }
    }

    private List<Path> lines() {
        List<LineString> candidates = walls();
        List<LineString> standing = standing(candidates);
        MultiLineString walls = Polygons.FACTORY.createMultiLineString(standing.toArray(LineString[]::new));
        Geometry solid = Polygons.FACTORY.createGeometryCollection(new Geometry[] {walls, area.getBoundary()})
                .buffer(side * WALL, 6);
        Geometry open = area.difference(solid);
        BufferParameters round = new BufferParameters(6);
        Geometry smooth = BufferOp.bufferOp(BufferOp.bufferOp(open, -side * ROUNDING, round), side * ROUNDING, round);
        List<Path> lines = new ArrayList<>();
        for (Region r : Polygons.regions(smooth)) {
            r.paths().stream().filter(p -> p.length() > 1.5 * side).forEach(p -> lines.add(Rounded.of(p, side * 0.01)));
        }
        return lines;
    }

    /** Sides of uneven squares, and a cut through every hole that they miss, within the region. */
    private List<LineString> walls() {
        Box b = region.bounds();
        int columns = (int) Math.max(1, Math.ceil(b.width() / side));
        int rows = (int) Math.max(1, Math.ceil(b.height() / side));
        double across = b.width() / columns;
        double down = b.height() / rows;
        Coordinate[][] corner = new Coordinate[columns + 1][rows + 1];
        double left = b.left();
        double top = b.top();
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                corner[i][j] = new Coordinate(left + (i + uneven(i, columns)) * across,
                        top + (j + uneven(j, rows)) * down);
            }
        }
        List<LineString> lines = new ArrayList<>();
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                if (i < columns) {
                    lines.add(line(corner[i][j], corner[i + 1][j]));
                }
                if (j < rows) {
                    lines.add(line(corner[i][j], corner[i][j + 1]));
                }
            }
        }
        STRtree index = new STRtree();
        lines.forEach(l -> index.insert(l.getEnvelopeInternal(), l));
        for (int h = 0; h < area.getNumInteriorRing(); h++) {
            LineString ring = area.getInteriorRingN(h);
            List<?> near = index.query(ring.getEnvelopeInternal());
            if (near.stream().noneMatch(l -> ((LineString) l).intersects(ring))) {
                Coordinate c = ring.getCentroid().getCoordinate();
                lines.add(line(new Coordinate(c.x - 1.6 * side, c.y), new Coordinate(c.x + 1.6 * side, c.y)));
            }
        }
        return lines;
    }

    /** The outermost lines stay on the bounds, so that a rectangle has no narrow rooms along its edge. */
    private double uneven(int i, int count) {
        double share = (random.nextDouble() - 0.5) * UNEVEN;
        return i == 0 || i == count ? 0 : share;
    }

    private static LineString line(Coordinate a, Coordinate b) {
        return Polygons.FACTORY.createLineString(new Coordinate[] {a, b});
    }

    private record Wall(LineString line, int one, int other, double order) { }

    /** The walls that stay once a spanning tree has opened doors between all rooms. */
    private List<LineString> standing(List<LineString> candidates) {
        List<Geometry> inside = new ArrayList<>();
        Geometry boundary = area.getBoundary();
        org.locationtech.jts.geom.prep.PreparedGeometry prepared = org.locationtech.jts.geom.prep.PreparedGeometryFactory.prepare(area);
        for (LineString c : candidates) {
            if (prepared.contains(c)) {
                inside.add(c);
            } else if (prepared.intersects(c)) {
                inside.add(c.intersection(area));
            }
        }
        inside.add(boundary);
        Geometry noded = UnaryUnionOp.union(inside);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Polygon> rooms = new ArrayList<>();
        STRtree index = new STRtree();
        for (Object o : polygonizer.getPolygons()) {
            Polygon room = (Polygon) o;
            if (prepared.covers(room.getInteriorPoint())) {
                index.insert(room.getEnvelopeInternal(), rooms.size());
                rooms.add(room);
            }
        }
        boolean[] tiny = new boolean[rooms.size()];
        for (int i = 0; i < tiny.length; i++) {
            tiny[i] = rooms.get(i).getArea() < side * side * 0.3 || rooms.get(i).getArea() < side * side * 0.7 && rooms.get(i).buffer(-side * (WALL + ROUNDING)).isEmpty();
        }
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i < noded.getNumGeometries(); i++) {
            Coordinate[] c = noded.getGeometryN(i).getCoordinates();
            if (c.length != 2) {
                continue; // the region's own edge, or split where walls meet it: told apart below
            }
            wall(line(c[0], c[1]), index, rooms, tiny).ifPresent(walls::add);
        }
        walls.sort(Comparator.comparingDouble(Wall::order));
        Groups joined = new Groups(Math.max(1, rooms.size()));
        List<LineString> standing = new ArrayList<>();
        for (Wall w : walls) {
            if (!joined.join(w.one(), w.other())) {
                standing.add(w.line());
            }
        }
        return standing;
    }

    private java.util.Optional<Wall> wall(LineString line, STRtree index, List<Polygon> rooms, boolean[] tiny) {
        Coordinate a = line.getCoordinateN(0);
        Coordinate b = line.getCoordinateN(1);
        double length = line.getLength();
        double step = Math.min(1e-5 * side, length * 1e-3) / length;
        Coordinate m = new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
        int one = room(new Coordinate(m.x - (b.y - a.y) * step, m.y + (b.x - a.x) * step), index, rooms);
        int other = room(new Coordinate(m.x + (b.y - a.y) * step, m.y - (b.x - a.x) * step), index, rooms);
        if (one < 0 || other < 0 || one == other) {
            return java.util.Optional.empty();
        }
        double door = (2 * (WALL + ROUNDING) + 0.03) * side;
        double order;
        if (tiny[one] || tiny[other]) {
            order = -length; // a corner too small for a loop of its own joins its neighbour along the longest wall
        } else {
            order = (length < door ? 10 : 1) + random.nextDouble();
        }
        return java.util.Optional.of(new Wall(line, one, other, order));
    }

    private static int room(Coordinate c, STRtree index, List<Polygon> rooms) {
        for (Object i : index.query(new Envelope(c))) {
            if (org.locationtech.jts.algorithm.PointLocation.isInRing(c, rooms.get((int) i).getExteriorRing().getCoordinates())
                    && rooms.get((int) i).intersects(Polygons.FACTORY.createPoint(c))) {
                return (int) i;
            }
        }
        return -1;
    }
}
