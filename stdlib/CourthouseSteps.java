package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Courthouse Steps: logs laid on opposite sides of a hearth in turn.
 *
 * <p>Drafting: with a hearth as wide as a log and so many rounds, the block is two rounds of logs and the hearth across (common practice).
 */
public final class CourthouseSteps {

    /** Courthouse steps with three rounds of logs. */
    public static Block block(Length side) {
        return block(side, 3);
    }

    /** Courthouse steps of the given finished side; the logs are side / (2 rounds + 1) wide. */
    public static Block block(Length side, int rounds) {
        var draft = Block.onGrid("Courthouse Steps", 2 * rounds + 1, side).square(ACCENT, rounds, rounds, 1);
        for (int round = 1; round <= rounds; round++) {
            int near = rounds - round;
            int far = rounds + round;
            draft = draft
                    .rectangle(DARK, near + 1, near, 2 * round - 1, 1)
                    .rectangle(DARK, near + 1, far, 2 * round - 1, 1)
                    .rectangle(LIGHT, near, near, 1, 2 * round + 1)
                    .rectangle(LIGHT, far, near, 1, 2 * round + 1);
        }
        return draft.block();
    }
}
