package org.calicograph.colour;

/** A colour in plain words: 'pale blue-green', 'dark red', 'brown', 'light grey'. */
public final class ColourName {

    private ColourName() { }

    /** The colour's plain name. */
    public static String of(Colour colour) {
        Oklch c = colour.oklch();
        double value = colour.value();
        if (c.chroma() < 0.02) {
            return value > 95 ? "white" : value < 8 ? "black" : depth(value) + "grey";
        }
        String hue = Wheel.pigment().nearest(colour).name();
        if (hue.endsWith("orange") && value < 50) {
            hue = "brown";
        }
        String muted = c.chroma() < 0.05 ? "greyish " : "";
        return depth(value) + muted + hue;
    }

    private static String depth(double value) {
        return value > 88 ? "pale " : value > 70 ? "light " : value > 35 ? "" : value > 18 ? "dark " : "deep ";
    }
}
