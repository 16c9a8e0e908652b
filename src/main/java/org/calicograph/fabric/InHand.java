package org.calicograph.fabric;

import java.util.Optional;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/** How much of a fabric there is. */
public sealed interface InHand {

    /** As much as the quilt needs can be had. */
    record AsNeeded() implements InHand { }

    /** A length off the bolt, at the fabric's usable width. */
    record OffTheBolt(Length length) implements InHand {
        public OffTheBolt {
            if (length.units() < 0) {
                throw new IllegalArgumentException("there can't be " + length + " of a fabric; measure what is there, 0 if it is used up");
            }
        }
    }

    /** Pieces of no particular shape, counted by area. */
    record Scraps(Area pieces) implements InHand {
        public Scraps {
            if (!(pieces.squareInches() >= 0 && pieces.squareInches() < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("there can't be " + pieces.squareInches()
                        + " sq in of a fabric; measure what is there, 0 if it is used up");
            }
        }
    }

    /** As much as is needed: it will be bought. */
    InHand AS_NEEDED = new AsNeeded();

    /** A length of the cloth's whole width. */
    static InHand of(Length length) {
        return new OffTheBolt(length);
    }

    /** Scraps of so much area together. */
    static InHand of(Area scraps) {
        return new Scraps(scraps);
    }

    /** The area at a usable width; empty if as much as needed can be had. */
    default Optional<Area> area(Length usableWidth) {
        if (this instanceof OffTheBolt bolt) {
            return Optional.of(Area.of(bolt.length(), usableWidth));
        }
        return this instanceof Scraps scraps ? Optional.of(scraps.pieces()) : Optional.empty();
    }

    /** In words: 'as needed', '18 in off the bolt', '120 sq in of scraps'. */
    default String words() {
        if (this instanceof OffTheBolt bolt) {
            return bolt.length() + " off the bolt";
        }
        return this instanceof Scraps scraps ? scraps.pieces() + " of scraps" : "as needed";
    }
}
