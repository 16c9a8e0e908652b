package org.calicograph.border;

import java.util.List;
import java.util.Optional;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;

/** What goes round a patchwork in a medallion: a border, or a round that changes its shape and makes it square again. */
public sealed interface Round permits Border, PointRound, OctagonRound, RingRound {

    /** What is inside stands on its point, with four triangles of the fabric to make it a square. */
    static PointRound onPoint(Fabric corners) {
        return new PointRound(corners);
    }

    /** A square inside becomes a regular octagon of the one fabric, and that a square by corners of the other. */
    static OctagonRound octagon(Fabric octagon, Fabric corners) {
        return new OctagonRound(octagon, octagon, corners, Optional.empty());
    }

    /** A ring of so many curved wedges round a square or a circle, in a square ground; the fabrics follow in turn. */
    static RingRound ring(int wedges, Length width, Fabric... fabrics) {
        return new RingRound(wedges, width, List.of(fabrics), Role.BACKGROUND.standIn(), RingRound.USUAL_MARGIN, false);
    }

    /**
     * The round's parts around a patchwork; the first part is what is inside.
     *
     * @param inside the patchwork in the middle
     * @param id     what the round is called in ids, such as {@code border1}
     * @param number its number as messages call it, counted from the inside
     * @throws DesignException if it can't go around, naming the sizes and the repair
     */
    Assembly around(Patchwork inside, String id, int number);
}
