package org.calicograph.colour;

import java.util.List;

/**
 * What the class looks at for each hue: the true colour, a tint, a tone, a shade, and what stands
 * opposite on the wheel.
 */
public record HueReport(Wheel wheel, List<Row> rows) {

    /** @param opposite the name of the step across the wheel, and its colour */
    public record Row(Wheel.Hue hue, Colour tint, Colour tone, Colour shade, Wheel.Hue opposite) { }

    public HueReport {
        rows = List.copyOf(rows);
    }

    /** Tints and shades halfway to white and two fifths of the way to black; tones halfway to grey. */
    public static HueReport of(Wheel wheel) {
        return new HueReport(wheel, wheel.hues().stream().map(h -> new Row(h, h.colour().tint(0.5), h.colour().tone(0.5),
                h.colour().shade(0.4), wheel.nearest(wheel.opposite(h.colour())))).toList());
    }
}
