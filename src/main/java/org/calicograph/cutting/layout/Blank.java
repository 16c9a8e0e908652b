package org.calicograph.cutting.layout;

import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * A rectangle to be cut from cloth: a piece itself, or what pieces are sub-cut from.
 *
 * @param name     what it is called on the layout
 * @param across   its size across the width of the fabric
 * @param along    its size along the selvedge
 * @param turnable false where the print or the grain forbids a quarter turn
 */
public record Blank(String name, Length across, Length along, boolean turnable) {

    /** @throws IllegalArgumentException if a side is not above 0 */
    public Blank {
        if (!across.isPositive() || !along.isPositive()) {
            throw new IllegalArgumentException("'" + name + "' is " + across + " by " + along + "; both sides must be above 0");
        }
    }

    /** A blank that may be turned. */
    public static Blank of(String name, Length across, Length along) {
        return new Blank(name, across, along, true);
    }

    /** The same blank with its direction kept. */
    public Blank directed() {
        return new Blank(name, across, along, false);
    }

    public Blank turned() {
        return new Blank(name, along, across, turnable);
    }

    public Area area() {
        return Area.of(across, along);
    }
}
