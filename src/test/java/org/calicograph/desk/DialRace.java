package org.calicograph.desk;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.calicograph.desk.results.PictureView;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngPixels;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;

/**
 * A dial turned at the desk, against the same picture computed in plain compiled Java on a thread of the
 * same process, painted by the same painter into the same number of pixels and shown in a bare window as large
 * as the desk's.
 * Either way the clock starts on the window's thread and stops when the new pixels are handed to the
 * scene, and again at the end of the layout of the pulse that shows them. Pictures count as new when a line
 * of pixels down their middle has changed.
 */
final class DialRace implements AutoCloseable {

    private static final int WARM = 120;
    private static final int ROUNDS = 5;
    private static final int TURNS = 15;
    private static final int MOVES = 180;

    private final Evening evening;
    private final int patches;
    private final Stage bare;
    private final ImageView plain = new ImageView();
    private final ExecutorService hand = Executors.newSingleThreadExecutor();
    private final Random random = new Random(7);
    private final double width;
    private final double height;
    private int shift;

    /** Pixels that have come, and pulses that have shown them; all on the window's thread. */
    private static final class Eye {
        private int last;
        private long put;
        private boolean fresh;
        private CompletableFuture<double[]> awaited = new CompletableFuture<>();
        private long start;
        private final List<Boolean> news = new ArrayList<>();
        private final List<Long> pulses = new ArrayList<>();

        Eye(ImageView watched, Scene scene) {
            watched.imageProperty().addListener((all, before, now) -> changed(now));
            scene.addPostLayoutPulseListener(this::pulse);
        }

        private void changed(Image now) {
            int line = 0;
            for (int y = 0; y < now.getHeight(); y++) {
                line = 31 * line + now.getPixelReader().getArgb((int) now.getWidth() / 2 + 3, y);
            }
            if (line != last) {
                last = line;
                put = System.nanoTime();
                fresh = true;
            }
        }

        private void pulse() {
            long now = System.nanoTime();
            news.add(fresh);
            pulses.add(now);
            if (fresh) {
                fresh = false;
                awaited.complete(new double[] {(put - start) / 1e6, (now - start) / 1e6});
            }
        }
    }

    DialRace(Evening evening, int patches) {
        this.evening = evening;
        this.patches = patches;
        evening.untilDrawn("a1");
        evening.until("it is painted", () -> evening.picture("a1").map(p -> p.paintings() > 0).orElse(false));
        PictureView view = view();
        width = Evening.onFx(view::getWidth);
        height = Evening.onFx(view::getHeight);
        bare = Evening.onFx(() -> {
            Stage stage = new Stage();
            stage.setScene(new Scene(new StackPane(plain), evening.scene().getWidth(), evening.scene().getHeight()));
            stage.show();
            return stage;
        });
    }

    private PictureView view() {
        return Evening.onFx(() -> evening.picture("a1").orElseThrow());
    }

    static String code(int patches) {
        return "import org.calicograph.geometry.*;\nimport org.calicograph.drawing.*;\nimport org.calicograph.fabric.*;\n"
                + "int shift = dial(\"shift\", 0, 100000, 0);\nvar parts = new java.util.ArrayList<Picture>();\n"
                + "for (int i = 0; i < " + patches + "; i++) {\n    double x = i % 100, y = i / 100;\n"
                + "    parts.add(Picture.of(org.calicograph.geometry.Path.rectangle(new Box(x, y, x + 1, y + 1)))"
                + ".filled(Colour.packed((i * 77 + shift) & 0xffffff)));\n}\nPicture.group(parts)";
    }

    private Picture picture(int at) {
        List<Picture> parts = new ArrayList<>();
        for (int i = 0; i < patches; i++) {
            double x = i % 100;
            double y = i / 100;
            parts.add(Picture.of(org.calicograph.geometry.Path.rectangle(new Box(x, y, x + 1, y + 1))).filled(Colour.packed((i * 77 + at) & 0xffffff)));
        }
        return Picture.group(parts);
    }

    private void turn(int to) {
        evening.window.opened().setDial("shift", Integer.toString(to));
    }

