package org.calicograph.desk.results;

import java.nio.IntBuffer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.fabric.Colour;

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
        new Painter().paint(new Painter.Request(picture, view.onto(1), side, side, Colour.hex("#ffffff"), true, p -> Platform.runLater(() ->
                done.accept(new WritableImage(new PixelBuffer<>(p.width(), p.height(), IntBuffer.wrap(p.pixels()), PixelFormat.getIntArgbPreInstance()))))));
    }
}
