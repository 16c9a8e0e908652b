package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Attic Windows: a pane with a sill and a frame that meet in a mitre.
 *
 * <p>Drafting: three squares of graph paper each way; the mitre is set in, or cut from a half-square triangle unit (common practice).
 */
public final class AtticWindows {

    /** An attic window of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Attic Windows", 3, side)
                .square(LIGHT, 1, 0, 2)
                .patch(DARK, 0, 0, 1, 0, 1, 2, 0, 3)
                .patch(MEDIUM, 0, 3, 1, 2, 3, 2, 3, 3)
                .block();
    }
}
