package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.cutting.pieces.RotaryRules;
import org.calicograph.fabric.Print;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.Unit;

/** Repeated rows of squares and rectangles, sewn as long strips first and cut across after. */
public record StripSets(CuttingRules rules, List<StripSet> sets) implements Drawable {

    /**
     * Strips sewn side by side.
     *
     * @param fabrics of the strips, in order
     * @param strips  their cut widths
     * @param cut     the length of each segment cut across them
     * @param times   segments needed
     * @param cloth   the usable width of the narrowest of the fabrics
     */
    public record StripSet(List<String> fabrics, List<Length> strips, Length cut, int times, Length cloth) {

        /** Segments that one set across the width gives. */
        public int perSet(CuttingRules rules) {
            return (int) (cloth.units() / cut.units());
        }

        /** How many strip sets are sewn. */
        public int sets(CuttingRules rules) {
            return (times + perSet(rules) - 1) / perSet(rules);
        }

        /** The cloth of whole sets. */
        public Area area(CuttingRules rules) {
            Length width = strips.stream().reduce(Length.ZERO, Length::plus);
            return Area.of(width.times((long) sets(rules)), cloth);
        }

        /** The cloth of whole strips from which the same patches are cut one by one. */
        public Area areaSingly(CuttingRules rules) {
            Area area = Area.ZERO;
            for (Length s : strips) {
                long per = cloth.units() / cut.units();
                area = area.plus(Area.of(s.times((times + per - 1) / per), cloth));
            }
            return area;
        }

        /** The cut area of the patches alone. */
        public Area areaOfPatches() {
            Area area = Area.ZERO;
            for (Length s : strips) {
                area = area.plus(Area.of(s, cut).times(times));
            }
            return area;
        }
    }

    public StripSets {
        sets = List.copyOf(sets);
    }

    /** The strip sets of a quilt's top. */
    public static StripSets of(Quilt quilt) {
        return of(quilt.top(), CuttingRules.usual());
    }

    /** Rows of two patches or more, all upright rectangles of one height that a ruler has, of cloth that may be turned, that are needed at least three times. */
    public static StripSets of(Patchwork work, CuttingRules rules) {
        Map<List<Object>, StripSet> found = new LinkedHashMap<>();
        for (Stage stage : SewingPlan.of(work.name(), work, rules).stages()) {
            if (!(stage.work() instanceof org.calicograph.patchwork.Block block)) {
                continue;
            }
            Map<String, Patch> patches = new HashMap<>();
            block.patches().forEach(p -> patches.put(p.id(), p));
            for (Unit.Sewn s : stage.order().steps()) {
                row(s, patches, stage.count(), rules).ifPresent(set -> found.merge(key(set), set,
                        (a, b) -> new StripSet(a.fabrics(), a.strips(), a.cut(), a.times() + b.times(), Length.min(a.cloth(), b.cloth()))));
            }
        }
        return new StripSets(rules, found.values().stream().filter(s -> s.times() >= 3).toList());
    }

    /** A row read from either end is one set. */
    private static List<Object> key(StripSet set) {
        List<Object> on = new ArrayList<>();
        List<Object> back = new ArrayList<>();
        for (int i = 0; i < set.strips().size(); i++) {
            on.add(set.fabrics().get(i) + set.strips().get(i).units());
            back.add(0, set.fabrics().get(i) + set.strips().get(i).units());
        }
        return List.of(on.toString().compareTo(back.toString()) <= 0 ? on : back, set.cut());
    }

    private static java.util.Optional<StripSet> row(Unit.Sewn s, Map<String, Patch> patches, int times, CuttingRules rules) {
        if (s.kind() != SeamKind.STRAIGHT || !s.parts().stream().allMatch(Unit.Single.class::isInstance)) {
            return java.util.Optional.empty();
        }
        List<String> fabrics = new ArrayList<>();
        List<Length> strips = new ArrayList<>();
        Length cut = Length.ZERO;
        Length cloth = Length.inches(1000);
        boolean beside = Math.abs(s.seams().get(0).get(0).heading(0).unit().y()) > 0.999;
        for (Unit part : s.parts()) {
            Patch p = patches.get(((Unit.Single) part).id());
            Box b = p.shape().bounds();
            if (!p.shape().isStraight() || Math.abs(p.shape().area().squareInches() - b.width() * b.height()) > 1e-6) {
                return java.util.Optional.empty();
            }
            Dimension strip = RotaryRules.side("strip", Length.inches(beside ? b.width() : b.height()), rules);
            Dimension segment = RotaryRules.side("segment", Length.inches(beside ? b.height() : b.width()), rules);
            if (!strip.isNear(rules) || !segment.isNear(rules) || p.fabric().print().direction() != Print.Direction.ANY) {
                return java.util.Optional.empty();
            }
            fabrics.add(p.fabric().name());
            cloth = Length.min(cloth, p.fabric().usableWidth());
            strips.add(strip.ruler());
            Length own = segment.ruler();
            if (!cut.isZero() && !cut.equals(own)) {
                return java.util.Optional.empty();
            }
            cut = own;
        }
        return cut.compareTo(cloth) > 0 ? java.util.Optional.empty() : java.util.Optional.of(new StripSet(fabrics, strips, cut, times, cloth));
    }

    @Override
    public Exhibit show() {
        Table table = Table.of("Strip sets", "Strips", "Cut widths", "Sets", "Cut across every", "Segments", "Waste", "Waste cut singly");
        for (StripSet s : sets) {
            List<String> widths = s.strips().stream().map(rules::text).toList();
            table = table.row(String.join(" + ", s.fabrics()), String.join(" + ", widths), s.sets(rules), rules.text(s.cut()), s.times(),
                    share(s.area(rules), s.areaOfPatches()), share(s.areaSingly(rules), s.areaOfPatches()));
        }
        return Exhibit.several(Exhibit.of(table), Exhibit.words(Cutting.CAUTION));
    }

    private static String share(Area cloth, Area used) {
        return Math.round(100 * (1 - used.squareInches() / cloth.squareInches())) + " %";
    }
}
