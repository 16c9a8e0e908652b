package org.calicograph.bench;

import java.math.BigInteger;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.calicograph.turning.Turn;
import org.calicograph.turning.Turnings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Layouts of a block without symmetry that are not alike, counted by Burnside's lemma for 2 x 2 to 4 x 4,
 * and for 2 x 2 also listed one by one, which says what counting saves.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TurningBench {

    @Param({"2", "3", "4"})
    int side;

    @Setup
    public void counts() {
        System.out.printf("%d x %d: %d layouts, %d not alike%n", side, side, turnings(side).raw(), turnings(side).count());
    }

    @Benchmark
    public BigInteger count() {
        return turnings(side).count();
    }

    @Benchmark
    public int listedTwoByTwo() {
        return turnings(2).distinct().size();
    }

    private static Turnings turnings(int side) {
        return new Turnings(side, side, Turn.all(), Set.of(Turn.NONE), Set.copyOf(Turn.all()));
    }
}
