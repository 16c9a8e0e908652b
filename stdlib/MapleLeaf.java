package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Maple Leaf: a leaf of squares and half-square triangle units with a slanting stem.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class MapleLeaf {

    /** A maple leaf of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Maple Leaf", 3, side)
                .halvesFalling(0, 0, 1, BACKGROUND, DARK)
                .halvesFalling(1, 0, 1, BACKGROUND, DARK)
                .square(BACKGROUND, 2, 0, 1)
                .square(DARK, 0, 1, 1)
                .square(DARK, 1, 1, 1)
                .halvesFalling(2, 1, 1, BACKGROUND, DARK)
                .square(DARK, 1, 2, 1)
                .halvesFalling(2, 2, 1, BACKGROUND, DARK)
                .patch(BACKGROUND, 0, 2, 0.8, 2, 0, 2.8)
                .patch(ACCENT, 0.8, 2, 1, 2, 1, 2.2, 0.2, 3, 0, 3, 0, 2.8)
                .patch(BACKGROUND, 1, 2.2, 1, 3, 0.2, 3)
                .block();
    }
}
