package org.calicograph.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;

/** Small pictures in rows, each with the values of its dials beneath. */
final class VariationSheet {

    private static final double SIDE = 2.4;
    private static final double GAP = 0.35;
    private static final double TYPE = 0.14;
    private static final Colour INK = Colour.hex("#23303a");

    private VariationSheet() { }

    /**
     * One variation.
     *
     * @param dials   the values that make it, by name
     * @param picture what it looks like; empty if it failed
     * @param trouble why it failed; empty if it didn't
     */
    record Entry(Map<String, String> dials, Optional<Picture> picture, String trouble) { }

    static Picture of(String title, List<Entry> entries, int columns) {
        List<Picture> parts = new ArrayList<>();
        double top = 0.55;
        int rows = (entries.size() + columns - 1) / columns;
        double width = columns * (SIDE + GAP) + GAP;
        double height = top + rows * (SIDE + GAP + 2.2 * TYPE) + GAP / 2;
        parts.add(Picture.of(Region.rectangle(new Box(0, 0, width, height))).filled(Colour.WHITE));
        parts.add(new Picture.Lettering(title, new Point(GAP, 0.38), 0.2, Picture.Anchor.START, Picture.Weight.BOLD, INK));
        for (int i = 0; i < entries.size(); i++) {
            double x = GAP + i % columns * (SIDE + GAP);
            double y = top + i / columns * (SIDE + GAP + 2.2 * TYPE);
            parts.add(entry(entries.get(i)).moved(x, y));
        }
        return Picture.group(parts);
    }

    private static Picture entry(Entry entry) {
        List<Picture> parts = new ArrayList<>();
        if (entry.picture().isPresent()) {
            Picture picture = entry.picture().get();
            Box box = picture.bounds();
            double scale = SIDE / Math.max(1e-9, Math.max(box.width(), box.height()));
            parts.add(picture.transformed(Transform.move(-box.centre().x(), -box.centre().y()).then(Transform.scale(scale))
                    .then(Transform.move(SIDE / 2, SIDE / 2))));
        } else {
            parts.add(Picture.of(Region.rectangle(new Box(0, 0, SIDE, SIDE))).outlined(Pen.of(Colour.hex("#b5553c"), 0.015).dashed(0.08, 0.06)));
            String words = entry.trouble().length() > 34 ? entry.trouble().substring(0, 33) + "…" : entry.trouble();
            parts.add(new Picture.Lettering(words, new Point(SIDE / 2, SIDE / 2), TYPE * 0.9, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, INK));
        }
        String label = entry.dials().entrySet().stream().map(d -> d.getKey() + " " + d.getValue()).collect(Collectors.joining(", "));
        parts.add(new Picture.Lettering(label, new Point(SIDE / 2, SIDE + 1.5 * TYPE), TYPE, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, INK));
        return Picture.group(parts);
    }
}
