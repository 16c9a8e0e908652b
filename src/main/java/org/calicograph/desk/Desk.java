package org.calicograph.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The way in: opens the window and waits until it is closed. */
public final class Desk {

    private Desk() { }

    /**
     * @param notebook the notebook to open; none for the first-run one
     * @throws IllegalStateException if there is no screen to open a window on
     */
    public static void open(List<Path> notebook) {
        // AWT paints pixels only; it must not look for a screen of its own.
        System.setProperty("java.awt.headless", "true");
        CountDownLatch closed = new CountDownLatch(1);
        AtomicReference<Throwable> broken = new AtomicReference<>();
        try {
            Platform.startup(() -> {
                try {
                    Stage stage = new Stage();
                    DeskWindow window = new DeskWindow(stage, DeskOptions.standard());
                    stage.setOnHidden(e -> {
                        window.close();
                        closed.countDown();
                    });
                    window.show(notebook.stream().findFirst());
                } catch (RuntimeException | Error e) {
                    broken.set(e);
                    closed.countDown();
                }
            });
            closed.await();
        } catch (UnsupportedOperationException e) {
            throw new IllegalStateException("there is no screen", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
        if (broken.get() != null) {
            throw new IllegalStateException(broken.get().toString(), broken.get());
        }
    }
}
