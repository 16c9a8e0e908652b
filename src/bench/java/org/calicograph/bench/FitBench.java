package org.calicograph.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.calicograph.fitting.Fit;
import org.calicograph.border.Fitting;
import org.calicograph.measure.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A fit searched over ten thousand, a hundred thousand and a million candidates: unit sizes times counts
 * across times counts down. The time for each is printed;
 * it should hardly rise with their number.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FitBench {

    @Param({"10000", "100000", "1000000"})
    long candidates;

    private final Tally tally = new Tally("candidate");

    @Setup(Level.Iteration)
    public void begin() {
        tally.begin();
    }

    @TearDown(Level.Iteration)
    public void each() {
        tally.print();
    }

    @Benchmark
    public List<Fitting> search() {
        tally.add(candidates);
        return fit(candidates).solutions();
    }

    /** Spacers up to 6 in leave about as many counts along each side as units go into 12 in: about 6 for 2 in units. */
    private static Fit fit(long candidates) {
        Length unit = Length.inches(2);
        long sizes = candidates / 36;
        Length step = unit.dividedBy(2 * sizes);
        return Fit.around(Length.inches(72), Length.inches(90)).units(unit).steps(step).between(unit.minus(step.times(sizes / 2)), unit.plus(step.times(sizes / 2)))
                .spacers(Length.inches(1, 4), Length.inches(6)).mirroredAtMiddle();
    }
}
