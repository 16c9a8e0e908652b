package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Spool: a square of thread between two flanges, joined on the slant.
 *
 * <p>Drafting: three squares of graph paper each way; the corner seams are mitres, and set in (common practice).
 */
public final class Spool {

    /** A spool of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Spool", 3, side)
                .patch(DARK, 0, 0, 3, 0, 2, 1, 1, 1)
                .patch(BACKGROUND, 3, 0, 3, 3, 2, 2, 2, 1)
                .turned(2)
                .square(ACCENT, 1, 1, 1)
                .block();
    }
}
