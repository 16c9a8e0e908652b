package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Swag border: swags hang from the outer edge and meet in points.
 *
 * <p>Drafting: a swag sags by a quarter of its length and is as deep in the middle; the curves are arcs through three points (common practice).
 */
public final class SwagBorder {

    /** One swag of the given finished length. */
    public static Block swag(Length length) {
        Point left = new Point(0, 1);
        Point right = new Point(8, 1);
        Point high = new Point(4, 2);
        Point low = new Point(4, 4);
        return Block.onGrid("Swag", 8, 5, length, length.times(0.625))
                .patch(BACKGROUND, Path.from(left).arcThrough(high, right).lineTo(8, 0).lineTo(0, 0).close())
                .patch(DARK, Path.from(left).arcThrough(high, right).arcThrough(low, left).close())
                .patch(BACKGROUND, Path.from(left).arcThrough(low, right).lineTo(8, 5).lineTo(0, 5).close())
                .block();
    }

    /** The border with swags of the given finished length. */
    public static PiecedBorder of(Length length) {
        return Border.of(swag(length));
    }
}
