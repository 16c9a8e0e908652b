package org.calicograph.drawing;

import org.calicograph.fabric.Colour;

/** What fills a shape. */
public sealed interface Paint {

    /** Nothing: what lies beneath shows. */
    record None() implements Paint { }

    /** One colour throughout; opacity from 0 (clear) to 1. */
    record Flat(Colour colour, double opacity) implements Paint {
        public Flat {
            if (!(opacity >= 0 && opacity <= 1)) {
                throw new IllegalArgumentException("a paint's opacity is " + opacity + "; use 0 to 1");
            }
        }
    }

    Paint NONE = new None();

    static Paint of(Colour colour) {
        return new Flat(colour, 1);
    }

    static Paint of(Colour colour, double opacity) {
        return new Flat(colour, opacity);
    }
}
