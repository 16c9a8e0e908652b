package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Basket Weave: four rail fences, each turned against its neighbours.
 *
 * <p>Drafting: six squares of graph paper each way (common practice).
 */
public final class BasketWeave {

    /** A basket weave of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Basket Weave", 6, side)
                .rectangle(DARK, 0, 0, 3, 1)
                .rectangle(LIGHT, 0, 1, 3, 1)
                .rectangle(MEDIUM, 0, 2, 3, 1)
                .turnedFourTimes()
                .block();
    }
}
