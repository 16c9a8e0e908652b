package org.calicograph.measure;

import java.util.Locale;

/**
 * An exact length: a whole number of units of 1/24 micrometre.
 *
 * <p>One inch is 609&nbsp;600 units (25.4 mm exactly, the international inch of 1959), so halves down
 * to sixty-fourths, thirds, fifths and whole micrometres are all exact.
 *
 * @param units the length in units of 1/24 micrometre; may be negative
 */
public record Length(long units) implements Comparable<Length> {

    /** Units in one micrometre. */
    public static final long PER_MICROMETRE = 24;
    /** Units in one inch. */
    public static final long PER_INCH = 25_400 * PER_MICROMETRE;
    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** A whole number of inches. */
    public static Length inches(long inches) {
        return new Length(Math.multiplyExact(inches, PER_INCH));
    }

    /**
     * Inches as a real number, to the nearest unit.
     *
     * @throws IllegalArgumentException if the number is not finite or beyond about 230&nbsp;000 km
     */
    public static Length inches(double inches) {
        return rounded(inches * PER_INCH);
    }

    /**
     * Inches written as the trade does: {@code "3 1/8"}. A unit in the text is obeyed too, as in
     * {@link #parse}.
     */
    public static Length inches(String text) {
        return parse(text);
    }

    /** A fraction of an inch, to the nearest unit: {@code inches(1, 3)} is a third of an inch, exactly. */
    public static Length inches(long numerator, long denominator) {
        if (denominator == 0) {
            throw new IllegalArgumentException("a fraction of an inch has 0 below the line; write a whole number there");
        }
        return inches(numerator).dividedBy(denominator);
    }

    /** Millimetres, to the nearest unit. */
    public static Length mm(double millimetres) {
        return rounded(millimetres * 1000 * PER_MICROMETRE);
    }

    /** Centimetres, to the nearest unit. */
    public static Length cm(double centimetres) {
        return mm(centimetres * 10);
    }

    /** Yards of 36 inches, to the nearest unit. */
    public static Length yards(double yards) {
        return inches(yards * 36);
    }

    /**
     * Reads a length as a quilter writes it. Without a unit the number is inches. Of a rounded length with the
     * exact one beside it, as {@link #shownIn} writes it, the exact one counts.
     *
     * @throws IllegalArgumentException naming the text and showing what a length looks like
     */
    public static Length parse(String text) {
        return LengthText.read(text);
    }

    private static Length rounded(double units) {
        if (!(Math.abs(units) < 9e18)) {
            throw new IllegalArgumentException("a length of " + units / PER_INCH + " in is not a length; use a finite number");
        }
        return new Length(Math.round(units));
    }

    /** The length in inches, as near as a double comes. */
    public double inInches() {
        return (double) units / PER_INCH;
    }

    /** The length in millimetres, as near as a double comes. */
    public double inMm() {
        return units / (1000.0 * PER_MICROMETRE);
    }

    /** Both end to end, exact. */
    public Length plus(Length other) {
        return new Length(Math.addExact(units, other.units));
    }

    /** This length less the other, exact; below zero if the other is longer. */
    public Length minus(Length other) {
        return new Length(Math.subtractExact(units, other.units));
    }

    /** A whole multiple, exact. */
    public Length times(long factor) {
        return new Length(Math.multiplyExact(units, factor));
    }

    /** A real multiple, to the nearest unit. */
    public Length times(double factor) {
        return rounded(units * factor);
    }

    /** An equal share, to the nearest unit; halves of a unit go up. */
    public Length dividedBy(long parts) {
        if (parts == 0) {
            throw new IllegalArgumentException("a length can't be divided into 0 parts; use 1 or more");
        }
        long n = parts < 0 ? Math.negateExact(units) : units;
        long d = Math.abs(parts);
        return new Length(Math.floorDiv(Math.addExact(Math.multiplyExact(2, n), d), Math.multiplyExact(2, d)));
    }

    /** Half of it; half a unit goes up. */
    public Length half() {
        return dividedBy(2);
    }

