package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Cake Stand: a basket that stands on its corner, with a row of small triangles along both sides of its rim.
 *
 * <p>Drafting: five squares of graph paper each way (common practice).
 */
public final class CakeStand {

    /** A cake stand of the given finished side; turned by an eighth it stands upright. */
    public static Block block(Length side) {
        return Block.onGrid("Cake Stand", 5, side)
                .halvesRising(0, 0, 1, BACKGROUND, DARK).halvesRising(1, 0, 1, BACKGROUND, DARK).halvesRising(2, 0, 1, BACKGROUND, DARK)
                .halvesRising(3, 0, 1, BACKGROUND, DARK).square(BACKGROUND, 4, 0, 1)
                .halvesRising(0, 1, 1, BACKGROUND, DARK).halvesRising(0, 2, 1, BACKGROUND, DARK).halvesRising(0, 3, 1, BACKGROUND, DARK)
                .square(BACKGROUND, 0, 4, 1)
                .halvesRising(1, 1, 3, LIGHT, MEDIUM)
                .rectangle(BACKGROUND, 4, 1, 1, 2).patch(MEDIUM, 4, 3, 5, 3, 4, 4).rectangle(BACKGROUND, 1, 4, 2, 1).patch(MEDIUM, 3, 4, 4, 4, 3, 5)
                .patch(BACKGROUND, 5, 3, 5, 5, 3, 5)
                .block();
    }
}
