package org.calicograph.cutting;

import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.LengthBound;
import org.calicograph.cutting.pieces.CuttingRules;

/**
 * What to buy of a fabric. No layout of these pieces, nor of these with more, lets one buy less than
 * {@link #least}; so where the two amounts agree, adding a piece can't make the yardage fall. Where they
 * do not, it can fall by no more than what lies between them.
 *
 * @param laid  the length of the layout
 * @param shrunk the same before washing
 * @param toBuy with the reserve, up to the next step that shops cut
 * @param least what the lower bound alone would have one buy
 * @param bound a length that no layout of these pieces goes below
 */
public record Yardage(Length laid, Length shrunk, Length toBuy, Length least, LengthBound bound) {

    static Yardage of(Length laid, LengthBound bound, CuttingRules rules) {
        return new Yardage(laid, shrunk(laid, rules), bought(laid, rules), bought(bound.length(), rules), bound);
    }

    private static Length shrunk(Length laid, CuttingRules rules) {
        return laid.times(1 / (1 - rules.shrinkage()));
    }

    private static Length bought(Length laid, CuttingRules rules) {
        return shrunk(laid, rules).plus(rules.reserve()).roundedUpTo(rules.buyingStep());
    }

    /** True if it is proved that no layout lets one buy less. */
    public boolean isLeast() {
        return toBuy.equals(least);
    }

    /** As it is asked for at the counter: {@code 1 3/8 yd} or {@code 1.3 m}. */
    public String asked(CuttingRules rules) {
        return asked(toBuy, rules);
    }

    public static String asked(Length amount, CuttingRules rules) {
        if (rules.isMetric()) {
            return String.format(java.util.Locale.ROOT, "%.1f m", amount.inMm() / 1000);
        }
        String text = amount.dividedBy(36).in(Length.System.INCH);
        String yards = text.substring(0, text.length() - 3) + " yd";
        return Length.System.ofProcess() == Length.System.INCH ? yards
                : String.format(java.util.Locale.ROOT, "%.2f m (%s)", amount.roundedUpTo(Length.cm(1)).inMm() / 1000, yards);
    }
}
