package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.calicograph.colour.Colour;
import org.calicograph.colour.EvenSteps;
import org.calicograph.colour.Oklch;

/**
 * Colours in even steps. Where nothing else is said a step is as large as the next to the eye (CIEDE2000, which jumps
 * itself between hues that stand just opposite: one step may then be off); {@link #byValue}
 * steps evenly in value.
 */
public record Ramp(List<Colour> colours) {

    /** The lightest and darkest value of a ramp through one colour. */
    private static final double LIGHTEST = 95;
    private static final double DARKEST = 15;
    /** Below this chroma (OKLCH) a colour has no hue to go round by. */
    private static final double GREYISH = 0.03;
    /** Hues further apart than this are opposites: both ways round are near enough, and the clearer one is taken. */
    private static final double OPPOSITE = 150;
    /** How far a ramp of tints, tones or shades goes; beyond, nothing of the colour is left. */
    private static final double FAR = 0.75;

    public Ramp {
        colours = List.copyOf(colours);
    }

    /**
     * From one colour to another, both included, round the wheel rather than through grey, as clear on
     * the way as a screen can show it. Of opposites it goes the way that stays clearer. A grey has no hue; from or to it the way is straight.
     *
     * @param steps 2 or more
     */
    public static Ramp between(Colour from, Colour to, int steps) {
        check(steps);
        return new Ramp(EvenSteps.along(clear(from, to), steps));
    }

    /** From one colour to another, both included, straight across the wheel: opposites grow dull on their way and pass through grey. */
    public static Ramp acrossGrey(Colour from, Colour to, int steps) {
        check(steps);
        return new Ramp(EvenSteps.along(straight(from, to), steps));
    }

    /**
     * From one colour to another in even steps of value (CIE L*), both included, as a value study wants them. Colours of one value are stepped
     * evenly as seen.
     *
     * @param steps 2 or more
     */
    public static Ramp byValue(Colour from, Colour to, int steps) {
        check(steps);
        double first = from.value();
        double last = to.value();
        if (Math.abs(last - first) < 0.01) {
            return acrossGrey(from, to, steps);
        }
        List<Colour> all = new ArrayList<>();
        all.add(from);
        for (int i = 1; i < steps - 1; i++) {
            all.add(atValue(t -> from.blended(to, first < last ? t : 1 - t), first + (last - first) * i / (steps - 1)));
        }
        all.add(to);
        return new Ramp(all);
    }

    /** From a light tint to a dark shade of one hue, keeping as much of its chroma as a screen can show. */
    public static Ramp through(Colour colour, int steps) {
        check(steps);
        Oklch own = colour.oklch();
        DoubleFunction<Colour> way = l -> own.lightened(l).dulled();
        double light = lightnessOf(way, LIGHTEST);
        double dark = lightnessOf(way, DARKEST);
        return new Ramp(EvenSteps.along(t -> way.apply(light + (dark - light) * t), steps));
    }

    /** The colour and its tints, paler from step to step. */
    public static Ramp tints(Colour colour, int steps) {
        check(steps);
        return new Ramp(EvenSteps.along(t -> colour.tint(FAR * t), steps));
    }

    /** The colour and its tones, greyer from step to step. */
    public static Ramp tones(Colour colour, int steps) {
        check(steps);
        return new Ramp(EvenSteps.along(t -> colour.tone(FAR * t), steps));
    }

    /** The colour and its shades, darker from step to step. */
    public static Ramp shades(Colour colour, int steps) {
        check(steps);
        return new Ramp(EvenSteps.along(t -> colour.shade(FAR * t), steps));
    }

    private static void check(int steps) {
        if (steps < 2) {
            throw new IllegalArgumentException("a ramp of " + steps + " steps goes nowhere; use 2 or more");
        }
    }

    private static DoubleFunction<Colour> straight(Colour from, Colour to) {
        return t -> t <= 0 ? from : t >= 1 ? to : from.oklab().towards(to.oklab(), t).oklch().dulled();
    }

    private static DoubleFunction<Colour> clear(Colour from, Colour to) {
        Oklch a = from.oklch();
        Oklch b = to.oklch();
        if (a.chroma() < GREYISH || b.chroma() < GREYISH) {
            return straight(from, to);
        }
        double turn = ((b.hue() - a.hue()) % 360 + 540) % 360 - 180;
        DoubleFunction<Colour> shorter = round(from, to, turn);
        if (Math.abs(turn) <= OPPOSITE) {
            return shorter;
        }
        DoubleFunction<Colour> longer = round(from, to, turn > 0 ? turn - 360 : turn + 360);
        return dullest(longer) > dullest(shorter) ? longer : shorter;
    }

    private static DoubleFunction<Colour> round(Colour from, Colour to, double turn) {
        Oklch a = from.oklch();
        Oklch b = to.oklch();
        return t -> t <= 0 ? from : t >= 1 ? to : new Oklch(a.lightness() + (b.lightness() - a.lightness()) * t,
                a.chroma() + (b.chroma() - a.chroma()) * t, a.hue() + turn * t).dulled();
    }

    private static double dullest(DoubleFunction<Colour> way) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 16; i++) {
            least = Math.min(least, way.apply(i / 16.0).oklch().chroma());
        }
        return least;
    }

    /** The colour of a value on a way that grows lighter from 0 to 1, by bisection. */
    private static Colour atValue(DoubleFunction<Colour> way, double value) {
        return way.apply(lightnessOf(way, value));
    }

    private static double lightnessOf(DoubleFunction<Colour> way, double value) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (way.apply(middle).value() < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Its steps as a palette of a name. */
    public Palette palette(String name) {
        return Palette.of(name, colours);
    }
}
