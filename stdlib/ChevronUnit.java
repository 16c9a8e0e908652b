package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Chevron: two slanting stripes that meet in the middle.
 *
 * <p>Drafting: two squares of graph paper across; the stripes rise at 45 degrees (common practice).
 */
public final class ChevronUnit {

    /** A chevron of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Chevron", 4, side)
                .patch(BACKGROUND, 0, 0, 2, 0, 0, 2)
                .patch(DARK, 2, 0, 2, 2, 0, 4, 0, 2)
                .patch(LIGHT, 2, 2, 2, 4, 0, 4)
                .mirrored()
                .block();
    }
}
