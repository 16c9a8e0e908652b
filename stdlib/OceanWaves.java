package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Ocean Waves: bands of small triangles run slantwise round a plain square that stands on its point.
 * Where blocks meet, the triangles of ground in their corners make the same square again.
 *
 * <p>Drafting: twice as many squares of graph paper each way as there are waves; the plain square and
 * the corner triangles reach half the waves from the middle and from the corner, and every square
 * between them is halved along the slant (common practice).
 */
public final class OceanWaves {

    /** A block of the given finished side; the bands are so many triangles wide, an even number. */
    public static Block block(Length side, int waves) {
        if (waves < 2 || waves % 2 != 0) {
            throw new IllegalArgumentException("ocean waves of " + waves + " triangles don't close round a square; use 2, 4, 6 and so on");
        }
        int half = waves / 2;
        var draft = Block.onGrid("Ocean Waves", 2 * waves, side);
        // The bottom right quarter: its own corner at (waves, waves) is the middle of the block.
        for (int row = 0; row < waves; row++) {
            for (int column = 0; column < waves; column++) {
                double x = waves + column;
                double y = waves + row;
                int layer = row + column;               // how far from the middle, along the slant
                if (layer >= half && layer < 3 * half) {
                    draft = draft.patch(DARK, x, y, x + 1, y, x, y + 1);
                }
                if (layer + 1 >= half && layer + 1 < 3 * half) {
                    draft = draft.patch(LIGHT, x + 1, y, x + 1, y + 1, x, y + 1);
                }
            }
        }
        double end = 2 * waves;
        draft = draft.patch(BACKGROUND, end, end - half, end, end, end - half, end).turnedFourTimes();
        return draft.patch(BACKGROUND, waves, waves - half, waves + half, waves, waves, waves + half, waves - half, waves).block();
    }
}
