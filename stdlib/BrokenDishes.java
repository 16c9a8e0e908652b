package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Broken Dishes: four half-square triangle units whose seams cross in the middle.
 *
 * <p>Drafting: two squares of graph paper each way (common practice).
 */
public final class BrokenDishes {

    /** Broken dishes of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Broken Dishes", 2, side)
                .halvesFalling(0, 0, 1, DARK, LIGHT)
                .halvesRising(1, 0, 1, DARK, LIGHT)
                .turned(2)
                .block();
    }
}
