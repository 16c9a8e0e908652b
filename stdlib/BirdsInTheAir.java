package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Birds in the Air: a large triangle and a flock of small ones.
 *
 * <p>Drafting: three squares of graph paper each way, halved along one slant (common practice).
 */
public final class BirdsInTheAir {

    /** Birds in the air of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Birds in the Air", 3, side)
                .patch(DARK, 3, 0, 3, 3, 0, 3)
                .halvesRising(0, 0, 1, MEDIUM, LIGHT)
                .halvesRising(1, 0, 1, MEDIUM, LIGHT)
                .halvesRising(0, 1, 1, MEDIUM, LIGHT)
                .patch(MEDIUM, 2, 0, 3, 0, 2, 1)
                .patch(MEDIUM, 1, 1, 2, 1, 1, 2)
                .patch(MEDIUM, 0, 2, 1, 2, 0, 3)
                .block();
    }
}
