package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Dogtooth border: triangles twice as wide as high, their points outwards.
 *
 * <p>Drafting: a tooth is twice as long along the side as the border is wide (common practice).
 */
public final class DogtoothBorder {

    /** One tooth of the given finished length; it is half as high. */
    public static Block tooth(Length length) {
        return Block.onGrid("Dogtooth", 2, 1, length, length.half()).gooseUp(0, 0, 1, DARK, BACKGROUND).block();
    }

    /** The border with teeth of the given finished length. */
    public static PiecedBorder of(Length length) {
        return Border.of(tooth(length));
    }
}
