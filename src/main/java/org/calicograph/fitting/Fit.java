package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.calicograph.border.Fitting;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;

/**
 * The question how many equal units go round a rectangle.
 *
 * @param across    the finished width of what the border goes round
 * @param down      its finished height
 * @param unit      the finished length of one unit along a side, as wished
 * @param shortest  the shortest unit allowed
 * @param longest   the longest unit allowed
 * @param step      units are whole multiples of this away from the wished one; 1/8 in where nothing else is asked
 * @param fewest    the least number of units in all
 * @param most      the greatest number of units in all
 * @param spacers   the widths allowed for a spacer border
 * @param corners   what may stand in the corners
 * @param symmetric true if every side must have an even number of units, to be mirrored at its middle
 */
public record Fit(Length across, Length down, Length unit, Length shortest, Length longest, Length step, int fewest, int most,
                  Spacers spacers, Set<Fitting.Corners> corners, boolean symmetric) implements Drawable {

    /**
     * The widths allowed for a spacer border, besides none.
     *
     * @param equal true if it has the same width all round
     */
    public record Spacers(Length narrowest, Length widest, boolean equal) {
        static final Spacers NONE = new Spacers(Length.ZERO, Length.ZERO, true);

        boolean allow(Length width) {
            return width.isZero() || width.compareTo(narrowest) >= 0 && width.compareTo(widest) <= 0 && width.isPositive();
        }
    }

    public Fit {
        require(across, "the width to go round");
        require(down, "the height to go round");
        require(unit, "the unit");
        require(shortest, "the shortest unit");
        require(step, "the step of the unit");
        if (fewest < 1 || most < fewest) {
            throw new DesignException("a border of " + fewest + " to " + most + " units can't be fitted; ask for 1 or more, the fewest first");
        }
        corners = Set.copyOf(corners);
    }

    private static void require(Length length, String what) {
        if (!length.isPositive()) {
            throw new DesignException(what + " of a fit is " + length + "; use a length above 0");
        }
    }

    /** Begins with what the border goes round. */
    public static Fit around(Length across, Length down) {
        Length inch = Length.inches(1);
        return new Fit(across, down, inch, inch, inch, Length.inches(1, 8), 1, Integer.MAX_VALUE, Spacers.NONE,
                EnumSet.allOf(Fitting.Corners.class), false);
    }

    /** Begins with the work that the border goes round. */
    public static Fit around(Patchwork inside) {
        return around(inside.width(), inside.height());
    }

    /** Units of just this finished length. */
    public Fit units(Length length) {
        return new Fit(across, down, length, length, length, step, fewest, most, spacers, corners, symmetric);
    }

    /** Units as long as this block is wide. */
    public Fit units(Patchwork block) {
        return units(block.width());
    }

    /** Units that may be shorter or longer, in whole steps from the wished length. */
    public Fit between(Length least, Length greatest) {
        return new Fit(across, down, unit, least, greatest, step, fewest, most, spacers, corners, symmetric);
    }

    /** The steps in which a unit's length may change: the ruler's fraction. */
    public Fit steps(Length fraction) {
        return new Fit(across, down, unit, shortest, longest, fraction, fewest, most, spacers, corners, symmetric);
    }

    /** Just so many units in all. */
    public Fit count(int units) {
        return counts(units, units);
    }

    /** From so many to so many units in all. */
    public Fit counts(int least, int greatest) {
        return new Fit(across, down, unit, shortest, longest, step, least, greatest, spacers, corners, symmetric);
    }

    /** A spacer border may go inside, of one width all round. */
    public Fit equalSpacers(Length narrowest, Length widest) {
        return with(new Spacers(narrowest, widest, true));
    }

    /** Spacer borders may go inside, of one width on the sides and another at the ends. */
    public Fit spacers(Length narrowest, Length widest) {
        return with(new Spacers(narrowest, widest, false));
    }

    private Fit with(Spacers allowed) {
        return new Fit(across, down, unit, shortest, longest, step, fewest, most, allowed, corners, symmetric);
    }

    /** Only corners of this kind. */
    public Fit corners(Fitting.Corners only) {
        return new Fit(across, down, unit, shortest, longest, step, fewest, most, spacers, Set.of(only), symmetric);
    }

    /** Every side to be mirrored at its middle, so that it needs an even number of units. */
    public Fit mirroredAtMiddle() {
        return new Fit(across, down, unit, shortest, longest, step, fewest, most, spacers, corners, true);
    }

    /** Every fitting there is, the best first. */
    public List<Fitting> solutions() {
        return FitSearch.all(this);
    }

    /**
     * The best fitting; where there is none as asked, the nearest that can: what {@code fitted} takes.
     *
     * @throws DesignException with the reason, if nothing near can be fitted either
     */
    public Fitting nearest() {
        List<Fitting> all = solutions();
        if (all.isEmpty()) {
            all = others();
        }
        if (all.isEmpty()) {
            throw new DesignException(why());
        }
        return all.get(0);
    }

    /** The nearest fittings that change something that was asked: the count, the unit or a spacer. */
    public List<Fitting> others() {
        return FitSearch.near(this);
    }

    /** One sentence: that it fits, or why it can't. */
    public String why() {
        List<Fitting> all = solutions();
        return FitReason.of(this, all, all.isEmpty() ? others() : List.of());
    }

    @Override
    public Exhibit show() {
        List<Fitting> all = solutions();
        List<Fitting> others = all.isEmpty() ? others() : List.of();
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(FitReason.of(this, all, others)));
        List<Fitting> listed = all.isEmpty() ? others : all;
        if (!listed.isEmpty()) {
            String title = all.isEmpty() ? "The nearest that can" : listed.size() > 12 ? "The best 12 of " + listed.size() : "All that can";
            Table table = Table.of(title, "units", "across", "down", "corners", "unit", "spacer sides", "spacer ends");
            for (Fitting f : listed.subList(0, Math.min(12, listed.size()))) {
                table = table.row(f.total(), f.across(), f.down(), f.corners() == Fitting.Corners.UNIT ? "a unit in each" : "apart",
                        f.unit(), f.spacerSides(), f.spacerEnds());
            }
            parts.add(Exhibit.of(table));
        }
        return new Exhibit.Several(parts);
    }
}
