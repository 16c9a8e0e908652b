package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patch;

/** Where each shape of an appliqué is laid, and in which order: a placement drawing at full size and a list. */
public record Laying(Applique applique) implements Drawable {

    /** Goes with every placement drawing. */
    public static final String CAUTION = "Needles and scissors are sharp: count pins in and out. If you fuse shapes, try it on a scrap and "
            + "follow the maker's instructions for iron, cloth and air; a hot iron is never left alone.";

    /** How it is done, whatever the shapes. */
    public static final String ORDER = "Piece the ground first and press it. Lay the shapes in this order; what a later shape covers need not "
            + "be turned under.";

    private static final Colour LINE = Colour.hex("#2b2b2b");
    private static final Pen GROUND = Pen.of(Colour.hex("#a9b4ba"), 0.012);

    /** The order in which shapes are laid, those below first. */
    public static Laying of(Applique applique) {
        return new Laying(applique);
    }

    /** The ground's seams faint, each shape's whole outline with its place in the order, also where a later one will hide it. */
    public Picture placement() {
        List<Picture> parts = new ArrayList<>();
        for (Patch p : applique.ground().patches()) {
            parts.add(Picture.of(p.shape()).outlined(GROUND));
        }
        int number = 1;
        for (Patch p : applique.laid()) {
            Box box = p.shape().bounds();
            double size = Math.max(0.08, Math.min(0.25, Math.min(box.width(), box.height()) / 4));
            parts.add(new Picture.Shape(p.shape().paths(), Paint.of(p.fabric().colour(), 0.25), Pen.of(LINE, 0.014)));
            parts.add(Picture.text(String.valueOf(number++), p.shape().inside().plus(0, size / 3), size));
        }
        return Picture.group(parts);
    }

    /** A row for each shape, in the order of laying. */
    public Table table() {
        Table table = Table.of("Laying: " + applique.name(), "Order", "Shape", "Fabric", "From the left", "From the top");
        int number = 1;
        for (Patch p : applique.laid()) {
            Box box = p.shape().bounds();
            table = table.row(number++, p.id(), p.fabric().name(), sixteenth(box.left()), sixteenth(box.top()));
        }
        return table;
    }

    private static Object sixteenth(double inches) {
        return Length.inches(inches).roundedTo(Length.inches(1, 16));
    }

    @Override
    public Exhibit show() {
        String words = ORDER + " " + CAUTION;
        return Exhibit.several(Exhibit.of(placement(), applique.toString()), Exhibit.of(table()), Exhibit.words(words));
    }
}
