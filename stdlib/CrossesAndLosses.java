package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Crosses and Losses: two large half-square triangle units and two quarters of small ones.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class CrossesAndLosses {

    /** Crosses and losses of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Crosses and Losses", 4, side)
                .halvesRising(0, 0, 2, BACKGROUND, DARK)
                .square(BACKGROUND, 2, 0, 1).halvesRising(3, 0, 1, BACKGROUND, DARK).halvesRising(2, 1, 1, BACKGROUND, DARK).square(LIGHT, 3, 1, 1)
                .square(LIGHT, 0, 2, 1).halvesRising(1, 2, 1, BACKGROUND, DARK).halvesRising(0, 3, 1, BACKGROUND, DARK).square(BACKGROUND, 1, 3, 1)
                .halvesRising(2, 2, 2, BACKGROUND, DARK)
                .block();
    }
}
