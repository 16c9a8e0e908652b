package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.measure.Length;

/** The search behind a {@link StripeFit}. Where one strip begins settles where the next does; going round must come back to the first. */
final class StripeSearch {

    private StripeSearch() { }

    /** A place in the print: from none to below a repeat. */
    static Length within(Length place, Length repeat) {
        return new Length(Math.floorMod(place.units(), repeat.units()));
    }

    /** How far a place is from a whole number of steps, the nearest: from minus half a step to half a step. */
    private static Length off(Length place, Length step) {
        long rest = Math.floorMod(place.units(), step.units());
        return new Length(2 * rest > step.units() ? rest - step.units() : rest);
    }

    static List<StripeMatch> all(StripeFit fit) {
        // Twice the difference of the sides is what is left over when all four corners have been matched in turn.
        Length miss = off(fit.across().minus(fit.down()).times(2), fit.repeat()).abs();
        if (!fit.mirrors() || miss.compareTo(fit.tolerance()) > 0) {
            return List.of();
        }
        Set<Length> firsts = new LinkedHashSet<>();
        Length middle = within(fit.outer(0).half().negated(), fit.repeat());
        firsts.add(middle);
        firsts.add(within(middle.plus(fit.repeat().half()), fit.repeat()));
        for (Length at = Length.ZERO; at.compareTo(fit.repeat()) < 0; at = at.plus(fit.step())) {
            firsts.add(at);
        }
        List<StripeMatch> found = new ArrayList<>();
        for (Length first : firsts) {
            found.add(match(fit, first, miss));
        }
        found.sort(StripeMatch.BEST_FIRST);
        return List.copyOf(found);
    }

    private static StripeMatch match(StripeFit fit, Length first, Length miss) {
        List<Length> starts = new ArrayList<>();
        Length at = first;
        for (int side = 0; side < 4; side++) {
            starts.add(at);
            // The end of a strip is as far before a mirror line as the next strip's beginning is after one.
            at = within(at.plus(fit.outer(side)).negated(), fit.repeat());
        }
        List<Length> kinds = new ArrayList<>();
        for (Length s : starts) {
            if (kinds.stream().noneMatch(k -> off(k.minus(s), fit.repeat()).abs().compareTo(slack(fit)) <= 0)) {
                kinds.add(s);
            }
        }
        boolean centred = true;
        for (int side = 0; side < 4; side++) {
            Length middle = starts.get(side).plus(fit.outer(side).half());
            centred &= off(middle.times(2), fit.repeat()).abs().compareTo(slack(fit)) <= 0;
        }
        return new StripeMatch(starts, kinds.size(), centred, cloth(fit, starts), miss);
    }

    /** Halves are rounded to a unit, so places that should agree may be some units apart. */
    private static Length slack(StripeFit fit) {
        return Length.max(fit.tolerance(), new Length(8));
    }

    /** The least cloth from the beginning of the first strip to the end of the last, the cloth begun where any strip begins. */
    private static Length cloth(StripeFit fit, List<Length> starts) {
        Length half = fit.extra().half();
        List<Length> places = starts.stream().map(s -> within(s.minus(half), fit.repeat())).toList();
        Length best = new Length(Long.MAX_VALUE);
        for (Length begin : Set.copyOf(places)) {
            best = Length.min(best, least(fit, places, begin, new Length[Math.min(fit.lanes(), 4)], 0));
        }
        return best;
    }

    /** The strips not yet cut, each tried next on every lane. */
    private static Length least(StripeFit fit, List<Length> places, Length begin, Length[] ends, int done) {
        if (done == 15) {
            Length last = Length.ZERO;
            for (Length end : ends) {
                last = end == null ? last : Length.max(last, end);
            }
            return last;
        }
        Length best = new Length(Long.MAX_VALUE);
        for (int side = 0; side < 4; side++) {
            if ((done >> side & 1) != 0) {
                continue;
            }
            for (int lane = 0; lane < ends.length; lane++) {
                Length end = ends[lane];
                Length from = end == null ? Length.ZERO : end;
                Length at = places.isEmpty() ? from : from.plus(within(places.get(side).minus(begin).minus(from), fit.repeat()));
                ends[lane] = at.plus(fit.cut(side));
                best = Length.min(best, least(fit, places, begin, ends, done | 1 << side));
                ends[lane] = end;
                if (end == null) {
                    break; // lanes that are still empty are alike
                }
            }
        }
        return best;
    }

    /** The same for strips that need no matching. */
    static Length plainCloth(StripeFit fit) {
        return least(fit, List.of(), Length.ZERO, new Length[Math.min(fit.lanes(), 4)], 0);
    }

    static List<Length> heights(StripeFit fit, Length from, Length to) {
        Length half = fit.repeat().half();
        List<Length> heights = new ArrayList<>();
        Length first = from.plus(within(fit.across().minus(from), half));
        for (Length h = first; h.compareTo(to) <= 0; h = h.plus(half)) {
            if (h.isPositive()) {
                heights.add(h);
            }
        }
        return List.copyOf(heights);
    }

    /** A change of one side, to the next half repeat or whole repeat either way, the least first. */
    static List<Change<StripeMatch>> near(StripeFit fit) {
        if (!all(fit).isEmpty()) {
            return List.of();
        }
        if (!fit.mirrors()) {
            return all(fit.mirroring()).stream().limit(1)
                    .map(m -> new Change<>("use a print of the same repeat that mirrors about a line across the strip", m)).toList();
        }
        record Step(Length by, boolean wider) { }
        Set<Step> steps = new LinkedHashSet<>();
        for (Length whole : List.of(fit.repeat().half(), fit.repeat())) {
            Length over = within(fit.across().minus(fit.down()), whole);
            for (Length by : List.of(over.negated(), whole.minus(over))) {
                steps.add(new Step(by, true));
                steps.add(new Step(by.negated(), false));
            }
        }
        List<Step> ordered = new ArrayList<>(steps);
        ordered.sort(Comparator.comparing((Step s) -> s.by().abs()).thenComparing(s -> !s.by().isPositive()).thenComparing(s -> !s.wider()));
        List<Change<StripeMatch>> found = new ArrayList<>();
        for (Step s : ordered) {
            Length across = s.wider() ? fit.across().plus(s.by()) : fit.across();
            Length down = s.wider() ? fit.down() : fit.down().plus(s.by());
            if (across.isPositive() && down.isPositive()) {
                all(fit.sized(across, down)).stream().findFirst().ifPresent(m -> found.add(new Change<>(words(s.by(), s.wider(), across, down), m)));
            }
        }
        return List.copyOf(found);
    }

    private static String words(Length by, boolean wider, Length across, Length down) {
        String size = StripeMatch.shown(across) + " x " + StripeMatch.shown(down);
        Length much = StripeMatch.shown(by.abs());
        if (!by.isPositive()) {
            return "make it " + much + (wider ? " narrower" : " shorter") + ", " + size;
        }
        return "make it " + much + (wider ? " wider" : " longer") + ", " + size + ", with spacer strips of " + by.half().roundedTo(Length.inches(1, 32)) + " finished "
                + (wider ? "on the sides" : "at the ends");
    }
}
