package org.calicograph.costing;

/**
 * How fast one works.
 *
 * @param secondsPerPiece   cutting, for every piece
 * @param secondsPerSeam    pinning, starting and ending, for every seam
 * @param inchesPerMinute   sewing along a seam
 * @param pressingPerSeam   seconds at the iron, for every seam
 * @param quiltingPerMinute inches of quilting line a minute, halts and turns included
 * @param bindingPerYard    minutes to sew a yard of binding on, and down at the back
 */
public record Pace(double secondsPerPiece, double secondsPerSeam, double inchesPerMinute, double pressingPerSeam, double quiltingPerMinute,
                   double bindingPerYard) {

    /**
     * Common practice, rounded: 20 s a piece to cut, 20 s a seam and 60 in a minute to sew, 12 s a seam to press, 40 in
     * of quilting a minute, 10 min a yard of binding.
     */
    public static final Pace USUAL = new Pace(20, 20, 60, 12, 40, 10);

    /** @throws IllegalArgumentException if a time is below 0, or a speed is not above 0 */
    public Pace {
        Rates.above("seconds a piece", secondsPerPiece, false);
        Rates.above("seconds a seam", secondsPerSeam, false);
        Rates.above("inches a minute", inchesPerMinute, true);
        Rates.above("seconds of pressing a seam", pressingPerSeam, false);
        Rates.above("inches of quilting a minute", quiltingPerMinute, true);
        Rates.above("minutes a yard of binding", bindingPerYard, false);
    }
}
