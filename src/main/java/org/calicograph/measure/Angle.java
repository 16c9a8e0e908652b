package org.calicograph.measure;

/**
 * An angle in double precision. On the page x runs right and y runs down, so a positive angle turns
 * clockwise, as a block is turned on a design wall.
 *
 * @param degrees the angle in degrees, not reduced
 */
public record Angle(double degrees) implements Comparable<Angle> {

    /** No turn at all. */
    public static final Angle ZERO = new Angle(0);
    /** A quarter turn, 90 degrees. */
    public static final Angle QUARTER = new Angle(90);
    /** Half a turn, 180 degrees. */
    public static final Angle HALF = new Angle(180);
    /** A whole turn, 360 degrees. */
    public static final Angle FULL = new Angle(360);

    public Angle {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("an angle of " + degrees + " degrees is not an angle; use a finite number");
        }
    }

    /** An angle of so many degrees, of which a whole turn has 360. */
    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    /** An angle of so many radians, of which a whole turn has 2 pi. */
    public static Angle radians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** The given share of a full turn: {@code turn(1, 5)} is 72 degrees. */
    public static Angle turn(long numerator, long denominator) {
        if (denominator == 0) {
            throw new IllegalArgumentException("a turn can't be divided into 0 parts; use 1 or more");
        }
        return new Angle(360.0 * numerator / denominator);
    }

    /** The angle in radians. */
    public double inRadians() {
        return Math.toRadians(degrees);
    }

    /** The sine; exact at multiples of a quarter turn. */
    public double sin() {
        return quarterTurns() ? new double[] {0, 1, 0, -1}[Math.floorMod((long) (degrees / 90), 4)] : Math.sin(inRadians());
    }

    /** The cosine; exact at multiples of a quarter turn. */
    public double cos() {
        return quarterTurns() ? new double[] {1, 0, -1, 0}[Math.floorMod((long) (degrees / 90), 4)] : Math.cos(inRadians());
    }

    /** Its tangent: rise over run. */
    public double tan() {
        return sin() / cos();
    }

    private boolean quarterTurns() {
        return degrees % 90 == 0;
    }

    /** Both, one after the other. */
    public Angle plus(Angle other) {
        return new Angle(degrees + other.degrees);
    }

    /** This angle less the other; below zero if the other is larger. */
    public Angle minus(Angle other) {
        return new Angle(degrees - other.degrees);
    }

    /** A multiple of the angle. */
    public Angle times(double factor) {
        return new Angle(degrees * factor);
    }

    /** An equal share of the angle. */
    public Angle dividedBy(double parts) {
        return new Angle(degrees / parts);
    }

    /** As far the other way. */
    public Angle negated() {
        return new Angle(-degrees);
    }

    /** The same direction, from 0 up to but not including 360 degrees. */
    public Angle normalised() {
        double d = degrees % 360;
        return new Angle(d < 0 ? d + 360 : d + 0.0);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    /** Degrees to at most three decimals: {@code 22.5°}. */
    @Override
    public String toString() {
        return LengthText.decimal(degrees, 3) + "°";
    }
}
