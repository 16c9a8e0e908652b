package org.calicograph.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.quilting.Lines;
import org.calicograph.quilting.Route;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One path over a cross-hatched square of so many edges, the matching's share printed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class QuiltingBench {

    @Param({"1250", "2500", "5000"})
    int edges;

    private List<Path> lines;

    @Setup
    public void lines() {
        // n lines each way make about 2 n (n + 1) edges.
        int n = (int) Math.round(Math.sqrt(edges / 2.0));
        Region square = Region.rectangle(new Box(0, 0, n, n));
        lines = Lines.grid(square, Length.inches(1));
    }

    @Benchmark
    public Route route() {
        Route route = Route.over(lines);
        System.out.printf("%d edges: matching %.0f %% of the postman's time%n", edges, 100 * route.matching());
        return route;
    }
}
