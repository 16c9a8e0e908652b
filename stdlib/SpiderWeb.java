package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Spider Web: eight wedges, each sewn from strips, make a web with a triangle in each corner.
 *
 * <p>Drafting: the wedges of a kaleidoscope, parted evenly along their height; the octagon's corners lie side / (2 + root 2) from those of the block (common practice).
 */
public final class SpiderWeb {

    /** A web of five strips. */
    public static Block block(Length side) {
        return block(side, 5);
    }

    /** A web of the given finished side with so many strips in each wedge. */
    public static Block block(Length side, int strips) {
        if (strips < 2 || strips > 16) {
            throw new IllegalArgumentException("a web of " + strips + " strips can't be sewn; use 2 to 16");
        }
        Role[] cloth = {ACCENT, LIGHT, DARK, MEDIUM};
        double c = 1 / (2 + Math.sqrt(2));
        Point middle = new Point(0.5, 0.5);
        BlockDraft draft = Block.onGrid("Spider Web", 1, side);
        for (Point[] rim : new Point[][] {{new Point(c, 0), new Point(1 - c, 0)}, {new Point(1 - c, 0), new Point(1, c)}}) {
            for (int i = 0; i < strips; i++) {
                Point a = middle.towards(rim[0], (double) i / strips);
                Point b = middle.towards(rim[0], (i + 1.0) / strips);
                Point d = middle.towards(rim[1], (i + 1.0) / strips);
                Point e = middle.towards(rim[1], (double) i / strips);
                Role role = cloth[i % cloth.length];
                draft = i == 0 ? draft.patch(role, a.x(), a.y(), b.x(), b.y(), d.x(), d.y())
                        : draft.patch(role, a.x(), a.y(), b.x(), b.y(), d.x(), d.y(), e.x(), e.y());
            }
        }
        return draft.patch(BACKGROUND, 1 - c, 0, 1, 0, 1, c).turnedFourTimes().block();
    }
}
