package org.calicograph.drafting;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * A polygon of equal sides and angles, and its measures; formulas as in any textbook of geometry.
 *
 * @param sides  3 or more
 * @param radius from the middle to a corner
 */
public record RegularPolygon(int sides, Length radius) {

    public RegularPolygon {
        if (sides < 3 || !radius.isPositive()) {
            throw new IllegalArgumentException("a regular polygon of " + sides + " sides with a radius of " + radius
                    + " can't be drafted; use 3 sides or more and a radius above 0");
        }
    }

    /** The polygon whose sides have a length. */
    public static RegularPolygon ofSide(int sides, Length side) {
        return new RegularPolygon(sides, side.times(1 / (2 * Math.sin(Math.PI / sides))));
    }

    /** The polygon that is so wide from flat to flat, or from a flat side to the corner across from it. */
    public static RegularPolygon ofHeight(int sides, Length height) {
        double flat = Math.cos(Math.PI / sides);
        return new RegularPolygon(sides, height.times(1 / (sides % 2 == 0 ? 2 * flat : 1 + flat)));
    }

    /** The length of a side. */
    public Length side() {
        return radius.times(2 * Math.sin(Math.PI / sides));
    }

    /** From the middle to the middle of a side. */
    public Length apothem() {
        return radius.times(Math.cos(Math.PI / sides));
    }

    /** Its area. */
    public Area area() {
        double r = radius.inInches();
        return new Area(sides * r * r * Math.sin(2 * Math.PI / sides) / 2);
    }

    /** The angle at a corner. */
    public Angle interior() {
        return Angle.degrees(180 - 360.0 / sides);
    }

    /** The angle in the middle between two corners. */
    public Angle central() {
        return Angle.turn(1, sides);
    }

    /** The outline about a point, a side level at the bottom. */
    public Path about(Point middle) {
        return Path.regular(sides, middle, radius.inInches(), Angle.QUARTER.plus(central().dividedBy(2)));
    }

    @Override
    public String toString() {
        return sides + " sides of " + side() + ", " + interior() + " at each corner, " + apothem() + " from the middle to a side";
    }
}
