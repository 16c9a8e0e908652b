package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.CutStepsPicture;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;

/**
 * What to cut for a top, fabric by fabric. Pieces longer than the cloth is wide are cut in one length along the
 * selvedge or joined from strips across, whichever takes less of the fabric; {@link #borders} asks for one way.
 *
 * @param title  what it is for
 * @param source what is cut
 * @param search how layouts were looked for
 */
public record Cutting(String title, Source source, CuttingRules rules, List<FabricCut> fabrics, LayoutSearch search) implements Drawable {

    /** Goes with every cutting plan. */
    public static final String CAUTION = "A rotary cutter is a razor: close its guard after every cut, cut away from "
            + "yourself on a cutting mat with your fingers behind the ruler's edge, and keep it from children. Cut one "
            + "piece of each kind first and measure it. The maker's instructions come before these.";

    public Cutting {
        fabrics = List.copyOf(fabrics);
    }

    /** For a quilt by the rules of {@link CuttingRules#usual}: its top, and binding, backing and sleeve where their cloth is chosen. */
    public static Cutting of(Quilt quilt) {
        return of(quilt.title(), Source.of(quilt), CuttingRules.usual(), LayoutSearch.USUAL);
    }

    /** For a top, or a part of one, without what finishes it. */
    public static Cutting of(Patchwork work) {
        return of(work.name(), Source.of(work), CuttingRules.usual(), LayoutSearch.USUAL);
    }

    /** For shapes laid on a ground, their edges turned under by {@link Pieces#TURN_UNDER}. */
    public static Cutting of(Applique applique) {
        return of(applique, Pieces.TURN_UNDER);
    }

    /** The same with another allowance; nothing where raw edges are fused. */
    public static Cutting of(Applique applique, Length turnUnder) {
        return of(applique.name(), Source.of(applique, turnUnder), CuttingRules.usual(), LayoutSearch.USUAL);
    }

    /**
     * The same by other rules: seam, ruler, shrinkage, reserve, inch or metric. Everything else is the cloth's own.
     *
     * @throws IllegalArgumentException if a piece is too large for its cloth, naming it and the repair
     */
    public Cutting by(CuttingRules other) {
        return of(title, source, other, search);
    }

    /** The same, looked for more or less long. */
    public Cutting searched(LayoutSearch other) {
        return of(title, source, rules, other);
    }

    private static Cutting of(String title, Source source, CuttingRules rules, LayoutSearch search) {
        Map<Fabric.Bolt, List<Piece>> pieces = new LinkedHashMap<>();
        Map<Fabric.Bolt, List<Blank>> finish = new LinkedHashMap<>();
        Map<Fabric.Bolt, Fabric> fabrics = new LinkedHashMap<>();
        for (Piece p : source.pieces(rules)) {
            fabrics.putIfAbsent(p.fabric().bolt(), p.fabric());
            pieces.computeIfAbsent(p.fabric().bolt(), f -> new ArrayList<>()).add(p);
        }
        source.quilt().ifPresent(q -> Finish.blanks(q, rules).forEach((fabric, blanks) -> {
            fabrics.putIfAbsent(fabric.bolt(), fabric);
            finish.computeIfAbsent(fabric.bolt(), f -> new ArrayList<>()).addAll(blanks);
        }));
        List<FabricCut> cuts = new ArrayList<>();
        Map<String, Integer> named = new LinkedHashMap<>();
        fabrics.forEach((bolt, fabric) -> {
            int n = named.merge(fabric.name(), 1, Integer::sum);
            cuts.add(FabricCut.of(n == 1 ? fabric.name() : fabric.name() + " (" + n + ")", fabric, pieces.getOrDefault(bolt, List.of()),
                    finish.getOrDefault(bolt, List.of()), rules, search, Optional.empty()));
        });
        return new Cutting(title, source, rules, cuts, search);
    }

