package org.calicograph.colouring.wish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.calicograph.colour.Oklch;
import org.calicograph.colouring.Gradient;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.patchwork.Patchwork;

/** What many small patches can do to the eye together, as the colour season teaches it (common practice; how each is measured is this house's own). */
public enum Effect {
    /** A part seems to glow: light and clear, small beside what is round it, and that darker and duller. */
    LUMINOSITY,
    /** A sheen as on silk: from light to dark and back in steps so small that no seam is seen. */
    LUSTRE,
    /** Near and far: strong and dark below, pale and dull above, as hills lose colour with distance. */
    DEPTH,
    /** Light from one side: values fall evenly away from it. */
    LIGHT;

    /** The share of the work that glows, where luminosity is asked for. */
    private static final double GLOW = 0.15;

    /** As one says it. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The work with this effect: every patch gets one of the fabrics by where it lies.
     *
     * @param fabrics 4 or more; the more values and the smaller their steps, the better
     * @return the work in the fabrics; {@link EffectReport#of} measures what came of it
     */
    public Patchwork on(Patchwork work, List<Fabric> fabrics) {
        if (fabrics.size() < 4) {
            throw new DesignException(fabrics.size() + " fabrics make no " + words() + "; give 4 or more, from light to dark");
        }
        Box box = work.outline().bounds();
        return switch (this) {
            case LUMINOSITY -> glowing(work, fabrics);
            case LUSTRE -> {
                Gradient across = Gradient.cornerToCorner(work);
                List<Fabric> byValue = sorted(fabrics, f -> -f.colour().value());
                yield work.recoloured(p -> pick(byValue, 0.5 - 0.5 * Math.cos(4 * Math.PI * across.at(p.shape().centroid()))));
            }
            case DEPTH -> {
                List<Fabric> nearFirst = sorted(fabrics, f -> f.colour().value() - 100 * f.colour().oklch().chroma());
                yield work.recoloured(p -> pick(nearFirst, (box.bottom() - p.shape().centroid().y()) / box.height()));
            }
            case LIGHT -> {
                Gradient from = Gradient.cornerToCorner(work);
                List<Fabric> byValue = sorted(fabrics, f -> -f.colour().value());
                yield work.recoloured(p -> pick(byValue, from.at(p.shape().centroid())));
            }
        };
    }

    private static Patchwork glowing(Patchwork work, List<Fabric> fabrics) {
        // What glows is light and clear at once; the rest goes from dull to dark as it lies farther out.
        List<Fabric> glow = sorted(fabrics, f -> -f.colour().value() / 100 - 3 * f.colour().oklch().chroma());
        int bright = Math.max(1, fabrics.size() / 4);
        List<Fabric> rest = sorted(glow.subList(bright, glow.size()), f -> {
            Oklch own = f.colour().oklch();
            return own.chroma() - f.colour().value() / 200;
        });
        Gradient out = Gradient.outward(work);
        // The distance within which the glowing share of a rectangle lies: about that of a disc.
        Box box = work.outline().bounds();
        double edge = Math.sqrt(GLOW * box.width() * box.height() / Math.PI) / box.centre().distance(box.topLeft());
        return work.recoloured(p -> {
            double t = out.at(p.shape().centroid());
            return t <= edge ? pick(glow.subList(0, bright), t / edge) : pick(rest, (t - edge) / (1 - edge));
        });
    }

    private static List<Fabric> sorted(List<Fabric> fabrics, ToDoubleFunction<Fabric> by) {
        List<Fabric> all = new ArrayList<>(fabrics);
        all.sort(Comparator.comparingDouble(by));
        return all;
    }

    private static Fabric pick(List<Fabric> fabrics, double share) {
        return fabrics.get((int) Math.min(fabrics.size() - 1, Math.max(0, Math.floor(share * fabrics.size()))));
    }
}
