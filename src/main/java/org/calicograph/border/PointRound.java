package org.calicograph.border;

import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A round that stands what is inside on its point: squares set in squares. A rectangle of a x b comes to
 * a square of side (a + b) / root 2; each triangle has one side of the rectangle as its long side.
 */
public record PointRound(Fabric corners) implements Round {

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Frame.requireRectangle(inside, number);
        double r = Math.sqrt(0.5);
        double a = inside.outline().bounds().width() * r;
        double b = inside.outline().bounds().height() * r;
        double s = a + b;
        Point top = new Point(b, 0);
        Point right = new Point(s, a);
        Point bottom = new Point(a, s);
        Point left = new Point(0, b);
        return Assembly.of(inside.name() + " with " + id, Region.rectangle(new Box(0, 0, s, s)), List.of(
                new Placed("centre", inside, Transform.turn(Angle.degrees(45)).then(Transform.move(b, 0))),
                corner(id + "-corner1", left, new Point(0, 0), top), corner(id + "-corner2", top, new Point(s, 0), right),
                corner(id + "-corner3", right, new Point(s, s), bottom), corner(id + "-corner4", bottom, new Point(0, s), left)));
    }

    private Placed corner(String id, Point... points) {
        return Placed.plain(id, "corner triangle", corners, Region.polygon(points));
    }
}
