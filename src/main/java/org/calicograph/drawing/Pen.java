package org.calicograph.drawing;

import java.util.List;
import org.calicograph.colour.Colour;

/**
 * The line around a shape or along a path.
 *
 * @param width   inches; 0 draws nothing
 * @param dashes  lengths on and off in turn, in inches; empty for an unbroken line
 */
public record Pen(Colour colour, double width, List<Double> dashes) {

    /** Draws nothing. */
    public static final Pen NONE = new Pen(Colour.BLACK, 0, List.of());
    /** A seam line as drafted. */
    public static final Pen SEAM = new Pen(Colour.hex("#3b3a38"), 0.02, List.of());
    /** A construction line. */
    public static final Pen CONSTRUCTION = new Pen(Colour.hex("#8c9aa3"), 0.012, List.of());

    public Pen {
        if (!(width >= 0)) {
            throw new IllegalArgumentException("a pen is " + width + " in wide; use 0 or more");
        }
        if (dashes.stream().anyMatch(d -> !(d > 0))) {
            throw new IllegalArgumentException("a pen's dashes are " + dashes + " in; use lengths above 0");
        }
        dashes = List.copyOf(dashes);
    }

    /** A whole line of a colour, so many inches wide. */
    public static Pen of(Colour colour, double width) {
        return new Pen(colour, width, List.of());
    }

    /** The same pen in dashes: line and gap by turns, in inches. */
    public Pen dashed(Double... lengths) {
        return new Pen(colour, width, List.of(lengths));
    }

    /** The same pen, so many inches wide. */
    public Pen wide(double inches) {
        return new Pen(colour, inches, dashes);
    }

    /** True if it leaves a line. */
    public boolean draws() {
        return width > 0;
    }
}
