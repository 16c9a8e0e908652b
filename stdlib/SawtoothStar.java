package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Sawtooth Star: a square with a goose on each side and a square in each corner.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class SawtoothStar {

    /** A sawtooth star of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Sawtooth Star", 4, side)
                .square(BACKGROUND, 0, 0, 1)
                .patch(DARK, 1, 0, 2, 1, 1, 1)
                .patch(BACKGROUND, 1, 0, 3, 0, 2, 1)
                .patch(DARK, 3, 0, 3, 1, 2, 1)
                .turnedFourTimes()
                .square(ACCENT, 1, 1, 2)
                .block();
    }
}
