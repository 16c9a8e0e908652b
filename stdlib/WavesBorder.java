package org.calicograph.stdlib;

import org.calicograph.measure.Length;
import org.calicograph.border.Border;
import org.calicograph.border.PiecedBorder;

/**
 * Waves border: ocean waves in a row, pinwheels in the corners.
 *
 * <p>Drafting: a unit is a block of ocean waves as wide as the border (common practice).
 */
public final class WavesBorder {

    /** The border of the given finished width with bands of so many triangles, an even number. */
    public static PiecedBorder of(Length width, int waves) {
        return Border.of(OceanWaves.block(width, waves)).corners(Pinwheel.block(width));
    }
}
