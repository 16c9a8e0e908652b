package org.calicograph.colouring;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.LinearRgb;
import org.calicograph.fabric.Stash;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * Two shapes that seem to be sheer: where they cross, a third fabric looks like both at once.
 *
 * @param one   the first shape and its fabric
 * @param other the second
 */
public record Transparency(Region one, Fabric first, Region other, Fabric second, Look look) {

    /** How the crossing looks. */
    public enum Look {
        /** Like two panes of coloured glass: darker than both. */
        GLASS,
        /** Like veils: midway between the two. */
        VEIL
    }

    /** Two panes of coloured glass that cross. */
    public static Transparency glass(Region one, Fabric first, Region other, Fabric second) {
        return new Transparency(one, first, other, second, Look.GLASS);
    }

    /** Two veils that cross. */
    public static Transparency veil(Region one, Fabric first, Region other, Fabric second) {
        return new Transparency(one, first, other, second, Look.VEIL);
    }

    /** The colour of the crossing. */
    public Colour crossing() {
        if (look == Look.VEIL) {
            return first.colour().blended(second.colour(), 0.5);
        }
        LinearRgb a = first.colour().linear();
        LinearRgb b = second.colour().linear();
        return new LinearRgb(a.red() * b.red(), a.green() * b.green(), a.blue() * b.blue()).clipped();
    }

    /** A fabric of just the right colour for the crossing, yet to be found. */
    public Fabric ideal() {
        return Fabric.of(first.name() + " over " + second.name(), crossing());
    }

    /** The patches split along both edges. */
    public Patchwork split(Patchwork work) {
        return split(work, ideal());
    }

    /** The patches split along both edges, the crossing in the nearest fabric of the stash. */
    public Patchwork split(Patchwork work, Stash stash) {
        return split(work, found(stash));
    }

    private Patchwork split(Patchwork work, Fabric crossing) {
        // What the second shape covers is marked, since the quilt may hold its fabric elsewhere.
        Fabric marked = second.named(second.name() + "\u0000covered");
        Patchwork under = Overlay.split(work, other, f -> marked);
        return Overlay.split(under, one, f -> f.equals(marked) ? crossing : first)
                .recoloured(p -> p.fabric().equals(marked) ? second : p.fabric());
    }

    /** The patches whole: each in the fabric of the shape or shapes that cover half or more of it. */
    public Patchwork choose(Patchwork work, Stash stash) {
        Fabric crossing = found(stash);
        ToDoubleFunction<Patch> underOne = Overlay.shareUnder(one);
        ToDoubleFunction<Patch> underOther = Overlay.shareUnder(other);
        Function<Patch, Fabric> rule = p -> {
            boolean a = underOne.applyAsDouble(p) >= 0.5;
            boolean b = underOther.applyAsDouble(p) >= 0.5;
            return a && b ? crossing : a ? first : b ? second : p.fabric();
        };
        return work.recoloured(rule);
    }

    private Fabric found(Stash stash) {
        return stash.nearest(crossing()).orElseThrow(() -> new IllegalArgumentException(
                "the stash is empty, so nothing in it can stand for " + first + " over " + second + "; add a fabric"));
    }
}
