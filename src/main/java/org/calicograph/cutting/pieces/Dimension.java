package org.calicograph.cutting.pieces;

import org.calicograph.measure.Length;

/**
 * A cut size: its exact value, and the ruler's line that is cut along.
 *
 * @param name  what is measured, such as 'square' or 'strip'
 * @param exact the size from geometry
 * @param ruler the line cut along
 */
public record Dimension(String name, Length exact, Length ruler) {

    /** A size that is cut large and trimmed: up to the next line. */
    public static Dimension large(String name, Length exact, CuttingRules rules) {
        // Exact sizes come from doubles; a thousandth of a millimetre is no reason for another line.
        return new Dimension(name, exact, exact.minus(Length.mm(0.001)).roundedUpTo(rules.rulerStep()));
    }

    /** A size that is sewn as it is cut: the nearest line, of the fine step. */
    static Dimension exactly(String name, Length exact, CuttingRules rules) {
        return new Dimension(name, exact, exact.roundedTo(rules.fineStep()));
    }

    /** True if the line is near enough: within the rules' distance, or a five-hundredth of the size, which can be eased. */
    public boolean isNear(CuttingRules rules) {
        return ruler.minus(exact).abs().compareTo(Length.max(rules.near(), exact.dividedBy(500))) <= 0;
    }

    /** How much larger the ruler's line is than the exact size; below 0 if it is smaller. */
    public Length rounding() {
        return ruler.minus(exact);
    }
}
