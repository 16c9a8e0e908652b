package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Diamond in the Square: a square on its point with a triangle on each side.
 *
 * <p>Drafting: join the middles of the sides; the inner side is the outer one over the root of two
 * (common practice).
 */
public final class DiamondInTheSquare {

    /** A diamond in the square of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Diamond in the Square", 2, side)
                .patch(LIGHT, 0, 0, 1, 0, 0, 1)
                .turnedFourTimes()
                .patch(DARK, 1, 0, 2, 1, 1, 2, 0, 1)
                .block();
    }
}
