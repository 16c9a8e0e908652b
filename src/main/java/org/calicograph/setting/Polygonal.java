package org.calicograph.setting;

import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patchwork;

/** Blocks that a setting wants in the shape of a polygon. */
final class Polygonal {

    private Polygonal() { }

    /** @throws DesignException if the block's outline isn't the shape, within half of {@link Cover#TOLERANCE} */
    static Patchwork require(Patchwork block, Region shape, String where, String what, String repair) {
        List<Point> corners = block.outline().outer().joined().corners();
        List<Point> wanted = shape.outer().corners();
        boolean alike = block.outline().isStraight() && block.outline().holes().isEmpty() && corners.size() == wanted.size()
                && corners.stream().allMatch(c -> wanted.stream().anyMatch(w -> w.near(c, Cover.TOLERANCE / 2)));
        if (!alike) {
            throw new DesignException("'" + block.name() + "' " + where + " is " + block.width() + " x " + block.height() + " but this setting wants "
                    + what + "; " + repair);
        }
        return block;
    }
}
