package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Drunkard's path border: quarter circles in pairs make half circles along the edge.
 *
 * <p>Drafting: a unit is two squares with a quarter circle each, mirror images (common practice).
 */
public final class PathBorder {

    /** The border of the given finished width; a unit is twice as long. */
    public static PiecedBorder of(Length width) {
        Block quarter = DrunkardsPath.unit(width);
        var unit = org.calicograph.setting.Setting.straight(2, 1).of((column, row) -> column == 0 ? quarter.mirrored() : quarter);
        return Border.of(unit);
    }
}
