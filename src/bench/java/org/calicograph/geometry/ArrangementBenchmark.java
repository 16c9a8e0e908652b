package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.measure.Angle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The arrangement of every chord of a star: points on a circle, each joined to those well across. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ArrangementBenchmark {

    @Param({"8", "16", "32"})
    public int points;

    private List<Segment> chords;

    @Setup
    public void drawChords() {
        chords = new ArrayList<>();
        for (int from = 0; from < points; from++) {
            for (int to = from + points / 4; to < points && to - from <= points - points / 4; to++) {
                chords.add(new Line(onCircle(from), onCircle(to)));
            }
        }
    }

    private Point onCircle(int index) {
        return Point.polar(12, Angle.degrees(360.0 * index / points));
    }

    @Benchmark
    public Arrangement cut_at_every_crossing() {
        return Arrangement.ofSegments(chords);
    }
}
