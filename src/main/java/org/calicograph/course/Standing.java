package org.calicograph.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.calicograph.colouring.Contrast;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.fabric.InHand;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.Fit;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.show.PatchworkPicture;
import org.calicograph.stitching.QuiltingPlan;

/**
 * How far a quilt has come in its year. What can be reckoned is reckoned: whether the top closes, covers its bed, whether
 * borders come out whole, neighbours stand apart, the cloth in hand is enough, lines lie as close as the batting asks.
 * What is done by hand is ticked: {@code Standing.of(quilt).by("Hesper Tolland").on(bed).done(Milestone.CUT)}.
 *
 * @param maker    who makes it; empty if not said
 * @param bed      what it is to cover; empty for a wall or if not said
 * @param wall     true if it hangs on a wall and covers no bed
 * @param fits     borders still to be fitted, by name
 * @param quilting the lines; empty while there are none
 * @param rules    by which it is cut
 * @param done     what is ticked off
 */
public record Standing(Quilt quilt, String maker, Optional<BedCover> bed, boolean wall, Map<String, Fit> fits, Optional<QuiltingPlan> quilting,
                       CuttingRules rules, Set<Milestone> done) implements Drawable {

    /** How far the areas of patches may differ from the top's, as a share of it, before a gap or an overlap is told. */
    private static final double CLOSED = 1e-6;

    public Standing {
        fits = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(fits));
        done = Set.copyOf(done);
    }

    /** A quilt of which nothing is ticked yet. */
    public static Standing of(Quilt quilt) {
        return new Standing(quilt, "", Optional.empty(), false, Map.of(), Optional.empty(), CuttingRules.usual(), Set.of());
    }

    /**
     * The standing of a quilt, of patchwork, or a standing itself.
     *
     * @throws IllegalArgumentException if the value is none of these
     */
    public static Standing ofAny(Object value) {
        if (value instanceof Standing standing) {
            return standing;
        }
        if (value instanceof Quilt quilt) {
            return of(quilt);
        }
        if (value instanceof Patchwork work) {
            return of(Quilt.of(work.name(), work));
        }
        throw new IllegalArgumentException("a standing is that of a quilt, not of " + (value == null ? "nothing" : value.getClass().getSimpleName())
                + "; name a quilt");
    }

    /** Made by this person. */
    public Standing by(String name) {
        return new Standing(quilt, name.strip(), bed, wall, fits, quilting, rules, done);
    }

    /** To cover this bed. */
    public Standing on(BedCover cover) {
        return new Standing(quilt, maker, Optional.of(cover), false, fits, quilting, rules, done);
    }

    /** To hang on a wall. */
    public Standing forWall() {
        return new Standing(quilt, maker, Optional.empty(), true, fits, quilting, rules, done);
    }

    /** With a border that is to fit, under a name. */
    public Standing fitting(String border, Fit fit) {
        Map<String, Fit> all = new LinkedHashMap<>(fits);
        all.put(border, fit);
        return new Standing(quilt, maker, bed, wall, all, quilting, rules, done);
    }

    /** To be quilted by this plan. */
    public Standing quilted(QuiltingPlan plan) {
        return new Standing(quilt, maker, bed, wall, fits, Optional.of(plan), rules, done);
    }

    /** Cut by these rules. */
    public Standing cutBy(CuttingRules other) {
        return new Standing(quilt, maker, bed, wall, fits, quilting, other, done);
    }

    /** With these ticked off too. */
    public Standing done(Milestone... more) {
        Set<Milestone> all = EnumSet.noneOf(Milestone.class);
        all.addAll(done);
        all.addAll(Arrays.asList(more));
        return new Standing(quilt, maker, bed, wall, fits, quilting, rules, all);
    }

    /** What was found, season by season. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        all.add(top());
        all.add(wall ? Finding.right(Season.DRAFTING, "the bed", "none: it hangs on a wall.") : bed.isEmpty() ? Finding.open(Season.DRAFTING, "the bed", "no bed is named; add .on(BedCover.over(Mattress.QUEEN).drop(inches(14))), or .forWall()")
                : new Finding(Season.DRAFTING, "the bed", bed.get().isCoveredBy(quilt) ? Finding.State.RIGHT : Finding.State.WRONG, bed.get().verdict(quilt)));
        fits.forEach((name, fit) -> all.add(new Finding(Season.DRAFTING, name, fit.solutions().isEmpty() ? Finding.State.WRONG : Finding.State.RIGHT, fit.why())));
        all.add(contrast());
        all.addAll(inHand());
        for (Milestone each : Milestone.values()) {
            if (each == Milestone.QUILTED) {
                all.add(lines());
            }
            all.add(ticked(each));
        }
        return all;
    }

    private Finding top() {
        double patches = quilt.patches().stream().map(Patch::shape).mapToDouble(s -> Math.abs(s.area().squareInches())).sum();
        double outline = Math.abs(quilt.top().outline().area().squareInches());
        String size = quilt.width().onRuler() + " x " + quilt.height().onRuler();
        return Math.abs(patches - outline) <= CLOSED * outline
                ? Finding.right(Season.DRAFTING, "the top", quilt.patches().size() + " patches cover " + size + " whole.")
                : Finding.wrong(Season.DRAFTING, "the top", "the patches come to " + Math.round(patches * 100) / 100.0 + " sq in, the top of " + size + " to "
                        + Math.round(outline * 100) / 100.0 + ": look for a gap or an overlap.");
    }

    private Finding contrast() {
        Contrast contrast = Contrast.of(quilt.top());
        if (contrast.pairs().isEmpty()) {
            return Finding.open(Season.COLOUR, "contrast", "no two cloths meet yet.");
        }
        if (contrast.weak().isEmpty()) {
            Contrast.Pair least = contrast.pairs().get(0);
            return Finding.right(Season.COLOUR, "contrast", "all neighbours stand apart, the least " + least.one().name() + " and " + least.other().name() + ".");
        }
        return Finding.wrong(Season.COLOUR, "contrast", contrast.weak().stream().map(p -> p.one().name() + " and " + p.other().name()
                + " run together where they meet (" + p.seams().size() + (p.seams().size() == 1 ? " seam)" : " seams)"))
                .collect(Collectors.joining("; ")) + "; part them, or make one lighter.");
    }

    /** One finding for each cloth of which the amount in hand is known, or one in all. */
    private List<Finding> inHand() {
        Set<String> counted = quilt.patches().stream().map(Patch::fabric).filter(f -> !(f.inHand() instanceof InHand.AsNeeded))
                .map(f -> f.name()).collect(Collectors.toCollection(TreeSet::new));
        if (counted.isEmpty()) {
            return List.of(Finding.right(Season.COLOUR, "cloth in hand", "none is counted: all is bought by the cutting plan."));
        }
        List<Finding> all = new ArrayList<>();
        for (FabricCut cut : Cutting.of(quilt).by(rules).fabrics()) {
            String what = cut.fabric().name() + " in hand";
            if (cut.fabric().inHand() instanceof InHand.OffTheBolt bolt) {
                Length needed = cut.yardage().shrunk().plus(rules.reserve());
                Length lacking = needed.minus(bolt.length());
                all.add(lacking.isPositive() ? Finding.wrong(Season.COLOUR, what, "there is " + rules.asked(bolt.length()) + ", and " + cut.yardage().asked(rules)
                        + " is needed: find " + rules.text(lacking.roundedUpTo(rules.rulerStep())) + " more, or ask what can stand in for it.")
                        : Finding.right(Season.COLOUR, what, "there is enough: " + rules.text(needed.roundedUpTo(rules.rulerStep())) + " of " + rules.text(bolt.length()) + "."));
            } else if (cut.fabric().inHand() instanceof InHand.Scraps scraps) {
                boolean few = scraps.pieces().squareInches() < cut.areaSewn().squareInches();
                all.add(new Finding(Season.COLOUR, what, few ? Finding.State.WRONG : Finding.State.OPEN, few
                        ? "scraps of " + scraps.pieces() + " are less than the " + cut.areaSewn() + " that the finished patches alone cover: find more."
                        : "scraps of " + scraps.pieces() + " may do for " + cut.areaSewn() + " of finished patches: lay them out before cutting."));
            }
        }
        return all;
    }

    private Finding lines() {
        if (quilting.isEmpty()) {
            return Finding.open(Season.QUILTING, "the lines", "no quilting is drawn yet.");
        }
        QuiltingPlan plan = quilting.get();
        boolean close = plan.gap().isWithin(plan.batting().widestGap());
        return new Finding(Season.QUILTING, "the lines", close ? Finding.State.RIGHT : Finding.State.WRONG, plan.gapReport());
    }

    private Finding ticked(Milestone each) {
        if (!done.contains(each)) {
            return Finding.open(each.season(), each.words(), "not ticked yet.");
        }
        List<String> before = Arrays.stream(Milestone.values()).filter(m -> m.compareTo(each) < 0 && !done.contains(m)).map(m -> "'" + m.words() + "'").toList();
        return before.isEmpty() ? Finding.right(each.season(), each.words(), "done.")
                : Finding.wrong(each.season(), each.words(), "ticked, though " + String.join(" and ", before) + " is not: tick what was done, or take this tick away.");
    }

    /** The same as it is shown. */
    public StandingReport report() {
        return new StandingReport(quilt.title(), maker, quilt.width().onRuler() + " x " + quilt.height().onRuler(), Optional.of(PatchworkPicture.of(quilt)), findings());
    }

    @Override
    public Exhibit show() {
        return report().exhibit();
    }
}
