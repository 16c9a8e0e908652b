package org.calicograph.quilt;

import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;

/** A frame around a rectangular patchwork. */
public sealed interface Border permits PlainBorder, UnevenBorder, PiecedBorder {

    /** Strips of one fabric, butted: the side strips first, then top and bottom over their ends. */
    static PlainBorder plain(Fabric fabric, Length width) {
        return new PlainBorder(fabric, width, PlainBorder.Corner.BUTTED, Block.plain(fabric, width, width));
    }

    /** Butted strips of one width on the sides and another at the ends; one of the two may be none. */
    static UnevenBorder plain(Fabric fabric, Length sides, Length ends) {
        return new UnevenBorder(fabric, sides, ends);
    }

    /** A unit repeated along every side; it is drafted for the top side, its outer edge upwards. */
    static PiecedBorder of(Patchwork unit) {
        return PiecedBorder.of(unit);
    }

    /** The finished width of the border; where it has two, the wider. */
    Length width();

    /**
     * The border's parts around a patchwork.
     *
     * @param inside the patchwork in the middle
     * @param id     what the border is called in ids, such as {@code border1}
     * @param number its number as messages call it, counted from the inside
     * @throws DesignException if it can't go around, naming the sizes and the repair
     */
    Assembly around(Patchwork inside, String id, int number);
}
