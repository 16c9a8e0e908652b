package org.calicograph.drawing;

import org.calicograph.measure.Length;

/** A sheet of paper, upright unless turned. Sizes are ISO 216 and ANSI/ASME Y14.1. */
public record Paper(String name, Length width, Length height) {

    /** A4 of ISO 216, 210 x 297 mm. */
    public static final Paper A4 = new Paper("A4", Length.mm(210), Length.mm(297));
    /** A3 of ISO 216, 297 x 420 mm. */
    public static final Paper A3 = new Paper("A3", Length.mm(297), Length.mm(420));
    /** North American Letter, 8 1/2 x 11 in. */
    public static final Paper LETTER = new Paper("Letter", Length.inches(17, 2), Length.inches(11));

    public Paper {
        if (!width.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException("paper '" + name + "' is " + width + " x " + height + "; use sides above 0");
        }
    }

    /** The same sheet lying on its other side. */
    public Paper turned() {
        return new Paper(name, height, width);
    }
}
