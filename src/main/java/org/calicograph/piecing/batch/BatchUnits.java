package org.calicograph.piecing.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.quilt.Quilt;

/**
 * The units of a quilt that can be sewn several at a time: flying geese, quarter-square and half-square units within its blocks, each patch in one of them at most,
 * counted by size and cloths. Units that only meet where blocks meet are not among them.
 *
 * @param title of what they are found in
 * @param found every kind, the most frequent first
 */
public record BatchUnits(String title, CuttingRules rules, List<Found> found) implements Drawable {

    /**
     * One kind of unit.
     *
     * @param cloths by name, in the unit's own order
     * @param count  in the whole quilt
     */
    public record Found(BatchUnit unit, List<String> cloths, int count) {
        public Found {
            cloths = List.copyOf(cloths);
        }
    }

    public BatchUnits {
        found = List.copyOf(found);
    }

    /** Those of a quilt, by the rules of {@link CuttingRules#usual}. */
    public static BatchUnits of(Quilt quilt) {
        return of(quilt.title(), quilt.top(), CuttingRules.usual());
    }

    /** Those of a piece of work, by the rules of {@link CuttingRules#usual}. */
    public static BatchUnits of(Patchwork work) {
        return of(work.name(), work, CuttingRules.usual());
    }

    /** Those of a piece of work by other rules. */
    public static BatchUnits of(String title, Patchwork work, CuttingRules rules) {
        Map<Found, Integer> counts = new LinkedHashMap<>();
        walk(work, counts, new LinkedHashMap<>());
        List<Found> found = new ArrayList<>();
        counts.forEach((kind, n) -> found.add(new Found(kind.unit(), kind.cloths(), n)));
        found.sort(Comparator.comparingInt((Found f) -> -f.count()).thenComparing(f -> -f.unit().width().units()).thenComparing(f -> f.unit().name() + f.cloths()));
        return new BatchUnits(title, rules, found);
    }

    private static void walk(Patchwork work, Map<Found, Integer> into, Map<Block, List<Found>> known) {
        if (work instanceof Assembly assembly) {
            for (Placed part : assembly.parts()) {
                walk(part.work(), into, known);
            }
            return;
        }
        Block block = (Block) work;
        block.applique().map(Applique::ground).ifPresent(ground -> walk(ground, into, known));
        if (block.applique().isEmpty()) {
            known.computeIfAbsent(block, BatchUnits::within).forEach(kind -> into.merge(kind, 1, Integer::sum));
        }
    }

    /** Every unit of a block, each as a kind that is counted once. */
    private static List<Found> within(Block block) {
        List<Corner> corners = new ArrayList<>();
        for (Patch p : block.patches()) {
            Corner.of(p).ifPresent(corners::add);
        }
        Set<Corner> used = new HashSet<>();
        List<Found> units = new ArrayList<>();
        for (Corner goose : corners) {
            List<Corner> sky = corners.stream().filter(c -> goose.hasOnLeg(c) && !used.contains(c)).toList();
            if (sky.size() == 2 && !used.contains(goose) && sky.get(0).cloth().equals(sky.get(1).cloth()) && !sky.get(0).cloth().equals(goose.cloth()) && sky.get(0).makesCorner(sky.get(1), goose)) {
                used.add(goose);
                used.addAll(sky);
                units.add(new Found(Geese.of(Length.inches(goose.base())), List.of(goose.cloth(), sky.get(0).cloth()), 1));
            }
        }
        for (Corner one : corners) {
            List<Corner> four = corners.stream().filter(c -> !used.contains(c) && c.meets(one)).toList();
            if (four.size() == 4 && four.contains(one) && !Corner.hourglass(four).isEmpty()) {
                used.addAll(four);
                List<String> cloths = Corner.hourglass(four);
                QuarterSquares unit = QuarterSquares.of(Length.inches(one.base()));
                units.add(new Found(cloths.size() == 3 ? unit.ofThree() : unit, cloths, 1));
            }
        }
        for (Corner one : corners) {
            corners.stream().filter(c -> !used.contains(c) && !used.contains(one) && c != one && c.sharesBase(one) && !c.cloth().equals(one.cloth())).findFirst().ifPresent(other -> {
                used.add(one);
                used.add(other);
                List<String> cloths = java.util.stream.Stream.of(one.cloth(), other.cloth()).sorted().toList();
                units.add(new Found(HalfSquares.of(Length.inches(one.leg())), cloths, 1));
            });
        }
        return units;
    }

    /** What to cut for all, in the way with the fewest pieces to sew, and how much cloth it takes beside the way with the least. */
    public Table table() {
        Table table = Table.of("Units of " + title + " that can be sewn several at a time", "Unit", "Finished", "How many", "Way with the fewest pieces", "Cut", "Trim to", "Cloth", "Least cloth");
        for (Found f : found) {
            Batch few = f.unit().fewestPieces(f.count(), rules);
            Batch least = f.unit().leastCloth(f.count(), rules);
            table = table.row(f.unit().name(), rules.exact(f.unit().width()) + " x " + rules.exact(f.unit().height()), f.count(), few.name(), few.words(f.count(), f.cloths(), rules),
                    few.trimTo().map(t -> rules.text(t.width()) + " x " + rules.text(t.height())).orElse(""), few.area(f.count(), rules),
                    few.equals(least) ? "the same" : least.name() + ", " + least.area(f.count(), rules));
        }
        return table;
    }

    @Override
    public Exhibit show() {
        if (found.isEmpty()) {
            return Exhibit.words("No half-square unit, quarter-square unit or flying goose lies within a block of " + title + ".");
        }
        StringBuilder steps = new StringBuilder();
        Set<String> told = new HashSet<>();
        for (Found f : found) {
            Batch few = f.unit().fewestPieces(f.count(), rules);
            if (told.add(f.unit().name() + few.name())) {
                steps.append(Batch.begun(f.unit().name())).append(", ").append(few.name()).append(": ").append(few.steps()).append(' ').append(few.print()).append('\n');
            }
        }
        return Exhibit.several(Exhibit.of(table()), Exhibit.words(steps + "These pieces are in the cutting list too, cut singly: cut them one way or the other. Make one batch first and measure it. "
                + Cutting.CAUTION));
    }
}
