package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.calicograph.border.Fitting;
import org.calicograph.measure.Length;

/**
 * The search behind a {@link Fit}: every unit size in steps, and for each the counts along a side whose
 * spacer is allowed; then every pair of counts that agrees.
 */
final class FitSearch {

    private FitSearch() { }

    /** A count along one side, and the spacer that makes it fit. */
    private record Side(int count, Length spacer) { }

    static List<Fitting> all(Fit fit) {
        List<Fitting> found = new ArrayList<>();
        for (Length unit : units(fit)) {
            List<Side> along = sides(fit, fit.across(), unit);
            List<Side> up = fit.down().equals(fit.across()) ? along : sides(fit, fit.down(), unit);
            for (Side a : along) {
                for (Side d : up) {
                    if (!fit.spacers().equal() || a.spacer().equals(d.spacer())) {
                        // The spacer that lengthens the top lies on the left and right.
                        add(fit, a, d, unit, found);
                    }
                }
            }
        }
        found.sort(Fitting.BEST_FIRST);
        return List.copyOf(found);
    }

    private static void add(Fit fit, Side a, Side d, Length unit, List<Fitting> found) {
        for (Fitting.Corners corners : Fitting.Corners.values()) {
            if (fit.corners().contains(corners)) {
                Fitting f = new Fitting(fit.across(), fit.down(), a.count(), d.count(), corners, fit.symmetric(), unit, fit.unit().wished(), a.spacer(), d.spacer());
                if (fit.counts().off(f.total()) == 0) {
                    found.add(f);
                }
            }
        }
    }

    private static Set<Length> units(Fit fit) {
        Set<Length> units = new TreeSet<>();
        for (long k = -fit.unit().stepsDown(); k <= fit.unit().stepsUp(); k++) {
            units.add(fit.unit().at(k));
        }
        return units;
    }

    private static List<Side> sides(Fit fit, Length side, Length unit) {
        List<Side> sides = new ArrayList<>();
        long first = Math.max(1, -Math.floorDiv(-side.units(), unit.units()));
        long last = Math.floorDiv(side.plus(fit.spacers().widest().times(2)).units(), unit.units());
        for (long n = first; n <= Math.min(last, fit.counts().most()); n++) {
            Length over = unit.times(n).minus(side);
            // A side that is no fraction of an inch, as on point, may be over by an odd number of the finest units: half of one is nothing.
            Length spacer = new Length(over.units() / 2);
            if (fit.spacers().allow(spacer) && !(spacer.isZero() && !over.isZero()) && !(fit.symmetric() && n % 2 != 0)) {
                sides.add(new Side((int) n, spacer));
            }
        }
        return sides;
    }

    /** One wish given up at a time: the count, then the unit, then having no spacer. */
    static List<Change<Fitting>> near(Fit fit) {
        List<Change<Fitting>> found = new ArrayList<>();
        Fit anyCount = fit.counts(1, Integer.MAX_VALUE / 4);
        all(anyCount).stream().sorted(Comparator.comparingInt(f -> fit.counts().off(f.total()))).limit(4)
                .forEach(f -> add(new Change<>("make " + f.total() + " units", f), found));
        Length wished = fit.unit().wished();
        all(fit.between(wished.times(0.5), wished.times(1.5))).stream().limit(2)
                .forEach(f -> add(new Change<>("make each unit " + f.unit() + " long", f), found));
        exactUnits(fit).stream().limit(2).forEach(f -> add(new Change<>("make each unit " + f.unit() + " long, which is no line of a ruler", f), found));
        Length widest = Length.max(fit.spacers().widest(), wished);
        all(fit.spacers(Length.inches(1, 4), widest)).stream().limit(2).forEach(f -> add(new Change<>("put a spacer border inside", f), found));
        if (found.isEmpty()) {
            all(anyCount.spacers(Length.inches(1, 4), widest)).stream().limit(2)
                    .forEach(f -> add(new Change<>("make " + f.total() + " units and put a spacer border inside", f), found));
        }
        return List.copyOf(found);
    }

    private static void add(Change<Fitting> change, List<Change<Fitting>> found) {
        if (found.stream().noneMatch(c -> c.solution().equals(change.solution()))) {
            found.add(change);
        }
    }

    /** Units that are no whole step of a ruler: the sides divided by whole numbers, equal on both. */
    private static List<Fitting> exactUnits(Fit fit) {
        List<Fitting> found = new ArrayList<>();
        long about = Math.max(1, Math.round(fit.across().ratioTo(fit.unit().wished())));
        for (long n = Math.max(1, about - 4); n <= about + 4; n++) {
            Length unit = fit.across().dividedBy(n);
            if (unit.times(n).equals(fit.across()) && fit.down().isMultipleOf(unit)) {
                found.addAll(all(fit.units(unit)));
            }
        }
        List<Fitting> kept = new ArrayList<>();
        for (Fitting f : found) {
            kept.add(new Fitting(fit.across(), fit.down(), f.across(), f.down(), f.corners(), f.mirrored(), f.unit(), fit.unit().wished(), f.spacerSides(), f.spacerEnds()));
        }
        kept.sort(Fitting.BEST_FIRST);
        return kept;
    }
}
