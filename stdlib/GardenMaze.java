package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Garden Maze: sashing of three strips, with a crossing of two bars where it meets. Use it with
 * {@code Setting.sashed(…).pieced(GardenMaze.sash(…), GardenMaze.stone(…))}.
 *
 * <p>Drafting: the outer strips and the bars are a quarter of the sashing wide (common practice; the share from memory).
 */
public final class GardenMaze {

    private GardenMaze() { }

    /** A sash that lies across, as long as the block beside it. */
    public static Block sash(Length length, Length width) {
        return Block.onGrid("Maze Sash", 1, 4, length, width).rectangle(DARK, 0, 0, 1, 1).rectangle(LIGHT, 0, 1, 1, 2).rectangle(DARK, 0, 3, 1, 1).block();
    }

    /** The crossing: two bars of the dark from corner to corner, and four triangles of the light. */
    public static Block stone(Length width) {
        double n = 4;
        double m = n / 2;
        double k = 1 / Math.sqrt(2);   // a bar one unit wide meets an edge over twice this much
        return Block.onGrid("Maze Stone", 4, width)
                .patch(DARK, 0, 0, k, 0, n, n - k, n, n, n - k, n, 0, k)
                .patch(DARK, n - k, 0, n, 0, n, k, m + k, m, m, m - k)
                .patch(DARK, 0, n - k, m - k, m, m, m + k, k, n, 0, n)
                .patch(LIGHT, k, 0, n - k, 0, m, m - k)
                .patch(LIGHT, n, k, n, n - k, m + k, m)
                .patch(LIGHT, n - k, n, k, n, m, m + k)
                .patch(LIGHT, 0, n - k, 0, k, m - k, m)
                .block();
    }
}