    /**
     * The same with borders and other long strips cut in the given way from every fabric.
     *
     * @throws IllegalArgumentException if they can't lie along the selvedge since the print would be turned
     */
    public Cutting borders(BorderCloth.Way way) {
        return new Cutting(title, source, rules, fabrics.stream().map(f -> f.borders(way, rules, search)).toList(), search);
    }

    /**
     * The same for one fabric alone.
     *
     * @throws IllegalArgumentException if nothing is cut from it, naming the fabrics that there are
     */
    public Cutting borders(Fabric fabric, BorderCloth.Way way) {
        List<String> names = fabrics.stream().map(f -> f.fabric().name()).toList();
        if (fabrics.stream().noneMatch(f -> f.fabric().isSameClothAs(fabric))) {
            throw new IllegalArgumentException("nothing is cut from " + fabric.name() + "; name one of " + String.join(", ", names));
        }
        return new Cutting(title, source, rules, fabrics.stream().map(f -> f.fabric().isSameClothAs(fabric) ? f.borders(way, rules, search) : f)
                .toList(), search);
    }

    /** The same cut in strips throughout, also where that takes more cloth. */
    public Cutting inStrips() {
        return new Cutting(title, source, rules, fabrics.stream().map(f -> f.ofStrips(rules)).toList(), search);
    }

    /** The same from the least cloth that is found, also where strips take little more and are easier. */
    public Cutting fromLeastCloth() {
        return new Cutting(title, source, rules, fabrics.stream().map(f -> f.ofLeastCloth(rules)).toList(), search);
    }

    /** How each patch is cut, by its id in the top, in the words of {@link FabricCut#spoken}, its cloth's name before them. */
    public Map<String, String> ofPatches() {
        Map<String, String> words = new LinkedHashMap<>();
        for (FabricCut f : fabrics) {
            f.spoken(rules).forEach((piece, told) -> piece.patches().forEach(id -> words.put(id, piece.fabric().name() + ", " + told)));
        }
        return words;
    }

    /** What to buy, a row for each fabric. */
    public Table shopping() {
        Table table = Table.of("Fabric for " + title, "Fabric", "Usable width", "Buy", "Laid",
                "These pieces take at least", "Why", "Over it", "No less to buy than", "Cut", "Long strips");
        for (FabricCut f : fabrics) {
            table = table.row(f.name(), rules.text(f.fabric().usableWidth()), f.yardage().asked(rules), rules.text(f.layout().length().roundedUpTo(rules.rulerStep())),
                    rules.text(f.yardage().bound().length().roundedTo(rules.rulerStep().dividedBy(4))), f.yardage().bound().reason(),
                    String.format(java.util.Locale.ROOT, "%.1f %%", 100 * (f.layout().length().ratioTo(f.yardage().bound().length()) - 1)),
                    f.yardage().isLeast() ? "as bought: proved least" : rules.asked(f.yardage().least()), f.way(rules), f.choice());
        }
        return table;
    }

    /** What the amounts rest on, in words. */
    public String assumptions() {
        return "Seams " + rules.text(rules.seam()) + "; each cloth at its own usable width; " + (rules.shrinkage() == 0 ? "no shrinkage" : "shrinkage " + Math.round(rules.shrinkage() * 1000) / 10.0 + " %") + "; reserve "
                + rules.text(rules.reserve()) + " a fabric; bought in steps of " + rules.text(rules.buyingStep()) + ".";
    }

    /** The cuts in order, fabric by fabric: the whole cloth first, then what it is cut into. */
    public Exhibit steps() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words("Every cut runs from edge to edge of the piece of cloth in hand; the heavy lines are the cuts to make now. "
                + CAUTION));
        for (FabricCut f : fabrics) {
            parts.add(Exhibit.of(CutStepsPicture.of(f.layout(), f.fabric().colour(), rules::text), f.name() + ", cut by cut"));
        }
        return new Exhibit.Several(parts);
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.of(shopping()));
        parts.add(Exhibit.words(assumptions() + "\n" + CAUTION));
        for (FabricCut f : fabrics) {
            parts.addAll(f.list(rules).parts());
        }
        return new Exhibit.Several(parts);
    }
}
