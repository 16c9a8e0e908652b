package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Cross in a Square: a cross of five squares with bars of ground in the corners.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class CrossedSquares {

    /** A cross of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Cross in a Square", 3, side)
                .square(BACKGROUND, 0, 0, 1)
                .square(ACCENT, 1, 0, 1)
                .turnedFourTimes()
                .square(ACCENT, 1, 1, 1)
                .block();
    }
}
