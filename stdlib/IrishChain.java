package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Irish Chain: squares that run from corner to corner and on through the next block.
 *
 * <p>Drafting: an odd number of squares of graph paper each way, five where nothing else is asked (common practice).
 */
public final class IrishChain {

    /** A chain of five squares each way. */
    public static Block block(Length side) {
        return block(side, 5);
    }

    /** A chain on so many squares each way, an odd number. */
    public static Block block(Length side, int squares) {
        if (squares < 3 || squares % 2 == 0) {
            throw new IllegalArgumentException("an Irish chain of " + squares + " squares has no middle; use 3, 5, 7 and so on");
        }
        var draft = Block.onGrid("Irish Chain", squares, side);
        for (int row = 0; row < squares; row++) {
            for (int column = 0; column < squares; column++) {
                boolean chain = row == column || row + column == squares - 1;
                draft = draft.square(chain ? DARK : BACKGROUND, column, row, 1);
            }
        }
        return draft.block();
    }
}
