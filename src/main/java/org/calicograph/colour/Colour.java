package org.calicograph.colour;

import java.util.Locale;

/**
 * A colour in sRGB, gamma-encoded, as screens and picture files have it.
 *
 * @param red   0 to 1
 * @param green 0 to 1
 * @param blue  0 to 1
 */
public record Colour(double red, double green, double blue) {

    /** No light. */
    public static final Colour BLACK = new Colour(0, 0, 0);
    /** All light that a screen has. */
    public static final Colour WHITE = new Colour(1, 1, 1);

    private static final Colour MIDDLE_GREY = new Lab(50, 0, 0, Lab.White.D65).xyz().linear().clipped();

    /** @throws IllegalArgumentException if a part is not between 0 and 1 */
    public Colour {
        check("red", red);
        check("green", green);
        check("blue", blue);
    }

    private static void check(String part, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("the " + part + " of a colour is " + value + "; use 0 to 1");
        }
    }

    /** A colour written as on the web: {@code #1f3a5f} or {@code #135}. */
    public static Colour hex(String text) {
        String digits = text.startsWith("#") ? text.substring(1) : text;
        if (!digits.matches("[0-9a-fA-F]{3}|[0-9a-fA-F]{6}")) {
            throw new IllegalArgumentException("'" + text + "' is not a colour; write it like #1f3a5f");
        }
        if (digits.length() == 3) {
            digits = digits.replaceAll("(.)", "$1$1");
        }
        return packed(Integer.parseInt(digits, 16));
    }

    /** From 0xRRGGBB. */
    public static Colour packed(int rgb) {
        return new Colour((rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0);
    }

    /** As 0xRRGGBB, each part to the nearest of 256 steps. */
    public int packed() {
        return (int) Math.round(red * 255) << 16 | (int) Math.round(green * 255) << 8 | (int) Math.round(blue * 255);
    }

    /** As written on the web: {@code #1f3a5f}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%06x", packed());
    }

    /** A share of the way to another colour, in the encoded values: 0 this, 1 the other. */
    public Colour mixed(Colour other, double share) {
        return new Colour(red + (other.red - red) * share, green + (other.green - green) * share,
                blue + (other.blue - blue) * share);
    }

    /** The light that the colour gives. */
    public LinearRgb linear() {
        return LinearRgb.of(this);
    }

    /** The colour by CIE XYZ, white at D65. */
    public Xyz xyz() {
        return linear().xyz();
    }

    /** The colour by CIELAB for a white. */
    public Lab lab(Lab.White white) {
        return xyz().lab(white);
    }

    /** The colour by lightness and two opposed axes as seen. */
    public Oklab oklab() {
        return Oklab.of(xyz());
    }

    /** The colour by lightness, chroma and hue as seen. */
    public Oklch oklch() {
        return oklab().oklch();
    }

    /** How light it looks: CIE L*, 0 for black to 100 for white. Quilters call this its value. */
    public double value() {
        return Lab.lightness(xyz().y());
    }

    /** The grey of the same value: the colour in a value study. */
    public Colour grey() {
        double y = Math.min(1, Math.max(0, xyz().y()));
        return new LinearRgb(y, y, y).clipped();
    }

    /** The difference by CIEDE2000 under daylight (D65); about 1 is just noticed side by side. */
    public double difference(Colour other) {
        return lab(Lab.White.D65).difference(other.lab(Lab.White.D65));
    }

    /** With white: a share of the way to white, mixed in OKLab so that the hue stays. */
    public Colour tint(double share) {
        return blended(WHITE, share);
    }

    /** With black: a share of the way to black, mixed in OKLab so that the hue stays. */
    public Colour shade(double share) {
        return blended(BLACK, share);
    }

    /**
     * With the grey of middle value (CIE L* 50), as a painter adds grey: a share of the way to it. A light colour darkens
     * as it dulls, so that a yellow's tone is an olive and not a pale yellow; its tint is that.
     */
    public Colour tone(double share) {
        return blended(MIDDLE_GREY, share);
    }

    /**
     * Mixed with another as opaque paints mix, a share of the other by strength: yellow and blue make green, and a little
     * black makes much of a difference. Kubelka and Munk's law (1931): in each of the three bands of light K/S = (1 - R)^2 / 2R
     * adds up, R being what is thrown back. Three bands stand for the whole spectrum, and no paint here throws back
     * less than 0.3 % of a band: the mixture is a guide, and a swatch of the real paint is better.
     */
    public Colour mixedAsPaint(Colour other, double share) {
        if (checkedShare(share) == 0 || share == 1) {
            return share == 0 ? this : other;
        }
        LinearRgb a = linear();
        LinearRgb b = other.linear();
        return new LinearRgb(together(a.red(), b.red(), share), together(a.green(), b.green(), share), together(a.blue(), b.blue(), share)).clipped();
    }

    private static double together(double one, double other, double share) {
        double mixed = absorbed(one) * (1 - share) + absorbed(other) * share;
        return 1 + mixed - Math.sqrt(mixed * mixed + 2 * mixed);
    }

    private static double absorbed(double thrownBack) {
        double r = Math.min(1, Math.max(0.003, thrownBack));
        return (1 - r) * (1 - r) / (2 * r);
    }

    /** A share of the way to another colour, in OKLab: what the eye takes for even steps. */
    public Colour blended(Colour other, double share) {
        return oklab().towards(other.oklab(), checkedShare(share)).colour();
    }

    private static double checkedShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a colour can't be mixed by a share of " + share + "; use 0 to 1");
        }
        return share;
    }

    @Override
    public String toString() {
        return hex();
    }
}
