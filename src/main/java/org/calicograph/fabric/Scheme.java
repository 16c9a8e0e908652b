package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourName;
import org.calicograph.colour.Wheel;
import org.calicograph.measure.Angle;

/** Colours that are chosen together by where they stand on a wheel; the trade's usual names. */
public enum Scheme {

    /** One hue: a tint, the colour, a tone and a shade of it. */
    MONOCHROMATIC(0),
    ANALOGOUS(0, 330, 30),
    COMPLEMENTARY(0, 180),
    SPLIT_COMPLEMENTARY(0, 150, 210),
    TRIADIC(0, 120, 240),
    SQUARE(0, 90, 180, 270),
    RECTANGLE(0, 60, 180, 240);

    private final int[] degrees;

    Scheme(int... degrees) {
        this.degrees = degrees;
    }

    /**
     * The scheme that starts from a colour, which comes first.
     *
     * @throws IllegalArgumentException if the colour is a grey
     */
    public Palette on(Wheel wheel, Colour colour) {
        List<Colour> colours = new ArrayList<>();
        for (int d : degrees) {
            colours.add(d == 0 ? colour : wheel.turned(colour, Angle.degrees(d)));
        }
        if (this == MONOCHROMATIC) {
            wheel.placeOf(colour);
            colours.addAll(List.of(colour.tint(0.5), colour.tone(0.5), colour.shade(0.4)));
        }
        return Palette.of(words() + " from " + ColourName.of(colour), colours);
    }

    /** How the trade calls it. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
