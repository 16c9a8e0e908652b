package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Pineapple: logs round a square, straight ones and slanting ones in turn.
 *
 * <p>Drafting: every round goes out by the same width, straight and at 45 degrees; the slanting logs begin where they touch the middle
 * square's corners, and triangles fill the block's own corners (common practice; the measures from algebra).
 */
public final class Pineapple {

    /** A pineapple of four rounds. */
    public static Block block(Length side) {
        return block(side, 4);
    }

    /** A pineapple of so many rounds about a square that is four times as wide as a log. */
    public static Block block(Length side, int rounds) {
        if (rounds < 2 || rounds > 12) {
            throw new IllegalArgumentException("a pineapple of " + rounds + " rounds can't be sewn; use 2 to 12");
        }
        double half = 2 + rounds;            // in logs, from the middle
        double unit = 1 / (2 * half);
        BlockDraft draft = Block.onGrid("Pineapple", 1, side);
        double s = 2;                        // how far the straight logs reach
        double d = 4;                        // how far the slanting logs reach, across and down together
        for (int round = 0; round < rounds; round++) {
            draft = draft.patch(LIGHT, at(unit, half, -(d - s), -s, -(d - s - 1), -s - 1, d - s - 1, -s - 1, d - s, -s));
            s++;
            if (round < rounds - 1) {
                double more = d + Math.sqrt(2);
                draft = draft.patch(DARK, at(unit, half, d - s, -s, more - s, -s, s, -(more - s), s, -(d - s)));
                d = more;
            } else {
                draft = draft.patch(DARK, at(unit, half, d - s, -s, s, -s, s, -(d - s)));
            }
        }
        return draft.turnedFourTimes().square(ACCENT, (half - 2) * unit, (half - 2) * unit, 4 * unit).block();
    }

    private static double[] at(double unit, double half, double... logs) {
        double[] shares = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            shares[i] = (half + logs[i]) * unit;
        }
        return shares;
    }
}
