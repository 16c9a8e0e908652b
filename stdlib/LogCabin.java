package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Log Cabin: logs laid round a square hearth, light on two sides and dark on the other two.
 *
 * <p>Drafting: with a hearth as wide as a log and so many rounds, the block is two rounds of logs and
 * the hearth across (common practice).
 */
public final class LogCabin {

    /** A log cabin with three rounds of logs. */
    public static Block block(Length side) {
        return block(side, 3);
    }

    /** A log cabin of the given finished side; its logs are side / (2 rounds + 1) wide. */
    public static Block block(Length side, int rounds) {
        int grid = 2 * rounds + 1;
        var draft = Block.onGrid("Log Cabin", grid, side).square(ACCENT, rounds, rounds, 1);
        for (int round = 1; round <= rounds; round++) {
            int near = rounds - round;          // the round's own top left corner
            int far = rounds + round;           // the square beyond its last
            int length = 2 * round - 1;         // the length of the first log of the round
            Role light = round % 2 == 0 ? BACKGROUND : LIGHT;
            Role dark = round % 2 == 0 ? MEDIUM : DARK;
            draft = draft
                    .rectangle(light, near + 1, near, length, 1)
                    .rectangle(light, far, near, 1, length + 1)
                    .rectangle(dark, near + 1, far, length + 1, 1)
                    .rectangle(dark, near, near, 1, length + 2);
        }
        return draft.block();
    }
}
