package org.calicograph.colour;

/**
 * CIE 1976 L*a*b*.
 *
 * @param lightness 0 for black to 100 for white
 * @param a         towards red above 0, towards green below
 * @param b         towards yellow above 0, towards blue below
 * @param white     the white that the numbers are relative to
 */
public record Lab(double lightness, double a, double b, White white) {

    /** The light that counts as white. Constants of CSS Color Module Level 4 (W3C). */
    public enum White {
        /** Print: what CSS writes as {@code lab()}. */
        D50(0.3457 / 0.3585, (1.0 - 0.3457 - 0.3585) / 0.3585),
        /** Daylight: the white of sRGB, so that nothing need be adapted. */
        D65(0.3127 / 0.3290, (1.0 - 0.3127 - 0.3290) / 0.3290);

        private final double x;
        private final double z;

        White(double x, double z) {
            this.x = x;
            this.z = z;
        }
    }

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    static Lab of(Xyz daylight, White white) {
        Xyz xyz = white == White.D50 ? daylight.underD50() : daylight;
        double fx = f(xyz.x() / white.x);
        double fy = f(xyz.y());
        double fz = f(xyz.z() / white.z);
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz), white);
    }

    private static double f(double t) {
        return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    /** The lightness (L*) of a luminance from 0 to 1. */
    static double lightness(double luminance) {
        return 116 * f(luminance) - 16;
    }

    /** The same colour by CIE XYZ. */
    public Xyz xyz() {
        double fy = (lightness + 16) / 116;
        double fx = fy + a / 500;
        double fz = fy - b / 200;
        double x = inverse(fx) * white.x;
        double y = lightness > KAPPA * EPSILON ? fy * fy * fy : lightness / KAPPA;
        double z = inverse(fz) * white.z;
        return white == White.D50 ? Xyz.fromD50(x, y, z) : new Xyz(x, y, z);
    }

    private static double inverse(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }

    /** Distance from grey. */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** Hue in degrees from 0 up to but not including 360. */
    public double hue() {
        double h = Math.toDegrees(Math.atan2(b, a));
        return h < 0 ? h + 360 : h;
    }

    /**
     * The difference by CIEDE2000; about 1 is just noticed side by side.
     *
     * @throws IllegalArgumentException if the two are relative to different whites
     */
    public double difference(Lab other) {
        if (white != other.white) {
            throw new IllegalArgumentException("a colour under " + white + " can't be compared with one under " + other.white
                    + "; convert both to the same white");
        }
        return Ciede2000.between(this, other);
    }
}
