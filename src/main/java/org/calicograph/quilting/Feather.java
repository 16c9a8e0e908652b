package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/**
 * Feathers: lobes side by side along both sides of a spine. The lobes are spaced so that a whole number
 * fits, on each straight and in each corner, each leaning forward; neighbours share the line between them. Along an open spine they grow lower
 * towards both ends, and a plume closes the tip.
 *
 * @param height of a lobe, from the spine
 * @param width  of a lobe along the spine, about: it is stretched until a whole number fits
 */
public record Feather(Length height, Length width) {

    private static final double LOWEST = 0.45;
    /** How far a lobe leans forward, of its height. */
    private static final double LEAN = 0.55;
    /** Where the lobes are as wide as asked, of their height. */
    private static final double TOPS = 0.8;

    public Feather {
        if (!width.isPositive() || height.compareTo(width) < 0) {
            throw new IllegalArgumentException("a feather lobe " + height + " high and " + width
                    + " wide has no rounded top; make it at least as high as it is wide");
        }
    }

    /** Along any smooth curve, both sides and the spine itself. */
    public List<Path> along(Spine spine) {
        double h = height.inInches();
        for (boolean right : new boolean[] {true, false}) {
            if (spine.reach(right) < h) {
                throw new IllegalArgumentException("the spine bends with a radius of " + Length.inches(spine.reach(right)).roundedTo(Length.inches(1, 16))
                        + " but the feather's lobes are " + height + " high on that side; make them lower or the bend wider");
            }
        }
        double w = spacing(spine);
        List<Path> paths = new ArrayList<>();
        paths.add(spine.path());
        for (int side = -1; side <= 1; side += 2) {
            List<Double> feet = feet(spine, side);
            for (int i = 0; i < feet.size(); i++) {
                double x = feet.get(i);
                boolean last = i == feet.size() - 1;
                Point top = top(x, side, w, spine);
                double tall = h * taper(x, spine);
                Path rib = Path.from(x, 0).curveTo(Point.of(x + 0.18 * tall, side * 0.12 * tall),
                        Point.of(top.x() - 0.16 * tall, top.y() - side * 0.34 * tall), top).open();
                paths.add(spine.bent(rib));
                if (!last || spine.isClosed()) {
                    double then = last ? feet.get(0) + spine.length() : feet.get(i + 1);
                    Point next = top(then, side, w, spine);
                    Point rise = Point.of(0.36 * (then - x), side * 0.8 * w);
                    Path cap = Path.from(top).curveTo(top.plus(rise.times(taper(x, spine))), next.plus(rise.times(taper(then, spine))), next).open();
                    paths.add(spine.bent(cap));
                }
            }
        }
        if (!spine.isClosed()) {
            paths.addAll(plume(spine, w));
        }
        return List.copyOf(paths);
    }

    private double spacing(Spine spine) {
        return spine.length() / Math.max(1, (int) Math.round(spine.length() / width.inInches()));
    }

    /**
     * Where the ribs of one side begin. Where a closed spine turns a corner the tops of the lobes, not their feet, are as
     * far apart as on the straight, a whole number on each straight and in each corner: fewer inside the corner, more outside.
     */
    private List<Double> feet(Spine spine, int side) {
        List<Double> feet = new ArrayList<>();
        List<Spine.Stretch> stretches = spine.stretches(0.3 / height.inInches());
        if (stretches.size() == 1 || !spine.isClosed()) {
            double w = spacing(spine);
            int count = (int) Math.round(spine.length() / w);
            for (int i = 0; i <= (spine.isClosed() ? count - 1 : count); i++) {
                feet.add(i * w);
            }
            return feet;
        }
        for (Spine.Stretch s : stretches) {
            double length = s.to() - s.from();
            double atTop = length * (1 - side * TOPS * height.inInches() * s.curvature());
            int count = Math.max(1, (int) Math.round(atTop / width.inInches()));
            for (int i = 0; i < count; i++) {
                feet.add(s.from() + length * i / count - LEAN * height.inInches());
            }
        }
        return feet;
    }

    /** Where a rib ends. */
    private Point top(double x, int side, double w, Spine spine) {
        double taper = taper(x, spine);
        return Point.of(x + LEAN * height.inInches() * taper, side * (height.inInches() - 0.62 * w) * taper);
    }

    /** Lobes grow lower towards both ends of an open spine; round a closed one all are alike. */
    private double taper(double x, Spine spine) {
        double run = Math.min(3 * height.inInches(), spine.length() / 3);
        double near = Math.min(x, spine.length() - x);
        return spine.isClosed() || near >= run ? 1 : LOWEST + (1 - LOWEST) * Math.sin(Math.PI / 2 * Math.max(0, near) / run);
    }

    /** The end of an open spine: a plume from its tip that joins the two last ribs. */
    private List<Path> plume(Spine spine, double w) {
        double end = spine.length();
        Point right = top(end, 1, w, spine);
        Point left = top(end, -1, w, spine);
        double tip = right.x() + 1.1 * right.y() + 0.5 * w;
        Path plume = Path.from(left).curveTo(Point.of(left.x() + 0.5 * w, 1.5 * left.y()), Point.of(tip, left.y()), Point.of(tip, 0))
                .curveTo(Point.of(tip, right.y()), Point.of(right.x() + 0.5 * w, 1.5 * right.y()), right).open();
        return List.of(spine.bent(plume));
    }

    /** A round wreath. Radius of the spine. */
    public List<Path> wreath(Point centre, Length radius) {
        return along(Spine.along(Path.circle(centre, radius.inInches())));
    }

    /** In a border that runs round a box, turning every corner; the spine runs down its middle. */
    public List<Path> inBorder(Box outer, Length borderWidth) {
        double w = borderWidth.inInches();
        double h = height.inInches();
        // At the border's inner corner the lobes, turning about the centre of the bend, must clear the corner.
        double widest = (w / Math.sqrt(2) - h) / (Math.sqrt(2) - 1);
        double radius = Math.min(Math.min(widest, Math.max(1.6 * h, 0.75 * w)), Math.min(outer.width(), outer.height()) / 2 - w / 2);
        if (radius < 1.15 * h) {
            throw new IllegalArgumentException("a feather with lobes " + height + " high can't turn the corner of a border " + borderWidth
                    + " wide; make its lobes at most " + borderWidth.times(0.47).roundedTo(Length.inches(1, 16)) + " high");
        }
        return along(Spine.around(outer.grownBy(-w / 2), radius));
    }
}
