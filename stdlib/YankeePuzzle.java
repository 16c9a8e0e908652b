package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Yankee Puzzle: geese that fly round a square on its point.
 *
 * <p>Drafting: four squares of graph paper each way (common practice; the arrangement from memory).
 */
public final class YankeePuzzle {

    /** A Yankee puzzle of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Yankee Puzzle", 4, side)
                .halvesFalling(0, 0, 1, LIGHT, DARK)
                .patch(DARK, 1, 0, 2, 1, 1, 1).patch(LIGHT, 1, 0, 3, 0, 2, 1).patch(DARK, 3, 0, 3, 1, 2, 1)
                .halvesRising(1, 1, 1, MEDIUM, ACCENT)
                .turnedFourTimes()
                .block();
    }
}
