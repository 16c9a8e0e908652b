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
        return new Yardage(laid, rules.shrunk(laid), rules.bought(laid), rules.bought(bound.length()), bound);
    }

    /** True if it is proved that no layout lets one buy less. */
    public boolean isLeast() {
        return toBuy.equals(least);
    }

    /** As it is asked for at the counter: {@code 1 3/8 yd} or {@code 1.3 m}. */
    public String asked(CuttingRules rules) {
        return rules.asked(toBuy);
    }
}
