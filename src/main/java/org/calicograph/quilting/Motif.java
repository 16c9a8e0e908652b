package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A drawing to be quilted: a name and its lines, its middle at the origin.
 *
 * @param paths one or more, open or closed
 */
public record Motif(String name, List<Path> paths) implements Drawable {

    public Motif {
        paths = List.copyOf(paths);
        if (name.isBlank() || paths.isEmpty()) {
            throw new IllegalArgumentException("a motif needs a name and at least one path; '" + name + "' has " + paths.size());
        }
        Point c = box(paths).centre();
        if (c.norm() > 1e-9) {
            paths = paths.stream().map(p -> p.transformed(Transform.move(c.times(-1)))).toList();
        }
    }

    /** A motif of one's own lines. */
    public static Motif of(String name, Path... paths) {
        return new Motif(name, List.of(paths));
    }

    /** One path turned about a centre so many times: a rosette. */
    public static Motif rosette(String name, int times, Point centre, Path... paths) {
        List<Path> all = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            for (Path p : paths) {
                all.add(p.transformed(Transform.turn(Angle.turn(i, times), centre)));
            }
        }
        return new Motif(name, all);
    }

    private static Box box(List<Path> paths) {
        return paths.stream().map(Path::bounds).reduce(Box::union).orElseThrow();
    }

    /** The smallest upright box that holds it. */
    public Box bounds() {
        return box(paths);
    }

    /** The motif moved, turned, mirrored or made larger. */
    public Motif transformed(Transform t) {
        return new Motif(name, paths.stream().map(p -> p.transformed(t)).toList());
    }

    /** To a width, or to a height where it has no width; proportions are kept. */
    public Motif scaledTo(Length width) {
        if (!width.isPositive()) {
            throw new IllegalArgumentException("motif '" + name + "' can't be made " + width + " wide; use a width above 0");
        }
        double now = bounds().width() > 1e-9 ? bounds().width() : bounds().height();
        return transformed(Transform.scale(width.inInches() / now));
    }

    /** As large as fits a box, less a margin in inches, and set in its middle. */
    public List<Path> fitted(Box into, double margin) {
        Box b = bounds();
        double scale = Math.min((into.width() - 2 * margin) / Math.max(b.width(), 1e-9), (into.height() - 2 * margin) / Math.max(b.height(), 1e-9));
        if (!(scale > 0)) {
            throw new IllegalArgumentException("motif '" + name + "' does not fit a space of " + Length.inches(into.width()) + " x "
                    + Length.inches(into.height()) + " less a margin of " + Length.inches(margin) + "; make the margin smaller");
        }
        return transformed(Transform.scale(scale)).at(into.centre());
    }

    /** Turned about the origin. */
    public Motif turned(Angle angle) {
        return transformed(Transform.turn(angle));
    }

    /** Left for right. */
    public Motif mirrored() {
        return transformed(Transform.mirrorAcross(0));
    }

    /** The lines with the motif's middle at a point. */
    public List<Path> at(Point middle) {
        return paths.stream().map(p -> p.transformed(Transform.move(middle))).toList();
    }

    /** Spread along a curve, a whole number of times, each bent to the curve; they touch end to end. */
    public List<Path> along(Spine spine) {
        Box b = bounds();
        int count = Math.max(1, (int) Math.round(spine.length() / b.width()));
        double step = spine.length() / count;
        if (Math.min(spine.reach(true), spine.reach(false)) < b.height() / 2) {
            throw new IllegalArgumentException("motif '" + name + "' is " + Length.inches(b.height()).roundedTo(Length.inches(1, 16))
                    + " high, too high for the spine's tightest bend; make it smaller or the bend wider");
        }
        List<Path> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Transform t = Transform.scale(step / b.width(), 1).then(Transform.move((i + 0.5) * step, 0));
            for (Path p : paths) {
                all.add(spine.bent(p.transformed(t)));
            }
        }
        return List.copyOf(all);
    }

    /**
     * Along a border round a box: a corner motif in each corner, turned to face it, and this motif a
     * whole number of times along each side, stretched lengthwise to come out even.
     *
     * @param corner drawn for the top left corner; its size is kept up to the border's width
     */
    public List<Path> inBorder(Box outer, Length borderWidth, Motif corner) {
        double w = borderWidth.inInches();
        Box b = bounds();
        if (b.height() > w + 1e-9) {
            throw new IllegalArgumentException("motif '" + name + "' is " + Length.inches(b.height()).roundedTo(Length.inches(1, 16)) + " high but its border is "
                    + borderWidth + " wide; make the motif smaller");
        }
        if (outer.width() <= 2 * w || outer.height() <= 2 * w) {
            throw new IllegalArgumentException("a border " + borderWidth + " wide leaves no side on a box of " + Length.inches(outer.width()) + " x "
                    + Length.inches(outer.height()) + "; make it narrower");
        }
        List<Path> all = new ArrayList<>();
        Point c = outer.centre();
        for (int side = 0; side < 4; side++) {
            boolean level = side % 2 == 0;
            double length = (level ? outer.width() : outer.height()) - 2 * w;
            double away = (level ? outer.height() : outer.width()) / 2 - w / 2;
            int count = Math.max(1, (int) Math.round(length / b.width()));
            double step = length / count;
            Transform turn = Transform.turn(Angle.QUARTER.times(side)).then(Transform.move(c));
            for (int i = 0; i < count; i++) {
                Transform t = Transform.scale(step / b.width(), 1)
                        .then(Transform.move(-length / 2 + (i + 0.5) * step, -away)).then(turn);
                paths.forEach(p -> all.add(p.transformed(t)));
            }
            Transform place = Transform.move(-length / 2 - w / 2, -away).then(turn);
            corner.paths().forEach(p -> all.add(p.transformed(place)));
        }
        return List.copyOf(all);
    }

    @Override
    public Exhibit show() {
        double pen = Math.max(bounds().width(), bounds().height()) / 120;
        return Exhibit.of(new Picture.Shape(paths, Paint.NONE, Pen.of(Colour.hex("#24425c"), pen)), name);
    }
}
