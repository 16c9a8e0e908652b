package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Orange Peel: a peel from corner to corner between two arcs.
 *
 * <p>Drafting: set the compass on two opposite corners and open it to the side of the block (common practice).
 */
public final class OrangePeel {

    /** An orange peel of the given finished side, from top left to bottom right. */
    public static Block block(Length side) {
        Point topLeft = new Point(0, 0);
        Point topRight = new Point(1, 0);
        Point bottomRight = new Point(1, 1);
        Point bottomLeft = new Point(0, 1);
        return Block.onGrid("Orange Peel", 1, side)
                .patch(DARK, Path.from(topLeft).arcAbout(bottomLeft, Angle.QUARTER).arcTo(topLeft, Math.tan(Math.PI / 8)).close())
                .patch(LIGHT, Path.from(topLeft).lineTo(topRight).lineTo(bottomRight).arcAbout(bottomLeft, Angle.QUARTER.negated()).close())
                .patch(LIGHT, Path.from(bottomRight).lineTo(bottomLeft).lineTo(topLeft).arcAbout(topRight, Angle.QUARTER.negated()).close())
                .block();
    }
}
