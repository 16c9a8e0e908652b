package org.calicograph.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Steps along a way of colours of which each is as large as the next to the eye, by CIEDE2000. */
public final class EvenSteps {

    private static final int SAMPLES = 256;

    private EvenSteps() { }

    /**
     * Colours along a way, its two ends among them.
     *
     * <p>A step is the straight difference between two colours that follow each other, not the way between them. The step
     * is found by bisection: walked so often it ends at the end of the way.
     *
     * @param way   from 0 to 1
     * @param steps how many colours; 2 or more
     */
    public static List<Colour> along(DoubleFunction<Colour> way, int steps) {
        Lab[] samples = new Lab[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            samples[i] = way.apply((double) i / SAMPLES).lab(Lab.White.D65);
        }
        double low = 0;
        double high = 0;
        for (int i = 0; i < SAMPLES; i++) {
            high += samples[i].difference(samples[i + 1]);
        }
        for (int i = 0; i < 50; i++) {
            double step = (low + high) / 2;
            if (walked(samples, step, steps).size() == steps) {
                low = step; // all steps found their place before the end
            } else {
                high = step;
            }
        }
        List<Double> places = walked(samples, low, steps);
        List<Colour> colours = new ArrayList<>();
        for (int i = 0; i < steps - 1; i++) {
            colours.add(way.apply(i < places.size() ? places.get(i) : 1));
        }
        colours.add(way.apply(1));
        return List.copyOf(colours);
    }

    /** The places of steps of a size, from 0; fewer than asked if the way ends before. */
    private static List<Double> walked(Lab[] samples, double step, int most) {
        List<Double> places = new ArrayList<>();
        places.add(0.0);
        Lab from = samples[0];
        int next = 1;
        while (places.size() < most) {
            while (next < samples.length && from.difference(samples[next]) < step) {
                next++;
            }
            if (next == samples.length) {
                return places;
            }
            double low = next - 1;
            double high = next;
            for (int i = 0; i < 24; i++) {
                double middle = (low + high) / 2;
                if (from.difference(at(samples, middle)) < step) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            places.add(Math.min(1, high / (samples.length - 1)));
            from = at(samples, high);
        }
        return places;
    }

    private static Lab at(Lab[] samples, double place) {
        int i = (int) Math.min(samples.length - 2, Math.floor(place));
        double t = place - i;
        Lab a = samples[i];
        Lab b = samples[i + 1];
        return new Lab(a.lightness() + (b.lightness() - a.lightness()) * t, a.a() + (b.a() - a.a()) * t, a.b() + (b.b() - a.b()) * t, a.white());
    }
}
