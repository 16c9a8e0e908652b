package org.calicograph.border;

import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;

/** A frame around a rectangular patchwork. */
public sealed interface Border extends Round permits PlainBorder, UnevenBorder, PiecedBorder {

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
}
