package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Oklch;

/**
 * Colours in even steps of value (CIE L*).
 */
public record Ramp(List<Colour> colours) {

    /** The lightest and darkest value of a ramp through one colour. */
    private static final double LIGHTEST = 95;
    private static final double DARKEST = 15;

    public Ramp {
        colours = List.copyOf(colours);
    }

    /**
     * From one colour to another, both included, along the straight way in OKLab.
     *
     * @param steps 2 or more
     */
    public static Ramp between(Colour from, Colour to, int steps) {
        check(steps);
        double first = from.value();
        double last = to.value();
        List<Colour> all = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            double share = (double) i / (steps - 1);
            if (i == 0 || i == steps - 1) {
                all.add(i == 0 ? from : to);
            } else if (Math.abs(last - first) < 0.01) {
                all.add(from.blended(to, share));
            } else {
                all.add(atValue(t -> from.blended(to, first < last ? t : 1 - t), first + (last - first) * share));
            }
        }
        return new Ramp(all);
    }

    /** From a light tint to a dark shade of one hue, keeping as much of its chroma as a screen can show. */
    public static Ramp through(Colour colour, int steps) {
        check(steps);
        Oklch own = colour.oklch();
        List<Colour> all = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            all.add(atValue(l -> own.lightened(l).colour(), LIGHTEST + (DARKEST - LIGHTEST) * i / (steps - 1)));
        }
        return new Ramp(all);
    }

    private static void check(int steps) {
        if (steps < 2) {
            throw new IllegalArgumentException("a ramp of " + steps + " steps goes nowhere; use 2 or more");
        }
    }

    /** The colour of a value on a way that grows lighter from 0 to 1, by bisection. */
    private static Colour atValue(DoubleFunction<Colour> way, double value) {
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
        return way.apply((low + high) / 2);
    }

    /** Its steps as a palette of a name. */
    public Palette palette(String name) {
        return Palette.of(name, colours);
    }
}