    private void compute(int to) {
        hand.execute(() -> {
            Picture picture = picture(to);
            int w = (int) width;
            int h = (int) height;
            int[] pixels = PngPixels.paint(picture, View.fitting(picture.bounds(), w, h).onto(1), w, h, Colour.WHITE, false);
            Platform.runLater(() -> plain.setImage(new WritableImage(
                    new PixelBuffer<>(w, h, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()))));
        });
    }

    private Eye eye(ImageView watched, Scene scene) {
        return Evening.onFx(() -> new Eye(watched, scene));
    }

    private Eye atDesk() {
        PictureView view = view();
        return eye(Evening.onFx(() -> (ImageView) view.getChildrenUnmodifiable().get(0)), evening.scene());
    }

    private Eye atBare() {
        return eye(plain, bare.getScene());
    }

    private double[] once(Eye eye, IntConsumer way) throws Exception {
        Thread.sleep(random.nextInt(22));
        CompletableFuture<double[]> shown = new CompletableFuture<>();
        int to = ++shift;
        Platform.runLater(() -> {
            eye.awaited = shown;
            eye.start = System.nanoTime();
            way.accept(to);
        });
        return shown.get(10, TimeUnit.SECONDS);
    }

    private void rest() throws InterruptedException {
        Thread.sleep(500);
    }

    void run() throws Exception {
        Eye desk = atDesk();
        Eye java = atBare();
        for (int i = 0; i < WARM; i++) {
            once(desk, this::turn);
        }
        rest();
        for (int i = 0; i < WARM; i++) {
            once(java, this::compute);
        }
        List<double[]> deskTimes = new ArrayList<>();
        List<double[]> javaTimes = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < TURNS; i++) {
                deskTimes.add(once(desk, this::turn));
            }
            rest();
            for (int i = 0; i < TURNS; i++) {
                javaTimes.add(once(java, this::compute));
            }
        }
        double[] d = {median(deskTimes, 0), median(deskTimes, 1)};
        double[] j = {median(javaTimes, 0), median(javaTimes, 1)};
        DeskTimes.say("dial to screen, %d patches: desk %.1f ms, plain Java %.1f ms, ratio %.2f; without the pulse: %.1f ms, %.1f ms, ratio %.2f",
                patches, d[1], j[1], d[1] / j[1], d[0], j[0], d[0] / j[0]);
    }

    private static double median(List<double[]> times, int which) {
        double[] all = times.stream().mapToDouble(t -> t[which]).toArray();
        Arrays.sort(all);
        return all[all.length / 2];
    }

    /** A move in every pulse for three seconds; a pulse that has nothing new to show is a frame dropped. */
    void drag() throws Exception {
        drag("desk", atDesk(), this::turn);
        rest();
        drag("plain Java", atBare(), this::compute);
    }

    private void drag(String who, Eye eye, IntConsumer way) throws Exception {
        CompletableFuture<Void> ended = new CompletableFuture<>();
        Evening.onFx(() -> {
            eye.news.clear();
            eye.pulses.clear();
            new AnimationTimer() {
                private int moves;

                @Override
                public void handle(long now) {
                    if (++moves > MOVES) {
                        stop();
                        ended.complete(null);
                    } else {
                        way.accept(++shift);
                    }
                }
            }.start();
            return null;
        });
        ended.get(60, TimeUnit.SECONDS);
        Evening.onFx(() -> {
            int first = eye.news.indexOf(true);
            int dropped = 0;
            int late = 0;
            for (int i = Math.max(1, first); i < eye.news.size(); i++) {
                dropped += eye.news.get(i) ? 0 : 1;
                late += eye.pulses.get(i) - eye.pulses.get(i - 1) > 25_000_000 ? 1 : 0;
            }
            DeskTimes.say("a drag of %d moves over %d patches, %s: %d pulses, the first new picture in pulse %d, %d frames dropped after it, %d pulses late",
                    MOVES, patches, who, eye.news.size(), first, dropped, late);
            return null;
        });
    }

    @Override
    public void close() {
        hand.shutdownNow();
        Evening.onFx(() -> {
            bare.hide();
            return null;
        });
    }
}
