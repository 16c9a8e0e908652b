package org.calicograph.desk.results;

import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import org.calicograph.colour.Colour;

/** The colour that the style sheet gives a frame: that of the wall by day, a dark one by night. */
final class Ground {

    private Ground() { }

    static Colour of(Region frame, Colour otherwise) {
        if (frame.getBackground() != null && !frame.getBackground().getFills().isEmpty() && frame.getBackground().getFills().get(0).getFill() instanceof Color fill) {
            return Colour.packed(((int) Math.round(fill.getRed() * 255) << 16) | ((int) Math.round(fill.getGreen() * 255) << 8)
                    | (int) Math.round(fill.getBlue() * 255));
        }
        return otherwise;
    }
}
