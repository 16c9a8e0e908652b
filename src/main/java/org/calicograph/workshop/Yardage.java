package org.calicograph.workshop;

import org.calicograph.measure.Length;
import org.calicograph.workshop.layout.LengthBound;
import org.calicograph.workshop.pieces.CuttingRules;

/**
 * What to buy of a fabric.
 *
 * @param laid  the length of the layout
 * @param shrunk the same before washing
 * @param toBuy with the reserve, up to the next step that shops cut
 * @param bound a length that no layout of these pieces goes below
 */
public record Yardage(Length laid, Length shrunk, Length toBuy, LengthBound bound) {

    static Yardage of(Length laid, LengthBound bound, CuttingRules rules) {
        Length shrunk = laid.times(1 / (1 - rules.shrinkage()));
        return new Yardage(laid, shrunk, shrunk.plus(rules.reserve()).roundedUpTo(rules.buyingStep()), bound);
    }

    /** As it is asked for at the counter: {@code 1 3/8 yd} or {@code 1.3 m}. */
    public String asked(CuttingRules rules) {
        if (rules.isMetric()) {
            return String.format(java.util.Locale.ROOT, "%.1f m", toBuy.inMm() / 1000);
        }
        String text = toBuy.dividedBy(36).toString();
        return text.substring(0, text.length() - 3) + " yd";
    }
}
