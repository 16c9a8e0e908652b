package org.calicograph.colour;

/**
 * OKLab by lightness, chroma and hue.
 *
 * @param lightness 0 for black to 1 for white
 * @param chroma    0 for grey; screens reach about 0.32
 * @param hue       degrees from 0 up to but not including 360; 0 for greys
 */
public record Oklch(double lightness, double chroma, double hue) {

    /** Chroma below this is grey (CSS Color 4: hue is powerless). */
    private static final double GREY = 4e-6;
    private static final double JUST_NOTICED = 0.02;
    private static final double CLOSE_ENOUGH = 1e-4;

    /** @throws IllegalArgumentException if a part is not finite or the chroma is below 0 */
    public Oklch {
        if (!Double.isFinite(lightness) || !Double.isFinite(hue) || !(chroma >= 0 && chroma < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a colour of lightness " + lightness + ", chroma " + chroma + " and hue " + hue
                    + " can't be; use finite numbers and a chroma of 0 or more");
        }
        hue = chroma < GREY ? 0 : (hue % 360 + 360) % 360;
    }

    static Oklch of(Oklab lab) {
        return new Oklch(lab.lightness(), Math.hypot(lab.a(), lab.b()), Math.toDegrees(Math.atan2(lab.b(), lab.a())));
    }

    /** The same by two opposed axes. */
    public Oklab oklab() {
        double h = Math.toRadians(hue);
        return new Oklab(lightness, chroma * Math.cos(h), chroma * Math.sin(h));
    }

    /** True where no hue can be seen. */
    public boolean isGrey() {
        return chroma < GREY;
    }

    /** True if a screen can show it. */
    public boolean inGamut() {
        return oklab().linear().inGamut(1e-7);
    }

    /** The same chroma and hue at another lightness, from 0 for black to 1 for white. */
    public Oklch lightened(double to) {
        return new Oklch(to, chroma, hue);
    }

    /** The same lightness and hue at another chroma, 0 for grey. */
    public Oklch withChroma(double to) {
        return new Oklch(lightness, to, hue);
    }

    /** The hue turned round the wheel by degrees. */
    public Oklch turned(double degrees) {
        return new Oklch(lightness, chroma, hue + degrees);
    }

    /**
     * The colour, or where a screen can't show it the nearest that it can: chroma is lowered at the same
     * lightness and hue until cutting off the rest is not noticed (the gamut mapping of CSS Color 4,
     * binary search with local minimum difference).
     */
    public Colour colour() {
        if (lightness >= 1) {
            return Colour.WHITE;
        }
        if (lightness <= 0) {
            return Colour.BLACK;
        }
        LinearRgb light = oklab().linear();
        if (light.inGamut(0)) {
            return light.clipped();
        }
        Colour clipped = light.clipped();
        if (clipped.oklab().distance(oklab()) < JUST_NOTICED) {
            return clipped;
        }
        double low = 0;
        double high = chroma;
        boolean lowShows = true;
        while (high - low > CLOSE_ENOUGH) {
            double middle = (low + high) / 2;
            Oklab tried = withChroma(middle).oklab();
            LinearRgb shown = tried.linear();
            if (lowShows && shown.inGamut(0)) {
                low = middle;
                continue;
            }
            clipped = shown.clipped();
            double off = clipped.oklab().distance(tried);
            if (off < JUST_NOTICED) {
                if (JUST_NOTICED - off < CLOSE_ENOUGH) {
                    return clipped;
                }
                lowShows = false;
                low = middle;
            } else {
                high = middle;
            }
        }
        return clipped;
    }

    /**
     * The colour, or where a screen can't show it the clearest of the same lightness and hue that it can. Unlike {@link #colour} it never
     * jumps: near colours stay near.
     */
    public Colour dulled() {
        if (lightness >= 1 || lightness <= 0 || inGamut()) {
            return lightness >= 1 ? Colour.WHITE : lightness <= 0 ? Colour.BLACK : oklab().linear().clipped();
        }
        double low = 0;
        double high = chroma;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (withChroma(middle).oklab().linear().inGamut(1e-7)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return withChroma(low).oklab().linear().clipped();
    }
}
