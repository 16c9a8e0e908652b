package org.calicograph.fitting;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.calicograph.border.Fitting;
import org.calicograph.measure.Length;

/** One sentence that says whether a fit can be had, and if not, why. */
final class FitReason {

    private FitReason() { }

    /** @param others what comes nearest; used only where there are no solutions */
    static String of(Fit fit, List<Fitting> all, List<Change<Fitting>> others) {
        if (!all.isEmpty()) {
            return all.get(0) + (all.size() == 1 ? "; it is the only way." : "; there are " + all.size() + " ways in all.");
        }
        return no(fit) + nearest(others);
    }

    private static String no(Fit fit) {
        boolean square = fit.across().equals(fit.down());
        boolean one = fit.counts().fewest() == fit.counts().most();
        int n = fit.counts().fewest();
        if (one && n % 2 != 0) {
            return n + " units can't go evenly round four sides: opposite sides hold the same number, so the total is even.";
        }
        if (one && square && n % 4 != 0) {
            return n + " equal units can't go evenly round a square: its four sides hold the same number, so the total is a multiple of"
                    + " four, with or without a unit in each corner.";
        }
        if (one && fit.symmetric() && fit.corners().size() == 1 && (n - (fit.corners().contains(Fitting.Corners.UNIT) ? 4 : 0)) % 4 != 0) {
            return n + " units can't be mirrored at the middle of every side: each side holds an even number, so those along the sides are a"
                    + " multiple of four.";
        }
        if (fit.unit().isFixed() && fit.spacers().widest().isZero()) {
            for (Length side : List.of(fit.across(), fit.down())) {
                if (!side.isMultipleOf(fit.unit().wished())) {
                    return "units of " + fit.unit().wished() + " don't come out whole along " + side + ": it holds "
                            + String.format(Locale.ROOT, "%.4g", side.ratioTo(fit.unit().wished())) + " of them.";
                }
            }
            long along = 2 * (fit.across().units() / fit.unit().wished().units() + fit.down().units() / fit.unit().wished().units());
            return "units of " + fit.unit().wished() + " go round " + fit.across() + " x " + fit.down() + " " + along + " times, or " + (along + 4)
                    + " with one in each corner, not " + (one ? n : fit.counts().fewest() + " to " + fit.counts().most()) + " times.";
        }
        return "no unit from " + fit.unit().least() + " to " + fit.unit().greatest() + " in steps of " + fit.unit().step() + " goes a whole number of times along both "
                + fit.across() + " and " + fit.down() + " with the spacers and the count that are allowed; all were tried.";
    }

    private static String nearest(List<Change<Fitting>> others) {
        if (others.isEmpty()) {
            return "";
        }
        return " The nearest that can: " + others.stream().limit(3).map(c -> c.solution().toString()).collect(Collectors.joining("; ")) + ".";
    }
}
