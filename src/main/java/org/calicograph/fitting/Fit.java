package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.calicograph.border.Fitting;
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
 * @param unit      the finished length of one unit along a side
 * @param counts    how many units there may be in all
 * @param spacers   the widths allowed for a spacer border
 * @param corners   what may stand in the corners
 * @param symmetric true if every side must have an even number of units, to be mirrored at its middle
 */
public record Fit(Length across, Length down, Leeway unit, Counts counts, Spacers spacers, Set<Fitting.Corners> corners, boolean symmetric)
        implements FitQuestion<Fitting> {

    /**
     * How many units there may be in all.
     *
     * @param fewest 1 or more
     * @param most   no less than the fewest
     */
    public record Counts(int fewest, int most) {
        static final Counts ANY = new Counts(1, Integer.MAX_VALUE);

        /** @throws DesignException if there are fewer than 1, or the most is less than the fewest */
        public Counts {
            if (fewest < 1 || most < fewest) {
                throw new DesignException("a border of " + fewest + " to " + most + " units can't be fitted; ask for 1 or more, the fewest first");
            }
        }

        /** How many units short or over; 0 where the number is allowed. */
        int off(int count) {
            return Math.max(0, Math.max(fewest - count, count - most));
        }
    }

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

    private static final List<String> COLUMNS = List.of("units", "across", "down", "corners", "unit", "spacer sides", "spacer ends");

    public Fit {
        require(across, "the width to go round");
        require(down, "the height to go round");
        corners = Set.copyOf(corners);
    }

    private static void require(Length length, String what) {
        if (!length.isPositive()) {
            throw new DesignException(what + " of a fit is " + length + "; use a length above 0");
        }
    }

    /** Begins with what the border goes round. */
    public static Fit around(Length across, Length down) {
        return new Fit(across, down, Leeway.just(Length.inches(1)), Counts.ANY, Spacers.NONE, EnumSet.allOf(Fitting.Corners.class), false);
    }

    /** Begins with the work that the border goes round. */
    public static Fit around(Patchwork inside) {
        return around(inside.width(), inside.height());
    }

    /** Units of just this finished length. */
    public Fit units(Length length) {
        return with(unit.about(length), counts);
    }

    /** Units as long as this block is wide. */
    public Fit units(Patchwork block) {
        return units(block.width());
    }

    /** Units that may be shorter or longer, in whole steps from the wished length. */
    public Fit between(Length least, Length greatest) {
        return with(unit.between(least, greatest), counts);
    }

    /** The steps in which a unit's length may change: the ruler's fraction. */
    public Fit steps(Length fraction) {
        return with(unit.steps(fraction), counts);
    }

    /** Just so many units in all. */
    public Fit count(int units) {
        return counts(units, units);
    }

    /** From so many to so many units in all. */
    public Fit counts(int least, int greatest) {
        return with(unit, new Counts(least, greatest));
    }

    /** A spacer border may go inside, of one width all round. */
    public Fit equalSpacers(Length narrowest, Length widest) {
        return with(new Spacers(narrowest, widest, true));
    }

    /** Spacer borders may go inside, of one width on the sides and another at the ends. */
    public Fit spacers(Length narrowest, Length widest) {
        return with(new Spacers(narrowest, widest, false));
    }

    private Fit with(Leeway length, Counts number) {
        return new Fit(across, down, length, number, spacers, corners, symmetric);
    }

    private Fit with(Spacers allowed) {
        return new Fit(across, down, unit, counts, allowed, corners, symmetric);
    }

    /** Only corners of this kind. */
    public Fit corners(Fitting.Corners only) {
        return new Fit(across, down, unit, counts, spacers, Set.of(only), symmetric);
    }

    /** Every side to be mirrored at its middle, so that it needs an even number of units. */
    public Fit mirroredAtMiddle() {
        return new Fit(across, down, unit, counts, spacers, corners, true);
    }

    @Override
    public List<Fitting> solutions() {
        return FitSearch.all(this);
    }

    /** The nearest fittings, each with what it gives up of what was asked: the count, the unit or having no spacer. */
    @Override
    public List<Change<Fitting>> others() {
        return FitSearch.near(this);
    }

    @Override
    public String why() {
        List<Fitting> all = solutions();
        return FitReason.of(this, all, all.isEmpty() ? others() : List.of());
    }

    @Override
    public Exhibit show() {
        List<Fitting> all = solutions();
        List<Change<Fitting>> others = all.isEmpty() ? others() : List.of();
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(FitReason.of(this, all, others)));
        if (!all.isEmpty()) {
            Table table = Table.of(all.size() > 12 ? "The best 12 of " + all.size() : "All that can", COLUMNS.toArray(String[]::new));
            for (Fitting f : all.subList(0, Math.min(12, all.size()))) {
                table = table.row(cells(f).toArray());
            }
            parts.add(Exhibit.of(table));
        } else if (!others.isEmpty()) {
            Table table = Table.of("The nearest that can", Stream.concat(COLUMNS.stream(), Stream.of("change")).toArray(String[]::new));
            for (Change<Fitting> c : others) {
                table = table.row(Stream.concat(cells(c.solution()).stream(), Stream.of(c.words())).toArray());
            }
            parts.add(Exhibit.of(table));
        }
        return new Exhibit.Several(parts);
    }

    private static List<Object> cells(Fitting f) {
        return List.of(f.total(), f.across(), f.down(), f.corners() == Fitting.Corners.UNIT ? "a unit in each" : "apart", f.unit(), f.spacerSides(),
                f.spacerEnds());
    }
}
