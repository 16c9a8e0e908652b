package org.calicograph.desk.results;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.wire.PixelFrame;

/** Paints pictures off the window's thread. Of what one frame asks for, only the newest is painted. */
final class Painter {

    /** What to paint; {@code done} is told the pixels on the painter's thread. */
    record Request(Picture picture, Box bounds, PixelFrame easel, boolean smooth, Consumer<int[]> done) { }

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
            request.done().accept(request.easel().paint(request.picture(), request.bounds(), request.smooth()));
        }
    }
}
