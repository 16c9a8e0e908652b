package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Chequered border: small squares in two rows.
 *
 * <p>Drafting: a unit is a four patch (common practice).
 */
public final class CheckerBorder {

    /** The border of the given finished width, which is two squares. */
    public static PiecedBorder of(Length width) {
        return Border.of(FourPatch.block(width)).corners(FourPatch.block(width)).alternately();
    }
}
