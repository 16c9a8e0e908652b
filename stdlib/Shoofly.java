package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Shoofly: a nine patch with half-square triangle units in the corners.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class Shoofly {

    /** A shoofly of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Shoofly", 3, side)
                .halvesRising(0, 0, 1, BACKGROUND, DARK)
                .square(BACKGROUND, 1, 0, 1)
                .turnedFourTimes()
                .square(ACCENT, 1, 1, 1)
                .block();
    }
}
