package org.calicograph.geometry;

import org.calicograph.measure.Angle;

/**
 * The size of a shape along itself: of the upright box and the boxes that lie along one of its straight edges, the one of
 * the least area; where several are as small, the upright one, else the one along the longest edge. A square is as wide
 * however it is turned. In inches.
 *
 * @param width  along the edge
 * @param height across it
 */
public record OwnBox(double width, double height) {

    private static final double AS_SMALL = 1e-6;

    /** The box of a shape along its own longest straight side. */
    public static OwnBox of(Region shape) {
        Box upright = shape.bounds();
        OwnBox best = new OwnBox(upright.width(), upright.height());
        double edge = 0;
        for (Segment side : shape.outer().joined().segments()) {
            Point along = side.to().minus(side.from());
            boolean level = Math.abs(along.x()) < 1e-9 || Math.abs(along.y()) < 1e-9;
            if (!(side instanceof Line) || level) {
                continue;
            }
            Box turned = shape.transformed(Transform.turn(new Angle(-along.direction().degrees()))).bounds();
            double gain = best.area() - turned.width() * turned.height();
            if (gain > AS_SMALL || edge > 0 && gain > -AS_SMALL && along.norm() > edge + AS_SMALL) {
                best = new OwnBox(turned.width(), turned.height());
                edge = along.norm();
            }
        }
        return best;
    }

    private double area() {
        return width * height;
    }
}
