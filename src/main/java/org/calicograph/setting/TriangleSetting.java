package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.patchwork.Trimming;

/**
 * Equilateral triangle blocks in rows, points up and down in turn, each row ended straight by half
 * triangles. A block is drafted with its point up; where it points down it is turned by half a turn.
 * Points meet points from row to row. With triangles of side s the top is (columns + 1) / 2 x s wide and
 * rows x s x half the root of 3 high.
 *
 * @param columns whole triangles in a row
 * @param ends    the cloth of the half triangles at the ends
 * @param blocks  true if halves of blocks stand there instead; they are asked for in column -1 and just
 *                beyond the last
 */
public record TriangleSetting(int columns, int rows, Fabric ends, boolean blocks) implements Setting {

    public TriangleSetting {
        Setting.requireCounts("triangle", columns, rows);
    }

    /** The same with halves of blocks at the ends instead of plain cloth. */
    public TriangleSetting partialBlocks() {
        return new TriangleSetting(columns, rows, ends, true);
    }

    @Override
    public Assembly of(BlockAt at) {
        double side = at.at(0, 0).outline().bounds().width();
        double height = side * Math.sqrt(3) / 2;
        Region shape = Region.polygon(new Point(side / 2, 0), new Point(side, height), new Point(0, height));
        Block plain = Block.plain("end triangle", ends, shape);
        String what = "an equilateral triangle of side " + Length.inches(side).roundedTo(Length.inches(1, 64)) + ", its point up";
        Transform over = Transform.turn(Angle.HALF, new Point(side / 2, height / 2));
        List<Placed> parts = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            for (int c = -1; c <= columns; c++) {
                boolean end = c < 0 || c == columns;
                Patchwork block = end && !blocks ? plain
                        : Polygonal.require(at.at(c, r), shape, "in column " + (c + 1) + ", row " + (r + 1), what, "turn or scale it");
                Transform place = Transform.move(c * side / 2, r * height);
                parts.add(new Placed("r" + (r + 1) + "c" + (c + 1), block, Math.floorMod(c + r, 2) == 0 ? place : over.then(place)));
            }
        }
        return Trimming.of("triangle setting", new Box(0, 0, (columns + 1) * side / 2, rows * height), parts).top();
    }
}
