package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Nine patch border: nine patches and hourglasses in turn.
 *
 * <p>Drafting: a unit is two blocks as wide as the border (common practice).
 */
public final class NinePatchBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        var unit = org.calicograph.setting.Setting.straight(2, 1).alternating(NinePatch.block(width), Hourglass.block(width));
        return Border.of(unit).corners(NinePatch.block(width));
    }
}
