package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Ohio Star: a nine patch with hourglass units in the middle of each side.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class OhioStar {

    /** An Ohio star of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Ohio Star", 3, side)
                .square(BACKGROUND, 0, 0, 1)
                .quarters(1, 0, 1, BACKGROUND, DARK, MEDIUM, DARK)
                .turnedFourTimes()
                .square(ACCENT, 1, 1, 1)
                .block();
    }
}
