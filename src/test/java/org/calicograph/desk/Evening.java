package org.calicograph.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionOptions;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** A desk under test: a real window, worked by keys and mouse, with a real kernel. Everything waits for what it needs, nothing sleeps. */
final class Evening implements AutoCloseable {

    static final int PATIENCE = 15;

    final FxRobot robot = new FxRobot();
    final Stage stage;
    final DeskWindow window;

    private Evening(Path own, Optional<Path> file, UnaryOperator<SessionOptions> how) throws Exception {
        FxToolkit.registerPrimaryStage();
        stage = onFx(Stage::new);
        SessionOptions session = how.apply(SessionOptions.standard().withCache(Path.of("target/desk-cache").toAbsolutePath()));
        DeskOptions options = new DeskOptions(own, Path.of("notebooks").toAbsolutePath(), session);
        window = onFx(() -> {
            DeskWindow made = new DeskWindow(stage, options);
            made.show(file);
            return made;
        });
        until("the window shows", () -> stage.isShowing());
    }

    static Evening with(Path own, Path file) throws Exception {
        return new Evening(own, Optional.of(file), UnaryOperator.identity());
    }

    /** With kernels such as people have, which take longer to start and are quicker once warm. */
    static Evening asLived(Path own, Path file) throws Exception {
        return new Evening(own, Optional.of(file), SessionOptions::forDesk);
    }

    static Evening first(Path own) throws Exception {
        return new Evening(own, Optional.empty(), UnaryOperator.identity());
    }

    static <T> T onFx(Callable<T> work) {
        if (Platform.isFxApplicationThread()) {
            try {
                return work.call();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
        CompletableFuture<T> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                done.complete(work.call());
            } catch (Throwable e) {
                done.completeExceptionally(e);
            }
        });
        return done.orTimeout(PATIENCE, TimeUnit.SECONDS).join();
    }

    void until(String what, BooleanSupplier condition) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE);
        while (!onFx(condition::getAsBoolean)) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited " + PATIENCE + " s in vain: " + what);
            }
            java.util.concurrent.locks.LockSupport.parkNanos(4_000_000);
        }
    }

    Scene scene() {
        return stage.getScene();
    }

    CellState state(String cell) {
        return onFx(() -> window.code(cell).orElseThrow().state());
    }

    void untilDrawn(String cell) {
        until(cell + " is drawn", () -> window.code(cell).orElseThrow().state() instanceof CellState.Done);
    }

    void untilFailed(String cell) {
        until(cell + " has failed", () -> window.code(cell).orElseThrow().state() instanceof CellState.Failed);
    }

    /** Words that a label, button or field on the screen shows, of the node with this id and those in it. */
    String words(String id) {
        return onFx(() -> {
            Node node = scene().lookup("#" + id);
            StringBuilder all = new StringBuilder();
            if (node != null) {
                gather(node, all);
            }
            return all.toString();
        });
    }

    private static void gather(Node node, StringBuilder into) {
        if (node instanceof javafx.scene.control.Labeled labeled) {
            into.append(labeled.getText() == null ? "" : labeled.getText()).append('\n');
            if (labeled.getGraphic() != null) {
                gather(labeled.getGraphic(), into);
            }
        } else if (node instanceof javafx.scene.control.TextInputControl input) {
            into.append(input.getText()).append('\n');
        } else if (node instanceof javafx.scene.Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> gather(n, into));
        }
    }

    /** Goes to a cell's text by a click and puts the caret at its end. */
    void write(String cell) {
        onFx(() -> {
            window.opened().choose(cell);
            window.write(cell);
            return null;
        });
        until(cell + " has the keyboard", () -> focused("code-" + cell));
        robot.press(KeyCode.CONTROL).press(KeyCode.END).release(KeyCode.END).release(KeyCode.CONTROL);
    }

    boolean focused(String id) {
        return scene().getFocusOwner() != null && id.equals(scene().getFocusOwner().getId());
    }

    /** The characters of a cell that are underlined as wrong. */
    String underlined(String cell) {
        return onFx(() -> {
            org.fxmisc.richtext.CodeArea area = (org.fxmisc.richtext.CodeArea) scene().lookup("#code-" + cell);
            StringBuilder wrong = new StringBuilder();
            for (int i = 0; area != null && i < area.getLength(); i++) {
                if (area.getStyleOfChar(i).contains("wrong")) {
                    wrong.append(area.getText(i, i + 1));
                }
            }
            return wrong.toString();
        });
    }

    /** The passage's picture on the wall, hung large for it. */
    Optional<org.calicograph.desk.results.PictureView> picture(String cell) {
        window.wall().choose(cell);
        return window.wall().hung().equals(Optional.of(cell)) ? window.wall().meant() : Optional.empty();
    }

    /** What is kept of unsaved work beside a file. */
    static java.util.List<Path> kept(Path file) {
        try (var all = java.nio.file.Files.list(file.getParent())) {
            return all.filter(f -> f.getFileName().toString().startsWith("." + file.getFileName()) && f.toString().endsWith(".unsaved")).toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** What a passage's pin says. */
    String pin(String cell) {
        return onFx(() -> scene().lookup("#pin-" + cell) instanceof javafx.scene.control.Label pin ? pin.getAccessibleText() : "");
    }

    void drawNow() {
        robot.push(KeyCode.F8);
    }

    void keys(KeyCode... keys) {
        robot.push(keys);
    }

    /** What the window shows, with the popups over it. */
    void shoot(Path file) {
        onFx(() -> {
            WritableImage image = scene().snapshot(null);
            for (Window each : Window.getWindows()) {
                if (each instanceof PopupWindow && each.isShowing()) {
                    WritableImage part = each.getScene().snapshot(null);
                    int left = (int) (each.getX() - stage.getX() - scene().getX());
                    int top = (int) (each.getY() - stage.getY() - scene().getY());
                    int w = (int) Math.min(part.getWidth(), image.getWidth() - left);
                    int h = (int) Math.min(part.getHeight(), image.getHeight() - top);
                    image.getPixelWriter().setPixels(left, top, w, h, part.getPixelReader(), 0, 0);
                }
            }
            Shot.write(image, file);
            return null;
        });
    }

    /** A shot for somebody to look at, where {@code -Ddesk.shots=FOLDER} asks for it. */
    void shot(String name) {
        String folder = System.getProperty("desk.shots", "");
        if (!folder.isEmpty()) {
            long at = System.nanoTime();
            until("pictures are smoothed", () -> System.nanoTime() - at > 400_000_000L);
            shoot(Path.of(folder, name + ".png"));
        }
    }

    @Override
    public void close() {
        onFx(() -> {
            window.close();
            stage.hide();
            return null;
        });
    }
}
