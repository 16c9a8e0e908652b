package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Storm at Sea: squares within squares, large and small, with long diamonds between; straight seams that look like waves.
 *
 * <p>Drafting: six squares of graph paper each way: four for the large square, two for the small one, and diamonds of two by four between (common practice).
 */
public final class StormAtSea {

    /** A storm at sea of the given finished side, to be set edge to edge. */
    public static Block block(Length side) {
        BlockDraft draft = Block.onGrid("Storm at Sea", 6, side);
        draft = nested(draft, 0, 0, 4);
        draft = nested(draft, 4, 4, 2);
        return diamond(diamond(draft, 4, 0, 2, 4), 0, 4, 4, 2).block();
    }

    /** A square on its point in a square, and a straight one in it. */
    private static BlockDraft nested(BlockDraft draft, double x, double y, double s) {
        double h = s / 2;
        double q = s / 4;
        return draft.patch(DARK, x, y, x + h, y, x, y + h).patch(DARK, x + h, y, x + s, y, x + s, y + h)
                .patch(DARK, x + s, y + h, x + s, y + s, x + h, y + s).patch(DARK, x, y + h, x + h, y + s, x, y + s)
                .patch(LIGHT, x + h, y, x + h + q, y + q, x + q, y + q).patch(LIGHT, x + s, y + h, x + h + q, y + h + q, x + h + q, y + q)
                .patch(LIGHT, x + h, y + s, x + q, y + h + q, x + h + q, y + h + q).patch(LIGHT, x, y + h, x + q, y + q, x + q, y + h + q)
                .square(ACCENT, x + q, y + q, h);
    }

    private static BlockDraft diamond(BlockDraft draft, double x, double y, double w, double h) {
        double a = x + w / 2;
        double b = y + h / 2;
        return draft.patch(LIGHT, x, y, a, y, x, b).patch(LIGHT, a, y, x + w, y, x + w, b)
                .patch(LIGHT, x + w, b, x + w, y + h, a, y + h).patch(LIGHT, x, b, a, y + h, x, y + h)
                .patch(MEDIUM, a, y, x + w, b, a, y + h, x, b);
    }
}
