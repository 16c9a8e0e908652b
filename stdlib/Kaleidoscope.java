package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Kaleidoscope: eight wedges of 45 degrees meet in the middle, with a triangle in each corner.
 *
 * <p>Drafting: the wedges end on a regular octagon; its corners lie side / (2 + root 2) from those of
 * the block (common practice).
 */
public final class Kaleidoscope {

    /** A kaleidoscope of the given finished side. */
    public static Block block(Length side) {
        double c = 1 / (2 + Math.sqrt(2));
        return Block.onGrid("Kaleidoscope", 1, side)
                .patch(DARK, 0.5, 0.5, c, 0, 1 - c, 0)
                .patch(LIGHT, 0.5, 0.5, 1 - c, 0, 1, c)
                .patch(BACKGROUND, 1 - c, 0, 1, 0, 1, c)
                .turnedFourTimes()
                .block();
    }
}
