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
import org.calicograph.cutting.layout.CutStepsPicture;
import org.calicograph.cutting.layout.LayoutPicture;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;

/**
 * What to cut for a top, fabric by fabric. Pieces longer than the cloth is wide are cut in one length along the
 * selvage or joined from strips across, whichever takes less of the fabric; {@link #borders} asks for one way.
 *
 * @param title  what it is for
 * @param search how layouts were looked for
 */
public record Cutting(String title, CuttingRules rules, List<FabricCut> fabrics, LayoutSearch search) implements Drawable {

    /** Goes with every cutting plan. */
    public static final String CAUTION = "A rotary cutter is a razor: close its guard after every cut, cut away from "
            + "yourself on a cutting mat with your fingers behind the ruler's edge, and keep it from children. Cut one "
            + "piece of each kind first and measure it. The maker's instructions come before these.";

    public Cutting {
        fabrics = List.copyOf(fabrics);
    }

    /** With 1/4 in seams and the other rules of {@link CuttingRules#INCH}. */
    public static Cutting of(Quilt quilt) {
        return of(quilt, CuttingRules.INCH);
    }

    public static Cutting of(Quilt quilt, CuttingRules rules) {
        return of(quilt.title(), quilt.top(), rules, List.of(), LayoutSearch.USUAL);
    }

    public static Cutting of(Patchwork work) {
        return of(work.name(), work, CuttingRules.INCH, List.of(), LayoutSearch.USUAL);
    }

    public static Cutting of(Patchwork work, CuttingRules rules) {
        return of(work.name(), work, rules, List.of(), LayoutSearch.USUAL);
    }

    /** For shapes laid on a ground, their edges turned under by {@link Pieces#TURN_UNDER}. */
    public static Cutting of(Applique applique) {
        return of(applique, CuttingRules.INCH, Pieces.TURN_UNDER);
    }

    /** The same with another allowance; nothing where raw edges are fused. */
    public static Cutting of(Applique applique, CuttingRules rules, Length turnUnder) {
        return of(applique.name(), Pieces.of(applique, rules, turnUnder), rules, List.of(), LayoutSearch.USUAL);
    }

    /**
     * @param directed fabrics whose print must stand the way it does in the quilt: no quarter turns
     * @param search   how hard to look for short layouts
     * @throws IllegalArgumentException if a piece is too large for the cloth, naming it and the repair
     */
    public static Cutting of(String title, Patchwork work, CuttingRules rules, List<Fabric> directed, LayoutSearch search) {
        return of(title, Pieces.of(work, rules), rules, directed, search);
    }

    private static Cutting of(String title, List<Piece> all, CuttingRules rules, List<Fabric> directed, LayoutSearch search) {
        Map<String, List<Piece>> byFabric = new LinkedHashMap<>();
        for (Piece p : all) {
            byFabric.computeIfAbsent(p.fabric().name(), f -> new ArrayList<>()).add(p);
        }
        List<FabricCut> cuts = new ArrayList<>();
        for (List<Piece> pieces : byFabric.values()) {
            Fabric fabric = pieces.get(0).fabric();
            cuts.add(FabricCut.of(fabric, pieces, directed.contains(fabric), rules, search, Optional.empty()));
        }
        return new Cutting(title, rules, cuts, search);
    }

    /**
     * The same with borders and other long strips cut in the given way from every fabric.
     *
     * @throws IllegalArgumentException if they can't lie along the selvage since the print would be turned
     */
    public Cutting borders(BorderCloth.Way way) {
        return new Cutting(title, rules, fabrics.stream().map(f -> f.borders(way, rules, search)).toList(), search);
    }

    /**
     * The same for one fabric alone.
     *
     * @throws IllegalArgumentException if nothing is cut from it, naming the fabrics that there are
     */
    public Cutting borders(Fabric fabric, BorderCloth.Way way) {
        List<String> names = fabrics.stream().map(f -> f.fabric().name()).toList();
        if (!names.contains(fabric.name())) {
            throw new IllegalArgumentException("nothing is cut from " + fabric.name() + "; name one of " + String.join(", ", names));
        }
        return new Cutting(title, rules, fabrics.stream().map(f -> f.fabric().name().equals(fabric.name()) ? f.borders(way, rules, search) : f)
                .toList(), search);
    }

    /** The same cut in strips throughout, also where that takes more cloth. */
    public Cutting inStrips() {
        return new Cutting(title, rules, fabrics.stream().map(f -> f.ofStrips(rules)).toList(), search);
    }

    /** What to buy, a row for each fabric. */
    public Table shopping() {
        Table table = Table.of("Fabric for " + title + ", " + rules.text(rules.usableWidth()) + " usable width", "Fabric", "Buy", "Laid",
                "No layout below", "Why", "Over it",
                "No less to buy than", "Long strips");
        for (FabricCut f : fabrics) {
            table = table.row(f.fabric().name(), f.yardage().asked(rules), rules.text(f.layout().length().roundedUpTo(rules.rulerStep())),
                    rules.text(f.layout().bound().length().roundedTo(rules.rulerStep().dividedBy(4))), f.layout().bound().reason(),
                    String.format(java.util.Locale.ROOT, "%.1f %%", 100 * f.layout().overBound()),
                    f.yardage().isLeast() ? "as bought: proved least" : Yardage.asked(f.yardage().least(), rules), f.choice());
        }
        return table;
    }

    /** What the amounts rest on, in words. */
    public String assumptions() {
        return "Seams " + rules.text(rules.seam()) + "; " + rules.text(rules.usableWidth()) + " usable width; "
                + (rules.shrinkage() == 0 ? "no shrinkage" : "shrinkage " + Math.round(rules.shrinkage() * 1000) / 10.0 + " %") + "; reserve "
                + rules.text(rules.reserve()) + " a fabric; bought in steps of " + rules.text(rules.buyingStep()) + ".";
    }

    /** The cuts in order, fabric by fabric: the whole cloth first, then what it is cut into. */
    public Exhibit steps() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words("Every cut runs from edge to edge of the piece of cloth in hand; the heavy lines are the cuts to make now. "
                + CAUTION));
        for (FabricCut f : fabrics) {
            parts.add(Exhibit.of(CutStepsPicture.of(f.toCut(rules), f.fabric().colour(), rules::text), f.fabric().name() + ", cut by cut"));
        }
        return new Exhibit.Several(parts);
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.of(shopping()));
        parts.add(Exhibit.words(assumptions() + "\n" + CAUTION));
        for (FabricCut f : fabrics) {
            parts.add(Exhibit.of(f.table(rules)));
            parts.add(Exhibit.of(f.strips(rules)));
            parts.add(Exhibit.of(LayoutPicture.of(f.toCut(rules), f.fabric().colour(), rules::text, b -> f.cutsWithin(b, rules)), f.caption(rules)));
        }
        return new Exhibit.Several(parts);
    }
}
