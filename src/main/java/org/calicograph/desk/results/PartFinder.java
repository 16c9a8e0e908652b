package org.calicograph.desk.results;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Says which labelled part of a picture lies under a point. */
public final class PartFinder implements Surface {

    /** How far a polygon may stray from a curve, in inches. */
    private static final double ACCURACY = 0.02;
    private static final int FINE = 8;

    /** A filled shape of a labelled part: its bounds, and its outlines as polygons. */
    private record Area(Picture.Label label, double left, double top, double right, double bottom, List<double[]> rings) { }

    private final List<Area> areas = new ArrayList<>();
    private final Deque<Picture.Label> open = new ArrayDeque<>();

    private PartFinder() { }

    static PartFinder of(Picture picture) {
        PartFinder finder = new PartFinder();
        Walk.over(picture, Transform.IDENTITY, finder);
        return finder;
    }

    /** The title of the topmost part of a picture at a point in inches. */
    public static Optional<String> titleAt(Picture picture, Point p) {
        return of(picture).at(p).map(Picture.Label::title);
    }

    /** How many parts of a picture have a title that is wanted. */
    public static int count(Picture picture, Predicate<String> wanted) {
        return (int) of(picture).areas.stream().map(Area::label).distinct().filter(l -> wanted.test(l.title())).count();
    }

    /** A point well inside the first part whose title is wanted, and not beneath another. */
    static Optional<Point> within(Picture picture, Predicate<String> wanted) {
        PartFinder finder = of(picture);
        for (Area area : finder.areas) {
            if (wanted.test(area.label.title())) {
                for (int i = 1; i < FINE * FINE; i++) {
                    // From the middle of a grid that grows finer in no order that a shape could avoid.
                    double u = (i * 0.6180339887498949) % 1;
                    double v = (i * 0.7548776662466927) % 1;
                    Point p = new Point(area.left + u * (area.right - area.left), area.top + v * (area.bottom - area.top));
                    if (finder.at(p).filter(area.label::equals).isPresent()) {
                        return Optional.of(p);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** The label of the topmost part at a point in inches. */
    Optional<Picture.Label> at(Point p) {
        for (int i = areas.size() - 1; i >= 0; i--) {
            Area area = areas.get(i);
            if (p.x() >= area.left && p.x() <= area.right && p.y() >= area.top && p.y() <= area.bottom && inside(area.rings, p)) {
                return Optional.of(area.label);
            }
        }
        return Optional.empty();
    }

    @Override
    public void begin(Picture.Label label) {
        open.push(label);
    }

    @Override
    public void end(Picture.Label label) {
        open.pop();
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        if (open.isEmpty() || shape.fill() instanceof Paint.None) {
            return;
        }
        List<double[]> rings = new ArrayList<>();
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Path path : shape.paths()) {
            List<Point> points = path.flattened(ACCURACY);
            double[] ring = new double[points.size() * 2];
            for (int i = 0; i < points.size(); i++) {
                Point q = onto.of(points.get(i));
                ring[2 * i] = q.x();
                ring[2 * i + 1] = q.y();
                left = Math.min(left, q.x());
                right = Math.max(right, q.x());
                top = Math.min(top, q.y());
                bottom = Math.max(bottom, q.y());
            }
            rings.add(ring);
        }
        areas.add(new Area(open.peek(), left, top, right, bottom, rings));
    }

    @Override
    public void lettering(Picture.Lettering text, Transform onto) { }

    /** By the even-odd rule over all rings. */
    private static boolean inside(List<double[]> rings, Point p) {
        boolean in = false;
        for (double[] ring : rings) {
            int n = ring.length / 2;
            for (int i = 0, j = n - 1; i < n; j = i++) {
                double yi = ring[2 * i + 1];
                double yj = ring[2 * j + 1];
                if (yi > p.y() != yj > p.y()
                        && p.x() < (ring[2 * j] - ring[2 * i]) * (p.y() - yi) / (yj - yi) + ring[2 * i]) {
                    in = !in;
                }
            }
        }
        return in;
    }
}
