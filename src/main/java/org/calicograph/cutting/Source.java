package org.calicograph.cutting;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;

/**
 * What a cutting is of, so that the same can be cut by other rules.
 *
 * @param work      the top, or a part of it; empty for an appliqué
 * @param applique  shapes on their ground; empty for a top
 * @param turnUnder the allowance of laid shapes
 * @param quilt     the quilt that is finished too; empty if only the top is cut
 */
public record Source(Optional<Patchwork> work, Optional<Applique> applique, Length turnUnder, Optional<Quilt> quilt) {

    static Source of(Quilt quilt) {
        return new Source(Optional.of(quilt.top()), Optional.empty(), Pieces.TURN_UNDER, Optional.of(quilt));
    }

    static Source of(Patchwork work) {
        return new Source(Optional.of(work), Optional.empty(), Pieces.TURN_UNDER, Optional.empty());
    }

    static Source of(Applique applique, Length turnUnder) {
        return new Source(Optional.empty(), Optional.of(applique), turnUnder, Optional.empty());
    }

    List<Piece> pieces(CuttingRules rules) {
        return work.map(w -> Pieces.of(w, rules)).orElseGet(() -> Pieces.of(applique.orElseThrow(), rules, turnUnder));
    }
}
