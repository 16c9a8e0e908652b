package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Eight-Pointed Star: eight true 45 degree diamonds round the middle, squares in the corners and
 * triangles on the sides, all set in.
 *
 * <p>Drafting: with S the side of the block, the diamond and the corner square both have a side of
 * S / (2 + root 2), which is 0.29289 S (common practice; the figures of drafting textbooks agree).
 */
public final class EightPointedStar {

    /** The side of a diamond, which is also that of a corner square, for a block of the given side. */
    public static Length diamondSide(Length side) {
        return side.times(1 / (2 + Math.sqrt(2)));
    }

    /** An eight-pointed star of the given finished side. */
    public static Block block(Length side) {
        double d = 1 / (2 + Math.sqrt(2));
        var middle = new Point(0.5, 0.5);
        // Two diamonds, a corner square and a side triangle make a quarter of the block.
        Point a = Point.polar(d, Angle.degrees(-90));
        Point b = Point.polar(d, Angle.degrees(-45));
        Point c = Point.polar(d, Angle.degrees(0));
        Point ab = middle.plus(a).plus(b);
        Point bc = middle.plus(b).plus(c);
        Point corner = middle.plus(b);
        return Block.onGrid("Eight-Pointed Star", 1, side)
                .patch(DARK, 0.5, 0.5, middle.plus(a).x(), middle.plus(a).y(), ab.x(), ab.y(), corner.x(), corner.y())
                .patch(MEDIUM, 0.5, 0.5, corner.x(), corner.y(), bc.x(), bc.y(), middle.plus(c).x(), middle.plus(c).y())
                .patch(BACKGROUND, corner.x(), corner.y(), ab.x(), ab.y(), 1, 0, bc.x(), bc.y())
                .patch(BACKGROUND, middle.plus(a).x(), middle.plus(a).y(), 1 - ab.x(), 0, ab.x(), 0)
                .turnedFourTimes()
                .block();
    }
}
