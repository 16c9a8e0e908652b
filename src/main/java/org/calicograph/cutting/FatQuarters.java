package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutPicture;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.layout.LengthBound;
import org.calicograph.cutting.layout.Panel;

/**
 * Blanks cut from given pieces of one size, such as fat quarters.
 *
 * @param width  usable width of each piece
 * @param length usable length of each piece
 * @param sheets what is cut from each
 */
public record FatQuarters(Length width, Length length, List<Layout> sheets) implements Drawable {

    /** An 18 x 22 in fat quarter with half an inch straightened off either way. */
    public static FatQuarters of(List<Blank> blanks) {
        return of(Length.inches("21 1/2"), Length.inches("17 1/2"), blanks);
    }

    /**
     * Strips across the pieces, the widest first, each on the first piece with room for it.
     *
     * @throws IllegalArgumentException if a blank is larger than a piece, naming it
     */
    public static FatQuarters of(Length width, Length length, List<Blank> blanks) {
        List<Blank> lying = new ArrayList<>();
        for (Blank b : blanks) {
            boolean fits = b.across().compareTo(width) <= 0 && b.along().compareTo(length) <= 0;
            boolean turned = b.turnable() && b.along().compareTo(width) <= 0 && b.across().compareTo(length) <= 0;
            if (!fits && !turned) {
                throw new IllegalArgumentException("'" + b.name() + "' is " + b.across() + " x " + b.along() + " but the pieces of cloth are "
                        + width + " x " + length + "; cut it from yardage");
            }
            // Held as they lie, so that no strip becomes longer than a piece of cloth.
            boolean flat = b.across().compareTo(b.along()) >= 0;
            lying.add((fits && (flat || !turned) ? b : b.turned()).directed());
        }
        Layout all = LayoutSearch.QUICK.lay(width, lying);
        List<Panel> strips = new ArrayList<>(all.panel() instanceof Panel.Rows rows ? rows.parts() : List.of(all.panel()));
        strips.sort(Comparator.comparing(Panel::along).reversed());
        List<List<Panel>> cloths = new ArrayList<>();
        for (Panel strip : strips) {
            List<Panel> on = cloths.stream().filter(c -> used(c).plus(strip.along()).compareTo(length) <= 0).findFirst().orElseGet(() -> {
                cloths.add(new ArrayList<>());
                return cloths.get(cloths.size() - 1);
            });
            on.add(strip);
        }
        List<Layout> sheets = new ArrayList<>();
        for (List<Panel> cloth : cloths) {
            sheets.add(new Layout(width, Panel.stacked(cloth), new LengthBound(used(cloth), "as cut")));
        }
        return new FatQuarters(width, length, List.copyOf(sheets));
    }

    private static Length used(List<Panel> strips) {
        return strips.stream().map(Panel::along).reduce(Length.ZERO, Length::plus);
    }

    /** How many pieces of cloth it takes. */
    public int count() {
        return sheets.size();
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(count() + (count() == 1 ? " piece" : " pieces") + " of cloth. " + Cutting.CAUTION));
        for (Layout sheet : sheets) {
            parts.add(Exhibit.of(LayoutPicture.of(sheet, org.calicograph.colour.Colour.hex("#cfdcd6"), Length::toString)));
        }
        return new Exhibit.Several(parts);
    }
}
