package org.calicograph.workshop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.calicograph.measure.Length;

/**
 * Finds a short layout: rows first, then a search among slicing trees.
 *
 * @param moves  moves of one search; 0 takes the rows as they are
 * @param starts searches begun, run side by side
 */
public record LayoutSearch(long moves, int starts) {

    /** Rows only; n log n beyond a few thousand blanks. */
    public static final LayoutSearch QUICK = new LayoutSearch(0, 0);
    /** A fraction of a second for a fabric of a quilt. */
    public static final LayoutSearch USUAL = new LayoutSearch(15_000, 2);
    /** Several seconds. */
    public static final LayoutSearch THOROUGH = new LayoutSearch(1_500_000, 2);

    /** More lots than this are left to the rows. */
    private static final int MOST = 160;
    /** More blanks than this are only searched in lots. */
    private static final int FEW = 80;
    /** With more kinds of blank than this, layouts with one blank more are not tried. */
    private static final int MOST_KINDS = 8;

    public LayoutSearch {
        if (moves < 0 || starts < 0) {
            throw new IllegalArgumentException("a search of " + moves + " moves from " + starts + " starts is none; use 0 or more");
        }
    }

    /**
     * Lays the blanks on cloth of the given usable width.
     *
     * @throws IllegalArgumentException if there is no blank, or one is wider than the cloth, naming both
     */
    public Layout lay(Length width, List<Blank> blanks) {
        if (blanks.isEmpty()) {
            throw new IllegalArgumentException("there is nothing to lay on the cloth; give at least one blank");
        }
        for (Blank b : blanks) {
            Length narrow = b.turnable() ? Length.min(b.across(), b.along()) : b.across();
            if (narrow.compareTo(width) > 0) {
                throw new IllegalArgumentException("'" + b.name() + "' is " + narrow + " wide but the cloth only " + width
                        + "; cut it lengthwise, join it from two, or take wider cloth");
            }
        }
        LengthBound bound = LengthBound.of(width, blanks);
        Panel best = shortest(found(width, blanks, bound.length()));
        if (moves > 0 && best.along().compareTo(bound.length()) > 0) {
            for (Blank kind : kinds(blanks)) {
                // A layout with one blank more is a layout of these too: adding a piece should not save cloth.
                List<Blank> more = new ArrayList<>(blanks);
                more.add(kind);
                Panel larger = shortest(found(width, more, best.along()));
                best = larger.along().compareTo(best.along()) < 0 ? without(kind, larger) : best;
            }
        }
        return new Layout(width, best.filledTo(width, best.along()), bound);
    }

    private static List<Blank> kinds(List<Blank> blanks) {
        java.util.Map<List<Object>, Blank> kinds = new java.util.LinkedHashMap<>();
        blanks.forEach(b -> kinds.putIfAbsent(List.of(b.across(), b.along(), b.turnable()), b));
        return kinds.size() > MOST_KINDS ? List.of() : List.copyOf(kinds.values());
    }

    /** The panel with one of its blanks left as an offcut. */
    private static Panel without(Blank blank, Panel panel) {
        if (panel instanceof Panel.Taken t) {
            return t.blank().equals(blank) ? new Panel.Offcut(t.across(), t.along()) : t;
        }
        if (panel instanceof Panel.Offcut) {
            return panel;
        }
        List<Panel> parts = new ArrayList<>(panel instanceof Panel.Rows r ? r.parts() : ((Panel.Columns) panel).parts());
        for (int i = 0; i < parts.size(); i++) {
            Panel other = without(blank, parts.get(i));
            if (!other.equals(parts.get(i))) {
                parts.set(i, other);
                break;
            }
        }
        return panel instanceof Panel.Rows ? new Panel.Rows(parts) : new Panel.Columns(parts);
    }

    private List<Panel> found(Length width, List<Blank> blanks, Length goal) {
        List<Panel> found = new ArrayList<>();
        found.add(Shelves.lay(width, blanks, true));
        found.add(Shelves.lay(width, blanks, false));
        if (blanks.size() <= Nooks.MOST) {
            found.add(Nooks.lay(width, blanks, true));
            found.add(Nooks.lay(width, blanks, false));
        }
        if (moves > 0 && shortest(found).along().compareTo(goal) > 0) {
            List<Lot> lots = Lot.halved(blanks);
            if (blanks.size() <= FEW) {
                found.addAll(searched(width, Lot.singles(blanks), goal));
            }
            if (lots.size() < blanks.size() && lots.size() <= MOST) {
                found.addAll(searched(width, lots, goal));
            }
        }
        return found;
    }

    private List<Panel> searched(Length width, List<Lot> lots, Length goal) {
        return IntStream.range(0, starts).parallel()
                .mapToObj(i -> new SlicingTree(width, lots, 104_729L * (i + 1)).anneal(moves, goal))
                .flatMap(java.util.Optional::stream).toList();
    }

    private static Panel shortest(List<Panel> panels) {
        return panels.stream().min(Comparator.comparing(Panel::along)).orElseThrow();
    }
}
