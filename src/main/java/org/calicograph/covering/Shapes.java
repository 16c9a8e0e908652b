package org.calicograph.covering;

import java.util.List;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.locationtech.jts.geom.Polygon;

/** The parts of a cover made ready for comparing; each polygon is made at most once. */
final class Shapes {

    private final List<Cover.Part> parts;
    private final Polygon[] polygons;
    private final Point[][] convex;

    Shapes(List<Cover.Part> parts) {
        this.parts = parts;
        polygons = new Polygon[parts.size()];
        convex = new Point[parts.size()][];
        for (int i = 0; i < convex.length; i++) {
            convex[i] = convexCorners(parts.get(i).shape());
        }
    }

    Polygon polygon(int i) {
        if (polygons[i] == null) {
            polygons[i] = Polygons.of(parts.get(i).shape(), Region.ACCURACY);
        }
        return polygons[i];
    }

    boolean isConvex(int i) {
        return convex[i].length > 0;
    }

    /** How deep two convex parts lie in each other: the least overlap over their separating directions. */
    double depth(int i, int j) {
        return Math.min(depth(convex[i], convex[j]), depth(convex[j], convex[i]));
    }

    private static double depth(Point[] sides, Point[] other) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < sides.length; k++) {
            Point a = sides[k];
            Point side = sides[(k + 1) % sides.length].minus(a);
            double length = side.norm();
            if (length == 0) {
                continue;
            }
            // The corners run clockwise on the page, so the inside lies clockwise of each side.
            double in = 0;
            for (Point p : other) {
                in = Math.max(in, side.cross(p.minus(a)) / length);
            }
            least = Math.min(least, in);
        }
        return least;
    }

    private static Point[] convexCorners(Region shape) {
        if (!shape.holes().isEmpty() || !shape.isStraight()) {
            return new Point[0];
        }
        Point[] corners = shape.outer().corners().toArray(Point[]::new);
        for (int k = 0; k < corners.length; k++) {
            Point a = corners[k];
            Point b = corners[(k + 1) % corners.length];
            Point c = corners[(k + 2) % corners.length];
            if (b.minus(a).cross(c.minus(b)) < -1e-9) {
                return new Point[0];
            }
        }
        return corners;
    }
}
