package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Friendship Star: a nine patch whose side squares are parted so that four points turn one way.
 *
 * <p>Drafting: three squares of graph paper each way (common practice).
 */
public final class FriendshipStar {

    /** A friendship star of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Friendship Star", 3, side)
                .square(BACKGROUND, 0, 0, 1)
                .halvesFalling(1, 0, 1, BACKGROUND, DARK)
                .turnedFourTimes()
                .square(DARK, 1, 1, 1)
                .block();
    }
}
