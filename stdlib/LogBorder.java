package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Log border: log cabins in a row and in the corners.
 *
 * <p>Drafting: a unit is a log cabin of two rounds as wide as the border (common practice).
 */
public final class LogBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        return Border.of(LogCabin.block(width, 2)).corners(LogCabin.block(width, 2));
    }
}
