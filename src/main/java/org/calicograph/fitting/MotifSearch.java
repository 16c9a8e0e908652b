package org.calicograph.fitting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;

/**
 * The search behind a {@link MotifFit}: every spacing and count along each side with what it leaves at the
 * corners; then every pair of sides that leave the same.
 */
final class MotifSearch {

    private MotifSearch() { }

    /** A spacing and a count along one side. */
    private record Run(int count, Length spacing) { }

    static List<MotifSpacing> all(MotifFit fit) {
        List<MotifSpacing> found = new ArrayList<>();
        for (MotifSpacing.Corner corner : MotifSpacing.Corner.values()) {
            if (!fit.corners().contains(corner)) {
                continue;
            }
            Map<Length, List<Run>> down = runs(fit, fit.down(), corner);
            runs(fit, fit.across(), corner).forEach((reach, ends) -> {
                for (Run a : ends) {
                    for (Run d : down.getOrDefault(reach, List.of())) {
                        if (a.spacing().minus(d.spacing()).abs().compareTo(fit.unlike()) <= 0) {
                            found.add(new MotifSpacing(a.count(), d.count(), a.spacing(), d.spacing(), corner, reach, fit.spacing().wished()));
                        }
                    }
                }
            });
        }
        found.sort(MotifSpacing.BEST_FIRST);
        return List.copyOf(found);
    }

    /** What fits along a side, by the reach that it leaves at either end. */
    private static Map<Length, List<Run>> runs(MotifFit fit, Length side, MotifSpacing.Corner corner) {
        boolean meeting = corner == MotifSpacing.Corner.MEETING;
        Length least = meeting ? Length.ZERO : fit.reach().least();
        Length most = meeting ? Length.ZERO : fit.reach().most();
        Map<Length, List<Run>> runs = new HashMap<>();
        for (long k = -fit.spacing().stepsDown(); k <= fit.spacing().stepsUp(); k++) {
            Length spacing = fit.spacing().at(k);
            long first = Math.max(1, -Math.floorDiv(-side.minus(most.times(2)).units(), spacing.units()));
            long last = Math.floorDiv(side.minus(least.times(2)).units(), spacing.units());
            for (long n = first; n <= last; n++) {
                Length rest = side.minus(spacing.times(n));
                // A corner that nothing turns is no turned corner.
                if (rest.units() % 2 == 0 && fit.middle().allows(n) && (meeting || rest.isPositive())) {
                    runs.computeIfAbsent(rest.half(), r -> new ArrayList<>()).add(new Run((int) n, spacing));
                }
            }
        }
        return runs;
    }

    /** One wish given up at a time: the line, the spacing, its likeness on both sides, the corner, the ruler. */
    static List<Change<MotifSpacing>> near(MotifFit fit) {
        List<Change<MotifSpacing>> found = new ArrayList<>();
        MotifFit freely = fit.between(fit.spacing().wished().times(0.5), fit.spacing().wished().times(1.5));
        if (!otherLine(fit, "", found)) {
            otherLine(freely, ", with another spacing", found);
        }
        first(freely, "space them otherwise", found);
        all(freely.unlikeBy(fit.spacing().wished())).stream().filter(m -> !m.alongEnds().equals(m.alongSides())).findFirst().ifPresent(m -> found.add(
                new Change<>("let the spacing differ by " + m.alongEnds().minus(m.alongSides()).abs() + " between ends and sides", m)));
        if (!fit.corners().contains(MotifSpacing.Corner.TURNING)) {
            Length least = fit.spacing().wished().times(0.25);
            String words = "turn every corner with a motif of its own";
            if (!first(fit.turning(least, fit.spacing().wished()).corners(MotifSpacing.Corner.TURNING), words, found)) {
                first(freely.turning(least, fit.spacing().wished()).corners(MotifSpacing.Corner.TURNING), words + ", with another spacing", found);
            }
        }
        offTheRuler(fit, found);
        return List.copyOf(found);
    }

    /** The nearest line further out or in along which they fit; half a spacing to either side at most. */
    private static boolean otherLine(MotifFit fit, String besides, List<Change<MotifSpacing>> into) {
        boolean found = false;
        Length half = fit.spacing().step().half();
        for (long k = 1; half.times(k + k).compareTo(fit.spacing().wished()) <= 0 && !found; k++) {
            Length by = half.times(k);
            found = first(fit.moved(by), "set them along a line " + by + " further out" + besides, into);
            if (by.times(2).compareTo(Length.min(fit.across(), fit.down())) < 0) {
                found |= first(fit.moved(by.negated()), "set them along a line " + by + " further in" + besides, into);
            }
        }
        return found;
    }

    private static boolean first(MotifFit fit, String words, List<Change<MotifSpacing>> into) {
        return all(fit).stream().findFirst().map(m -> into.add(new Change<>(words, m))).orElse(false);
    }

    /** A common measure of both sides that is no whole step: a share of their greatest common measure. */
    private static void offTheRuler(MotifFit fit, List<Change<MotifSpacing>> into) {
        long common = BigInteger.valueOf(fit.across().units()).gcd(BigInteger.valueOf(fit.down().units())).longValueExact();
        long parts = Math.round((double) common / fit.spacing().wished().units());
        for (long p : new long[] {parts, parts + 1, parts - 1}) {
            long across = p * (fit.across().units() / common);
            long down = p * (fit.down().units() / common);
            if (p >= 1 && fit.middle().allows(across) && fit.middle().allows(down)) {
                Length spacing = fit.across().dividedBy(across);
                boolean near = Math.abs(spacing.ratioTo(fit.spacing().wished()) - 1) <= 0.5;
                if (near && !spacing.minus(fit.spacing().wished()).isMultipleOf(fit.spacing().step())) {
                    into.add(new Change<>("leave the ruler and fold or step off each side in equal parts", new MotifSpacing((int) across, (int) down, spacing,
                            spacing, MotifSpacing.Corner.MEETING, Length.ZERO, fit.spacing().wished())));
                    return;
                }
            }
        }
    }
}
