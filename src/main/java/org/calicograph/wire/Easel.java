package org.calicograph.wire;

import java.util.Optional;
import org.calicograph.drawing.View;
import org.calicograph.fabric.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Transform;

/**
 * A frame on the editor's screen for which the kernel may paint a picture itself.
 *
 * @param part    which picture of the cell's exhibit, from 0 in the order in which they are shown
 * @param width   in the screen's pixels
 * @param height  in the screen's pixels
 * @param density how many of the screen's pixels, across, one of the frame's own takes
 * @param chosen  how the picture lies; empty for the whole of it in the middle
 */
public record Easel(String cell, int part, int width, int height, double density, Optional<View> chosen, Colour ground) {

    public Easel {
        if (width < 1 || height < 1 || !(density > 0)) {
            throw new IllegalArgumentException("a frame of " + width + " by " + height + " pixels at a density of " + density
                    + " can't be painted; all three must be above 0");
        }
    }

    /** From the inches of a picture with these bounds to the screen's pixels. */
    public Transform onto(Box bounds) {
        return chosen.orElseGet(() -> View.fitting(bounds, width / density, height / density)).onto(density);
    }

    int pixels() {
        return Math.multiplyExact(width, height);
    }
}
