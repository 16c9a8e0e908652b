package org.calicograph.colour;

/**
 * A colour as light in the primaries of sRGB, without the gamma; parts outside 0 to 1 lie beyond what
 * a screen shows.
 *
 * <p>Constants of CSS Color Module Level 4 (W3C), sample code for conversions.
 */
public record LinearRgb(double red, double green, double blue) {

    private static final double[] BYTES = new double[256];

    static {
        for (int i = 0; i < 256; i++) {
            BYTES[i] = decoded(i / 255.0);
        }
    }

    private static final Matrix TO_XYZ = Matrix.of(
            506752.0 / 1228815, 87881.0 / 245763, 12673.0 / 70218,
            87098.0 / 409605, 175762.0 / 245763, 12673.0 / 175545,
            7918.0 / 409605, 87881.0 / 737289, 1001167.0 / 1053270);
    private static final Matrix FROM_XYZ = Matrix.of(
            12831.0 / 3959, -329.0 / 214, -1974.0 / 3959,
            -851781.0 / 878810, 1648619.0 / 878810, 36519.0 / 878810,
            705.0 / 12673, -2585.0 / 12673, 705.0 / 667);

    /** The light of an encoded value; negative values mirror positive ones. */
    static double decoded(double value) {
        double v = Math.abs(value);
        return Math.copySign(v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4), value);
    }

    /** The encoded value of an amount of light; negative values mirror positive ones. */
    static double encoded(double light) {
        double v = Math.abs(light);
        return Math.copySign(v > 0.0031308 ? 1.055 * Math.pow(v, 1 / 2.4) - 0.055 : 12.92 * v, light);
    }

    /** The light of one of 256 encoded steps. */
    static double ofByte(int step) {
        return BYTES[step];
    }

    static LinearRgb of(Colour colour) {
        return new LinearRgb(decoded(colour.red()), decoded(colour.green()), decoded(colour.blue()));
    }

    static LinearRgb of(Xyz xyz) {
        return FROM_XYZ.times(xyz.x(), xyz.y(), xyz.z(), LinearRgb::new);
    }

    /** The same colour by CIE XYZ, white at D65. */
    public Xyz xyz() {
        return TO_XYZ.times(red, green, blue, Xyz::new);
    }

    /** True if a screen can show it, give or take a slack in each part. */
    public boolean inGamut(double slack) {
        return in(red, slack) && in(green, slack) && in(blue, slack);
    }

    private static boolean in(double part, double slack) {
        return part >= -slack && part <= 1 + slack;
    }

    /** The colour with each part that a screen can't show cut off at its limit. */
    public Colour clipped() {
        return new Colour(clip(encoded(red)), clip(encoded(green)), clip(encoded(blue)));
    }

    private static double clip(double part) {
        return Math.min(1, Math.max(0, part));
    }
}
