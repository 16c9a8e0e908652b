package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Trip Around the World: rings of squares about the middle, each of one fabric.
 *
 * <p>Drafting: an odd number of squares of graph paper each way; the ring is the steps across and down from the middle (common practice).
 */
public final class TripAround {

    /** Seven squares each way. */
    public static Block block(Length side) {
        return block(side, 7);
    }

    /** So many squares each way, an odd number. */
    public static Block block(Length side, int squares) {
        if (squares < 3 || squares % 2 == 0) {
            throw new IllegalArgumentException("a trip of " + squares + " squares has no middle; use 3, 5, 7 and so on");
        }
        Role[] ring = {ACCENT, DARK, MEDIUM, LIGHT, BACKGROUND};
        int middle = squares / 2;
        var draft = Block.onGrid("Trip Around the World", squares, side);
        for (int row = 0; row < squares; row++) {
            for (int column = 0; column < squares; column++) {
                int steps = Math.abs(row - middle) + Math.abs(column - middle);
                draft = draft.square(ring[steps % ring.length], column, row, 1);
            }
        }
        return draft.block();
    }
}
