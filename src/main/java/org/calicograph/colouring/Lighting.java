package org.calicograph.colouring;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.LinearRgb;
import org.calicograph.fabric.Stash;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * A shadow or a patch of light that falls across a quilt.
 *
 * @param over  where it falls, in inches on the quilt
 * @param depth above 0 to 1: how much of the light a shadow takes, or how far light goes to white
 */
public record Lighting(Kind kind, Region over, double depth) {

    public enum Kind { SHADOW, LIGHT }

    public Lighting {
        if (!(depth > 0 && depth <= 1)) {
            throw new IllegalArgumentException("a " + kind.name().toLowerCase(java.util.Locale.ROOT) + " has a depth of " + depth
                    + "; use a number above 0, up to 1");
        }
    }

    /** A shadow over a region that takes a share of the light, above 0 to 1 for all of it. */
    public static Lighting shadow(Region over, double depth) {
        return new Lighting(Kind.SHADOW, over, depth);
    }

    /** A patch of light over a region that goes a share of the way to white, above 0 to 1. */
    public static Lighting light(Region over, double depth) {
        return new Lighting(Kind.LIGHT, over, depth);
    }

    /** What a colour becomes: its light is taken away, or brought nearer to white, in linear light. */
    public Colour on(Colour colour) {
        LinearRgb l = colour.linear();
        return new LinearRgb(lit(l.red()), lit(l.green()), lit(l.blue())).clipped();
    }

    private double lit(double part) {
        return kind == Kind.SHADOW ? part * (1 - depth) : part + (1 - part) * depth;
    }

    /** The patches split along the edge, what is covered in a fabric of just the right colour, yet to be found. */
    public Patchwork split(Patchwork work) {
        String words = kind == Kind.SHADOW ? " in shadow" : " in light";
        return Overlay.split(work, over, f -> f.coloured(on(f.colour())).named(f.name() + words));
    }

    /** The patches split along the edge, what is covered in the nearest darker (or lighter) fabric of the stash. */
    public Patchwork split(Patchwork work, Stash stash) {
        return Overlay.split(work, over, f -> nearest(f, stash));
    }

    /**
     * The patches whole: those covered by half or more in the nearest darker (or lighter) fabric of the
     * stash. Where the stash has none, the patch stays as it is.
     */
    public Patchwork choose(Patchwork work, Stash stash) {
        ToDoubleFunction<Patch> share = Overlay.shareUnder(over);
        Map<Fabric, Fabric> found = new HashMap<>();
        return work.recoloured(p -> share.applyAsDouble(p) >= 0.5
                ? found.computeIfAbsent(p.fabric(), f -> nearest(f, stash)) : p.fabric());
    }

    private Fabric nearest(Fabric fabric, Stash stash) {
        Colour wanted = on(fabric.colour());
        return (kind == Kind.SHADOW ? stash.nearestDarker(fabric.colour(), wanted) : stash.nearestLighter(fabric.colour(), wanted))
                .orElse(fabric);
    }
}
