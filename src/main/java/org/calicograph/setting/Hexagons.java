package org.calicograph.setting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A net of hexagons standing on a point. A place is counted by steps to the right, and by steps down to
 * the right.
 *
 * @param side the side of a hexagon, in inches
 */
record Hexagons(double side) {

    /** Steps to the six neighbours, clockwise from the right. */
    static final int[][] STEPS = {{1, 0}, {0, 1}, {-1, 1}, {-1, 0}, {0, -1}, {1, -1}};

    static Hexagons of(Patchwork block) {
        return new Hexagons(block.outline().bounds().height() / 2);
    }

    /** From side to side. */
    double width() {
        return side * Math.sqrt(3);
    }

    private Region shape() {
        return Region.of(Path.regular(6, new Point(width() / 2, side), side, Angle.degrees(-90)));
    }

    Block plain(Fabric fabric) {
        return Block.plain("hexagon", fabric, shape());
    }

    /** @throws DesignException if the block is no hexagon on its point of this size */
    Patchwork require(Patchwork block, int column, int row) {
        return Polygonal.require(block, shape(), "in column " + (column + 1) + ", row " + (row + 1), "a hexagon of side "
                + Length.inches(side).roundedTo(Length.inches(1, 64)) + " that stands on a point",
                "turn it by 30 degrees if it lies on a side, or scale it");
    }

    /** A block at a place, the hexagon at none and none having its centre at x and y. */
    Placed placed(String id, Patchwork block, int right, int downRight, double x, double y) {
        double cx = x + width() * (right + downRight / 2.0);
        double cy = y + 1.5 * side * downRight;
        return Placed.at(id, block, cx - width() / 2, cy - side);
    }

    /** The places of a ring about none and none, clockwise from the upper right. */
    static List<int[]> ring(int radius) {
        List<int[]> ring = new ArrayList<>();
        if (radius == 0) {
            ring.add(new int[] {0, 0});
            return ring;
        }
        int[] at = {radius, -radius};
        for (int side = 1; side <= 6; side++) {
            for (int i = 0; i < radius; i++) {
                ring.add(at.clone());
                at[0] += STEPS[side % 6][0];
                at[1] += STEPS[side % 6][1];
            }
        }
        return ring;
    }
}
