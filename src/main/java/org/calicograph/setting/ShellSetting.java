package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.patchwork.Trimming;

/**
 * Shells in rows like scales, each row half a shell lower and half a shell aside, filled to a straight rectangle by partial shells. With shells
 * as wide as w the top is columns x w wide and (rows + 1) x w / 2 high; every second row has one whole shell less and a half one at
 * either end.
 *
 * @param edge   the cloth of the partial shells along the edge
 * @param blocks true if shells cut by the edge stand there instead; they are asked for in column -1, row -1 and just beyond the last
 */
public record ShellSetting(int columns, int rows, Fabric edge, boolean blocks) implements Setting {

    public ShellSetting {
        Setting.requireCounts("shell", columns, rows);
    }

    /** The same with shells cut by the edge instead of plain cloth along it. */
    public ShellSetting partialBlocks() {
        return new ShellSetting(columns, rows, edge, true);
    }

    @Override
    public Assembly of(BlockAt at) {
        double r = at.at(0, 0).outline().bounds().width() / 2;
        Block plain = Block.plain("edge shell", edge, Region.of(Path.from(0, r).arcAbout(new Point(r, r), Angle.QUARTER).arcTo(new Point(2 * r, r), Math.tan(Math.PI / 8))
                .arcAbout(new Point(2 * r, 2 * r), Angle.QUARTER.negated()).arcTo(new Point(0, r), -Math.tan(Math.PI / 8)).close()));
        List<Placed> parts = new ArrayList<>();
        for (int row = -1; row <= rows; row++) {
            int shift = Math.floorMod(row, 2);
            int last = shift == 0 ? columns : columns - 1;
            boolean outside = row < 0 || row == rows;
            for (int c = -shift; c < last + shift; c++) {
                boolean whole = !outside && c >= 0 && c < last;
                Patchwork block = whole || blocks ? shell(at, c, row, r) : plain;
                parts.add(Placed.at("r" + (row + 1) + "c" + (c + 1), block, (2 * c + shift) * r, row * r));
            }
        }
        return Trimming.of("shell setting", new Box(0, 0, 2 * columns * r, (rows + 1) * r), parts).top();
    }

    private static Patchwork shell(BlockAt at, int column, int row, double r) {
        Patchwork shell = at.at(column, row);
        boolean fits = shell.outline().holes().isEmpty() && shell.outline().outer().flattened(Region.ACCURACY).stream().allMatch(p -> {
            Point middle = p.y() < r ? new Point(r, r) : new Point(p.x() < r ? 0 : 2 * r, 2 * r);
            return Math.abs(p.distance(middle) - r) < Cover.TOLERANCE / 2;
        });
        if (!fits) {
            throw new DesignException("'" + shell.name() + "' in column " + (column + 1) + ", row " + (row + 1) + " is " + shell.width() + " x " + shell.height()
                    + " but a shell setting wants shells with a half circle above and two quarter circles below, " + Length.inches(2 * r).roundedTo(Length.inches(1, 64))
                    + " wide; turn it upright, or scale it");
        }
        return shell;
    }
}
