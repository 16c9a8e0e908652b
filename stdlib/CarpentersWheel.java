package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Carpenter's Wheel: an eight-pointed star, eight squares between its points, and three diamonds round every point, so that
 * thirty-two diamonds make a wheel.
 *
 * <p>Drafting: every edge is as long as a diamond's, which is the side of the block divided by 4 + 2 root 2, or 0.14645 of it: the
 * wheel is twice as wide as its star (common practice; the figure from the geometry).
 */
public final class CarpentersWheel {

    /** The edge of a diamond, a square and a triangle's short side, for a block of the given side. */
    public static Length edge(Length side) {
        return side.times(1 / (4 + 2 * Math.sqrt(2)));
    }

    /** A wheel of the given finished side. */
    public static Block block(Length side) {
        return block(side, 1);
    }

    /**
     * A wheel whose diamonds are pieced of small ones; of two rows or more the trade calls it broken star.
     *
     * @param rows small diamonds along an edge, 1 or more; their rows from the middle outwards change cloth
     */
    public static Block block(Length side, int rows) {
        double e = 1 / (4 + 2 * Math.sqrt(2));
        BlockDraft draft = Block.onGrid(rows == 1 ? "Carpenter's Wheel" : "Broken Star", 1, side);
        Point middle = new Point(0.5, 0.5);
        for (int k = 0; k < 8; k++) {
            Point before = way(k - 1, e);
            Point own = way(k, e);
            Point next = way(k + 1, e);
            Point after = way(k + 2, e);
            Point tip = middle.plus(own).plus(next);
            // The star's own diamond, the square beside it, and three diamonds about the tip.
            draft = diamond(draft, middle, own, next, rows, 0);
            draft = patch(draft, BACKGROUND, middle.plus(own), middle.plus(own).plus(before), middle.plus(own).plus(before).plus(next), tip);
            draft = diamond(draft, tip, before, own, rows, 1);
            draft = diamond(draft, tip, own, next, rows, 2);
            draft = diamond(draft, tip, next, after, rows, 1);
            if (k % 2 == 0) {
                // On the sides two triangles, in the corners three squares.
                draft = patch(draft, BACKGROUND, tip.plus(own), tip.plus(own).plus(before), tip.plus(own).plus(next));
                Point far = middle.plus(next).plus(next).plus(own).plus(after);
                draft = patch(draft, BACKGROUND, tip.plus(next), tip.plus(next).plus(own), far.plus(own), far);
                draft = patch(draft, BACKGROUND, far, far.plus(own), far.plus(own).plus(after), far.plus(after));
                Point notch = middle.plus(next).plus(next).plus(after);
                draft = patch(draft, BACKGROUND, notch, far, far.plus(after), notch.plus(after));
            } else {
                draft = patch(draft, BACKGROUND, tip.plus(next), tip.plus(next).plus(own), tip.plus(next).plus(after));
            }
        }
        return draft.block();
    }

    private static Point way(int eighth, double length) {
        return Point.polar(length, Angle.degrees(45.0 * eighth));
    }

    private static BlockDraft diamond(BlockDraft draft, Point from, Point one, Point other, int rows, int first) {
        Role[] roles = {DARK, MEDIUM, LIGHT};
        BlockDraft with = draft;
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < rows; j++) {
                Point at = from.plus(one.times((double) i / rows)).plus(other.times((double) j / rows));
                with = patch(with, roles[(first + i + j) % 3], at, at.plus(one.times(1.0 / rows)), at.plus(one.plus(other).times(1.0 / rows)), at.plus(other.times(1.0 / rows)));
            }
        }
        return with;
    }

    private static BlockDraft patch(BlockDraft draft, Role role, Point... corners) {
        double[] all = new double[corners.length * 2];
        for (int i = 0; i < corners.length; i++) {
            all[2 * i] = corners[i].x();
            all[2 * i + 1] = corners[i].y();
        }
        return draft.patch(role, all);
    }
}
