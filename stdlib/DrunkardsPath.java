package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Drunkard's Path: a quarter circle in the corner of a square.
 *
 * <p>Drafting: the radius is from 1/2 to 2 in less than the side; three quarters of the side where
 * nothing else is asked, as with a 3 in quarter circle in a 4 in square (common practice).
 */
public final class DrunkardsPath {

    /** One unit of the given finished side, its radius three quarters of the side. */
    public static Block unit(Length side) {
        return unit(side, side.times(0.75));
    }

    /** One unit with the quarter circle about its bottom left corner. */
    public static Block unit(Length side, Length radius) {
        double r = radius.ratioTo(side);
        var corner = new Point(0, 1);
        return Block.onGrid("Drunkard's Path unit", 1, side)
                .patch(DARK, Path.from(0, 1 - r).arcAbout(corner, Angle.QUARTER).lineTo(corner).close())
                .patch(LIGHT, Path.from(0, 1 - r).arcAbout(corner, Angle.QUARTER)
                        .lineTo(1, 1).lineTo(1, 0).lineTo(0, 0).close())
                .block();
    }

    /** Four units round the middle, their quarter circles in the outer corners. */
    public static Block block(Length side) {
        double r = 0.75;
        var corner = new Point(0, 0);
        return Block.onGrid("Drunkard's Path", 2, side)
                .patch(DARK, Path.from(r, 0).arcAbout(corner, Angle.QUARTER).lineTo(corner).close())
                .patch(LIGHT, Path.from(r, 0).arcAbout(corner, Angle.QUARTER).lineTo(0, 1).lineTo(1, 1).lineTo(1, 0).close())
                .turnedFourTimes()
                .block();
    }
}
