package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Bow Tie: two squares of a dark fabric knotted in the middle.
 *
 * <p>Drafting: four squares of graph paper each way; the knot is a square on its point (common practice).
 */
public final class BowTie {

    /** A bow tie of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Bow Tie", 4, side)
                .patch(DARK, 0, 0, 2, 0, 2, 1, 1, 2, 0, 2)
                .patch(BACKGROUND, 4, 0, 4, 2, 3, 2, 2, 1, 2, 0)
                .turned(2)
                .patch(DARK, 2, 1, 3, 2, 2, 3, 1, 2)
                .block();
    }
}
