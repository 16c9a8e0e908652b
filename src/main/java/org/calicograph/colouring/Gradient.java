package org.calicograph.colouring;

import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.patchwork.Patchwork;

/** A number from 0 to 1 for each place on the quilt. */
public sealed interface Gradient {

    /** From 0 at one point to 1 at another, straight across; level beyond both. */
    record Across(Point from, Point to) implements Gradient {
        public Across {
            if (from.distance(to) == 0) {
                throw new IllegalArgumentException("a gradient from " + from + " to the same point has no direction; move one");
            }
        }
    }

    /** Once around a centre, clockwise, from 0 at a direction. */
    record Around(Point centre, Angle start) implements Gradient { }

    /** From 0 at a centre to 1 at a distance in inches, and beyond. */
    record Outward(Point centre, double radius) implements Gradient {
        public Outward {
            if (!(radius > 0)) {
                throw new IllegalArgumentException("a gradient reaches " + radius + " in outward; use a distance above 0");
            }
        }
    }

    /** From 0 at the left edge to 1 at the right. */
    static Gradient leftToRight(Patchwork work) {
        var box = work.outline().bounds();
        return new Across(box.topLeft(), new Point(box.right(), box.top()));
    }

    /** From 0 at the upper edge to 1 at the lower. */
    static Gradient topToBottom(Patchwork work) {
        var box = work.outline().bounds();
        return new Across(box.topLeft(), new Point(box.left(), box.bottom()));
    }

    /** From 0 at the upper left corner to 1 at the lower right. */
    static Gradient cornerToCorner(Patchwork work) {
        var box = work.outline().bounds();
        return new Across(box.topLeft(), new Point(box.right(), box.bottom()));
    }

    /** From the middle to the farthest corner. */
    static Gradient outward(Patchwork work) {
        var box = work.outline().bounds();
        return new Outward(box.centre(), box.centre().distance(box.topLeft()));
    }

    /** Around the middle, from the top. */
    static Gradient around(Patchwork work) {
        return new Around(work.outline().bounds().centre(), Angle.degrees(-90));
    }

    /** Where a point stands, from 0 to 1. */
    default double at(Point p) {
        double t;
        if (this instanceof Across a) {
            Point way = a.to().minus(a.from());
            t = p.minus(a.from()).dot(way) / way.dot(way);
        } else if (this instanceof Around a) {
            Point step = p.minus(a.centre());
            t = step.norm() == 0 ? 0 : step.direction().minus(a.start()).normalised().degrees() / 360;
        } else {
            Outward o = (Outward) this;
            t = p.distance(o.centre()) / o.radius();
        }
        return Math.min(1, Math.max(0, t));
    }
}
