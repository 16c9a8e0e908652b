package org.calicograph.drawing;

import java.util.List;
import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;

/** A picture as a value: a shape, a line of lettering, or a group of pictures, in inches on the page. */
public sealed interface Picture permits Picture.Shape, Picture.Lettering, Picture.Group {

    /** Nothing at all. */
    Picture EMPTY = new Group(List.of(), Transform.IDENTITY, Optional.empty());

    /**
     * Paths painted together by the even-odd rule, so that a region's holes stay open.
     *
     * @param paths one or more; open ones are stroked as they are
     */
    record Shape(List<Path> paths, Paint fill, Pen pen) implements Picture {
        public Shape {
            paths = List.copyOf(paths);
            if (paths.isEmpty()) {
                throw new IllegalArgumentException("a shape has no paths; give it one, or use Picture.EMPTY");
            }
        }

        /** The same shape filled with a colour. */
        public Shape filled(Colour colour) {
            return new Shape(paths, Paint.of(colour), pen);
        }

        /** The same shape filled with a paint. */
        public Shape filled(Paint paint) {
            return new Shape(paths, paint, pen);
        }

        /** The same shape with its outline drawn. */
        public Shape outlined(Pen with) {
            return new Shape(paths, fill, with);
        }

        /** The same shape with a transform applied to its paths and its cloth; its pen grows with it. */
        public Shape onto(Transform t) {
            if (t.equals(Transform.IDENTITY)) {
                return this;
            }
            double grown = t.scale();
            Pen scaled = grown == 1 || !pen.draws() ? pen
                    : new Pen(pen.colour(), pen.width() * grown, pen.dashes().stream().map(d -> d * grown).toList());
            return new Shape(paths.stream().map(p -> p.transformed(t)).toList(), fill.onto(t), scaled);
        }
    }

    /**
     * One line of text.
     *
     * @param at     a point on the base line: its start, middle or end, as the anchor says
     * @param size   the height of the type in inches
     * @param anchor which part of the line stands at the point
     */
    record Lettering(String text, Point at, double size, Anchor anchor, Weight weight, Colour colour) implements Picture {
        public Lettering {
            if (!(size > 0)) {
                throw new IllegalArgumentException("the lettering '" + text + "' is " + size + " in high; use a height above 0");
            }
            text = text.replaceAll("\\p{Cntrl}", " ");
        }
    }

    enum Anchor { START, MIDDLE, END }

    enum Weight { REGULAR, BOLD }

    /** Pictures one over another, the first at the bottom, moved together; a label makes them findable, a tag says what they are on a page. */
    record Group(List<Picture> parts, Transform transform, Optional<Label> label, Optional<Tag> tag) implements Picture {
        public Group {
            parts = List.copyOf(parts);
        }

        /** Without a tag. */
        public Group(List<Picture> parts, Transform transform, Optional<Label> label) {
            this(parts, transform, label, Optional.empty());
        }
    }

    /**
     * What a part of a picture is, for those who point at it.
     *
     * @param id    unique within the picture
     * @param title a few words: piece, finished size, fabric
     */
    record Label(String id, String title) {
        /** The id of a page that begins chapters; its title names them, a line each. */
        public static final String CHAPTER = "chapter";
    }

    /** The shape of a region, not yet filled or outlined. */
    static Shape of(Region region) {
        return new Shape(region.paths(), Paint.NONE, Pen.NONE);
    }

    /** The shape of a line, not yet filled or outlined. */
    static Shape of(Path path) {
        return new Shape(List.of(path), Paint.NONE, Pen.SEAM);
    }

    /** A line of text that begins at a point of its base line; size in inches. */
    static Picture text(String text, Point at, double size) {
        return new Lettering(text, at, size, Anchor.MIDDLE, Weight.REGULAR, Colour.hex("#2b2b2b"));
    }

    /** Several pictures, the first lowest. */
    static Picture group(List<? extends Picture> parts) {
        return new Group(List.copyOf(parts), Transform.IDENTITY, Optional.empty());
    }

    /** Several pictures, the first lowest. */
    static Picture group(Picture... parts) {
        return group(List.of(parts));
    }

    /** This picture as one findable part. */
    default Picture labelled(String id, String title) {
        return new Group(List.of(this), Transform.IDENTITY, Optional.of(new Label(id, title)));
    }

    /** This picture as a part of a page that is read aloud. */
    default Picture tagged(Tag tag) {
        return new Group(List.of(this), Transform.IDENTITY, Optional.empty(), Optional.of(tag));
    }

    /** The picture moved, turned, mirrored or made larger. */
    default Picture transformed(Transform t) {
        if (t.equals(Transform.IDENTITY)) {
            return this;
        }
        if (this instanceof Group g && g.label().isEmpty()) {
            return new Group(g.parts(), g.transform().then(t), g.label(), g.tag());
        }
        return new Group(List.of(this), t, Optional.empty());
    }

    /** The picture moved by inches to the right and down. */
    default Picture moved(double dx, double dy) {
        return transformed(Transform.move(dx, dy));
    }

    /** Clockwise about the origin. */
    default Picture turned(Angle angle) {
        return transformed(Transform.turn(angle));
    }

    /** The picture made larger or smaller from the origin. */
    default Picture scaled(double factor) {
        return transformed(Transform.scale(factor));
    }

    /** This picture on top of the other. */
    default Picture over(Picture below) {
        return group(below, this);
    }

    /** The other picture to the right of this one, tops level, with a gap in inches. */
    default Picture beside(Picture right, double gap) {
        Box a = bounds();
        Box b = right.bounds();
        return group(this, right.moved(a.right() + gap - b.left(), a.top() - b.top()));
    }

    /** The other picture beneath this one, left edges level, with a gap in inches. */
    default Picture above(Picture below, double gap) {
        Box a = bounds();
        Box b = below.bounds();
        return group(this, below.moved(a.left() - b.left(), a.bottom() + gap - b.top()));
    }

    /** What the picture covers, line widths and lettering included. An empty picture is a point at the origin. */
    default Box bounds() {
        return Extent.of(this).orElse(new Box(0, 0, 0, 0));
    }

    /** Every shape and lettering with its own transform applied in full, from the bottom up. */
    default List<Picture> flattened() {
        return Extent.flattened(this);
    }
}
