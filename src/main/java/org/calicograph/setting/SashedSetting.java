package org.calicograph.setting;

import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Placed;

/**
 * Blocks with sashing between them and cornerstones where it meets.
 *
 * @param width  the finished width of the sashing
 * @param framed true if sashing also runs around the outside
 */
public record SashedSetting(int columns, int rows, Length width, Fabric sash, Fabric cornerstone, boolean framed)
        implements Setting {

    public SashedSetting {
        Setting.requireCounts("sashed", columns, rows);
        if (!width.isPositive()) {
            throw new DesignException("sashing is " + width + " wide; use a width above 0, or a straight setting");
        }
    }

    /** The same with sashing around the outside too. */
    public SashedSetting framedToo() {
        return new SashedSetting(columns, rows, width, sash, cornerstone, true);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        Lattice lattice = Lattice.of(columns, rows, width, framed ? width : Length.ZERO, blocks);
        List<Placed> parts = lattice.placed();
        Block stone = Block.plain(cornerstone, width, width);
        int first = framed ? -1 : 0;
        for (int r = first; r < rows; r++) {
            boolean belowLast = r == rows - 1 && !framed;
            double under = r < 0 ? 0 : lattice.top(r) + lattice.heights()[r].inInches();
            for (int c = first; c < columns; c++) {
                boolean afterLast = c == columns - 1 && !framed;
                double after = c < 0 ? 0 : lattice.left(c) + lattice.widths()[c].inInches();
                if (r >= 0 && !afterLast) {
                    parts.add(Placed.at("v" + (r + 1) + "-" + (c + 1), Block.plain(sash, width, lattice.heights()[r]), after, lattice.top(r)));
                }
                if (c >= 0 && !belowLast) {
                    parts.add(Placed.at("h" + (r + 1) + "-" + (c + 1), Block.plain(sash, lattice.widths()[c], width), lattice.left(c), under));
                }
                if (!afterLast && !belowLast) {
                    parts.add(Placed.at("s" + (r + 1) + "-" + (c + 1), stone, after, under));
                }
            }
        }
        return Assembly.of("sashed setting", lattice.outline(), parts);
    }
}
