package org.calicograph.colouring;

import org.calicograph.geometry.Region;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * What a patch takes beyond its finished area.
 *
 * @param seam  added on every side
 * @param waste the part added for what is left between pieces: 0.15 adds 15 %
 */
public record CuttingAllowance(Length seam, double waste) {

    /** A quarter-inch seam and 15 % for what is left over (common practice). */
    public static final CuttingAllowance USUAL = new CuttingAllowance(Length.inches(1, 4), 0.15);

    public CuttingAllowance {
        if (seam.units() < 0) {
            throw new IllegalArgumentException("a seam allowance is " + seam + "; use 0 or more");
        }
        if (!(waste >= 0 && waste <= 10)) {
            throw new IllegalArgumentException("the waste in cutting is " + waste + " of the cloth used; use 0 or more, such as 0.15");
        }
    }

    /** The cloth for a finished shape: its area, the seam all round with four square corners, and the waste. */
    public Area need(Region finished) {
        double s = seam.inInches();
        return new Area((finished.area().squareInches() + finished.perimeter() * s + 4 * s * s) * (1 + waste));
    }

    @Override
    public String toString() {
        return seam + " seams and " + Math.round(waste * 100) + " % for cutting";
    }
}
