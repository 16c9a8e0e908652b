package org.calicograph.course;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/** The frame with four boxes for swatches and one left white; where they are, as drawn and as photographed. */
final class ColourSheet {

    static final double WIDE = 6.5;
    static final double HIGH = 3.5;
    private static final double SIDE = 1.4;
    private static final Colour INK = Colour.hex("#2b2b2b");

    private ColourSheet() { }

    /** Where a kind's swatch is pasted, in inches from the frame's corner. */
    static Box box(ColourExercise.Kind kind) {
        double left = 0.22 + kind.ordinal() * 1.555;
        return new Box(left, 0.5, left + SIDE, 0.5 + SIDE);
    }

    /** What stays white. */
    static Box white() {
        return new Box(0.22, 2.35, 2.62, 3.25);
    }

    static Picture of(Colour hue) {
        List<Picture> parts = new ArrayList<>();
        parts.add(frame(new Box(0, 0, WIDE, HIGH), Paint.NONE, 0.03));
        for (ColourExercise.Kind kind : ColourExercise.Kind.values()) {
            Box box = box(kind);
            parts.add(words(kind.words(), box.left(), 0.38, 0.17));
            parts.add(frame(box, Paint.NONE, 0.012));
            double left = 3.3 + kind.ordinal() * 0.72;
            parts.add(frame(new Box(left, 2.75, left + 0.5, 3.25), Paint.of(kind.of(hue)), 0.008));
            parts.add(words(kind == ColourExercise.Kind.TRUE_COLOUR ? "true" : kind.words(), left, 2.66, 0.13));
        }
        parts.add(words("Leave white", white().left(), 2.23, 0.15));
        parts.add(words("To aim at", 3.3, 2.36, 0.15));
        parts.add(frame(white(), Paint.NONE, 0.012));
        return Picture.group(parts);
    }

    private static Picture words(String text, double x, double y, double size) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, Picture.Weight.REGULAR, INK);
    }

    private static Picture frame(Box box, Paint paint, double pen) {
        return new Picture.Shape(List.of(Path.rectangle(box)), paint, Pen.of(INK, pen));
    }
}
