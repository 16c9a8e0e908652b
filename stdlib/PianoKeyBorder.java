package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Piano key border: bars side by side, across the border.
 *
 * <p>Drafting: the bars come out whole where their width divides the side (common practice).
 */
public final class PianoKeyBorder {

    /** The border of the given finished width with keys so wide; two keys make a unit. */
    public static PiecedBorder of(Length width, Length key) {
        Block keys = Block.onGrid("Keys", 2, 1, key.times(2), width).rectangle(DARK, 0, 0, 1, 1).rectangle(LIGHT, 1, 0, 1, 1).block();
        return Border.of(keys);
    }
}
