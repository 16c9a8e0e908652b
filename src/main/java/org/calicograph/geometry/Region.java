package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * A piece of the plane: what a closed path encloses, less its holes.
 *
 * @param outer the closed path around, kept clockwise on the page
 * @param holes closed paths inside it, kept anticlockwise
 */
public record Region(Path outer, List<Path> holes) {

    /** How far a polygon may stray from a curve, in inches, where a polygon stands in for it. */
    public static final double ACCURACY = 1e-4;

    /** What encloses less than this, in square inches, encloses nothing. */
    static final double LEAST = 1e-12;

    /** @throws IllegalArgumentException if a path is open or encloses nothing */
    public Region {
        outer = closed(outer, "the outline").clockwise();
        List<Path> turned = new ArrayList<>();
        for (Path hole : holes) {
            turned.add(closed(hole, "a hole").clockwise().reversed());
        }
        holes = List.copyOf(turned);
    }

    private static Path closed(Path path, String what) {
        if (!path.isClosed()) {
            throw new IllegalArgumentException(what + " of a region begins at " + path.start() + " and ends at " + path.end()
                    + "; close it");
        }
        if (Math.abs(path.signedArea()) < LEAST) {
            throw new IllegalArgumentException(what + " of a region at " + path.start() + " encloses nothing; spread its points");
        }
        return path;
    }

    /** What a closed line bounds. */
    public static Region of(Path outer) {
        return new Region(outer, List.of());
    }

    /** What straight lines from corner to corner bound. */
    public static Region polygon(Point... corners) {
        return of(Path.polygon(corners));
    }

    /** A whole box. */
    public static Region rectangle(Box box) {
        return of(Path.rectangle(box));
    }

    /** An upright rectangle with its top left corner at the origin. */
    public static Region rectangle(Length width, Length height) {
        return rectangle(Box.of(width, height));
    }

    /** Its area, without its holes. */
    public Area area() {
        double a = outer.signedArea();
        for (Path hole : holes) {
            a += hole.signedArea();
        }
        return new Area(a);
    }

    /** The smallest upright box that holds it. */
    public Box bounds() {
        return outer.bounds();
    }

    /** The length around, holes included, in inches. */
    public double perimeter() {
        return outer.length() + holes.stream().mapToDouble(Path::length).sum();
    }

    /** The centre of gravity, within the accuracy of a polygon. */
    public Point centroid() {
        org.locationtech.jts.geom.Point c = Polygons.of(this, ACCURACY).getCentroid();
        return new Point(c.getX(), c.getY());
    }

    /** A point well inside, good for a label, also where the centre of gravity lies outside. */
    public Point inside() {
        Point c = centroid();
        if (contains(c)) {
            return c;
        }
        org.locationtech.jts.geom.Point p = Polygons.of(this, ACCURACY).getInteriorPoint();
        return new Point(p.getX(), p.getY());
    }

    /** True if the point is inside or on the edge, within {@link #ACCURACY}. */
    public boolean contains(Point p) {
        return bounds().contains(p) && Polygons.of(this, ACCURACY).covers(Polygons.point(p));
    }

    /** The region moved, turned, mirrored or made larger. */
    public Region transformed(Transform t) {
        return new Region(outer.transformed(t), holes.stream().map(h -> h.transformed(t)).toList());
    }

    /** True if every edge is a straight line. */
    public boolean isStraight() {
        return outer.isStraight() && holes.stream().allMatch(Path::isStraight);
    }

    /** The outer path and the holes. */
    public List<Path> paths() {
        List<Path> all = new ArrayList<>();
        all.add(outer);
        all.addAll(holes);
        return List.copyOf(all);
    }

    /** What lies in either, as polygons within {@link #ACCURACY}; several where they are apart. */
    public List<Region> union(Region other) {
        return Polygons.regions(Polygons.union(Polygons.sound(this, ACCURACY), Polygons.sound(other, ACCURACY)));
    }

    /** What lies in both, as polygons within {@link #ACCURACY}; none where they are apart. */
    public List<Region> intersection(Region other) {
        return Polygons.regions(Polygons.intersection(Polygons.sound(this, ACCURACY), Polygons.sound(other, ACCURACY)));
    }

    /** What lies in this one alone, as polygons within {@link #ACCURACY}. */
    public List<Region> minus(Region other) {
        return Polygons.regions(Polygons.difference(Polygons.sound(this, ACCURACY), Polygons.sound(other, ACCURACY)));
    }
}
