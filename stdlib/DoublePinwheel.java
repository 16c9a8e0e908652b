package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Double Pinwheel: a pinwheel of large triangles with one half of each split again.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class DoublePinwheel {

    /** A double pinwheel of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Double Pinwheel", 4, side)
                .patch(LIGHT, 0, 0, 2, 2, 0, 2)
                .patch(DARK, 0, 0, 2, 0, 1, 1)
                .patch(MEDIUM, 2, 0, 2, 2, 1, 1)
                .turnedFourTimes()
                .block();
    }
}
