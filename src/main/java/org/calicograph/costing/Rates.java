package org.calicograph.costing;

/**
 * How fast one works, and what things cost. Everyone's are their own: time a block, and set them.
 *
 * @param pace        how fast one works
 * @param prices      what things cost
 * @param lineSpacing inches between quilting lines
 */
public record Rates(Pace pace, Prices prices, double lineSpacing) {

    /** Inches of thread, both sides, in an inch of seam at ten to twelve stitches to the inch (common practice: 2 1/2 to 3). */
    static final double THREAD_PER_INCH = 2.75;

    /** The usual pace and prices, with quilting lines 2 in apart. */
    public static final Rates USUAL = new Rates(Pace.USUAL, Prices.USUAL, 2);

    /** @throws IllegalArgumentException if the lines have no space between them */
    public Rates {
        above("spacing of quilting lines", lineSpacing, true);
    }

    static void above(String what, double value, boolean strictly) {
        if (!(value >= 0) || strictly && value == 0 || Double.isInfinite(value)) {
            throw new IllegalArgumentException("the " + what + " is " + value + "; use a number " + (strictly ? "above 0" : "of 0 or more"));
        }
    }

    /** How fast one works. */
    public Rates pace(Pace own) {
        return new Rates(own, prices, lineSpacing);
    }

    /** What things cost. */
    public Rates prices(Prices own) {
        return new Rates(pace, own, lineSpacing);
    }

    /** What a fabric costs by the yard or metre; 'backing' has a price too. */
    public Rates price(String fabric, double price) {
        return prices(prices.of(fabric, price));
    }

    /** What every other fabric costs. */
    public Rates clothPrice(double price) {
        return prices(prices.cloth(price));
    }

    /** What an hour of work costs. */
    public Rates hour(double price) {
        return prices(prices.hour(price));
    }

    /** How far apart quilting lines lie, in inches. */
    public Rates lineSpacing(double inches) {
        return new Rates(pace, prices, inches);
    }

    /** The sign or letters of the money. */
    public Rates currency(String sign) {
        return prices(prices.currency(sign));
    }
}
