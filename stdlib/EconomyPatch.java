package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Economy Patch: a square in a square in a square.
 *
 * <p>Drafting: four squares of graph paper each way; every square joins the middles of the one outside it (common practice).
 */
public final class EconomyPatch {

    /** An economy patch of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Economy Patch", 4, side)
                .patch(DARK, 0, 0, 2, 0, 0, 2)
                .patch(LIGHT, 2, 0, 3, 1, 1, 1)
                .turnedFourTimes()
                .square(ACCENT, 1, 1, 2)
                .block();
    }
}
