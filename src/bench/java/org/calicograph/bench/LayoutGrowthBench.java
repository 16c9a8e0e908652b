package org.calicograph.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutSearch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What a layout costs as blanks grow in number: at most as n log n, so from 1,000 to 10,000 the time may
 * grow 13.3 times. Blanks are of eight kinds, as in a quilt, or all different.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LayoutGrowthBench {

    @Param({"1000", "3000", "10000"})
    public int blanks;

    @Param({"8", "100000"})
    public int kinds;

    private final List<Blank> all = new ArrayList<>();

    @Setup
    public void make() {
        all.clear();
        Random random = new Random(5);
        List<Blank> some = new ArrayList<>();
        for (int i = 0; i < blanks; i++) {
            if (some.size() < kinds) {
                some.add(Blank.of("P" + i, Length.inches(16 + random.nextInt(80), 16), Length.inches(16 + random.nextInt(80), 16)));
            }
            all.add(some.get(kinds >= blanks ? i : random.nextInt(some.size())));
        }
    }

    @Benchmark
    public Layout usual() {
        return LayoutSearch.USUAL.lay(Length.inches(42), all);
    }
}
