package org.calicograph.desk.wall;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/**
 * A cloth as it is seen in a picture.
 *
 * @param cloth   its name
 * @param colour  of the first patch of it
 * @param area    finished, in square inches
 * @param share   of all cloth in the picture, from 0 to 1
 * @param patches how many
 */
public record ClothShare(String cloth, Colour colour, double area, double share, int patches) {

    private static final double ACCURACY = 0.05;
    private static final String PATCH = " finished";

    /** The cloths of all patches in a picture, the most first; none in a picture that isn't of patches. */
    public static List<ClothShare> in(Picture picture) {
        Count count = new Count();
        Walk.over(picture, Transform.IDENTITY, count);
        double whole = count.areas.values().stream().mapToDouble(s -> s.area).sum();
        List<ClothShare> all = new ArrayList<>();
        count.areas.forEach((name, sum) -> all.add(new ClothShare(name, sum.colour, sum.area, whole > 0 ? sum.area / whole : 0, sum.patches)));
        all.sort(Comparator.comparingDouble(ClothShare::area).reversed());
        return all;
    }

    /** The cloth that a part's title names, if the part is a patch: patches are titled 'navy, 2 in x 2 in finished'. */
    public static Optional<String> named(String title) {
        int comma = title.indexOf(", ");
        return comma > 0 && title.contains(PATCH) ? Optional.of(title.substring(0, comma)) : Optional.empty();
    }

    /** What one cloth has by now. */
    private static final class Sum {
        private final Colour colour;
        private double area;
        private int patches;

        Sum(Colour colour) {
            this.colour = colour;
        }
    }

    /** Adds the patches of a picture up, by the names of their cloths. */
    private static final class Count implements Surface {
        private final Map<String, Sum> areas = new LinkedHashMap<>();
        private final Deque<Picture.Label> open = new ArrayDeque<>();
        private boolean counted;

        @Override
        public void begin(Picture.Label label) {
            open.push(label);
            counted = false;
        }

        @Override
        public void end(Picture.Label label) {
            open.pop();
            counted = true;
        }

        @Override
        public void shape(Picture.Shape shape, Transform onto) {
            if (open.isEmpty() || counted || shape.fill() instanceof Paint.None) {
                return;
            }
            named(open.peek().title()).ifPresent(name -> {
                counted = true;
                Sum sum = areas.computeIfAbsent(name, n -> new Sum(colour(shape.fill())));
                sum.patches++;
                sum.area += area(shape, onto);
            });
        }

        @Override
        public void lettering(Picture.Lettering text, Transform onto) { }

        private static Colour colour(Paint fill) {
            return fill instanceof Paint.Flat flat ? flat.colour() : fill instanceof Paint.Printed printed ? printed.cloth().at(0.5, 0.5) : Colour.WHITE;
        }

        /** The first outline less those within it. */
        private static double area(Picture.Shape shape, Transform onto) {
            double sum = 0;
            for (Path path : shape.paths()) {
                sum += Math.abs(ring(path.flattened(ACCURACY), onto)) * (sum == 0 ? 1 : -1);
            }
            return Math.max(0, sum);
        }

        private static double ring(List<Point> points, Transform onto) {
            double twice = 0;
            Point before = onto.of(points.get(points.size() - 1));
            for (Point each : points) {
                Point p = onto.of(each);
                twice += before.x() * p.y() - p.x() * before.y();
                before = p;
            }
            return twice / 2;
        }
    }
}
