package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Pinwheel: four half-square triangle units that chase each other round the middle.
 *
 * <p>Drafting: two squares of graph paper each way (common practice).
 */
public final class Pinwheel {

    /** A pinwheel of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Pinwheel", 2, side)
                .halvesFalling(0, 0, 1, LIGHT, DARK)
                .turnedFourTimes()
                .block();
    }
}
