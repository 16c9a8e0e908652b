package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Nine Patch: nine equal squares in two fabrics.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class NinePatch {

    /** A nine patch of the given finished side, dark in the corners and the middle. */
    public static Block block(Length side) {
        var draft = Block.onGrid("Nine Patch", 3, side);
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                draft = draft.square((row + column) % 2 == 0 ? DARK : LIGHT, column, row, 1);
            }
        }
        return draft.block();
    }
}
