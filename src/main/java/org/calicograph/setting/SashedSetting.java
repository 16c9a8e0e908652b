package org.calicograph.setting;

import java.util.List;
import java.util.Optional;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Blocks with sashing between them and cornerstones where it meets.
 *
 * @param width  the finished width of the sashing
 * @param framed true if sashing also runs around the outside
 * @param pieced what stands in the sashing's place if it is pieced: a sash that lies across, and a cornerstone
 */
public record SashedSetting(int columns, int rows, Length width, Fabric sash, Fabric cornerstone, boolean framed, Optional<Pieced> pieced)
        implements Setting {

    /** A sash and a cornerstone that are pieced themselves. */
    public record Pieced(Patchwork sash, Patchwork stone) { }

    public SashedSetting {
        Setting.requireCounts("sashed", columns, rows);
        if (!width.isPositive()) {
            throw new DesignException("sashing is " + width + " wide; use a width above 0, or a straight setting");
        }
    }

    /** The same with sashing around the outside too. */
    public SashedSetting framedToo() {
        return new SashedSetting(columns, rows, width, sash, cornerstone, true, pieced);
    }

    /**
     * The same with sashes and cornerstones that are pieced. The sash lies across, as long as a block is wide and as high as
     * the sashing is wide; upright ones are turned a quarter. Blocks must be square.
     */
    public SashedSetting pieced(Patchwork across, Patchwork stone) {
        return new SashedSetting(columns, rows, width, sash, cornerstone, framed, Optional.of(new Pieced(across, stone)));
    }

    private Patchwork across(Length length) {
        if (pieced.isEmpty()) {
            return Block.plain(sash, length, width);
        }
        Patchwork own = pieced.get().sash();
        if (differ(own.width(), length) || differ(own.height(), width)) {
            throw new DesignException("the pieced sash '" + own.name() + "' is " + own.width() + " x " + own.height() + " but lies between blocks " + length
                    + " wide in sashing " + width + " wide; make it " + length + " x " + width);
        }
        return own;
    }

    private Patchwork upright(Length height) {
        return pieced.isEmpty() ? Block.plain(sash, width, height) : across(height).turned(1);
    }

    private Patchwork stone() {
        if (pieced.isEmpty()) {
            return Block.plain(cornerstone, width, width);
        }
        Patchwork own = pieced.get().stone();
        if (differ(own.width(), width) || differ(own.height(), width)) {
            throw new DesignException("the pieced cornerstone '" + own.name() + "' is " + own.width() + " x " + own.height() + " but the sashing is " + width + " wide; make it "
                    + width + " square");
        }
        return own;
    }

    private static boolean differ(Length a, Length b) {
        return a.minus(b).abs().compareTo(Length.mm(0.01)) > 0;
    }

    @Override
    public Assembly of(BlockAt blocks) {
        Lattice lattice = Lattice.of(columns, rows, width, framed ? width : Length.ZERO, blocks);
        List<Placed> parts = lattice.placed();
        Patchwork stone = stone();
        int first = framed ? -1 : 0;
        for (int r = first; r < rows; r++) {
            boolean belowLast = r == rows - 1 && !framed;
            double under = r < 0 ? 0 : lattice.top(r) + lattice.heights()[r].inInches();
            for (int c = first; c < columns; c++) {
                boolean afterLast = c == columns - 1 && !framed;
                double after = c < 0 ? 0 : lattice.left(c) + lattice.widths()[c].inInches();
                if (r >= 0 && !afterLast) {
                    parts.add(Placed.at("v" + (r + 1) + "-" + (c + 1), upright(lattice.heights()[r]), after, lattice.top(r)));
                }
                if (c >= 0 && !belowLast) {
                    parts.add(Placed.at("h" + (r + 1) + "-" + (c + 1), across(lattice.widths()[c]), lattice.left(c), under));
                }
                if (!afterLast && !belowLast) {
                    parts.add(Placed.at("s" + (r + 1) + "-" + (c + 1), stone, after, under));
                }
            }
        }
        return Assembly.of("sashed setting", lattice.outline(), parts);
    }
}
