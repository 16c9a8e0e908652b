package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Columns of blocks with strips of one fabric between them, as long as the top.
 *
 * @param width     the finished width of the strips
 * @param framed    true if strips also run down the left and the right edge
 * @param triangles the cloth beside blocks that stand on their points; empty if they stand straight
 * @param halfDrop  true if every second column hangs half a block lower: it has one block more, and its
 *                  first and last are cut in half
 */
public record StrippySetting(int columns, int rows, Length width, Fabric strip, boolean framed, Optional<Fabric> triangles, boolean halfDrop)
        implements Setting {

    public StrippySetting {
        Setting.requireCounts("strippy", columns, rows);
        if (!width.isPositive()) {
            throw new DesignException("the strips of a strippy setting are " + width + " wide; use a width above 0");
        }
    }

    /** The same with strips down the left and the right edge too. */
    public StrippySetting framedToo() {
        return new StrippySetting(columns, rows, width, strip, true, triangles, halfDrop);
    }

    /** The same with the blocks of every column standing on their points. */
    public StrippySetting onPoint(Fabric beside) {
        return new StrippySetting(columns, rows, width, strip, framed, Optional.of(beside), halfDrop);
    }

    /** The same with every second column half a block lower. */
    public StrippySetting halfDropped() {
        return new StrippySetting(columns, rows, width, strip, framed, triangles, true);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        List<Patchwork> stacks = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            stacks.add(stack(c, blocks, stacks));
        }
        Lattice lattice = Lattice.of(columns, 1, width, Length.ZERO, (c, r) -> stacks.get(c));
        Box columnsAlone = lattice.outline().bounds();
        double w = width.inInches();
        double first = framed ? w : 0;
        List<Placed> parts = new ArrayList<>();
        Block bar = Block.plain(strip, width, lattice.heights()[0]);
        if (framed) {
            parts.add(Placed.at("strip0", bar, 0, 0));
        }
        for (int c = 0; c < columns; c++) {
            double left = first + lattice.left(c);
            parts.add(Placed.at("column" + (c + 1), stacks.get(c), left, 0));
            if (framed || c < columns - 1) {
                parts.add(Placed.at("strip" + (c + 1), bar, left + lattice.widths()[c].inInches(), 0));
            }
        }
        return Assembly.of("strippy setting", Region.rectangle(new Box(0, 0, columnsAlone.right() + 2 * first, columnsAlone.bottom())), parts);
    }

    private Patchwork stack(int column, BlockAt blocks, List<Patchwork> before) {
        boolean dropped = halfDrop && column % 2 != 0;
        int count = dropped ? rows + 1 : rows;
        Assembly stack = triangles.isPresent() ? Setting.onPoint(1, count, triangles.get()).of((x, y) -> blocks.at(column, y / 2))
                : Setting.straight(1, count).of((x, y) -> blocks.at(column, y));
        return dropped ? stack.trimmedTo(stack.width(), before.get(0).height()).top() : stack;
    }
}
