package org.calicograph.measure;

/**
 * An area in double precision.
 *
 * @param squareInches the area in square inches
 */
public record Area(double squareInches) implements Comparable<Area> {

    /** No area at all. */
    public static final Area ZERO = new Area(0);

    /** The area of a rectangle. */
    public static Area of(Length width, Length height) {
        return new Area(width.inInches() * height.inInches());
    }

    /** Both together. */
    public Area plus(Area other) {
        return new Area(squareInches + other.squareInches);
    }

    /** This area less the other; below zero if the other is larger. */
    public Area minus(Area other) {
        return new Area(squareInches - other.squareInches);
    }

    /** A multiple of the area. */
    public Area times(double factor) {
        return new Area(squareInches * factor);
    }

    /** The area in square metres. */
    public double inSquareMetres() {
        return squareInches * 0.0254 * 0.0254;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareInches, other.squareInches);
    }

    /** The area as written in the given system: {@code 120 sq in}, {@code 774.19 sq cm}, from one up {@code 1.25 sq m}. */
    public String in(Length.System system) {
        if (system == Length.System.INCH) {
            return LengthText.decimal(squareInches, 2) + " sq in";
        }
        double metres = inSquareMetres();
        return Math.abs(metres) < 1 ? LengthText.decimal(metres * 10_000, 2) + " sq cm" : LengthText.decimal(metres, 2) + " sq m";
    }

    /** The area as this process writes areas. */
    @Override
    public String toString() {
        return in(Length.System.ofProcess());
    }
}
