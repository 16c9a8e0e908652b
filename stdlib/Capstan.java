package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Capstan: four bars that chase each other round a square; the first seam is sewn in part and finished last.
 *
 * <p>Drafting: three squares of graph paper each way; every bar is two squares long (common practice).
 */
public final class Capstan {

    /** A capstan of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Capstan", 3, side)
                .rectangle(DARK, 0, 0, 2, 1).rectangle(MEDIUM, 2, 0, 1, 2).rectangle(LIGHT, 1, 2, 2, 1).rectangle(ACCENT, 0, 1, 1, 2)
                .square(BACKGROUND, 1, 1, 1)
                .block();
    }
}
