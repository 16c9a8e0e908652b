package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Rolling Stone: squares on their points in the corners, bars of two strips between, and a plain middle.
 *
 * <p>Drafting: six squares of graph paper each way (common practice).
 */
public final class RollingStone {

    /** A rolling stone of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Rolling Stone", 6, side)
                .patch(DARK, 0, 0, 1, 0, 0, 1).patch(DARK, 1, 0, 2, 0, 2, 1).patch(DARK, 2, 1, 2, 2, 1, 2).patch(DARK, 0, 1, 1, 2, 0, 2)
                .patch(LIGHT, 1, 0, 2, 1, 1, 2, 0, 1)
                .rectangle(MEDIUM, 2, 0, 2, 1).rectangle(BACKGROUND, 2, 1, 2, 1)
                .turnedFourTimes()
                .square(ACCENT, 2, 2, 2)
                .block();
    }
}
