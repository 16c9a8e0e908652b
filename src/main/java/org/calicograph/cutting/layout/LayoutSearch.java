package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.calicograph.measure.Length;

/**
 * Finds a short layout: rows first, then blank after blank from the offcut that it fits best, in many orders, then a search among slicing
 * trees.
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
    /** With more lots than this each move costs more, and there are the fewer of them. */
    private static final int FEW = 64;

    /** Fewer kinds than this are left to the trees, which find the best of them. */
    private static final int SOME = 12;
    /** Offcuts looked at for each move, where blanks are laid by greed in one order after another. */
    private static final long STEPS = 400;
    private static final long MOST_STEPS = 600_000_000;

    /** Points of curves for each move of a search that is one of two: with them a thorough one keeps to a few seconds. */
    private static final long WORK = 120;

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
        requireFit(width, blanks);
        LengthBound bound = LengthBound.of(width, blanks);
        Panel best = shortest(found(width, blanks, bound.length()));
        return new Layout(width, best.filledTo(width, best.along()), bound);
    }

    static void requireFit(Length width, List<Blank> blanks) {
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
    }

    private List<Panel> found(Length width, List<Blank> blanks, Length goal) {
        List<Panel> found = new ArrayList<>();
        found.add(Shelves.lay(width, blanks, true));
        found.add(Shelves.lay(width, blanks, false));
        if (blanks.size() <= Nooks.MOST && shortest(found).along().compareTo(goal) > 0) {
            found.add(Nooks.lay(width, blanks, true));
            found.add(Nooks.lay(width, blanks, false));
        }
        if (moves > 0 && shortest(found).along().compareTo(goal) > 0) {
            List<Kind> kinds = Kind.of(blanks);
            // Where few are alike, lots of a kind stand in the way of putting each where it fits: half the work is for single ones.
            boolean unlike = kinds.size() < blanks.size() && 2 * kinds.size() > blanks.size() && blanks.size() <= MOST;
            long work = unlike ? moves * WORK : Long.MAX_VALUE;
            if (SlicingTree.lots(kinds) <= MOST) {
                found.addAll(searched(width, kinds, work, goal));
            }
            if (unlike && shortest(found).along().compareTo(goal) > 0) {
                found.addAll(searched(width, Kind.singles(blanks), work, goal));
            }
            // Last, since of equally short layouts the first is taken, and those of lots are cut in fewer steps.
            boolean many = SlicingTree.lots(kinds) > MOST || 3 * kinds.size() > blanks.size() && kinds.size() > SOME;
            if (many && blanks.size() <= Offcuts.MOST && shortest(found).along().compareTo(goal) > 0) {
                found.add(Offcuts.lay(width, blanks, Math.min(MOST_STEPS, moves * STEPS), 1, goal));
            }
        }
        return found;
    }

    private List<Panel> searched(Length width, List<Kind> kinds, long work, Length goal) {
        long affordable = moves * FEW / Math.max(FEW, SlicingTree.lots(kinds));
        return IntStream.range(0, starts).parallel()
                .mapToObj(i -> new SlicingTree(width, kinds, 104_729L * (i + 1)).anneal(affordable, work, goal))
                .flatMap(java.util.Optional::stream).toList();
    }

    private static Panel shortest(List<Panel> panels) {
        return panels.stream().min(Comparator.comparing(Panel::along)).orElseThrow();
    }
}
