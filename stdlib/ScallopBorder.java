package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Scallop border: half circles stand on the inner edge.
 *
 * <p>Drafting: a scallop is twice as long as its depth, a half circle; the border is half as wide again as deep (common practice).
 */
public final class ScallopBorder {

    /** One scallop of the given finished length. */
    public static Block scallop(Length length) {
        Point left = new Point(0, 3);
        Point right = new Point(4, 3);
        return Block.onGrid("Scallop", 4, 3, length, length.times(0.75))
                .patch(DARK, Path.from(left).arcTo(right, 1).close())
                .patch(BACKGROUND, Path.from(left).arcTo(right, 1).lineTo(4, 0).lineTo(0, 0).close())
                .block();
    }

    /** The border with scallops of the given finished length. */
    public static PiecedBorder of(Length length) {
        return Border.of(scallop(length));
    }
}
