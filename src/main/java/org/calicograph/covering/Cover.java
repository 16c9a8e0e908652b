package org.calicograph.covering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The covering law: parts cover an outline without gap or overlap.
 *
 * <p>A gap or overlap counts if it is wider than {@link #TOLERANCE} somewhere, that is, if a circle of
 * that diameter fits into it. Convex parts with straight sides are compared by their separating
 * directions, all others as polygons; the whole costs one step for each part where the parts are of a kind.
 */
public final class Cover {

    /** The widest gap or overlap that passes, in inches. */
    public static final double TOLERANCE = 0.001;

    /** Differences of area below this, in square inches, can't hold a gap that counts. */
    private static final double SLACK = 5e-7;

    private Cover() { }

    /**
     * A part as the law sees it.
     *
     * @param name what a message calls it
     */
    public record Part(String name, Region shape) { }

    /** @throws DesignException naming the parts, the place and the repair, if the law is broken */
    public static void check(String whole, Region outline, List<Part> parts) {
        List<Box> bounds = parts.stream().map(p -> p.shape().bounds()).toList();
        Bins near = new Bins(bounds);
        Shapes shapes = new Shapes(parts);
        double area = 0;
        for (int i = 0; i < parts.size(); i++) {
            int one = i;
            area += parts.get(i).shape().area().squareInches();
            near.laterTouching(i, other -> checkPair(whole, parts, shapes, one, other));
        }
        checkInside(whole, outline, parts, bounds, shapes);
        if (Math.abs(area - outline.area().squareInches()) > SLACK) {
            checkGaps(whole, outline, parts, shapes);
        }
    }

    private static void checkPair(String whole, List<Part> parts, Shapes shapes, int i, int j) {
        if (shapes.isConvex(i) && shapes.isConvex(j) && shapes.depth(i, j) <= TOLERANCE) {
            return;
        }
        widest(Polygons.intersection(shapes.polygon(i), shapes.polygon(j))).ifPresent(overlap -> {
            throw new DesignException(parts.get(i).name() + " and " + parts.get(j).name() + " of " + whole + " overlap "
                    + near(overlap) + "; give them one shared edge");
        });
    }

    private static void checkInside(String whole, Region outline, List<Part> parts, List<Box> bounds, Shapes shapes) {
        Box box = outline.bounds();
        boolean rectangle = outline.holes().isEmpty() && outline.isStraight()
                && Math.abs(outline.area().squareInches() - box.width() * box.height()) < 1e-9;
        Polygon all = Polygons.of(outline, Region.ACCURACY);
        for (int i = 0; i < parts.size(); i++) {
            Box b = bounds.get(i);
            if (rectangle && b.left() >= box.left() - TOLERANCE && b.right() <= box.right() + TOLERANCE
                    && b.top() >= box.top() - TOLERANCE && b.bottom() <= box.bottom() + TOLERANCE) {
                continue;
            }
            String name = parts.get(i).name();
            widest(Polygons.difference(shapes.polygon(i), all)).ifPresent(out -> {
                throw new DesignException(name + " sticks out of " + whole + " " + near(out) + "; keep it within the outline");
            });
        }
    }

    private static void checkGaps(String whole, Region outline, List<Part> parts, Shapes shapes) {
        List<Geometry> polygons = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            polygons.add(shapes.polygon(i));
        }
        Geometry covered = Polygons.union(polygons);
        Geometry gap = Polygons.difference(Polygons.of(outline, Region.ACCURACY), covered);
        widest(gap).ifPresent(hole -> {
            throw new DesignException(whole + " has a gap " + near(hole) + "; fill it with a patch or move an edge");
        });
    }

    /** The widest piece of a geometry that a circle of the tolerance fits into. */
    private static java.util.Optional<Region> widest(Geometry geometry) {
        if (geometry.getArea() <= SLACK) {
            return java.util.Optional.empty();
        }
        return Polygons.regions(geometry.buffer(-TOLERANCE / 2)).stream()
                .max(Comparator.comparingDouble(r -> r.area().squareInches()));
    }

    private static String near(Region place) {
        Box box = place.bounds();
        Point p = place.inside();
        return "of " + size(box.width()) + " x " + size(box.height()) + " in near " + size(p.x()) + " in from the left, "
                + size(p.y()) + " in from the top";
    }

    private static String size(double inches) {
        String text = Length.inches(Math.rint(inches * 1000) / 1000).in(Length.System.INCH);
        return text.substring(0, text.length() - 3);
    }
}
