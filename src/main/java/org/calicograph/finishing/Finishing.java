package org.calicograph.finishing;

import java.util.List;
import org.calicograph.cutting.Yardage;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;

/**
 * Backing, batting, binding and sleeve for a quilt of a finished size.
 *
 * @param width  of the quilt
 * @param height of the quilt
 * @param how    what the amounts rest on
 */
public record Finishing(Length width, Length height, CuttingRules rules, Assumptions how) implements Drawable {

    /**
     * @param overage   how much backing and batting stick out on each side
     * @param strip     cut width of double-fold binding
     * @param extra     binding beyond the perimeter, for corners and the last join
     * @param join      what each strip loses to joining
     * @param sleeve    cut height of a hanging sleeve, folded in two
     */
    public record Assumptions(Length overage, Length strip, Length extra, Length join, Length sleeve) {
        /** 4 in each side; 2 1/2 in strips; 12 in extra; 2 1/2 in a join sewn slantwise; a 9 in sleeve (common practice). */
        public static final Assumptions USUAL = new Assumptions(Length.inches(4), Length.inches("2 1/2"), Length.inches(12),
                Length.inches("2 1/2"), Length.inches(9));
    }

    /**
     * Backing joined from lengths of cloth.
     *
     * @param upright true if the seams run down the quilt
     * @param widths  lengths of cloth side by side
     * @param each    the length of each
     */
    public record Backing(boolean upright, int widths, Length each) {
        public Length total() {
            return each.times((long) widths);
        }
    }

    /** Packaged battings as sold: the smallest that several shops' lists print, which differ by up to 8 in. */
    public record Batting(String name, Length width, Length height) { }

    public static final List<Batting> PACKAGED = List.of(
            new Batting("crib", Length.inches(45), Length.inches(60)), new Batting("twin", Length.inches(72), Length.inches(90)),
            new Batting("full", Length.inches(81), Length.inches(96)), new Batting("queen", Length.inches(90), Length.inches(100)),
            new Batting("king", Length.inches(120), Length.inches(120)));

    public static Finishing of(Quilt quilt) {
        return of(quilt.width(), quilt.height(), CuttingRules.INCH);
    }

    public static Finishing of(Length width, Length height, CuttingRules rules) {
        return new Finishing(width, height, rules, Assumptions.USUAL);
    }

    public Finishing with(Assumptions other) {
        return new Finishing(width, height, rules, other);
    }

    /** The length of binding to make. */
    public Length bindingLength() {
        return width.plus(height).times(2).plus(how.extra());
    }

    /** Strips across the width for straight binding. */
    public int bindingStrips() {
        return (int) bindingLength().roundedUpTo(rules.usableWidth().minus(how.join())).ratioTo(rules.usableWidth().minus(how.join()));
    }

    /** Cloth for straight binding. */
    public Length bindingCloth() {
        return how.strip().times((long) bindingStrips());
    }

    /** The least square for bias binding: its area is that of the strip. */
    public Length biasSquareLeast() {
        return Length.inches(Math.sqrt(bindingLength().inInches() * how.strip().inInches()));
    }

    /** A square to cut for continuous bias binding: two joins wider than the least, up to the next inch. */
    public Length biasSquare() {
        return biasSquareLeast().plus(rules.seam().times(2)).roundedUpTo(Length.inches(1));
    }

    /** Backing with upright or level seams. */
    public Backing backing(boolean upright) {
        Length across = (upright ? width : height).plus(how.overage().times(2));
        Length each = (upright ? height : width).plus(how.overage().times(2));
        // The first width gives itself; every other loses two seam allowances to its join.
        Length first = rules.usableWidth();
        Length more = rules.usableWidth().minus(rules.seam().times(2));
        int widths = 1;
        for (Length have = first; have.compareTo(across) < 0; have = have.plus(more)) {
            widths++;
        }
        return new Backing(upright, widths, rules.taped(each));
    }

    /** The backing that takes less cloth. */
    public Backing backing() {
        Backing upright = backing(true);
        Backing level = backing(false);
        return level.total().compareTo(upright.total()) < 0 ? level : upright;
    }

    /** The smallest packaged batting that covers the quilt and its overage, either way round; empty if none does. */
    public java.util.Optional<Batting> batting() {
        Length w = Length.min(width, height).plus(how.overage().times(2));
        Length h = Length.max(width, height).plus(how.overage().times(2));
        return PACKAGED.stream().filter(b -> b.width().compareTo(w) >= 0 && b.height().compareTo(h) >= 0).findFirst();
    }

    public Table table() {
        Backing back = backing();
        Backing other = backing(!back.upright());
        String lengths = back.widths() + (back.widths() == 1 ? " length of " : " lengths of ") + rules.text(back.each());
        return Table.of("Finishing", "What", "Amount", "How", "Rests on")
                .row("Backing", yards(back.total()), lengths + (back.widths() == 1 ? "" : back.upright() ? ", seams upright" : ", seams level"),
                        rules.text(how.overage()) + " beyond the quilt on each side; the other way takes " + yards(other.total()))
                .row("Batting", batting().map(Batting::name).orElse("joined or by the yard"),
                        rules.text(rules.taped(width.plus(how.overage().times(2)))) + " x " + rules.text(rules.taped(height.plus(how.overage().times(2)))),
                        "packaged sizes differ by a few inches: measure yours")
                .row("Binding, straight", yards(bindingCloth().plus(rules.reserve())), bindingStrips() + " strips of " + rules.text(how.strip()),
                        rules.text(rules.taped(bindingLength())) + " with " + rules.text(how.extra()) + " for corners and joins")
                .row("Binding, bias", "1 square", "of " + rules.text(biasSquare()), "no square below " + rules.text(biasSquareLeast()
                        .roundedUpTo(rules.rulerStep())) + " has the area; curved edges need bias")
                .row("Sleeve", yards(how.sleeve().times(sleeveStrips())), sleeveStrips() + (sleeveStrips() == 1 ? " strip of " : " strips of ")
                        + rules.text(how.sleeve()), "as long as the quilt is wide, folded in two");
    }

    private long sleeveStrips() {
        return (long) Math.ceil(width.ratioTo(rules.usableWidth()) - 1e-9);
    }

    private String yards(Length length) {
        return Yardage.asked(length.roundedUpTo(rules.buyingStep()), rules);
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(table());
    }
}
