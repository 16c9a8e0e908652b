package org.calicograph.fabric;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Lab;

/** The fabrics on the shelf, in order, each by its own name. */
public final class Stash {

    private final Map<String, Fabric> byName = new LinkedHashMap<>();

    private Stash(List<Fabric> fabrics) {
        for (Fabric fabric : fabrics) {
            if (byName.putIfAbsent(fabric.name(), fabric) != null) {
                throw new IllegalArgumentException("two fabrics of the stash are called '" + fabric.name() + "'; name them apart");
            }
        }
    }

    /** The cloths that are in hand. */
    public static Stash of(List<Fabric> fabrics) {
        return new Stash(fabrics);
    }

    /** The cloths that are in hand. */
    public static Stash of(Fabric... fabrics) {
        return new Stash(List.of(fabrics));
    }

    /**
     * Reads comma-separated values; {@link StashReading} says what the columns are.
     *
     * @throws IllegalArgumentException listing every row that can't be read and why
     */
    public static Stash read(String csv) {
        StashReading reading = StashReading.of(csv);
        if (!reading.problems().isEmpty()) {
            throw new IllegalArgumentException("the stash can't be read:\n" + String.join("\n", reading.problems()));
        }
        return reading.stash();
    }

    /** The cloths, each once, in the order given. */
    public List<Fabric> fabrics() {
        return List.copyOf(byName.values());
    }

    /** @throws IllegalArgumentException offering the nearest names, if there is no such fabric */
    public Fabric fabric(String name) {
        Fabric fabric = byName.get(name);
        if (fabric == null) {
            throw new IllegalArgumentException("there is no fabric '" + name + "' in the stash"
                    + (byName.isEmpty() ? "; it is empty" : NearestNames.question(name, byName.keySet())));
        }
        return fabric;
    }

    /** The fabric nearest to a colour by CIEDE2000; empty only if the stash is. */
    public Optional<Fabric> nearest(Colour colour) {
        Lab lab = colour.lab(Lab.White.D65);
        return byName.values().stream().min(Comparator.comparingDouble(f -> f.colour().lab(Lab.White.D65).difference(lab)));
    }

    /** The fabric nearest to a colour among those that are darker than another; empty if none is. */
    public Optional<Fabric> nearestDarker(Colour than, Colour colour) {
        return Stash.of(fabrics().stream().filter(f -> f.colour().value() < than.value() - 1e-6).toList()).nearest(colour);
    }

    /** The fabric nearest to a colour among those that are lighter than another; empty if none is. */
    public Optional<Fabric> nearestLighter(Colour than, Colour colour) {
        return Stash.of(fabrics().stream().filter(f -> f.colour().value() > than.value() + 1e-6).toList()).nearest(colour);
    }

    /** As comma-separated values that {@link #read} reads back; pictures of cloth are not written. */
    public String csv() {
        return StashReading.write(this);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Stash s && fabrics().equals(s.fabrics());
    }

    @Override
    public int hashCode() {
        return byName.hashCode();
    }

    @Override
    public String toString() {
        return "stash of " + byName.size() + " fabrics";
    }
}
