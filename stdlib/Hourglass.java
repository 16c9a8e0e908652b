package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Hourglass: one square parted along both diagonals into four quarter-square triangles.
 *
 * <p>Drafting: one square of graph paper and its diagonals (common practice).
 */
public final class Hourglass {

    /** An hourglass of the given finished side, dark above and below. */
    public static Block block(Length side) {
        return Block.onGrid("Hourglass", 1, side).quarters(0, 0, 1, DARK, LIGHT, DARK, LIGHT).block();
    }
}
