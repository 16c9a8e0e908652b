package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Flying geese border: geese fly along every side and round the quilt, with a square in a square in
 * each corner.
 *
 * <p>Drafting: a goose as wide as the border is half that along the side, so the side must be a whole
 * number of half widths (common practice).
 */
public final class GeeseBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        Block goose = FlyingGeese.unit(width).turned(1);
        return Border.of(goose).corners(DiamondInTheSquare.block(width));
    }
}
