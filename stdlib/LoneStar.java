package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Lone Star: eight large diamonds, each of many small ones, squares in the corners and triangles on the sides.
 *
 * <p>Drafting: the large diamond has the side of an eight-pointed star, side / (2 + root 2), and is parted evenly both ways (common practice).
 */
public final class LoneStar {

    /** A lone star with four small diamonds along each side of a large one. */
    public static Block block(Length side) {
        return block(side, 4);
    }

    /** A lone star of the given finished side with so many small diamonds along each side of a large one. */
    public static Block block(Length side, int rows) {
        if (rows < 1 || rows > 16) {
            throw new IllegalArgumentException("a lone star of " + rows + " rows can't be drafted here; use 1 to 16");
        }
        Role[] ring = {ACCENT, DARK, MEDIUM, LIGHT};
        double d = 1 / (2 + Math.sqrt(2));
        Point middle = new Point(0.5, 0.5);
        Point up = Point.polar(d, Angle.degrees(-90));
        Point slant = Point.polar(d, Angle.degrees(-45));
        Point right = Point.polar(d, Angle.degrees(0));
        BlockDraft draft = Block.onGrid("Lone Star", 1, side);
        for (Point[] arms : new Point[][] {{up, slant}, {slant, right}}) {
            Point a = arms[0].times(1.0 / rows);
            Point b = arms[1].times(1.0 / rows);
            for (int i = 0; i < rows; i++) {
                for (int j = 0; j < rows; j++) {
                    Point p = middle.plus(a.times(i)).plus(b.times(j));
                    draft = draft.patch(ring[(i + j) % ring.length], Path.polygon(p, p.plus(a), p.plus(a).plus(b), p.plus(b)));
                }
            }
        }
        Point inner = middle.plus(slant);
        Point top = inner.plus(up);
        Point far = inner.plus(right);
        draft = draft.patch(BACKGROUND, Path.polygon(inner, top, new Point(1, 0), far))
                .patch(BACKGROUND, Path.polygon(middle.plus(up), new Point(1 - top.x(), 0), top));
        return draft.turnedFourTimes().block();
    }
}
