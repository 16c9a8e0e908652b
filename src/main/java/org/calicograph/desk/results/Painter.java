package org.calicograph.desk.results;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.PngPixels;
import org.calicograph.fabric.Colour;
import org.calicograph.geometry.Transform;

/** Paints pictures off the window's thread. Of what one frame asks for, only the newest is painted. */
final class Painter {

    /** What to paint; {@code done} is called on the painter's thread. */
    record Request(Picture picture, Transform onto, int width, int height, Colour ground, boolean smooth, Consumer<Painting> done) { }

    /** Pixels as {@link PngPixels} gives them. */
    record Painting(int[] pixels, int width, int height) { }

    private static final ExecutorService HAND = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "calicograph painter");
        thread.setDaemon(true);
        return thread;
    });

    private final AtomicReference<Request> newest = new AtomicReference<>();

    void paint(Request request) {
        if (newest.getAndSet(request) == null) {
            HAND.execute(this::work);
        }
    }

    private void work() {
        Request request = newest.getAndSet(null);
        if (request != null) {
            int[] pixels = PngPixels.paint(request.picture(), request.onto(), request.width(), request.height(), request.ground(), request.smooth());
            request.done().accept(new Painting(pixels, request.width(), request.height()));
        }
    }
}
