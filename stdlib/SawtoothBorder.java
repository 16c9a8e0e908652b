package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Sawtooth border: half-square triangle units in a row, the teeth outwards, turning at the middle of
 * each side so that the corners match.
 *
 * <p>Drafting: the side must be an even number of units long (common practice).
 */
public final class SawtoothBorder {

    /** One tooth of the given finished side. */
    public static Block tooth(Length side) {
        return Block.onGrid("Tooth", 1, side).halvesRising(0, 0, 1, BACKGROUND, DARK).block();
    }

    /** The border with teeth of the given finished side, turned at the middle and plain in the corners. */
    public static PiecedBorder of(Length side) {
        return Border.of(tooth(side)).mirroredAtMiddle();
    }
}
