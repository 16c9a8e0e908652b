package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Diamond border: squares on their points with triangles between.
 *
 * <p>Drafting: a unit is a square in a square as wide as the border (common practice).
 */
public final class DiamondBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        return Border.of(DiamondInTheSquare.block(width)).corners(DiamondInTheSquare.block(width));
    }
}
