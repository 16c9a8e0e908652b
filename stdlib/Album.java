package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Album: squares on their points about a plain bar, on which each maker signs her name.
 *
 * <p>Drafting: six squares of graph paper each way; the squares stand on their points at its crossings (common practice).
 */
public final class Album {

    /** An album block of the given finished side. */
    public static Block block(Length side) {
        BlockDraft draft = Block.onGrid("Album", 6, side);
        for (int x = 1; x <= 5; x++) {
            for (int y = 1; y <= 5; y++) {
                boolean bar = x + y == 6 && Math.abs(x - y) <= 2;
                if ((x + y) % 2 == 0 && !bar) {
                    boolean inner = Math.abs(x - 3) < 2 && Math.abs(y - 3) < 2;
                    draft = draft.patch(inner ? MEDIUM : DARK, x, y - 1, x + 1, y, x, y + 1, x - 1, y);
                }
            }
        }
        draft = draft.patch(LIGHT, 1, 4, 4, 1, 5, 2, 2, 5);
        for (int k = 1; k <= 3; k += 2) {
            draft = draft.patch(BACKGROUND, k, 0, k + 2, 0, k + 1, 1).patch(BACKGROUND, 6, k, 6, k + 2, 5, k + 1)
                    .patch(BACKGROUND, k, 6, k + 1, 5, k + 2, 6).patch(BACKGROUND, 0, k, 1, k + 1, 0, k + 2);
        }
        return draft.patch(BACKGROUND, 0, 0, 1, 0, 0, 1).patch(BACKGROUND, 5, 0, 6, 0, 6, 1)
                .patch(BACKGROUND, 6, 5, 6, 6, 5, 6).patch(BACKGROUND, 0, 5, 1, 6, 0, 6).block();
    }
}
