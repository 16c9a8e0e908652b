package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Tucked Sails: four sails, each tucked under one neighbour and over the other.
 *
 * <p>Drafting: three squares of graph paper each way, halved and quartered along their diagonals (common practice).
 */
public final class TuckedSails {

    /** Tucked sails of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Tucked Sails", 3, side)
                .halvesRising(0, 0, 1, BACKGROUND, ACCENT)
                .patch(BACKGROUND, 1, 0, 2, 0, 1.5, 0.5).patch(ACCENT, 1, 0, 1.5, 0.5, 1, 1).patch(MEDIUM, 2, 0, 2, 1, 1, 1)
                .halvesFalling(2, 0, 1, BACKGROUND, MEDIUM)
                .patch(BACKGROUND, 3, 1, 3, 2, 2.5, 1.5).patch(MEDIUM, 2, 1, 3, 1, 2.5, 1.5).patch(DARK, 3, 2, 2, 2, 2, 1)
                .halvesRising(2, 2, 1, DARK, BACKGROUND)
                .patch(BACKGROUND, 2, 3, 1, 3, 1.5, 2.5).patch(DARK, 2, 2, 2, 3, 1.5, 2.5).patch(LIGHT, 1, 3, 1, 2, 2, 2)
                .halvesFalling(0, 2, 1, LIGHT, BACKGROUND)
                .patch(BACKGROUND, 0, 2, 0, 1, 0.5, 1.5).patch(LIGHT, 1, 2, 0, 2, 0.5, 1.5).patch(ACCENT, 0, 1, 1, 1, 1, 2)
                .quarters(1, 1, 1, MEDIUM, DARK, LIGHT, ACCENT)
                .block();
    }
}
