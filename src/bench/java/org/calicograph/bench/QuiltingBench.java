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
import org.calicograph.measure.Length;
import org.calicograph.quilting.Lines;
import org.calicograph.stitching.Route;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Routes over more and more edges: the cost against n log n, the matching's share of it printed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class QuiltingBench {

    /** The fewest starts on a cross-hatched square: its lines are about 1 in long, with odd corners round the edge alone. */
    @Benchmark
    public List<Route> crosshatch() {
        return growth("crosshatch, fewest starts", n -> Route.over(grid(n)));
    }

    /** The same where a start is worth 3 in, with short spurs sticking out everywhere: odd corners all over. */
    @Benchmark
    public List<Route> spursAtAPrice() {
        return growth("crosshatch with spurs, 3 in a start", n -> Route.over(spurs(n), List.of(), Point.ORIGIN, Length.inches(3)));
    }

    /** Motifs, each in one patch, to be joined along the seams. */
    @Benchmark
    public List<Route> motifsAlongSeams() {
        return growth("motifs joined along seams", n -> {
            int side = (int) Math.round(Math.sqrt(n / 5.0));
            List<Path> motifs = new ArrayList<>();
            for (int i = 0; i < side * side; i++) {
                double x = 3.0 * (i % side);
                double y = 3.0 * (i / side);
                motifs.add(Path.polygon(Point.of(x, y + 1), Point.of(x + 2, y + 1), Point.of(x + 1, y + 2)));
            }
            return Route.over(motifs, Lines.grid(Region.rectangle(new Box(0, 0, 3 * side, 3 * side)), Length.inches(3)), Point.ORIGIN, Length.inches(8));
        });
    }

    private interface Drafted {
        Route of(int edges);
    }

    private static List<Route> growth(String name, Drafted route) {
        List<Route> routes = new ArrayList<>();
        route.of(500);
        double last = 0;
        double lastN = 0;
        for (int edges : new int[] {500, 1500, 5000}) {
            long start = cpu();
            Route r = route.of(edges);
            double time = cpu() - start;
            double n = r.runs().stream().mapToInt(run -> run.passes().size()).sum();
            System.out.printf("%s: %.0f pieces run over, %d start(s), %.0f in, at most %.2f %% above the least, %.0f ms, matching %.0f %%", name, n, r.starts(),
                    r.length(), 100 * (r.length() / r.bound() - 1), time / 1e6, 100 * r.matching());
            System.out.println(last == 0 ? "" : String.format("; %.2f times n log n", time / last / (n * Math.log(n) / (lastN * Math.log(lastN)))));
            last = time;
            lastN = n;
            routes.add(r);
        }
        return routes;
    }

    /** Of this thread: other work on the machine does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** n lines each way make about 2 n (n + 1) edges. */
    private static List<Path> grid(int edges) {
        int n = (int) Math.round(Math.sqrt(edges / 2.0));
        return Lines.grid(Region.rectangle(new Box(0, 0, n, n)), Length.inches(1));
    }

    private static List<Path> spurs(int edges) {
        List<Path> lines = new ArrayList<>(grid(edges * 2 / 3));
        Random random = new Random(8);
        int n = (int) Math.round(Math.sqrt(edges / 3.0));
        for (int i = 0; i < edges / 6; i++) {
            Point at = Point.of(random.nextInt(n), 0.5 + random.nextInt(n));
            lines.add(Path.through(at, at.plus(0.3, 0.1)));
        }
        return lines;
    }
}
