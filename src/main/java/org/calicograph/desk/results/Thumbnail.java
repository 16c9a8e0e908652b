package org.calicograph.desk.results;

import java.nio.IntBuffer;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.wire.PixelFrame;

/** A picture as a small square image. */
public final class Thumbnail {

    private static final double MARGIN = 12;

    private Thumbnail() { }

    /**
     * Paints off the window's thread.
     *
     * @param side of the square, in pixels
     * @param done told on the window's thread
     */
    public static void paint(Picture picture, int side, Consumer<Image> done) {
        // The fitting leaves a margin that is meant for large frames.
        double wide = side + 2 * MARGIN - 4;
        View view = View.fitting(picture.bounds(), wide, wide).moved(2 - MARGIN, 2 - MARGIN);
        PixelFrame easel = new PixelFrame("", 0, side, side, 1, Optional.of(view), Colour.WHITE, Colour.WHITE);
        new Painter().paint(new Painter.Request(picture, picture.bounds(), easel, true, pixels -> Platform.runLater(() ->
                done.accept(new WritableImage(new PixelBuffer<>(side, side, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()))))));
    }
}