    /** How many times the other length goes into this one, as a real number. */
    public double ratioTo(Length other) {
        return (double) units / other.units;
    }

    /** As long the other way. */
    public Length negated() {
        return new Length(Math.negateExact(units));
    }

    /** The length without its sign. */
    public Length abs() {
        return units < 0 ? negated() : this;
    }

    /** True for no length at all. */
    public boolean isZero() {
        return units == 0;
    }

    /** True above zero. */
    public boolean isPositive() {
        return units > 0;
    }

    /** True if the other length goes into this one a whole number of times. */
    public boolean isMultipleOf(Length step) {
        return step.units != 0 && units % step.units == 0;
    }

    /** The least multiple of the step that is not below this length: the trade's 'up to the next 1/8'. */
    public Length roundedUpTo(Length step) {
        requireStep(step);
        return new Length(Math.multiplyExact(-Math.floorDiv(-units, step.units), step.units));
    }

    /** The nearest multiple of the step; a tie goes up. */
    public Length roundedTo(Length step) {
        requireStep(step);
        return new Length(Math.multiplyExact(Math.floorDiv(Math.addExact(units, step.units / 2), step.units), step.units));
    }

    private static void requireStep(Length step) {
        if (step.units <= 0) {
            throw new IllegalArgumentException("can't round to steps of " + step + "; use a step above 0, such as 1/8 in");
        }
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(units, other.units);
    }

    /** The longer of the two. */
    public static Length max(Length a, Length b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    /** The shorter of the two. */
    public static Length min(Length a, Length b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    /** The length as this process writes lengths; see {@link System#ofProcess} and {@link #shownIn}. */
    @Override
    public String toString() {
        return shownIn(System.ofProcess());
    }

    /** Text from which {@link #parse} gives this very length again, whatever this process writes lengths in. */
    public String text() {
        String inches = in(System.INCH);
        return parse(inches).equals(this) ? inches : java.math.BigDecimal.valueOf(units)
                .divide(java.math.BigDecimal.valueOf(1000 * PER_MICROMETRE), 6, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros().toPlainString() + " mm";
    }

    /**
     * The length for a reader: in inches as {@link #in} has it; in metric to 0.1 mm, with the exact inches
     * beside it where that rounds a fraction of the trade: {@code 7.94 cm (3 1/8 in)}.
     */
    public String shownIn(System system) {
        String text = in(system);
        return system == System.METRIC && !parse(text).equals(this) && parse(in(System.INCH)).equals(this)
                ? text + " (" + in(System.INCH) + ")" : text;
    }

    /**
     * The length as written in the given system. Inches are a fraction where it is one the trade uses
     * ({@code 3 1/8 in}), otherwise to four decimals; metric is to 0.1 mm ({@code 7.94 cm}), below 2 cm to
     * 0.01 mm ({@code 6.35 mm}).
     */
    public String in(System system) {
        return system == System.METRIC ? LengthText.metric(this) : LengthText.inches(this);
    }

    /**
     * The nearest line of a ruler with sixteenths, and the length itself beside it where it isn't a fraction of the trade:
     * {@code 41 7/16 in (41.456 in)}. Where the process writes metric lengths there is one text for both.
     */
    public String onRuler() {
        String text = toString();
        return System.ofProcess() == System.METRIC || !text.contains(".") ? text
                : roundedTo(inches(1, 16)) + " (" + String.format(Locale.ROOT, "%.3f in", inInches()) + ")";
    }

    /** The two systems in which lengths are written. */
    public enum System {
        INCH, METRIC;

        private static final System OF_PROCESS =
                java.lang.System.getProperty("calicograph.lengths", "inch").equals("metric") ? METRIC : INCH;

        /**
         * The system in which this process writes lengths and areas where nothing else is asked for: metric if
         * the system property {@code calicograph.lengths} is {@code metric}. It stays as it was at the start.
         */
        public static System ofProcess() {
            return OF_PROCESS;
        }

        /** How the property {@code calicograph.lengths} names it. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
