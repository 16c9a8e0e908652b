package org.calicograph.fabric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.colour.Clusters;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourName;
import org.calicograph.colour.Lab;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Swatch;

/**
 * Named colours and their proportions.
 *
 * @param swatches one or more; their names differ, their shares add up to 1
 */
public record Palette(String name, List<Swatch> swatches) {

    public Palette {
        swatches = List.copyOf(swatches);
        if (swatches.isEmpty()) {
            throw new IllegalArgumentException("the palette '" + name + "' has no colours; give it one");
        }
        double sum = swatches.stream().mapToDouble(Swatch::share).sum();
        if (Math.abs(sum - 1) > 1e-9) {
            throw new IllegalArgumentException("the shares of the palette '" + name + "' add up to " + sum + "; make them 1");
        }
        if (swatches.stream().map(Swatch::name).distinct().count() < swatches.size()) {
            throw new IllegalArgumentException("two colours of the palette '" + name + "' have one name; name them apart");
        }
    }

    /** Colours in equal shares, named in plain words; one name twice gets a number. */
    public static Palette of(String name, List<Colour> colours) {
        return named(name, colours, colours.stream().map(c -> 1.0 / colours.size()).toList());
    }

    /**
     * The colours of a photograph, the most common first: clusters in OKLab, weighted by how many pixels
     * show them. The same photograph gives the same palette every time. Clear pixels are left out.
     *
     * @param colours how many; fewer come back if the photograph has fewer
     */
    public static Palette of(Photo photo, int colours) {
        return of(photo, colours, Clusters.SEED);
    }

    /** As {@link #of(Photo, int)}, with another seed for the start. */
    public static Palette of(Photo photo, int colours, long seed) {
        Clusters found = Clusters.of(photo, colours, seed);
        return named("palette of a photograph", found.colours(), found.shares());
    }

    private static Palette named(String name, List<Colour> colours, List<Double> shares) {
        Map<String, Integer> seen = new HashMap<>();
        List<Swatch> swatches = new ArrayList<>();
        for (int i = 0; i < colours.size(); i++) {
            String words = ColourName.of(colours.get(i));
            int times = seen.merge(words, 1, Integer::sum);
            swatches.add(new Swatch(times == 1 ? words : words + " " + times, colours.get(i), shares.get(i)));
        }
        return new Palette(name, swatches);
    }

    /** Its colours, in order. */
    public List<Colour> colours() {
        return swatches.stream().map(Swatch::colour).toList();
    }

    /** The same colours under another name. */
    public Palette named(String other) {
        return new Palette(other, swatches);
    }

    /** The swatch nearest to a colour by CIEDE2000. */
    public Swatch nearest(Colour colour) {
        Lab lab = colour.lab(Lab.White.D65);
        return swatches.stream().min(Comparator.comparingDouble(s -> s.colour().lab(Lab.White.D65).difference(lab))).orElseThrow();
    }

    /** From light to dark. */
    public Palette byValue() {
        return new Palette(name, swatches.stream().sorted(Comparator.comparingDouble(s -> -s.colour().value())).toList());
    }

    /** A fabric for each colour, named like it. */
    public List<Fabric> fabrics() {
        return swatches.stream().map(s -> Fabric.of(s.name(), s.colour())).toList();
    }
}
