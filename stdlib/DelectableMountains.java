package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Delectable Mountains: a mountain, half of a square, with small peaks up both of its slopes; turned by an eighth it stands upright.
 *
 * <p>Drafting: as many squares of graph paper each way as there are peaks up a slope and one more; the peaks are half-square triangles,
 * all parted like the mountain itself (common practice).
 */
public final class DelectableMountains {

    /** A mountain with four peaks up each slope. */
    public static Block block(Length side) {
        return block(side, 4);
    }

    /** A mountain of the given finished side with so many peaks up each slope. */
    public static Block block(Length side, int peaks) {
        if (peaks < 2 || peaks > 24) {
            throw new IllegalArgumentException("a mountain with " + peaks + " peaks up a slope can't be sewn; use 2 to 24");
        }
        int n = peaks + 2;
        BlockDraft draft = Block.onGrid("Delectable Mountains", n, side).square(BACKGROUND, 0, 0, 1);
        for (int k = 1; k <= peaks; k++) {
            draft = draft.halvesRising(k, 0, 1, BACKGROUND, DARK).halvesRising(0, k, 1, BACKGROUND, DARK);
        }
        return draft.patch(BACKGROUND, n - 1, 0, n, 0, n - 1, 1).patch(BACKGROUND, 0, n - 1, 1, n - 1, 0, n)
                .patch(DARK, 1, 1, n - 1, 1, 1, n - 1)
                .patch(BACKGROUND, n, 0, n, n, 0, n)
                .block();
    }
}
