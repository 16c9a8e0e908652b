package org.calicograph.piecing.batch;

import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.cutting.pieces.RotaryRules;
import org.calicograph.measure.Length;

/** Sizes of squares, from the finished triangles that they give. */
record Sizes(CuttingRules rules) {

    /** Gives two triangles whose short sides are so long. */
    Dimension halved(Length leg) {
        return RotaryRules.halfSquare(leg, rules);
    }

    /** The same, larger by half a seam allowance, to be trimmed (common practice: finished size and an inch). */
    Dimension halvedLarge(Length leg) {
        return Dimension.large("square", halved(leg).exact().plus(rules.seam().half()), rules);
    }

    /** Gives four triangles whose long side is so long. */
    Dimension quartered(Length base) {
        return RotaryRules.quarterSquare(base, rules);
    }

    /** The same, larger by a seam allowance, to be trimmed (common practice: finished size and an inch and a half). */
    Dimension quarteredLarge(Length base) {
        return Dimension.large("square", quartered(base).exact().plus(rules.seam()), rules);
    }

    Dimension large(Length exact) {
        return Dimension.large("square", exact, rules);
    }

    /** Sewn as it is cut. */
    Dimension side(Length finished) {
        return RotaryRules.side("side", finished, rules);
    }

    Batch.Size cut(Length width, Length height) {
        return new Batch.Size(width.plus(rules.seam().times(2)), height.plus(rules.seam().times(2)));
    }
}
