package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Rising Star: a sawtooth star within a sawtooth star.
 *
 * <p>Drafting: eight squares of graph paper each way (common practice).
 */
public final class RisingStar {

    /** A rising star of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Rising Star", 8, side)
                .square(BACKGROUND, 0, 0, 2)
                .patch(DARK, 2, 0, 4, 2, 2, 2)
                .patch(BACKGROUND, 2, 0, 6, 0, 4, 2)
                .patch(DARK, 6, 0, 6, 2, 4, 2)
                .square(LIGHT, 2, 2, 1)
                .patch(ACCENT, 3, 2, 4, 3, 3, 3)
                .patch(LIGHT, 3, 2, 5, 2, 4, 3)
                .patch(ACCENT, 5, 2, 5, 3, 4, 3)
                .turnedFourTimes()
                .square(MEDIUM, 3, 3, 2)
                .block();
    }
}
