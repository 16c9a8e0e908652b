package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourVision;
import org.calicograph.fabric.Fabric;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * A quilt by light and dark alone.
 *
 * @param work       the quilt in its fabrics
 * @param darkBelow  values (CIE L*, 0 to 100) below this are dark
 * @param lightFrom  values from this on are light
 */
public record ValueStudy(Patchwork work, double darkBelow, double lightFrom) implements Drawable {

    /** The three bands in which quilters sort fabric. */
    public enum Band {
        LIGHT(88), MEDIUM(58), DARK(24);

        private final double value;

        Band(double value) {
            this.value = value;
        }

        /** A grey that stands for the band. */
        public Colour grey() {
            return new org.calicograph.colour.Lab(value, 0, 0, org.calicograph.colour.Lab.White.D65).xyz().linear().clipped();
        }

        /** As it is said: 'dark', 'medium', 'light'. */
        public String words() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public ValueStudy {
        if (!(darkBelow > 0 && darkBelow < lightFrom && lightFrom < 100)) {
            throw new IllegalArgumentException("a value study has dark below " + darkBelow + " and light from " + lightFrom
                    + "; use two values in rising order between 0 and 100");
        }
    }

    /** With dark below 40 and light from 70. */
    public static ValueStudy of(Patchwork work) {
        return new ValueStudy(work, 40, 70);
    }

    /** The same with other borders between dark, medium and light, as values from 0 to 1. */
    public ValueStudy banded(double dark, double light) {
        return new ValueStudy(work, dark, light);
    }

    /** The band in which a colour falls. */
    public Band band(Colour colour) {
        double value = colour.value();
        return value < darkBelow ? Band.DARK : value < lightFrom ? Band.MEDIUM : Band.LIGHT;
    }

    /** Every fabric in the grey of its value. */
    public Patchwork grey() {
        return work.recoloured(p -> p.fabric().coloured(p.fabric().colour().grey()));
    }

    /** Every fabric in the grey of its band. */
    public Patchwork banded() {
        return work.recoloured(p -> p.fabric().coloured(band(p.fabric().colour()).grey()));
    }

    /** The quilt as an eye sees it. */
    public static Patchwork seenBy(ColourVision eye, Patchwork work) {
        return work.recoloured(p -> p.fabric().coloured(eye.sees(p.fabric().colour())));
    }

    /** The part of the top in each band, from 0 to 1; the parts add up to 1. */
    public Map<Band, Double> shares() {
        Map<Band, Double> shares = new EnumMap<>(Band.class);
        double all = 0;
        for (Band band : Band.values()) {
            shares.put(band, 0.0);
        }
        for (Patch p : work.patches()) {
            double area = p.shape().area().squareInches();
            shares.merge(band(p.fabric().colour()), area, Double::sum);
            all += area;
        }
        double total = all;
        shares.replaceAll((b, a) -> a / total);
        return shares;
    }

    /** The fabrics by name, from light to dark, with the area that shows of each, in square inches. */
    public Map<Fabric, Double> strip() {
        Map<String, Fabric> first = new LinkedHashMap<>();
        Map<String, Double> areas = new LinkedHashMap<>();
        for (Patch p : work.patches()) {
            first.putIfAbsent(p.fabric().name(), p.fabric());
            areas.merge(p.fabric().name(), p.shape().area().squareInches(), Double::sum);
        }
        Map<Fabric, Double> strip = new LinkedHashMap<>();
        first.values().stream().sorted(java.util.Comparator.comparingDouble((Fabric f) -> -f.colour().value())
                .thenComparing(Fabric::name)).forEach(f -> strip.put(f, areas.get(f.name())));
        return strip;
    }

    /** The strip as a picture: colours above, greys below, as wide as the area that each shows. */
    public Picture stripPicture(double width, double height) {
        Map<Fabric, Double> strip = strip();
        double all = strip.values().stream().mapToDouble(a -> a).sum();
        List<Picture> parts = new ArrayList<>();
        double x = 0;
        for (Map.Entry<Fabric, Double> e : strip.entrySet()) {
            double w = width * e.getValue() / all;
            parts.add(TopPicture.box(x, 0, w, height * 0.55, e.getKey().colour()));
            parts.add(TopPicture.box(x, height * 0.55, w, height * 0.45, e.getKey().colour().grey()));
            x += w;
        }
        return Picture.group(parts);
    }

    /** In colour, in grey and in bands, the strip beneath. */
    @Override
    public Exhibit show() {
        double width = 4;
        Picture row = captioned("in its fabrics", work, width)
                .beside(captioned("in grey", grey(), width), 0.35).beside(captioned("in three bands", banded(), width), 0.35);
        Map<Band, Double> shares = shares();
        String caption = String.format(Locale.ROOT, "Light %.0f %%, medium %.0f %%, dark %.0f %% of the top", 100 * shares.get(Band.LIGHT),
                100 * shares.get(Band.MEDIUM), 100 * shares.get(Band.DARK));
        return Exhibit.of(row.above(stripPicture(3 * width + 0.7, 0.6), 0.3), caption);
    }

    private static Picture captioned(String words, Patchwork work, double width) {
        return TopPicture.line(words, 0, 0, 0.16).above(TopPicture.of(work, width), 0.08);
    }
}
