package org.calicograph.wire;

import java.util.Optional;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngPixels;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;

/**
 * A frame on the editor's screen for which the kernel may paint a picture itself.
 *
 * @param part    which picture of the cell's exhibit, from 0 in the order in which they are shown
 * @param width   in the screen's pixels
 * @param height  in the screen's pixels
 * @param density how many of the screen's pixels, across, one of the frame's own takes
 * @param chosen  how the picture lies; empty for the whole of it in the middle
 * @param ground  around the paper
 * @param paper   under the picture and a little beyond it; all around where it is the ground's colour
 */
public record PixelFrame(String cell, int part, int width, int height, double density, Optional<View> chosen, Colour ground, Colour paper) {

    /** How far the paper goes beyond a picture, in parts of the longer side of that. */
    private static final double MARGIN = 0.012;

    public PixelFrame {
        if (width < 1 || height < 1 || !(density > 0)) {
            throw new IllegalArgumentException("a frame of " + width + " by " + height + " pixels at a density of " + density
                    + " can't be painted; all three must be above 0");
        }
    }

    /**
     * Paints a picture for this frame.
     *
     * @param bounds of the picture
     * @param smooth as {@link PngPixels#paint} has it
     */
    public int[] paint(Picture picture, Box bounds, boolean smooth) {
        View view = chosen.orElseGet(() -> View.fitting(bounds, width / density, height / density));
        return PngPixels.paint(paper.equals(ground) ? picture : onPaper(picture, bounds), view.onto(density), width, height, ground, smooth);
    }

    private Picture onPaper(Picture picture, Box bounds) {
        Box sheet = bounds.grownBy(MARGIN * Math.max(bounds.width(), bounds.height()));
        return picture.over(Picture.of(Path.rectangle(sheet)).filled(paper).outlined(Pen.NONE));
    }

    int pixels() {
        return Math.multiplyExact(width, height);
    }
}
