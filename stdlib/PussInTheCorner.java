package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Puss in the Corner: a large square, bars on its sides and small squares in the corners.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class PussInTheCorner {

    /** A puss in the corner of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Puss in the Corner", 4, side)
                .square(DARK, 0, 0, 1)
                .rectangle(LIGHT, 1, 0, 2, 1)
                .turnedFourTimes()
                .square(MEDIUM, 1, 1, 2)
                .block();
    }
}
