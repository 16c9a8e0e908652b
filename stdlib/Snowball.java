package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Snowball: a square with its corners cut off.
 *
 * <p>Drafting: cut off a third of the side for the common snowball, or side / (2 + root 2) for a regular
 * octagon (common practice).
 */
public final class Snowball {

    /** A snowball of the given finished side whose middle is a regular octagon. */
    public static Block block(Length side) {
        return drafted(side, 1 / (2 + Math.sqrt(2)));
    }

    /** A snowball with corners of the given finished short side. */
    public static Block block(Length side, Length corner) {
        return drafted(side, corner.ratioTo(side));
    }

    private static Block drafted(Length side, double c) {
        return Block.onGrid("Snowball", 1, side)
                .patch(DARK, 0, 0, c, 0, 0, c)
                .turnedFourTimes()
                .patch(LIGHT, c, 0, 1 - c, 0, 1, c, 1, 1 - c, 1 - c, 1, c, 1, 0, 1 - c, 0, c)
                .block();
    }
}
