package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Four Patch: four equal squares in two fabrics.
 *
 * <p>Drafting: two squares of graph paper each way (common practice).
 */
public final class FourPatch {

    /** A four patch of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Four Patch", 2, side)
                .square(DARK, 0, 0, 1)
                .square(LIGHT, 1, 0, 1)
                .turned(2)
                .block();
    }
}
