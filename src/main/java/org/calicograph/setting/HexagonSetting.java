package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.patchwork.Trimming;

/**
 * Hexagon blocks in rows, filled to a straight rectangle by partial hexagons.
 *
 * <p>The hexagons stand on a point; every second row lies half a block to the right, with one whole block
 * less and a half one at either end. With hexagons of side s the top is columns x s x root 3 wide and
 * 1 1/2 s x rows + s / 2 high.
 *
 * @param edge   the cloth of the partial hexagons along the edge
 * @param blocks true if blocks cut by the edge stand there instead; they are asked for in column -1,
 *               row -1 and just beyond the last
 */
public record HexagonSetting(int columns, int rows, Fabric edge, boolean blocks) implements Setting {

    public HexagonSetting {
        Setting.requireCounts("hexagon", columns, rows);
    }

    /** The same with blocks cut by the edge instead of plain cloth along it. */
    public HexagonSetting partialBlocks() {
        return new HexagonSetting(columns, rows, edge, true);
    }

    @Override
    public Assembly of(BlockAt at) {
        Hexagons grid = Hexagons.of(at.at(0, 0));
        Block plain = grid.plain(edge);
        List<Placed> parts = new ArrayList<>();
        for (int r = -1; r <= rows; r++) {
            int shift = Math.floorMod(r, 2);
            int last = shift == 0 ? columns : columns - 1;
            boolean outside = r < 0 || r == rows;
            for (int c = -shift; c < last + shift; c++) {
                boolean whole = !outside && c >= 0 && c < last;
                Patchwork block = whole || blocks ? grid.require(at.at(c, r), c, r) : plain;
                parts.add(grid.placed("r" + (r + 1) + "c" + (c + 1), block, c - Math.floorDiv(r, 2), r, grid.width() / 2, grid.side()));
            }
        }
        Box sheet = new Box(0, 0, columns * grid.width(), (1.5 * rows + 0.5) * grid.side());
        return Trimming.of("hexagon setting", sheet, parts).top();
    }
}
