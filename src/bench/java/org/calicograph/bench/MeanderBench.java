package org.calicograph.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.quilting.Meander;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A meander over a queen-size top at four sizes, with the cost against the length of line printed; and 200 regions with holes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MeanderBench {

    private static final Region QUEEN = Region.rectangle(new Box(0, 0, 90, 108));

    /** Each size has four times the rooms of the one before; n log n would cost 4.6 to 4.9 times as much. */
    @Benchmark
    public List<Meander.Fill> queenAtFourSizes() {
        List<Meander.Fill> fills = new ArrayList<>();
        double lastTime = 0;
        double lastLength = 0;
        for (double gap : new double[] {6, 3, 1.5, 0.75}) {
            long start = cpu();
            Meander.Fill fill = Meander.fill(QUEEN, Length.inches(gap), 1);
            double time = (cpu() - start) / 1e6;
            double length = fill.lines().stream().mapToDouble(Path::length).sum() / gap;
            System.out.printf("gaps of %.2f in: %d line(s), %.0f gaps long, %.0f ms", gap, fill.lines().size(), length, time);
            System.out.println(lastTime == 0 ? "" : String.format("; %.2f times the length, %.2f times the time, %.2f times n log n", length / lastLength,
                    time / lastTime, time / lastTime / (length * Math.log(length) / (lastLength * Math.log(lastLength)))));
            lastTime = time;
            lastLength = length;
            fills.add(fill);
        }
        return fills;
    }

    /** Of this thread: other work on the machine does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    @Benchmark
    public int regionsWithHoles() {
        Random random = new Random(5);
        int lines = 0;
        int within = 0;
        for (int i = 0; i < 200; i++) {
            Length widest = Length.inches(0.6 + random.nextDouble());
            Meander.Fill fill = Meander.fill(holed(random), widest, i);
            lines += fill.lines().size();
            within += fill.gap().diameter() <= widest.inInches() ? 1 : 0;
        }
        System.out.printf("200 regions with holes: %d lines, %d with no gap above the limit%n", lines, within);
        return lines;
    }

    private static Region holed(Random random) {
        int corners = 5 + random.nextInt(8);
        List<Point> outline = new ArrayList<>();
        for (int k = 0; k < corners; k++) {
            outline.add(Point.polar(3 + 2 * random.nextDouble(), Angle.turn(k, corners)));
        }
        double turn = random.nextDouble() * 6.28;
        List<Path> holes = new ArrayList<>();
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            holes.add(Path.circle(Point.polar(1.1, Angle.radians(turn + k * 2.1)), 0.15 + 0.4 * random.nextDouble()));
        }
        return new Region(Path.polygon(outline), holes);
    }
}
