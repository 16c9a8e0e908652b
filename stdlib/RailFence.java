package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Rail Fence: three strips of equal width.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class RailFence {

    /** A rail fence of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Rail Fence", 3, side)
                .rectangle(DARK, 0, 0, 3, 1)
                .rectangle(MEDIUM, 0, 1, 3, 1)
                .rectangle(LIGHT, 0, 2, 3, 1)
                .block();
    }
}
