package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutPicture;

/**
 * Blanks cut from scraps of mixed sizes: the smallest scraps are used up first, each filled with the
 * longest blanks that go on it. It is a good way to do it, not proved to be the best: what is missing
 * might still be found room for.
 *
 * @param used    the scraps that something is cut from
 * @param missing the blanks that no scrap had room for
 */
public record ScrapCutting(List<Used> used, List<Blank> missing) implements Drawable {

    /**
     * A rectangle of cloth at hand, straightened.
     *
     * @param name what it is called
     */
    public record Scrap(String name, Length width, Length length) {
        /** @throws IllegalArgumentException if a side is not above 0 */
        public Scrap {
            if (!width.isPositive() || !length.isPositive()) {
                throw new IllegalArgumentException("the scrap '" + name + "' is " + width + " x " + length + "; measure it again: both sides must be above 0");
            }
        }
    }

    /** A scrap and what is cut from it. */
    public record Used(Scrap scrap, Layout layout) { }

    public ScrapCutting {
        used = List.copyOf(used);
        missing = List.copyOf(missing);
    }

    /** Which blanks come from which scraps, the smallest scrap that serves first, and what is left to cut from whole cloth. */
    public static ScrapCutting of(List<Scrap> scraps, List<Blank> blanks) {
        List<Scrap> bySize = new ArrayList<>(scraps);
        bySize.sort(Comparator.comparingDouble(s -> s.width().inInches() * s.length().inInches()));
        List<Blank> left = new ArrayList<>(blanks);
        List<Used> used = new ArrayList<>();
        for (Scrap scrap : bySize) {
            Optional<Layout> layout = Layout.filling(scrap.width(), scrap.length(), left);
            layout.ifPresent(l -> {
                used.add(new Used(scrap, l));
                l.spots().forEach(s -> left.remove(s.taken().blank()));
            });
        }
        return new ScrapCutting(used, left);
    }

    /** A row for each scrap, and one for what is missing. */
    public Table table() {
        Table table = Table.of("From scraps", "Scrap", "Size", "Cut from it");
        for (Used u : used) {
            table = table.row(u.scrap().name(), u.scrap().width() + " x " + u.scrap().length(),
                    counted(u.layout().spots().stream().map(s -> s.taken().blank()).toList()));
        }
        return table.row("missing", "", missing.isEmpty() ? "nothing" : counted(missing));
    }

    private static String counted(List<Blank> blanks) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        blanks.forEach(b -> counts.merge(b.name() + " (" + b.across() + " x " + b.along() + ")", 1, Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((what, n) -> words.add(n + " of " + what));
        return String.join(", ", words);
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.of(table()));
        parts.add(Exhibit.words(Cutting.CAUTION));
        for (Used u : used) {
            parts.add(Exhibit.of(LayoutPicture.of(u.layout(), Colour.hex("#cfdcd6"), Length::toString), u.scrap().name()));
        }
        return new Exhibit.Several(parts);
    }
}
