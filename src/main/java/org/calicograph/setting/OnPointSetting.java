package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
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

/**
 * Blocks standing on their points, with exact triangles along the sides and in the corners.
 *
 * <p>With blocks of side s the top is columns x s x root 2 wide. A side triangle has its long side, one
 * block diagonal, on the edge of the quilt; a corner triangle has its two short sides there.
 *
 * <p>In {@link #of(BlockAt)} columns and rows count points: block (c, r) of the main rows stands at the
 * even places (2c, 2r), and the blocks between them at the odd places (2c + 1, 2r + 1).
 */
public record OnPointSetting(int columns, int rows, Fabric triangles) implements Setting {

    public OnPointSetting {
        Setting.requireCounts("on-point", columns, rows);
    }

    @Override
    public Assembly alternating(Patchwork first, Patchwork second) {
        return of((column, row) -> column % 2 == 0 ? first : second);
    }

    @Override
    public Assembly of(BlockAt blocks) {
        Length side = blocks.at(0, 0).width();
        double diagonal = side.inInches() * Math.sqrt(2);
        List<Placed> parts = new ArrayList<>();
        for (int y = 0; y <= 2 * rows - 2; y++) {
            for (int x = y % 2; x <= 2 * columns - 2; x += 2) {
                Patchwork block = blocks.at(x, y);
                requireSquare(block, side);
                Transform place = Transform.turn(Angle.degrees(45)).then(Transform.move((x + 1) * diagonal / 2, y * diagonal / 2));
                parts.add(new Placed("r" + (y + 1) + "c" + (x + 1), block, place));
            }
        }
        addTriangles(parts, diagonal);
        return Assembly.of("on-point setting", Region.rectangle(new Box(0, 0, columns * diagonal, rows * diagonal)), parts);
    }

    private static void requireSquare(Patchwork block, Length side) {
        if (!block.isRectangular() || differ(block.width(), side) || differ(block.height(), side)) {
            throw new DesignException("'" + block.name() + "' is " + block.width() + " x " + block.height()
                    + " but the blocks of this on-point setting are " + side + " square; make it square and scale it to " + side);
        }
    }

    private static boolean differ(Length a, Length b) {
        return a.minus(b).abs().inInches() > Cover.TOLERANCE / 2;
    }

    private void addTriangles(List<Placed> parts, double diagonal) {
        double half = diagonal / 2;
        double right = columns * diagonal;
        double bottom = rows * diagonal;
        // Drawn for the top edge: the long side of a side triangle lies on it, the point hangs down.
        Block side = triangle("side triangle", new Point(0, 0), new Point(diagonal, 0), new Point(half, half));
        Block corner = triangle("corner triangle", new Point(0, 0), new Point(half, 0), new Point(0, half));
        for (int c = 1; c < columns; c++) {
            double x = (c - 0.5) * diagonal;
            parts.add(new Placed("top" + c, side, Transform.move(x, 0)));
            parts.add(new Placed("bottom" + c, side, turned(2).then(Transform.move(x + diagonal, bottom))));
        }
        for (int r = 1; r < rows; r++) {
            double y = (r - 0.5) * diagonal;
            parts.add(new Placed("left" + r, side, turned(3).then(Transform.move(0, y + diagonal))));
            parts.add(new Placed("right" + r, side, turned(1).then(Transform.move(right, y))));
        }
        parts.add(new Placed("corner1", corner, Transform.IDENTITY));
        parts.add(new Placed("corner2", corner, turned(1).then(Transform.move(right, 0))));
        parts.add(new Placed("corner3", corner, turned(2).then(Transform.move(right, bottom))));
        parts.add(new Placed("corner4", corner, turned(3).then(Transform.move(0, bottom))));
    }

    private static Transform turned(int quarters) {
        return Transform.turn(Angle.QUARTER.times(quarters));
    }

    private Block triangle(String name, Point... corners) {
        return Block.plain(name, triangles, Region.polygon(corners));
    }
}
