package org.calicograph.costing;

import java.util.Map;
import java.util.TreeMap;

/**
 * How fast one works, and what things cost. Everyone's are their own: time a block, and set them.
 *
 * @param secondsPerPiece   cutting, for every piece
 * @param secondsPerSeam    pinning, starting and ending, for every seam
 * @param inchesPerMinute   sewing along a seam
 * @param pressingPerSeam   seconds at the iron, for every seam
 * @param quiltingPerMinute inches of quilting line a minute, halts and turns included
 * @param lineSpacing       inches between quilting lines
 * @param bindingPerYard    minutes to sew a yard of binding on, and down at the back
 * @param hour              what an hour's work costs; 0 if it isn't counted
 * @param clothPrice        for a yard, or for a metre under metric rules, of any fabric that has no price of its own
 * @param prices            the same by the fabric's name; 'backing' is one
 * @param battingPrice      for a square yard, or a square metre
 * @param threadPrice       for a spool
 * @param spool             its length in yards, or in metres
 * @param currency          written before every sum
 */
public record Rates(double secondsPerPiece, double secondsPerSeam, double inchesPerMinute, double pressingPerSeam, double quiltingPerMinute,
                    double lineSpacing, double bindingPerYard, double hour, double clothPrice, Map<String, Double> prices, double battingPrice,
                    double threadPrice, double spool, String currency) {

    /** Inches of thread, both sides, in an inch of seam at ten to twelve stitches to the inch (common practice: 2 1/2 to 3). */
    static final double THREAD_PER_INCH = 2.75;

    /**
     * Common practice, rounded: 20 s a piece to cut, 20 s a seam and 60 in a minute to sew, 12 s a seam to press, 40 in
     * of quilting a minute in lines 2 in apart, 10 min a yard of binding; work not counted; cloth 12 a yard, batting 8 a square
     * yard, thread 5 for 500 yards.
     */
    public static final Rates USUAL = new Rates(20, 20, 60, 12, 40, 2, 10, 0, 12, Map.of(), 8, 5, 500, "£");

    public Rates {
        prices = Map.copyOf(prices);
        above("seconds a piece", secondsPerPiece, false);
        above("seconds a seam", secondsPerSeam, false);
        above("inches a minute", inchesPerMinute, true);
        above("seconds of pressing a seam", pressingPerSeam, false);
        above("inches of quilting a minute", quiltingPerMinute, true);
        above("spacing of quilting lines", lineSpacing, true);
        above("minutes a yard of binding", bindingPerYard, false);
        above("price of an hour", hour, false);
        above("price of cloth", clothPrice, false);
        prices.forEach((name, price) -> above("price of " + name, price, false));
        above("price of batting", battingPrice, false);
        above("price of thread", threadPrice, false);
        above("length of a spool", spool, true);
    }

    private static void above(String what, double value, boolean strictly) {
        if (!(value >= 0) || strictly && value == 0 || Double.isInfinite(value)) {
            throw new IllegalArgumentException("the " + what + " is " + value + "; use a number " + (strictly ? "above 0" : "of 0 or more"));
        }
    }

    /** What a fabric costs by the yard or metre; 'backing' has a price too. */
    public Rates price(String fabric, double price) {
        Map<String, Double> all = new TreeMap<>(prices);
        all.put(fabric, price);
        return with(lineSpacing, hour, clothPrice, all, currency);
    }

    /** What every other fabric costs. */
    public Rates clothPrice(double price) {
        return with(lineSpacing, hour, price, prices, currency);
    }

    /** What an hour of work costs. */
    public Rates hour(double price) {
        return with(lineSpacing, price, clothPrice, prices, currency);
    }

    /** How far apart quilting lines lie, in inches. */
    public Rates lineSpacing(double inches) {
        return with(inches, hour, clothPrice, prices, currency);
    }

    /** The sign or letters of the money. */
    public Rates currency(String sign) {
        return with(lineSpacing, hour, clothPrice, prices, sign);
    }

    /** The same with all that can be set one by one. */
    private Rates with(double lineSpacing, double hour, double clothPrice, Map<String, Double> prices, String currency) {
        return new Rates(secondsPerPiece, secondsPerSeam, inchesPerMinute, pressingPerSeam, quiltingPerMinute, lineSpacing, bindingPerYard, hour,
                clothPrice, prices, battingPrice, threadPrice, spool, currency);
    }

    double priceOf(String fabric) {
        return prices.getOrDefault(fabric, clothPrice);
    }
}
