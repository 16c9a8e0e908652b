package org.calicograph.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.quilt.Quilt;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * The length of cloth over the printed lower bound, for 200 generated quilts: the bar is 3 % on average.
 * Run it alone and briefly: {@code -Dbench=Yardage -Dbench.options="-f 1 -wi 0 -i 1"}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class YardageBench {

    private static final int QUILTS = 200;

    private final List<Quilt> quilts = new ArrayList<>();
    private List<Cutting> found = List.of();

    @Setup
    public void draft() {
        for (long seed = 0; seed < QUILTS; seed++) {
            quilts.add(DraftedQuilts.of(seed));
        }
    }

    @Benchmark
    public List<Cutting> quilts() {
        found = quilts.stream().map(Cutting::of).toList();
        return found;
    }

    @TearDown
    public void report() {
        double sum = 0;
        double worst = 0;
        double perFabric = 0;
        double worstFabric = 0;
        int fabrics = 0;
        int best = 0;
        int proved = 0;
        for (Cutting cutting : found) {
            double length = 0;
            double bound = 0;
            for (FabricCut f : cutting.fabrics()) {
                length += f.layout().length().inInches();
                bound += f.layout().bound().length().inInches();
                perFabric += f.layout().overBound();
                worstFabric = Math.max(worstFabric, f.layout().overBound());
                best += f.layout().length().equals(f.layout().bound().length()) ? 1 : 0;
                proved += f.yardage().isLeast() ? 1 : 0;
                fabrics++;
            }
            sum += length / bound - 1;
            worst = Math.max(worst, length / bound - 1);
        }
        System.out.printf("%n%d quilts: %.2f %% over the lower bound on average, %.2f %% at worst%n", found.size(), 100 * sum / found.size(), 100 * worst);
        System.out.printf("%d fabrics: %.2f %% on average, %.2f %% at worst; %d layouts proved shortest, %d amounts proved least%n", fabrics,
                100 * perFabric / fabrics, 100 * worstFabric, best, proved);
    }
}
