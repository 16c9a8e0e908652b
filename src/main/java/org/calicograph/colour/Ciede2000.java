package org.calicograph.colour;

/**
 * The CIEDE2000 colour difference with all weights 1.
 *
 * <p>Source: G. Sharma, W. Wu, E. N. Dalal, 'The CIEDE2000 color-difference formula: implementation
 * notes, supplementary test data, and mathematical observations', Color Research and Application
 * 30(1), 2005.
 */
final class Ciede2000 {

    private static final double TWENTY_FIVE_TO_THE_SEVENTH = 6103515625.0;

    private Ciede2000() { }

    static double between(Lab one, Lab two) {
        double g = 0.5 * (1 - saturation((one.chroma() + two.chroma()) / 2));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * two.a();
        double c1 = Math.hypot(a1, one.b());
        double c2 = Math.hypot(a2, two.b());
        double h1 = hue(a1, one.b());
        double h2 = hue(a2, two.b());
        boolean grey = c1 * c2 == 0;

        double dl = two.lightness() - one.lightness();
        double dc = c2 - c1;
        double turn = h2 - h1;
        double dh = grey ? 0 : turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
        double dH = 2 * Math.sqrt(c1 * c2) * sin(dh / 2);

        double l = (one.lightness() + two.lightness()) / 2;
        double c = (c1 + c2) / 2;
        double sum = h1 + h2;
        double h = grey ? sum : Math.abs(turn) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;

        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double fifty = (l - 50) * (l - 50);
        double sl = 1 + 0.015 * fifty / Math.sqrt(20 + fifty);
        double sc = 1 + 0.045 * c;
        double sh = 1 + 0.015 * c * t;
        double blue = (h - 275) / 25;
        double rotation = -sin(60 * Math.exp(-blue * blue)) * 2 * saturation(c);

        double x = dl / sl;
        double y = dc / sc;
        double z = dH / sh;
        return Math.sqrt(Math.max(0, x * x + y * y + z * z + rotation * y * z));
    }

    private static double saturation(double chroma) {
        double c2 = chroma * chroma;
        double c7 = c2 * c2 * c2 * chroma;
        return Math.sqrt(c7 / (c7 + TWENTY_FIVE_TO_THE_SEVENTH));
    }

    private static double hue(double a, double b) {
        double h = Math.toDegrees(Math.atan2(b, a));
        return h < 0 ? h + 360 : h;
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
