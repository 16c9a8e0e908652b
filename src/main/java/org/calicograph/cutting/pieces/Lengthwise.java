package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;

/** Which way a shape that is cut by template lies on the cloth: its length down the grain. */
final class Lengthwise {

    private static final double NEAR = 2e-3;

    private Lengthwise() { }

    /** True if a straight edge runs along one of the axes. */
    static boolean hasEdgeOnGrain(Region shape) {
        return shape.outer().segments().stream().filter(Line.class::isInstance).map(s -> s.to().minus(s.from()))
                .anyMatch(u -> Math.min(Math.abs(u.x()), Math.abs(u.y())) < NEAR);
    }

    /**
     * The turn that sets the shape's longest axis of symmetry upright; without one, its longest edge. A shape that a quarter turn lays on
     * itself is as long as wide, and stays as it stands.
     */
    static Transform turn(Region shape) {
        List<Segment> edges = shape.outer().joined().segments();
        if (isQuartered(shape, edges)) {
            return Transform.IDENTITY;
        }
        List<Point> marks = new ArrayList<>();
        for (Segment s : edges) {
            marks.add(s.from());
            marks.add(s.middle());
        }
        Point along = Point.ORIGIN;
        Point middle = Point.ORIGIN;
        for (int i = 0; i < edges.size(); i++) {
            Point axis = marks.get(i + edges.size()).minus(marks.get(i));
            if (axis.norm() > along.norm() + NEAR && isAxis(marks, i)) {
                along = axis;
                middle = marks.get(i).plus(axis.times(0.5));
            }
        }
        if (along.norm() == 0) {
            for (Segment s : edges) {
                Point chord = s.to().minus(s.from());
                if (chord.norm() > along.norm() + NEAR) {
                    along = chord;
                    middle = s.from().plus(chord.times(0.5));
                }
            }
        }
        // The slim end stands upwards.
        boolean down = shape.centroid().minus(middle).dot(along) > 0;
        double degrees = Math.toDegrees(Math.atan2(along.y(), along.x()));
        return Transform.turn(Angle.degrees((down ? -90 : 90) - degrees));
    }

    private static boolean isQuartered(Region shape, List<Segment> edges) {
        int n = edges.size();
        Transform quarter = Transform.turn(Angle.QUARTER, shape.centroid());
        return n % 4 == 0 && IntStream.range(0, n).allMatch(i -> {
            Segment image = edges.get((i + n / 4) % n);
            Segment edge = edges.get(i);
            // Edges run one way round or the other, and a quarter turn goes with it or against it.
            return List.of(quarter, Transform.turn(Angle.QUARTER.negated(), shape.centroid())).stream()
                    .anyMatch(t -> t.of(edge.from()).near(image.from(), NEAR) && t.of(edge.middle()).near(image.middle(), NEAR));
        });
    }

    /** Corners and middles of edges in turn, so that what lies as far before the axis as after it must be its image. */
    private static boolean isAxis(List<Point> marks, int at) {
        int n = marks.size();
        Point from = marks.get(at);
        Point u = marks.get((at + n / 2) % n).minus(from).unit();
        for (int k = 1; k < n / 2; k++) {
            Point a = marks.get((at + k) % n).minus(from);
            Point b = marks.get((at + n - k) % n).minus(from);
            if (Math.abs(a.dot(u) - b.dot(u)) > NEAR || Math.abs(a.cross(u) + b.cross(u)) > NEAR) {
                return false;
            }
        }
        return true;
    }
}
