package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Roman Stripe: a plain triangle and one of slanting stripes.
 *
 * <p>Drafting: four stripes of equal width beside the long side of a half square (common practice).
 */
public final class RomanStripe {

    /** A Roman stripe of the given finished side. */
    public static Block block(Length side) {
        return Block.onGrid("Roman Stripe", 4, side)
                .patch(DARK, 4, 0, 4, 4, 0, 4)
                .patch(ACCENT, 0, 0, 1, 0, 0, 1)
                .patch(LIGHT, 1, 0, 2, 0, 0, 2, 0, 1)
                .patch(MEDIUM, 2, 0, 3, 0, 0, 3, 0, 2)
                .patch(BACKGROUND, 3, 0, 4, 0, 0, 4, 0, 3)
                .block();
    }
}
