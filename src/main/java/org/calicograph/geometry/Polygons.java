package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** The door to the JTS library: regions become its polygons, and its polygons regions. */
public final class Polygons {

    /** One factory for the house; its geometries are plain double precision. */
    public static final GeometryFactory FACTORY = new GeometryFactory();

    /** Overlays round to a grid of 1e-9 in: in floating point, edges that nearly coincide can turn a result inside out. */
    private static final PrecisionModel GRID = new PrecisionModel(1e9);

    private Polygons() { }

    /** A polygon that strays from the region by at most the accuracy, in inches. */
    public static Polygon of(Region region, double accuracy) {
        LinearRing[] holes = region.holes().stream().map(h -> ring(h, accuracy)).toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(region.outer(), accuracy), holes);
    }

    /**
     * The region as the overlays take it: where its curves touch in a point, or as polygons cross near a cusp,
     * it is taken apart there.
     */
    static Geometry sound(Region region, double accuracy) {
        Polygon polygon = of(region, accuracy);
        return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
    }

    private static LinearRing ring(Path path, double accuracy) {
        return FACTORY.createLinearRing(coordinates(path.flattened(accuracy)));
    }

    /** A closed ring of the points. */
    public static Coordinate[] coordinates(List<Point> points) {
        return points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
    }

    /** The point as a geometry. */
    public static org.locationtech.jts.geom.Point point(Point p) {
        return FACTORY.createPoint(new Coordinate(p.x(), p.y()));
    }

    /** What lies in both. Edges that nearly coincide, as those of curves cut twice do, are snapped together. */
    public static Geometry intersection(Geometry one, Geometry other) {
        return overlay(one, other, OverlayNG.INTERSECTION);
    }

    /** What lies in either; robust like {@link #intersection}. */
    public static Geometry union(Geometry one, Geometry other) {
        return overlay(one, other, OverlayNG.UNION);
    }

    /** What lies in the first alone; robust like {@link #intersection}. */
    public static Geometry difference(Geometry one, Geometry other) {
        return overlay(one, other, OverlayNG.DIFFERENCE);
    }

    /** Polygons alone: edges and points that two polygons merely share are no part of the result. */
    private static Geometry overlay(Geometry one, Geometry other, int operation) {
        OverlayNG overlay = new OverlayNG(one, other, GRID, operation);
        overlay.setStrictMode(true);
        return overlay.getResult();
    }

    /** What lies in any of the polygons. */
    public static Geometry union(Collection<? extends Geometry> all) {
        return all.isEmpty() ? FACTORY.createPolygon() : UnaryUnionNG.union(new ArrayList<Geometry>(all), GRID);
    }

    /** The regions of every polygon in a geometry; its points and lines are left out. */
    public static List<Region> regions(Geometry geometry) {
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part instanceof Polygon polygon && !polygon.isEmpty() && polygon.getArea() > Region.LEAST) {
                Path outer = path(polygon.getExteriorRing());
                if (Math.abs(outer.signedArea()) < Region.LEAST) {
                    continue;
                }
                List<Path> holes = new ArrayList<>();
                for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                    Path hole = path(polygon.getInteriorRingN(h));
                    if (Math.abs(hole.signedArea()) >= Region.LEAST) {
                        holes.add(hole);
                    }
                }
                regions.add(new Region(outer, holes));
            } else if (part.getNumGeometries() > 1) {
                regions.addAll(regions(part));
            }
        }
        return List.copyOf(regions);
    }

    private static Path path(LinearRing ring) {
        List<Point> points = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates()) {
            points.add(new Point(c.x, c.y));
        }
        return Path.polygon(points);
    }
}
