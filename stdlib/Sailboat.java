package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Sailboat: two sails of half-square triangle units over a hull with slanting ends.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class Sailboat {

    /** A sailboat of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Sailboat", 4, side)
                .rectangle(BACKGROUND, 0, 0, 1, 2).rectangle(BACKGROUND, 3, 0, 1, 2)
                .halvesRising(1, 0, 1, BACKGROUND, LIGHT).halvesFalling(2, 0, 1, BACKGROUND, ACCENT)
                .halvesRising(1, 1, 1, BACKGROUND, LIGHT).halvesFalling(2, 1, 1, BACKGROUND, ACCENT)
                .patch(BACKGROUND, 0, 2, 1, 3, 0, 3).patch(DARK, 0, 2, 4, 2, 3, 3, 1, 3).patch(BACKGROUND, 4, 2, 4, 3, 3, 3)
                .rectangle(MEDIUM, 0, 3, 4, 1)
                .block();
    }
}
