package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/** Plain pictures of a top, for reports beside one another. */
public final class TopPicture {

    static final Colour INK = Colour.hex("#2b2b2b");
    private static final Pen SEAM = Pen.of(Colour.hex("#55524c"), 1);

    private TopPicture() { }

    /** Every patch in its colour, the whole scaled to a width in inches. */
    public static Picture of(Patchwork work, double width) {
        Box box = work.outline().bounds();
        double scale = width / box.width();
        List<Patch> patches = work.patches();
        double seam = patches.size() > 600 ? 0 : 0.006 / scale;
        List<Picture> shapes = new ArrayList<>(patches.size());
        for (Patch p : patches) {
            Pen pen = seam > 0 ? SEAM.wide(seam) : Pen.of(p.fabric().colour(), 0.002 / scale);
            shapes.add(Picture.of(p.shape()).filled(Paint.of(p.fabric())).outlined(pen).labelled(p.id(), p.title()));
        }
        return Picture.group(shapes).scaled(scale);
    }

    /** Words at a place, in inches. */
    public static Picture line(String text, double x, double y, double size) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, Picture.Weight.REGULAR, INK);
    }

    static Picture strong(String text, double x, double y, double size) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, Picture.Weight.BOLD, INK);
    }

    /** A box of one colour, in inches. */
    public static Picture box(double left, double top, double width, double height, Colour colour) {
        return Picture.of(Path.rectangle(new Box(left, top, left + width, top + height))).filled(colour)
                .outlined(Pen.of(Colour.hex("#8a857c"), 0.006));
    }
}
