package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Churn Dash: half-square triangle units in the corners and a two-bar unit on each side.
 *
 * <p>Drafting: three squares of graph paper each way, the bars half a square wide (common practice).
 */
public final class ChurnDash {

    /** A churn dash of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Churn Dash", 3, side)
                .halvesRising(0, 0, 1, BACKGROUND, DARK)
                .rectangle(BACKGROUND, 1, 0, 1, 0.5)
                .rectangle(DARK, 1, 0.5, 1, 0.5)
                .turnedFourTimes()
                .square(BACKGROUND, 1, 1, 1)
                .block();
    }
}
