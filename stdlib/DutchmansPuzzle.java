package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Dutchman's Puzzle: four pairs of geese that chase each other round the middle.
 *
 * <p>Drafting: four squares of graph paper each way (common practice).
 */
public final class DutchmansPuzzle {

    /** A Dutchman's puzzle of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Dutchman's Puzzle", 4, side)
                .gooseUp(0, 0, 1, DARK, BACKGROUND)
                .gooseUp(0, 1, 1, MEDIUM, BACKGROUND)
                .turnedFourTimes()
                .block();
    }
}
