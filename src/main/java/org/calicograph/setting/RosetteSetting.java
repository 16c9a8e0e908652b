package org.calicograph.setting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.patchwork.Trimming;

/**
 * Hexagon blocks in rosettes: a centre and rings of 6, 12, 18 and so on about it, on a ground of hexagons
 * that is filled to a straight rectangle by partial ones. Between neighbouring rosettes runs a path one
 * hexagon wide; every second row of rosettes lies half a step to the right and has one less.
 *
 * <p>A block is asked for by its place in its ring, clockwise from the upper right, as the column, and by
 * its ring as the row, 0 being the centre. All rosettes are alike.
 *
 * @param rings  rings about each centre; 1 is the flower of seven
 * @param ground the cloth of the path and of the edge
 */
public record RosetteSetting(int columns, int rows, int rings, Fabric ground) implements Setting {

    public RosetteSetting {
        Setting.requireCounts("rosette", columns, rows);
        if (rings < 1) {
            throw new DesignException("a rosette of " + rings + " rings is a single hexagon; use 1 ring or more");
        }
    }

    /** Rings in turn: the centre and every second ring of the first block, the others of the second. */
    @Override
    public Assembly alternating(Patchwork first, Patchwork second) {
        return of((place, ring) -> ring % 2 == 0 ? first : second);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        Hexagons grid = Hexagons.of(blocks.at(0, 0));
        int step = 2 * rings + 2;
        double x = step / 2 * grid.width();
        double y = 1.5 * (rings + 1) * grid.side();
        List<Placed> parts = new ArrayList<>();
        Set<List<Integer>> taken = new HashSet<>();
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns - j % 2; i++) {
                int right = i * step + j % 2 * step / 2 - j * step / 2;
                for (int ring = 0; ring <= rings; ring++) {
                    List<int[]> places = Hexagons.ring(ring);
                    for (int p = 0; p < places.size(); p++) {
                        int q = right + places.get(p)[0];
                        int r = j * step + places.get(p)[1];
                        taken.add(List.of(q, r));
                        String id = "rosette" + (j + 1) + "-" + (i + 1) + "-ring" + ring + "-" + (p + 1);
                        parts.add(grid.placed(id, grid.require(blocks.at(p, ring), p, ring), q, r, x, y));
                    }
                }
            }
        }
        Block plain = grid.plain(ground);
        int bottom = (rows - 1) * step + rings + 1;
        for (int r = -rings - 1; r <= bottom; r++) {
            int first = -step / 2 - Math.floorDiv(r, 2) - 1;
            for (int q = first; q <= first + columns * step + 2; q++) {
                if (!taken.contains(List.of(q, r))) {
                    parts.add(grid.placed("ground" + (r + rings + 2) + "-" + (q - first + 1), plain, q, r, x, y));
                }
            }
        }
        Box sheet = new Box(0, 0, columns * step * grid.width(), 1.5 * grid.side() * ((rows - 1) * step + 2 * rings + 2));
        return Trimming.of("rosette setting", sheet, parts).top();
    }
}
