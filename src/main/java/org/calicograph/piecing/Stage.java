package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.seams.PartSeams;
import org.calicograph.seams.Pressing;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.Unit;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;

/**
 * One kind of block, or one assembly of parts.
 *
 * @param name    unlike that of any other stage of its plan
 * @param count   how often it is made
 * @param letters the piece of every patch, or the name of every part
 */
public record Stage(String name, int count, Patchwork work, Unit order, Map<String, String> letters) {

    /**
     * The joinings, alike ones together, in the order of sewing. Alike are units in which the same patches lie to each other
     * in the same way, however the unit is turned; all of them are made as the first is. A mirror image is another unit.
     */
    public List<Chain> chains() {
        return new Recipes(this).chains();
    }

    /** The steps as a table. */
    public Table table() {
        Table table = Table.of("Sewing " + name, "Makes", "Sew", "Seam", "Times in a chain");
        for (Chain c : chains()) {
            table = table.row(c.name(), c.what(), c.sample().kind() + (c.how().isEmpty() ? "" : ": " + c.how()), c.times());
        }
        return table;
    }

    /** For every chain in turn: the parts of its step a little apart, with an arrow across each seam for the way it is pressed. */
    public List<Picture> steps() {
        Map<String, Picture> pictures = pictures();
        Pressing pressing = pressing();
        return chains().stream().map(c -> Exploded.step(c.sample(), pictures, pressing)).toList();
    }

    /** The stage with its parts drawn apart. */
    public Picture exploded() {
        return Exploded.of(order, pictures());
    }

    private Map<String, Picture> pictures() {
        Map<String, Picture> pictures = new HashMap<>();
        double whole = Math.max(work.width().inInches(), work.height().inInches());
        if (work instanceof Assembly assembly) {
            for (Placed part : assembly.parts()) {
                List<Picture> all = new ArrayList<>();
                for (Patch p : part.work().patches()) {
                    all.add(Exploded.patch(p.shape().transformed(part.place()), p.fabric().colour(), whole));
                }
                if (part.work().patchCount() == 1) {
                    Patch only = part.work().patches().get(0);
                    all.add(lettered(letters.getOrDefault(part.id(), ""), only.shape().transformed(part.place()), only.fabric().colour(), whole));
                }
                pictures.put(part.id(), Picture.group(all));
            }
        } else {
            work.patches().forEach(p -> pictures.put(p.id(), lettered(letters.getOrDefault(p.id(), ""), p.shape(), p.fabric().colour(), whole)
                    .over(Exploded.patch(p.shape(), p.fabric().colour(), whole))));
        }
        return pictures;
    }

    /** Which way the seams go. */
    public Pressing pressing() {
        Map<String, Double> light = new HashMap<>();
        if (work instanceof Assembly assembly) {
            assembly.parts().forEach(part -> light.put(part.id(), lightness(part.work().patches().get(0).fabric().colour())));
        } else {
            work.patches().forEach(p -> light.put(p.id(), lightness(p.fabric().colour())));
        }
        return Pressing.of(order, id -> light.getOrDefault(id, 0.5));
    }

    /** The stage whole, with an arrow across each seam for the way it is pressed. */
    public Picture pressed() {
        double whole = Math.max(work.width().inInches(), work.height().inInches());
        List<Picture> parts = new ArrayList<>();
        for (Patch p : work.patches()) {
            parts.add(Exploded.patch(p.shape(), p.fabric().colour().mixed(Colour.WHITE, work instanceof Block ? 0.55 : 0.8), whole));
        }
        for (Pressing.Pressed seam : pressing().seams()) {
            parts.add(Exploded.arrow(seam.seam().middle(), seam.toward(), whole / 36));
        }
        return Picture.group(parts);
    }

    private static double lightness(Colour c) {
        return c.red() * 0.3 + c.green() * 0.6 + c.blue() * 0.1;
    }

    /** The letter of a piece where it has room; nothing where it has none. */
    private static Picture lettered(String letter, Region shape, Colour ground, double whole) {
        if (letter.isEmpty()) {
            return Picture.EMPTY;
        }
        MaximumInscribedCircle circle = new MaximumInscribedCircle(Polygons.of(shape, whole / 200), whole / 400);
        Point at = new Point(circle.getCenter().getX(), circle.getCenter().getY());
        double size = Math.min(whole / 24, circle.getRadiusLine().getLength() * (letter.length() > 1 ? 0.9 : 1.1));
        if (size < whole / 110) {
            return Picture.EMPTY;
        }
        Colour ink = lightness(ground) > 0.5 ? Colour.hex("#2b2b2b") : Colour.WHITE;
        return new Picture.Lettering(letter, at.plus(0, size * 0.35), size, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, ink);
    }

    /** Set-in, partial and curved seams, in words; empty if every seam is straight. */
    public String warnings() {
        Map<SeamKind, Long> tally = new TreeMap<>();
        order.steps().stream().filter(s -> s.kind() != SeamKind.STRAIGHT).forEach(s -> tally.merge(s.kind(), 1L, Long::sum));
        List<String> out = new ArrayList<>();
        tally.forEach((k, n) -> out.add(k.counted(n)));
        if (out.isEmpty()) {
            return "";
        }
        boolean curved = tally.keySet().equals(java.util.Set.of(SeamKind.CURVED));
        return (curved ? "Besides straight seams: " : "No order of straight seams alone exists: ") + String.join("; ", out) + ".";
    }
}
