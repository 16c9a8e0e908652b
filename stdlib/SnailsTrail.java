package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Snail's Trail: squares in squares whose corner triangles wind into two trails.
 *
 * <p>Drafting: begin with a four patch and set every square in the next by its corners; the sides grow by the root of two (common practice).
 */
public final class SnailsTrail {

    /** A snail's trail of the given finished side, with four rounds of triangles. */
    public static Block block(Length side) {
        BlockDraft draft = Block.onGrid("Snail's Trail", 1, side);
        Point[] corners = {new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1)};
        for (int round = 0; round < 4; round++) {
            Point[] middles = new Point[4];
            for (int i = 0; i < 4; i++) {
                middles[i] = corners[i].midway(corners[(i + 1) % 4]);
            }
            for (int i = 0; i < 4; i++) {
                draft = draft.patch(i % 2 == 0 ? DARK : LIGHT, Path.polygon(corners[i], middles[i], middles[(i + 3) % 4]));
            }
            corners = middles;
        }
        Point middle = new Point(0.5, 0.5);
        for (int i = 0; i < 4; i++) {
            Point next = corners[i].midway(corners[(i + 1) % 4]);
            Point before = corners[i].midway(corners[(i + 3) % 4]);
            draft = draft.patch(i % 2 == 0 ? DARK : LIGHT, Path.polygon(corners[i], next, middle, before));
        }
        return draft.block();
    }
}
