package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Pinwheel border: pinwheels in a row and in the corners.
 *
 * <p>Drafting: a unit is a pinwheel as wide as the border (common practice).
 */
public final class PinwheelBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        return Border.of(Pinwheel.block(width)).corners(Pinwheel.block(width));
    }
}
