package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Lady of the Lake: a large half-square triangle unit within a ring of small ones.
 *
 * <p>Drafting: five squares of graph paper each way, all parted along the same slant (common practice).
 */
public final class LadyOfTheLake {

    /** A lady of the lake of the given finished side. */
    public static Block block(Length side) {
        BlockDraft draft = Block.onGrid("Lady of the Lake", 5, side);
        for (int i = 0; i < 5; i++) {
            draft = draft.halvesRising(i, 0, 1, LIGHT, DARK).halvesRising(i, 4, 1, LIGHT, DARK);
            if (i > 0 && i < 4) {
                draft = draft.halvesRising(0, i, 1, LIGHT, DARK).halvesRising(4, i, 1, LIGHT, DARK);
            }
        }
        return draft.halvesRising(1, 1, 3, BACKGROUND, DARK).block();
    }
}
