package org.calicograph.scaling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.fitting.BedCover;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;

/**
 * The question what changes if a block, or a whole design, is made at another size.
 *
 * @param design as drafted
 * @param to     the other finished width
 * @param width  what the blocks are to cover across; none where the design stands alone
 * @param height the same down
 * @param rules  how it is cut
 * @param waste  the share added to the cut area for what is left between pieces, from 0 to 1
 */
public record Scaling(Patchwork design, Length to, Length width, Length height, CuttingRules rules, double waste) implements Drawable {

    /** 15 % for what is left between pieces (common practice). */
    public static final double USUAL_WASTE = 0.15;

    public Scaling {
        if (!to.isPositive() || width.units() < 0 || height.units() < 0) {
            throw new DesignException("'" + design.name() + "' can't be made " + to + " wide to cover " + width + " x " + height + "; use sizes above 0");
        }
        if (!(waste >= 0 && waste <= 1)) {
            throw new DesignException("a waste of " + waste + " is no share of cloth; use 0 to 1, such as 0.15");
        }
    }

    /** A design made so wide. */
    public static Scaling of(Patchwork design, Length to) {
        return new Scaling(design, to, Length.ZERO, Length.ZERO, CuttingRules.INCH, USUAL_WASTE);
    }

    /** As many blocks side by side as cover a top of this size. */
    public Scaling covering(Length across, Length down) {
        return new Scaling(design, to, across, down, rules, waste);
    }

    /** As many blocks side by side as cover a bed, quilting's take-up allowed for. */
    public Scaling covering(BedCover cover) {
        return covering(cover.topWidth(), cover.topLength());
    }

    /** The same by other cutting rules. */
    public Scaling with(CuttingRules other) {
        return new Scaling(design, to, width, height, other, waste);
    }

    /** The same with another share of cloth lost in cutting, 0.1 for 10 %. */
    public Scaling waste(double share) {
        return new Scaling(design, to, width, height, rules, share);
    }

    /** As drafted. */
    public Make before() {
        return make(design);
    }

    /** At the other size. */
    public Make after() {
        return make(design.scaledTo(to));
    }

    private Make make(Patchwork block) {
        return width.isZero() || height.isZero() ? new Make(block, 1, 1, rules) : Make.covering(block, width, height, rules);
    }

    /** What changes, the drafted size and the other side by side. */
    public Table table() {
        Make a = before();
        Make b = after();
        String cover = width.isZero() || height.isZero() ? "" : ", to cover " + rules.exact(width) + " x " + rules.exact(height);
        Table table = Table.of("'" + design.name() + "' at two sizes" + cover, "", rules.exact(a.block().width()), rules.exact(b.block().width()), "times");
        table = table.row("blocks across", a.across(), b.across(), times(a.across(), b.across()));
        table = table.row("blocks down", a.down(), b.down(), times(a.down(), b.down()));
        table = table.row("blocks", a.blocks(), b.blocks(), times(a.blocks(), b.blocks()));
        table = table.row("top, finished", size(a), size(b), times(a.width().inInches() * a.height().inInches(), b.width().inInches() * b.height().inInches()));
        table = table.row("patches", a.patches(), b.patches(), times(a.patches(), b.patches()));
        table = table.row("seams to sew", sewn(a.seams()), sewn(b.seams()), times(a.seams().inInches(), b.seams().inInches()));
        table = table.row("kinds of patches with a side off the ruler", off(a), off(b), "");
        Map<String, Length> more = b.cloth(waste);
        for (Map.Entry<String, Length> cloth : a.cloth(waste).entrySet()) {
            Length other = more.get(cloth.getKey());
            table = table.row("cloth by area: " + cloth.getKey(), counter(cloth.getValue()), counter(other), times(cloth.getValue().inInches(), other.inInches()));
        }
        return table;
    }

    private static long off(Make make) {
        return make.pieces().stream().filter(p -> !make.offTheRuler(p).isEmpty()).count();
    }

    private String size(Make make) {
        return rules.exact(make.width()) + " x " + rules.exact(make.height());
    }

    private static String times(double before, double after) {
        return String.format(Locale.ROOT, "%.2f", after / before);
    }

    private String sewn(Length seams) {
        return rules.isMetric() ? String.format(Locale.ROOT, "%.1f m", seams.inMm() / 1000) : String.format(Locale.ROOT, "%.1f yd", seams.inInches() / 36);
    }

    /** A length as it is asked for at the counter. */
    private String counter(Length length) {
        return rules.isMetric() ? String.format(Locale.ROOT, "%.1f m", length.inMm() / 1000) : String.format(Locale.ROOT, "%.3f", length.inInches() / 36)
                .replaceFirst("0+$", "").replaceFirst("\\.$", "") + " yd";
    }

    /** The patches of one block: finished size before and after, and the sides that are no whole step of the ruler. */
    public Table patches() {
        Make a = before();
        Make b = after();
        Table table = Table.of("Patches of one block", "fabric", "patches", "finished before", "finished after", "sides off the ruler before", "after");
        List<Piece> before = a.pieces();
        List<Piece> after = b.pieces();
        for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
            Piece p = before.get(i);
            Piece q = after.get(i);
            table = table.row(p.fabric().name(), p.count(), p.size(rules), q.size(rules), sides(a.offTheRuler(p)), sides(b.offTheRuler(q)));
        }
        return table;
    }

    private String sides(List<Length> off) {
        return off.isEmpty() ? "none" : String.join(", ", off.stream().map(rules::exact).toList());
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.of(table()));
        parts.add(Exhibit.of(patches()));
        parts.add(Exhibit.words("Cloth by area: every patch with " + rules.text(rules.seam()) + " seam allowances, " + Math.round(waste * 100)
                + " % more for what is left between them, on " + rules.text(org.calicograph.fabric.Fabric.USABLE_WIDTH) + " of usable width, up to the next " + rules.text(rules.buyingStep())
                + ". A cutting plan says what a layout takes. A side is off the ruler if it is no whole number of " + rules.text(rules.rulerStep())
                + "; a triangle may be cut by its short sides or by its long one. Seams are finished lengths."));
        return new Exhibit.Several(parts);
    }
}
