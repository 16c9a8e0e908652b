package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.PathPen;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Melons along the sides of a net of squares, four meeting at each of its points: rings appear that reach through each other. Between four
 * melons lies a middle of the fabric; the edge of the top stays as the outer melons leave it, in scallops.
 *
 * <p>Melons are of two quarter arcs, which is what fills the round where four of them meet. With melons as long as d the top is
 * columns x d wide, and at each side (root 2 - 1) x d / 2 more for the scallops.
 *
 * <p>A level melon is asked for in column 2 i + 1 and row 2 j, an upright one in column 2 i and row 2 j + 1, both counted from the point of the net
 * where it begins. They are turned end for end by turns, so that of the four ends at a point those of the level ones are alike, and the
 * others.
 *
 * @param columns rings side by side
 * @param rows    rings one below another
 * @param middle  the cloth between the melons
 */
public record RingSetting(int columns, int rows, Fabric middle) implements Setting {

    private static final double QUARTER = Math.tan(Math.PI / 8);

    public RingSetting {
        Setting.requireCounts("ring", columns, rows);
    }

    /** The first as every level melon, the second as every upright one. */
    @Override
    public Assembly alternating(Patchwork first, Patchwork second) {
        return of((column, row) -> row % 2 == 0 ? first : second);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        double d = blocks.at(1, 0).outline().bounds().width();
        List<Placed> parts = new ArrayList<>();
        for (int j = 0; j <= rows; j++) {
            for (int i = 0; i < columns; i++) {
                int degrees = (i + j) % 2 == 0 ? 0 : 180;
                parts.add(placed("level" + (j + 1) + "-" + (i + 1), melon(blocks, 2 * i + 1, 2 * j, d), degrees, (i + 0.5) * d, j * d));
            }
        }
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i <= columns; i++) {
                int degrees = (i + j) % 2 == 0 ? -90 : 90;
                parts.add(placed("upright" + (j + 1) + "-" + (i + 1), melon(blocks, 2 * i, 2 * j + 1, d), degrees, i * d, (j + 0.5) * d));
            }
        }
        Block between = Block.plain("ring's middle", middle, Region.of(Path.from(0, 0).arcTo(new Point(d, 0), -QUARTER).arcTo(new Point(d, d), -QUARTER)
                .arcTo(new Point(0, d), -QUARTER).arcTo(new Point(0, 0), -QUARTER).close()));
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                parts.add(new Placed("middle" + (j + 1) + "-" + (i + 1), between, Transform.move(i * d, j * d)));
            }
        }
        return Assembly.of("ring setting", scallops(d), parts);
    }

    private Region scallops(double d) {
        PathPen pen = Path.from(0, 0);
        for (int i = 1; i <= columns; i++) {
            pen = pen.arcTo(new Point(i * d, 0), QUARTER);
        }
        for (int j = 1; j <= rows; j++) {
            pen = pen.arcTo(new Point(columns * d, j * d), QUARTER);
        }
        for (int i = columns - 1; i >= 0; i--) {
            pen = pen.arcTo(new Point(i * d, rows * d), QUARTER);
        }
        for (int j = rows - 1; j >= 0; j--) {
            pen = pen.arcTo(new Point(0, j * d), QUARTER);
        }
        return Region.of(pen.close());
    }

    private static Placed placed(String id, Patchwork melon, int degrees, double x, double y) {
        Point centre = melon.outline().bounds().centre();
        return new Placed(id, melon, Transform.turn(Angle.degrees(degrees), centre).then(Transform.move(x - centre.x(), y - centre.y())));
    }

    private static Patchwork melon(BlockAt blocks, int column, int row, double d) {
        Patchwork melon = blocks.at(column, row);
        Point c = melon.outline().bounds().centre();
        double radius = d / Math.sqrt(2);
        boolean fits = melon.outline().holes().isEmpty() && melon.outline().outer().flattened(Region.ACCURACY).stream().allMatch(p ->
                Math.abs(p.distance(new Point(c.x(), c.y() + (p.y() < c.y() ? d / 2 : -d / 2))) - radius) < Cover.TOLERANCE / 2);
        if (!fits) {
            throw new DesignException("'" + melon.name() + "' in column " + column + ", row " + row + " is " + melon.width() + " x " + melon.height()
                    + " but a ring setting wants melons that lie level, of two quarter arcs, " + Length.inches(d).roundedTo(Length.inches(1, 64)) + " x "
                    + Length.inches(d * (Math.sqrt(2) - 1)).roundedTo(Length.inches(1, 64)) + "; draft it between two quarter arcs, or scale it");
        }
        return melon;
    }
}
