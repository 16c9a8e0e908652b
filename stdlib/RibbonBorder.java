package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Ribbon border: a ribbon that folds from edge to edge.
 *
 * <p>Drafting: a unit is a chevron as wide as the border (common practice).
 */
public final class RibbonBorder {

    /** The border of the given finished width. */
    public static PiecedBorder of(Length width) {
        return Border.of(ChevronUnit.block(width));
    }
}
