package org.calicograph.kernel.planning;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.Cutting;
import org.calicograph.drawing.Exhibit;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Trimming;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilt.Quilt;
import org.calicograph.wire.CutList;

/** From a cell's value to the list of what is cut for it: the same plan that a cell gets from {@code Cutting.of}. */
public final class CutPlans {

    private CutPlans() { }

    /** The list for a quilt, a top or a part of one; for anything else, and for what can't be cut, why there is none. */
    public static CutList of(Optional<Object> value) {
        try {
            return cutting(value.orElse("")).map(CutPlans::list).orElseGet(() -> CutList.none("What hangs is no quilt and no part of one, so nothing is cut for it."));
        } catch (IllegalArgumentException e) {
            return CutList.none("There is no cutting list: " + e.getMessage());
        }
    }

    private static Optional<Cutting> cutting(Object value) {
        if (value instanceof Cutting cutting) {
            return Optional.of(cutting);
        } else if (value instanceof Quilt quilt) {
            return Optional.of(Cutting.of(quilt));
        } else if (value instanceof Patchwork work) {
            return Optional.of(Cutting.of(work));
        } else if (value instanceof Medallion medallion) {
            return Optional.of(Cutting.of(medallion.top()));
        } else if (value instanceof Trimming trimming) {
            return Optional.of(Cutting.of(trimming.top()));
        } else if (value instanceof Applique applique) {
            return Optional.of(Cutting.of(applique));
        }
        return value instanceof Optional<?> inner && inner.isPresent() ? cutting(inner.get()) : Optional.empty();
    }

    private static CutList list(Cutting cutting) {
        List<CutList.Cloth> cloths = cutting.fabrics().stream().map(f -> new CutList.Cloth(f.fabric().name(), Exhibit.several(Exhibit.words(Cutting.CAUTION), f.list(cutting.rules())))).toList();
        Exhibit whole = Exhibit.several(Exhibit.of(cutting.shopping()), Exhibit.words(cutting.assumptions() + "\n" + Cutting.CAUTION));
        return new CutList(cutting.ofPatches(), whole, cloths, "");
    }
}
