package org.calicograph.cutting.pieces;

import org.calicograph.measure.Length;

/**
 * What a cutter settles before the first cut.
 *
 * @param seam        seam allowance on every side
 * @param rulerStep   the ruler's lines; triangles are cut large, up to the next of them
 * @param near        how far a size that must be exact may lie from a line of the fine step
 * @param shrinkage   share of length and width lost in the wash, from 0 up to 0.2
 * @param reserve     length added to every fabric for straightening and slips
 * @param buyingStep  what shops cut: lengths to buy are rounded up to it
 */
public record CuttingRules(Length seam, Length rulerStep, Length near, double shrinkage,
                           Length reserve, Length buyingStep) {

    /** 1/4 in seams, a ruler with eighths, no shrinkage, 4 1/2 in reserve, eighths of a yard (common practice). */
    public static final CuttingRules INCH = new CuttingRules(Length.inches(1, 4), Length.inches(1, 8), Length.inches(1, 64),
            0, Length.inches("4 1/2"), Length.inches("4 1/2"));

    /** 7.5 mm seams, a ruler with half centimetres and millimetres between them, no shrinkage, 10 cm reserve, bought by 10 cm (common practice). */
    public static final CuttingRules METRIC = new CuttingRules(Length.mm(7.5), Length.mm(5), Length.mm(0.5),
            0, Length.cm(10), Length.cm(10));

    /** Those of whoever draws: {@link #METRIC} where lengths are wanted in metric, else {@link #INCH}. */
    public static CuttingRules usual() {
        return Length.System.ofProcess() == Length.System.METRIC ? METRIC : INCH;
    }

    public CuttingRules {
        require("seam allowance", seam, seam.isPositive());
        require("ruler step", rulerStep, rulerStep.isPositive());
        require("buying step", buyingStep, buyingStep.isPositive());
        require("reserve", reserve, reserve.units() >= 0);
        if (!(shrinkage >= 0 && shrinkage <= 0.2)) {
            throw new IllegalArgumentException("a shrinkage of " + shrinkage + " is no share of cloth; use 0 to 0.2, such as 0.03");
        }
    }

    private static void require(String what, Length value, boolean ok) {
        if (!ok) {
            throw new IllegalArgumentException("the " + what + " is " + value + "; use a length above 0");
        }
    }

    /** The finest lines of the ruler, between those of its step: half of them, or millimetres. */
    public Length fineStep() {
        return isMetric() ? Length.mm(1) : rulerStep.half();
    }

    /** The same rules with another seam allowance. */
    public CuttingRules seam(Length other) {
        return new CuttingRules(other, rulerStep, near, shrinkage, reserve, buyingStep);
    }

    /** The same rules for cloth that loses this share of its length in the wash, 0.03 for 3 %. */
    public CuttingRules shrinking(double share) {
        return new CuttingRules(seam, rulerStep, near, share, reserve, buyingStep);
    }

    /** The same rules with so much cloth over, to square up and for a slip of the cutter. */
    public CuttingRules reserve(Length other) {
        return new CuttingRules(seam, rulerStep, near, shrinkage, other, buyingStep);
    }

    /** What so much cloth has to measure before it is washed. */
    public Length shrunk(Length laid) {
        return laid.times(1 / (1 - shrinkage));
    }

    /** What to buy where so much is laid out: before washing, with the reserve, up to the next step that is sold. */
    public Length bought(Length laid) {
        return shrunk(laid).plus(reserve).roundedUpTo(buyingStep);
    }

    /** An amount of cloth as it is asked for at the counter: {@code 1 3/8 yd} or {@code 1.3 m}. */
    public String asked(Length amount) {
        if (isMetric()) {
            return String.format(java.util.Locale.ROOT, "%.1f m", amount.inMm() / 1000);
        }
        String text = amount.dividedBy(36).in(Length.System.INCH);
        String yards = text.substring(0, text.length() - 3) + " yd";
        return Length.System.ofProcess() == Length.System.INCH ? yards
                : String.format(java.util.Locale.ROOT, "%.2f m (%s)", amount.roundedUpTo(Length.cm(1)).inMm() / 1000, yards);
    }

    /** True where ruler, seam and shop go by centimetres. */
    public boolean isMetric() {
        return rulerStep.isMultipleOf(Length.mm(0.5));
    }

    /** A length as the rules' ruler would have it written; by inch rules, as the reader wants lengths, the inches beside where metric is rounded. */
    public String text(Length length) {
        return isMetric() ? length.in(Length.System.METRIC) : length.toString();
    }

    /** An exact length for reading: a fraction if it is one, else to 0.01 in or 0.1 mm. */
    public String exact(Length length) {
        Length fine = length.roundedTo(isMetric() ? Length.mm(0.5) : Length.inches(1, 16));
        if (length.minus(fine).abs().compareTo(Length.mm(0.02)) <= 0) {
            return text(fine);
        }
        return isMetric() || Length.System.ofProcess() == Length.System.METRIC ? text(length.roundedTo(Length.mm(0.1))) : String.format(java.util.Locale.ROOT, "%.2f in", length.inInches());
    }

    /** Up to the next line of a tape measure: 1/2 in, or 1 cm. */
    public Length taped(Length length) {
        return length.roundedUpTo(isMetric() ? Length.cm(1) : Length.inches(1, 2));
    }
}
