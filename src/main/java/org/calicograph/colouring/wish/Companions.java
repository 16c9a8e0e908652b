package org.calicograph.colouring.wish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Swatch;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colouring.TopPicture;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Palette;
import org.calicograph.fabric.Stash;

/**
 * The colours of one printed cloth in their shares, and what of a stash goes with it: a fabric goes with a print if it
 * comes near to one of the colours that the print has already.
 *
 * @param print   the print's own colours, the most common first
 * @param matches every fabric of the stash with the colour that it comes nearest to, the nearest first
 */
public record Companions(Palette print, List<Match> matches) implements Drawable {

    /** Up to this difference (CIEDE2000) two cloths side by side pass for one colour family: a rule of this house. */
    public static final double NEAR = 10;

    /**
     * A fabric beside a print.
     *
     * @param colour     the print's colour that it comes nearest to
     * @param difference by CIEDE2000
     */
    public record Match(Fabric fabric, Swatch colour, double difference) {

        /** True if the fabric goes with the print. */
        public boolean goes() {
            return difference <= NEAR;
        }
    }

    public Companions {
        matches = List.copyOf(matches);
    }

    /**
     * What goes with a printed cloth.
     *
     * @param picture the print alone, photographed flat and evenly lit
     * @param colours how many colours are told apart in it
     */
    public static Companions of(Photo picture, int colours, Stash stash) {
        return of(Palette.of(picture, colours).named("colours of the print"), stash);
    }

    /** What goes with the colours of a print. */
    public static Companions of(Palette print, Stash stash) {
        List<Match> all = new ArrayList<>();
        for (Fabric fabric : stash.fabrics()) {
            Swatch near = print.nearest(fabric.colour());
            all.add(new Match(fabric, near, near.colour().difference(fabric.colour())));
        }
        all.sort(Comparator.comparingDouble(Match::difference));
        return new Companions(print, all);
    }

    /** What goes with the print, the nearest first. */
    public List<Match> going() {
        return matches.stream().filter(Match::goes).toList();
    }

    /** The print's colours that nothing in the stash comes near to, and so are to be bought. */
    public List<Swatch> missing() {
        return print.swatches().stream().filter(s -> matches.stream().noneMatch(m -> m.fabric().colour().difference(s.colour()) <= NEAR)).toList();
    }

    /** One row a fabric. */
    public Table table() {
        Table table = Table.of("Beside the print", "fabric", "comes nearest to", "share of the print", "difference (CIEDE2000)", "goes with it");
        for (Match m : matches) {
            table = table.row(m.fabric().name(), m.colour().name(), String.format(Locale.ROOT, "%.0f %%", 100 * m.colour().share()),
                    String.format(Locale.ROOT, "%.1f", m.difference()), m.goes() ? "yes" : "");
        }
        return table;
    }

    @Override
    public Exhibit show() {
        List<Picture> parts = new ArrayList<>();
        double x = 0;
        for (Swatch s : print.swatches()) {
            parts.add(TopPicture.box(x, 0, 6 * s.share(), 0.9, s.colour()));
            x += 6 * s.share();
        }
        double at = 0;
        for (Match m : going()) {
            parts.add(TopPicture.box(at % 6, 1.2 + Math.floor(at / 6) * 0.95, 0.9, 0.6, m.fabric().colour()));
            parts.add(TopPicture.line(m.fabric().name(), at % 6, 1.95 + Math.floor(at / 6) * 0.95, 0.12));
            at += 1.2;
        }
        String bought = missing().isEmpty() ? "Every colour of the print is at hand."
                : "Nothing at hand comes near to: " + String.join(", ", missing().stream().map(Swatch::name).toList()) + ".";
        return Exhibit.several(Exhibit.of(Picture.group(parts), "The print's colours in their shares; below, what goes with it. " + bought), Exhibit.of(table()));
    }
}
