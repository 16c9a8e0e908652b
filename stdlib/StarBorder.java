package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Star border: sawtooth stars in a row and in the corners.
 *
 * <p>Drafting: a unit is a star as wide as the border (common practice).
 */
public final class StarBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        return Border.of(SawtoothStar.block(width)).corners(SawtoothStar.block(width));
    }
}
