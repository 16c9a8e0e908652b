package org.calicograph.drawing;

import org.calicograph.fabric.Cloth;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Transform;

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

    /**
     * A cloth with its picture repeated.
     *
     * @param lay how the cloth lies: from inches on the cloth to inches in the picture
     */
    record Printed(Cloth cloth, Transform lay) implements Paint {
        public Printed {
            if (lay.determinant() == 0) {
                throw new IllegalArgumentException("a cloth that is laid flat to a line shows nothing; scale it by more than 0");
            }
        }
    }

    /** Leaves what is below in sight. */
    Paint NONE = new None();

    /** One colour, covering. */
    static Paint of(Colour colour) {
        return new Flat(colour, 1);
    }

    /** One colour, from 0 for clear to 1 for covering. */
    static Paint of(Colour colour, double opacity) {
        return new Flat(colour, opacity);
    }

    /** Cloth at true scale, its grain upright. */
    static Paint of(Cloth cloth) {
        return new Printed(cloth, Transform.IDENTITY);
    }

    /** What a fabric looks like: its picture where there is one, else its colour. */
    static Paint of(Fabric fabric) {
        return fabric.print().picture().map(Paint::of).orElseGet(() -> of(fabric.colour()));
    }

    /** The paint as it lies once its shape is transformed. */
    default Paint onto(Transform t) {
        return this instanceof Printed printed ? new Printed(printed.cloth(), printed.lay().then(t)) : this;
    }

    /** The same in one colour where it is a print: as it reads from across the room. */
    default Paint plain() {
        return this instanceof Printed printed ? of(printed.cloth().photo().meanColour()) : this;
    }
}
