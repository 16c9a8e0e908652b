package org.calicograph.colour;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Angle;

/**
 * A colour wheel: true colours in even steps, clockwise from yellow at the top.
 *
 * <p>Between two steps the true colour is interpolated in lightness, chroma and hue (OKLCH). A colour's
 * place on the wheel is the place of its hue.
 *
 * @param name  such as 'pigment wheel'
 * @param hues  the true colours in order; their OKLCH hue falls from step to step, once around
 */
public record Wheel(String name, List<Hue> hues) {

    /** A true colour with its name. */
    public record Hue(String name, Colour colour) { }

    public Wheel {
        hues = List.copyOf(hues);
        if (hues.size() < 3) {
            throw new IllegalArgumentException("the " + name + " has " + hues.size() + " hues; a wheel needs at least 3");
        }
        double around = 0;
        for (int i = 0; i < hues.size(); i++) {
            around += fall(hues.get(i).colour(), hues.get((i + 1) % hues.size()).colour());
        }
        if (Math.abs(around - 360) > 1e-6) {
            throw new IllegalArgumentException("the hues of the " + name + " don't go round once in order; sort them by hue");
        }
    }

    private static double fall(Colour from, Colour to) {
        double d = (from.oklch().hue() - to.oklch().hue()) % 360;
        return d < 0 ? d + 360 : d;
    }

    /**
     * The painter's twelve steps, in which red stands opposite green. Primaries and secondaries after
     * the cube of N. Gossett and B. Chen, 'Paint Inspired Color Mixing and Compositing for
     * Visualization' (IEEE InfoVis 2004); the steps between are their midpoints.
     */
    public static Wheel pigment() {
        return Pigment.WHEEL;
    }

    /** Even steps of hue at one lightness and chroma (OKLCH), in which no colour stands out. */
    public static Wheel perceptual(int steps, double lightness, double chroma) {
        List<Hue> hues = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            Oklch colour = new Oklch(lightness, chroma, Pigment.YELLOW - 360.0 * i / steps);
            if (!colour.inGamut()) {
                throw new IllegalArgumentException("a wheel of lightness " + lightness + " and chroma " + chroma
                        + " leaves the screen's range at hue " + Math.round(colour.hue()) + "; lower the chroma");
            }
            hues.add(new Hue("hue " + Math.round(colour.hue()), colour.colour()));
        }
        return new Wheel("perceptual wheel", hues);
    }

    /** Twelve even steps of hue at a middle lightness. */
    public static Wheel perceptual() {
        return perceptual(12, 0.72, 0.115);
    }

    private static final class Pigment {
        static final double YELLOW = Colour.hex("#ffff00").oklch().hue();
        static final Wheel WHEEL = new Wheel("pigment wheel", List.of(
                hue("yellow", 1, 1, 0), hue("yellow-orange", 1, 0.75, 0), hue("orange", 1, 0.5, 0),
                hue("red-orange", 1, 0.25, 0), hue("red", 1, 0, 0), hue("red-violet", 0.75, 0, 0.25),
                hue("violet", 0.5, 0, 0.5), hue("blue-violet", 0.3315, 0.1865, 0.55), hue("blue", 0.163, 0.373, 0.6),
                hue("blue-green", 0.0815, 0.5165, 0.4), hue("green", 0, 0.66, 0.2), hue("yellow-green", 0.5, 0.83, 0.1)));

        private static Hue hue(String name, double r, double g, double b) {
            return new Hue(name, new Colour(r, g, b));
        }
    }

    private double step() {
        return 360.0 / hues.size();
    }

    /** The true colour at a place; 0 degrees is the top, clockwise. */
    public Colour at(Angle place) {
        double at = place.normalised().degrees() / step();
        return at == Math.rint(at) ? hues.get((int) at % hues.size()).colour() : trueAt(place).colour();
    }

    /** As interpolated, before it is mapped to what a screen shows. */
    private Oklch trueAt(Angle place) {
        double at = place.normalised().degrees() / step();
        return between((int) at % hues.size(), at - (int) at);
    }

    private Oklch between(int i, double t) {
        Colour from = hues.get(i).colour();
        Colour to = hues.get((i + 1) % hues.size()).colour();
        Oklch a = from.oklch();
        Oklch b = to.oklch();
        return new Oklch(a.lightness() + (b.lightness() - a.lightness()) * t, a.chroma() + (b.chroma() - a.chroma()) * t,
                a.hue() - fall(from, to) * t);
    }

    /**
     * The place of a colour's hue.
     *
     * @throws IllegalArgumentException if the colour is a grey, which has no hue
     */
    public Angle placeOf(Colour colour) {
        if (colour.oklch().chroma() < 1e-3) {
            throw new IllegalArgumentException(colour + " is a grey and has no place on the " + name + "; choose a colour with a hue");
        }
        for (int i = 0; i < hues.size(); i++) {
            Colour from = hues.get(i).colour();
            double span = fall(from, hues.get((i + 1) % hues.size()).colour());
            double down = fall(from, colour);
            if (down < span) {
                return Angle.degrees((i + down / span) * step());
            }
        }
        return Angle.ZERO; // a hue that rounding puts a hair before the first step
    }

    /** The step whose place is nearest to the colour's hue. */
    public Hue nearest(Colour colour) {
        return hues.get((int) Math.round(placeOf(colour).degrees() / step()) % hues.size());
    }

    /** The true colour that stands opposite. */
    public Colour opposite(Colour colour) {
        return at(placeOf(colour).plus(Angle.HALF));
    }

    /**
     * The colour carried to another place on the wheel, clockwise: a tint of one hue becomes as much of
     * a tint of the other, and likewise a shade or a tone; a true colour becomes a true colour.
     */
    public Colour turned(Colour colour, Angle by) {
        Oklch own = colour.oklch();
        Angle place = placeOf(colour);
        Oklch from = trueAt(place);
        Oklch to = trueAt(place.plus(by));
        boolean light = own.lightness() > from.lightness();
        double lightness = light
                ? 1 - (1 - own.lightness()) / (1 - from.lightness()) * (1 - to.lightness())
                : own.lightness() / from.lightness() * to.lightness();
        double left = light ? (1 - own.lightness()) / (1 - from.lightness()) : own.lightness() / from.lightness();
        double pure = from.chroma() * left;
        double chroma = pure < 1e-9 ? own.chroma() : own.chroma() / pure * to.chroma() * left;
        return new Oklch(lightness, chroma, to.hue()).colour();
    }
}
