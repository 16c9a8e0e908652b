package org.calicograph.desk.beds;

import java.util.Comparator;
import java.util.Optional;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.Mattress;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;

/** The largest bed that a quilt of some size covers, and how far it hangs down there. */
public final class OverBed {

    /** Less than this at the sides and the foot and the mattress shows: 8 in (common practice, from memory). */
    static final Length LEAST_DROP = Length.inches(8);

    /** A bed, and how far the quilt hangs down once it is quilted and washed. */
    record Fall(Mattress mattress, Length sides, Length foot) { }

    private OverBed() { }

    /**
     * A sentence for the foot of the desk: the largest bed of the table that is covered with a drop of at least 8 in, no tuck,
     * after a take-up of 3 %. North American beds where lengths are in inches, European ones where they are metric.
     *
     * @param top the quilt as it hangs, before quilting, in inches; its head is up
     * @return empty for what covers no bed
     */
    public static Optional<String> sentence(Box top, Length.System system) {
        return sentence(ruled(top.width()), ruled(top.height()), system);
    }

    private static Length ruled(double inches) {
        return Length.inches(Math.rint(inches * 64) / 64);
    }

    static Optional<String> sentence(Length width, Length height, Length.System system) {
        return largest(width, height, system).map(f -> "Covers a " + f.mattress.name() + " bed (" + f.mattress.width().in(system) + " x " + f.mattress.length().in(system)
                + ") once quilted: drop " + written(f.sides, system) + " at the sides, " + written(f.foot, system) + " at the foot");
    }

    static Optional<Fall> largest(Length width, Length height, Length.System system) {
        String region = system == Length.System.METRIC ? "EU" : "US";
        return Mattress.table().stream().filter(m -> m.region().equals(region)).map(m -> fall(m, width, height))
                .filter(f -> f.sides.compareTo(LEAST_DROP) >= 0 && f.foot.compareTo(LEAST_DROP) >= 0)
                .max(Comparator.comparingDouble(f -> f.mattress.width().inInches() * f.mattress.length().inInches()));
    }

    private static Fall fall(Mattress mattress, Length width, Length height) {
        double kept = 1 - BedCover.USUAL_TAKE_UP;
        return new Fall(mattress, width.times(kept).minus(mattress.width()).half(), height.times(kept).minus(mattress.length()));
    }

    private static String written(Length length, Length.System system) {
        return system == Length.System.METRIC ? Math.round(length.inInches() * 2.54) + " cm" : length.roundedTo(Length.inches(1, 8)).toString();
    }
}
