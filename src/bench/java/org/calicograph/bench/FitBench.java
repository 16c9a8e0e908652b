package org.calicograph.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.fitting.Fit;
import org.calicograph.fitting.Fitting;
import org.calicograph.measure.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A fit searched over ten thousand, a hundred thousand and a million candidates: unit sizes times counts
 * across times counts down. Most are dropped by side; time per candidate should fall, not rise.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FitBench {

    @Param({"10000", "100000", "1000000"})
    long candidates;

    @Benchmark
    public List<Fitting> search() {
        return fit(candidates).solutions();
    }

    /** Spacers up to 6 in leave about as many counts along each side as units go into 12 in: about 6 for 2 in units. */
    private static Fit fit(long candidates) {
        Length unit = Length.inches(2);
        long sizes = candidates / 36;
        Length step = unit.dividedBy(2 * sizes);
        return Fit.around(Length.inches(72), Length.inches(90)).units(unit).steps(step).between(unit.minus(step.times(sizes / 2)), unit.plus(step.times(sizes / 2)))
                .spacers(Length.inches(1, 4), Length.inches(6)).mirrored();
    }
}
