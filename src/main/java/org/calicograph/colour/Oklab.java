package org.calicograph.colour;

/**
 * OKLab: even steps look like even steps, and mixing keeps the hue.
 *
 * <p>Source: B. Ottosson, 'A perceptual color space for image processing' (2020), with the constants
 * of CSS Color Module Level 4 (W3C).
 *
 * @param lightness 0 for black to 1 for white
 * @param a         towards red above 0, towards green below
 * @param b         towards yellow above 0, towards blue below
 */
public record Oklab(double lightness, double a, double b) {

    private static final Matrix XYZ_TO_CONES = Matrix.of(
            0.819022437996703, 0.3619062600528904, -0.1288737815209879,
            0.0329836539323885, 0.9292868615863434, 0.0361446663506424,
            0.0481771893596242, 0.2642395317527308, 0.6335478284694309);
    private static final Matrix CONES_TO_XYZ = Matrix.of(
            1.2268798758459243, -0.5578149944602171, 0.2813910456659647,
            -0.0405757452148008, 1.112286803280317, -0.0717110580655164,
            -0.0763729366746601, -0.4214933324022432, 1.5869240198367816);
    private static final Matrix ROOTS_TO_LAB = Matrix.of(
            0.210454268309314, 0.7936177747023054, -0.0040720430116193,
            1.9779985324311684, -2.42859224204858, 0.450593709617411,
            0.0259040424655478, 0.7827717124575296, -0.8086757549230774);
    private static final Matrix LAB_TO_ROOTS = Matrix.of(
            1.0, 0.3963377773761749, 0.2158037573099136,
            1.0, -0.1055613458156586, -0.0638541728258133,
            1.0, -0.0894841775298119, -1.2914855480194092);

    static Oklab of(Xyz xyz) {
        return XYZ_TO_CONES.times(xyz.x(), xyz.y(), xyz.z(), (l, m, s) ->
                ROOTS_TO_LAB.times(Math.cbrt(l), Math.cbrt(m), Math.cbrt(s), Oklab::new));
    }

    /** The same colour by CIE XYZ, white at D65. */
    public Xyz xyz() {
        return LAB_TO_ROOTS.times(lightness, a, b, (l, m, s) ->
                CONES_TO_XYZ.times(l * l * l, m * m * m, s * s * s, Xyz::new));
    }

    /** The same colour as light; beyond 0 to 1 where a screen can't show it. */
    public LinearRgb linear() {
        return xyz().linear();
    }

    /** The same by chroma and hue. */
    public Oklch oklch() {
        return Oklch.of(this);
    }

    /** The straight distance; 0.02 is just noticed side by side (CSS Color 4). */
    public double distance(Oklab other) {
        double dl = lightness - other.lightness;
        double da = a - other.a;
        double db = b - other.b;
        return Math.sqrt(dl * dl + da * da + db * db);
    }

    /** A share of the way to another colour: 0 this, 1 the other. */
    public Oklab towards(Oklab other, double share) {
        return new Oklab(lightness + (other.lightness - lightness) * share, a + (other.a - a) * share, b + (other.b - b) * share);
    }

    /** The nearest colour of the same hue that a screen can show; see {@link Oklch#colour()}. */
    public Colour colour() {
        return oklch().colour();
    }
}
