package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Flying Geese: triangles twice as wide as high, one over another, in a sky of smaller triangles.
 *
 * <p>Drafting: two squares of graph paper across for every one down (common practice).
 */
public final class FlyingGeese {

    /** One goose of the given finished width; it is half as high. */
    public static Block unit(Length width) {
        return Block.onGrid("Goose", 2, 1, width, width.half()).gooseUp(0, 0, 1, DARK, BACKGROUND).block();
    }

    /** A square block of geese, two of them flying up. */
    public static Block block(Length side) {
        return Block.onGrid("Flying Geese", 2, side)
                .gooseUp(0, 0, 1, DARK, BACKGROUND)
                .gooseUp(0, 1, 1, MEDIUM, BACKGROUND)
                .block();
    }
}
