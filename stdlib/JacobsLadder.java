package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Jacob's Ladder: four patches on the slant between half-square triangle units.
 *
 * <p>Drafting: six squares of graph paper each way (common practice).
 */
public final class JacobsLadder {

    /** A Jacob's ladder of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Jacob's Ladder", 6, side)
                .square(DARK, 0, 0, 1)
                .square(LIGHT, 1, 0, 1)
                .square(LIGHT, 0, 1, 1)
                .square(DARK, 1, 1, 1)
                .square(DARK, 4, 0, 1)
                .square(LIGHT, 5, 0, 1)
                .square(LIGHT, 4, 1, 1)
                .square(DARK, 5, 1, 1)
                .square(DARK, 2, 2, 1)
                .square(LIGHT, 3, 2, 1)
                .square(LIGHT, 2, 3, 1)
                .square(DARK, 3, 3, 1)
                .square(DARK, 0, 4, 1)
                .square(LIGHT, 1, 4, 1)
                .square(LIGHT, 0, 5, 1)
                .square(DARK, 1, 5, 1)
                .square(DARK, 4, 4, 1)
                .square(LIGHT, 5, 4, 1)
                .square(LIGHT, 4, 5, 1)
                .square(DARK, 5, 5, 1)
                .halvesFalling(2, 0, 2, MEDIUM, BACKGROUND)
                .halvesFalling(0, 2, 2, BACKGROUND, MEDIUM)
                .halvesFalling(4, 2, 2, MEDIUM, BACKGROUND)
                .halvesFalling(2, 4, 2, BACKGROUND, MEDIUM)
                .block();
    }
}
