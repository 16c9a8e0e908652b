package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/** Blocks in columns and rows with a gap between them, each checked against its column and row. */
record Lattice(Patchwork[][] blocks, Length[] widths, Length[] heights, Length gap, Length frame) {

    static Lattice of(int columns, int rows, Length gap, Length frame, BlockAt blockAt) {
        Patchwork[][] blocks = new Patchwork[rows][columns];
        Length[] widths = new Length[columns];
        Length[] heights = new Length[rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Patchwork block = blockAt.at(c, r);
                if (!block.isRectangular()) {
                    throw new DesignException("'" + block.name() + "' in column " + (c + 1) + ", row " + (r + 1)
                            + " is not a rectangle; set it in a square first");
                }
                widths[c] = same(widths[c], block.width(), block, "column", c + 1, "wide");
                heights[r] = same(heights[r], block.height(), block, "row", r + 1, "high");
                blocks[r][c] = block;
            }
        }
        return new Lattice(blocks, widths, heights, gap, frame);
    }

    private static Length same(Length known, Length size, Patchwork block, String line, int number, String way) {
        if (known == null || known.minus(size).abs().inInches() <= Cover.TOLERANCE / 2) {
            return known == null ? size : known;
        }
        throw new DesignException("'" + block.name() + "' is " + size + " " + way + " but " + line + " " + number + " is "
                + known + " " + way + "; make them equal with scaledTo");
    }

    double left(int column) {
        return start(widths, column);
    }

    double top(int row) {
        return start(heights, row);
    }

    private double start(Length[] sizes, int index) {
        double at = frame.inInches();
        for (int i = 0; i < index; i++) {
            at += sizes[i].plus(gap).inInches();
        }
        return at;
    }

    Region outline() {
        int columns = widths.length;
        int rows = heights.length;
        return Region.rectangle(new Box(0, 0, left(columns - 1) + widths[columns - 1].plus(frame).inInches(),
                top(rows - 1) + heights[rows - 1].plus(frame).inInches()));
    }

    List<Placed> placed() {
        List<Placed> placed = new ArrayList<>();
        double[] lefts = new double[widths.length];
        for (int c = 0; c < lefts.length; c++) {
            lefts[c] = left(c);
        }
        for (int r = 0; r < heights.length; r++) {
            double top = top(r);
            for (int c = 0; c < widths.length; c++) {
                placed.add(Placed.at("r" + (r + 1) + "c" + (c + 1), blocks[r][c], lefts[c], top));
            }
        }
        return placed;
    }
}
