package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.calicograph.measure.Length;

/**
 * Rows like those of {@link Shelves}, where the room beside each first blank is a smaller cloth, filled
 * in the same way. It costs the square of the number of blanks, so it is for a thousand at most.
 */
final class Nooks {

    static final int MOST = 1000;

    private final List<Panel.Taken> left;

    private Nooks(List<Panel.Taken> left) {
        this.left = left;
    }

    static Panel lay(Length width, List<Blank> blanks, boolean upright) {
        Nooks nooks = of(width, blanks, upright);
        List<Panel> rows = new ArrayList<>();
        while (!nooks.left.isEmpty()) {
            Panel.Taken first = nooks.left.remove(0);
            rows.add(nooks.row(first, width));
        }
        return Panel.stacked(rows);
    }

    /** What goes on a piece of cloth of a given size, the longest first; empty if nothing fits. */
    static Optional<Panel> fill(Length across, Length along, List<Blank> blanks, boolean upright) {
        return of(across, blanks, upright).fill(across, along).map(p -> p.filledTo(across, along));
    }

    private static Nooks of(Length width, List<Blank> blanks, boolean upright) {
        List<Panel.Taken> lying = new ArrayList<>();
        for (Blank b : blanks) {
            lying.add(new Panel.Taken(b, Shelves.turns(b, width, upright)));
        }
        lying.sort(Comparator.comparing(Panel.Taken::along).thenComparing(Panel.Taken::across).reversed());
        return new Nooks(lying);
    }

    private Panel row(Panel.Taken first, Length width) {
        List<Panel> parts = new ArrayList<>(List.of(first));
        fill(width.minus(first.across()), first.along()).ifPresent(parts::add);
        return Panel.abreast(parts);
    }

    /** What fills a nook; empty if nothing fits. */
    private Optional<Panel> fill(Length across, Length along) {
        List<Panel> rows = new ArrayList<>();
        Length room = along;
        for (int next = fitting(0, across, room); next >= 0; next = fitting(next, across, room)) {
            Panel.Taken t = left.remove(next);
            if (t.along().compareTo(room) > 0 || t.across().compareTo(across) > 0) {
                t = new Panel.Taken(t.blank(), !t.turned());
            }
            Panel row = row(t, across);
            rows.add(row);
            room = room.minus(row.along());
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(Panel.stacked(rows));
    }

    private int fitting(int from, Length across, Length along) {
        for (int i = Math.min(from, left.size()); i < left.size(); i++) {
            Panel.Taken t = left.get(i);
            boolean asIs = t.across().compareTo(across) <= 0 && t.along().compareTo(along) <= 0;
            if (asIs || t.blank().turnable() && t.along().compareTo(across) <= 0 && t.across().compareTo(along) <= 0) {
                return i;
            }
        }
        return -1;
    }
}
