package org.calicograph.exhibition;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/** A wall as one stands before it, at an inch to a foot. */
final class WallPicture {

    private static final double SCALE = 1.0 / 12;
    private static final Colour WALL = Colour.hex("#efece4");
    private static final Colour INK = Colour.hex("#3b3a38");
    private static final Colour EYE = Colour.hex("#b5553c");

    private WallPicture() { }

    static Picture of(HangingWall wall, List<HangingPlan.Hung> hung, Length eye) {
        double length = wall.length().inInches();
        double height = wall.height().inInches();
        double mark = Math.max(4, Math.min(length / 45, height / 12));
        List<Picture> parts = new ArrayList<>();
        parts.add(box(0, 0, length, height, WALL));
        parts.add(line(-mark, height, length + mark, height, Pen.of(INK, 0.5)));
        parts.add(line(0, height - eye.inInches(), length, height - eye.inInches(), Pen.of(EYE, 0.3).dashed(3.0, 3.0)));
        for (HangingPlan.Hung h : hung) {
            double left = h.left().inInches();
            double top = height - h.top().inInches();
            double wide = h.entry().width().inInches();
            double high = h.entry().height().inInches();
            Picture quilt = Exhibition.pictureOf(h.entry(), h.number());
            Box b = quilt.bounds();
            parts.add(quilt.moved(-b.left(), -b.top()).transformed(Transform.scale(wide / b.width(), high / b.height())).moved(left, top));
            parts.add(line(left - 2, top, left + wide + 2, top, Pen.of(INK, 0.8)));
            parts.add(words(String.valueOf(h.number()), left + wide / 2, height + mark * 1.4, mark));
        }
        return Picture.group(parts).scaled(SCALE);
    }

    private static Picture box(double left, double top, double width, double height, Colour fill) {
        return new Picture.Shape(List.of(Path.rectangle(new Box(left, top, left + width, top + height))), Paint.of(fill), Pen.of(INK, 0.25));
    }

    private static Picture line(double x0, double y0, double x1, double y1, Pen pen) {
        return new Picture.Shape(List.of(Path.through(new Point(x0, y0), new Point(x1, y1))), Paint.NONE, pen);
    }

    private static Picture words(String text, double x, double y, double size) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, INK);
    }
}
