package org.calicograph.drawing.writing;

import java.util.HashMap;
import java.util.Map;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Surface;
import org.calicograph.geometry.Transform;

/** A canvas behind a screen: a line around dark cloth that would be lost on it is drawn in a lighter tint of the cloth instead. On paper lines stay as they are. */
final class SeenSeams implements Surface {

    /** The least that a line has to differ from its cloth in value, to be seen. */
    static final double APART = 20;
    private static final double STEP = 0.05;

    private final Surface canvas;
    private final Map<Colour, Map<Colour, Colour>> known = new HashMap<>();

    SeenSeams(Surface canvas) {
        this.canvas = canvas;
    }

    @Override
    public void shape(Picture.Shape shape, Transform onto) {
        if (shape.pen().draws() && shape.fill() instanceof Paint.Flat flat && flat.opacity() == 1) {
            Colour line = known.computeIfAbsent(flat.colour(), c -> new HashMap<>()).computeIfAbsent(shape.pen().colour(), pen -> seen(pen, flat.colour()));
            canvas.shape(line.equals(shape.pen().colour()) ? shape : new Picture.Shape(shape.paths(), shape.fill(), new Pen(line, shape.pen().width(), shape.pen().dashes())), onto);
        } else {
            canvas.shape(shape, onto);
        }
    }

    /** The pen's own colour where it stands out or the cloth is no darker than middling; else the first tint of the cloth that does. */
    private static Colour seen(Colour pen, Colour cloth) {
        double value = cloth.value();
        if (value >= 50 || Math.abs(pen.value() - value) >= APART) {
            return pen;
        }
        double share = STEP;
        while (cloth.mixed(Colour.WHITE, share).value() - value < APART) {
            share += STEP;
        }
        return cloth.mixed(Colour.WHITE, share);
    }

    @Override
    public void lettering(Picture.Lettering text, Transform onto) {
        canvas.lettering(text, onto);
    }
}
