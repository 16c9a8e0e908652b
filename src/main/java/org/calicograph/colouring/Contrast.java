package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourVision;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * How well neighbours stand apart. Neighbours in the same fabric are left out: they are meant to run
 * together.
 *
 * @param pairs the pairs of fabrics that meet, the weakest contrast first
 */
public record Contrast(Patchwork work, ColourVision eye, List<Pair> pairs) implements Drawable {

    /** Seams below this difference (CIEDE2000) are called weak: a rule of this house, for what runs together at a distance. */
    public static final double WEAK = 12;

    /**
     * Two fabrics that meet.
     *
     * @param difference by CIEDE2000, as the eye sees the two
     * @param valueGap   the difference in value (CIE L*), as the eye sees it
     * @param seams      every seam between them
     */
    public record Pair(Fabric one, Fabric other, double difference, double valueGap, List<Seam> seams) {

        /** All seams together, in inches. */
        public double length() {
            return seams.stream().mapToDouble(Seam::length).sum();
        }
    }

    public Contrast {
        pairs = List.copyOf(pairs);
    }

    /** How far neighbours differ to the usual eye. */
    public static Contrast of(Patchwork work) {
        return of(work, ColourVision.USUAL);
    }

    /** As an eye sees it. */
    public static Contrast of(Patchwork work, ColourVision eye) {
        Map<String, List<Seam>> byPair = new TreeMap<>();
        for (Seam seam : Neighbours.of(work.patches())) {
            String a = seam.one().fabric().name();
            String b = seam.other().fabric().name();
            if (!a.equals(b)) {
                byPair.computeIfAbsent(a.compareTo(b) < 0 ? a + "\n" + b : b + "\n" + a, k -> new ArrayList<>()).add(seam);
            }
        }
        List<Pair> pairs = new ArrayList<>();
        for (List<Seam> seams : byPair.values()) {
            Fabric one = seams.get(0).one().fabric();
            Fabric other = seams.get(0).other().fabric();
            Colour a = eye.sees(one.colour());
            Colour b = eye.sees(other.colour());
            pairs.add(new Pair(one, other, a.difference(b), Math.abs(a.value() - b.value()), List.copyOf(seams)));
        }
        pairs.sort(Comparator.comparingDouble(Pair::difference));
        return new Contrast(work, eye, pairs);
    }

    /** Pairs below {@link #WEAK}, the weakest first. */
    public List<Pair> weak() {
        return pairs.stream().filter(p -> p.difference() < WEAK).toList();
    }

    /** One row a pair, the weakest first. */
    public Table table() {
        Table table = Table.of("Contrast between neighbours, " + eye, "fabric", "neighbour", "difference (CIEDE2000)",
                "gap in value (L*)", "seams", "length (in)", "first at");
        for (Pair p : pairs) {
            Patch first = p.seams().get(0).one();
            table = table.row(p.one().name(), p.other().name(), rounded(p.difference()), rounded(p.valueGap()), p.seams().size(),
                    rounded(p.length()), "patch " + first.id());
        }
        return table;
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** The quilt as the eye sees it with the weak seams marked, and the table. */
    @Override
    public Exhibit show() {
        Patchwork seen = ValueStudy.seenBy(eye, work);
        double width = 6;
        Box box = work.outline().bounds();
        double scale = width / box.width();
        List<Picture> marks = new ArrayList<>();
        for (Pair pair : weak()) {
            for (Seam seam : pair.seams()) {
                for (Path line : seam.lines()) {
                    marks.add(Picture.of(line).outlined(Pen.of(Colour.WHITE, 0.07 / scale)));
                    marks.add(Picture.of(line).outlined(Pen.of(Colour.hex("#d4145a"), 0.035 / scale)));
                }
            }
        }
        Picture picture = Picture.group(marks).scaled(scale).over(TopPicture.of(seen, width));
        int seams = weak().stream().mapToInt(p -> p.seams().size()).sum();
        String caption = String.format(Locale.ROOT, "With %s: %s", eye, seams == 0 ? "no weak seams"
                : seams + (seams == 1 ? " weak seam, marked" : " weak seams, marked"));
        return Exhibit.several(Exhibit.of(picture, caption), Exhibit.of(table()));
    }
}
