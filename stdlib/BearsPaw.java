package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Bear's Paw: four paws with four claws each, parted by a cross.
 *
 * <p>Drafting: seven squares of graph paper each way (common practice).
 */
public final class BearsPaw {

    /** A bear's paw of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Bear's Paw", 7, side)
                .square(BACKGROUND, 0, 0, 1)
                .halvesFalling(1, 0, 1, BACKGROUND, DARK)
                .halvesFalling(2, 0, 1, BACKGROUND, DARK)
                .halvesFalling(0, 1, 1, DARK, BACKGROUND)
                .halvesFalling(0, 2, 1, DARK, BACKGROUND)
                .square(MEDIUM, 1, 1, 2)
                .rectangle(BACKGROUND, 3, 0, 1, 3)
                .turnedFourTimes()
                .square(ACCENT, 3, 3, 1)
                .block();
    }
}
