package org.calicograph.drawing.writing;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Transform;

/** A picture as bare pixels, for a screen; painted as {@link PngWriter} does, but for seams that dark cloth would hide. May be called from any thread. */
public final class PngPixels {

    private PngPixels() { }

    /**
     * @param onto   from the picture's inches to pixels
     * @param width  in pixels, above 0
     * @param height in pixels, above 0
     * @param smooth false to leave edges jagged, in about a third of the time
     * @return row after row from the top, each pixel 0xffRRGGBB
     * @throws IllegalArgumentException if there would be no pixel, or more than {@link PngWriter#MOST_PIXELS}
     */
    public static int[] paint(Picture picture, Transform onto, int width, int height, Colour ground, boolean smooth) {
        if (width < 1 || height < 1 || (long) width * height > PngWriter.MOST_PIXELS) {
            throw new IllegalArgumentException("a picture of " + width + " by " + height + " pixels can't be painted; use 1 by 1 to "
                    + PngWriter.MOST_PIXELS / 1_000_000 + " million in all");
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PngCanvas canvas = new PngCanvas(image, ground);
        canvas.hint(RenderingHints.KEY_ANTIALIASING, smooth ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
        Walk.over(picture, onto, new SeenSeams(canvas));
        canvas.close();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] |= 0xff000000;
        }
        return pixels;
    }
}
