package org.calicograph.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.writing.PngPixels;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;
import org.calicograph.session.Sketch;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.ExhibitFormat;

/** Where the time of a turned dial goes, stage by stage, without a window. */
final class DialStages {

    private static final int WARM = 150;
    private static final int TIMES = 60;
    private static final int WIDTH = 850;
    private static final int HEIGHT = 460;

    private DialStages() { }

    static void say(int patches) throws Exception {
        SessionOptions options = SessionOptions.standard().withCache(Path.of("target/desk-cache").toAbsolutePath()).forDesk();
        LinkedBlockingQueue<Sketch> told = new LinkedBlockingQueue<>();
        PixelFrame easel = new PixelFrame("a1", 0, WIDTH, HEIGHT, 1, Optional.empty(), Colour.WHITE, Colour.WHITE);
        try (Session session = Session.open(List.of(new CellSource("a1", DialRace.code(patches))), Map.of(), options, new SessionListener() {
            @Override
            public void sketched(String cell, Sketch sketch) {
                told.add(sketch);
            }
        })) {
            session.draw("a1").get(60, TimeUnit.SECONDS);
            List<double[]> all = new ArrayList<>();
            for (int i = 1; i <= WARM + TIMES; i++) {
                long start = System.nanoTime();
                session.setDial("shift", Integer.toString(i), List.of(easel));
                Sketch sketch = told.poll(20, TimeUnit.SECONDS);
                long end = System.nanoTime();
                List<Long> at = sketch.moments();
                all.add(new double[] {at.get(0) - start, at.get(1) - at.get(0), at.get(2) - at.get(1), at.get(3) - at.get(2), end - at.get(3)});
                Thread.sleep(i % 9);
            }
            double[] m = medians(all);
            DeskTimes.say("stages in ms, %d patches, by pixels: to the kernel %.2f; running the cell %.2f; its picture, bounds and paint %.2f;"
                    + " message and fetching %.2f; to the listener %.2f", patches, m[0], m[1], m[2], m[3], m[4]);
            session.drawStale().get(60, TimeUnit.SECONDS);
            values(patches, ((CellState.Done) session.state("a1")).exhibit());
        }
    }

    /** What sending the value and painting it at the desk would take in the place of the last three. */
    private static void values(int patches, Exhibit exhibit) throws Exception {
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i < WARM + TIMES; i++) {
            long a = System.nanoTime();
            byte[] bytes = ExhibitFormat.bytes(exhibit);
            long b = System.nanoTime();
            Exhibit.Drawn drawn = (Exhibit.Drawn) ExhibitFormat.exhibit(bytes);
            long c = System.nanoTime();
            View view = View.fitting(drawn.picture().bounds(), WIDTH, HEIGHT);
            long d = System.nanoTime();
            PngPixels.paint(drawn.picture(), view.onto(1), WIDTH, HEIGHT, Colour.WHITE, false);
            all.add(new double[] {b - a, c - b, d - c, System.nanoTime() - d, bytes.length * 1e6});
        }
        double[] m = medians(all);
        DeskTimes.say("stages in ms, %d patches, by value: encoding %.2f; decoding %.2f; bounds %.2f; paint %.2f; %.0f bytes through the socket besides",
                patches, m[0], m[1], m[2], m[3], m[4]);
    }

    private static double[] medians(List<double[]> all) {
        List<double[]> counted = all.subList(WARM, all.size());
        double[] medians = new double[5];
        for (int k = 0; k < 5; k++) {
            int which = k;
            double[] one = counted.stream().mapToDouble(t -> t[which] / 1e6).toArray();
            Arrays.sort(one);
            medians[k] = one[one.length / 2];
        }
        return medians;
    }
}
