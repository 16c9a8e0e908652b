package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;

/**
 * The question how motifs or swags are spaced along an appliquéd border.
 *
 * @param across   the line along which they are set, from corner to corner across
 * @param down     the same down
 * @param spacing  from one motif to the next
 * @param unlike   by how much the spacing across and down may differ; none where nothing else is asked
 * @param corners  what may happen at the corners
 * @param reach    how far a motif that turns the corner reaches along each side
 * @param middle   what must lie at the middle of every side
 */
public record MotifFit(Length across, Length down, Leeway spacing, Length unlike, Set<MotifSpacing.Corner> corners, Reach reach, Middle middle)
        implements FitQuestion<MotifSpacing> {

    /**
     * How far a motif that turns the corner may reach along each side.
     *
     * @param least 0 or more
     * @param most  no less than the least
     */
    public record Reach(Length least, Length most) {

        /** @throws DesignException if the least is below 0 or above the most */
        public Reach {
            if (least.compareTo(most) > 0 || least.units() < 0) {
                throw new DesignException("corners that reach from " + least + " to " + most + " can't be drawn; give the lesser first, and 0 or more");
            }
        }
    }

    /** What lies at the middle of a side. */
    public enum Middle {
        ANY,
        /** The middle of a motif: an odd number on each side. */
        MOTIF,
        /** Where two motifs meet: an even number on each side. */
        MEETING;

        boolean allows(long count) {
            return this == ANY || count % 2 == (this == MOTIF ? 1 : 0);
        }
    }

    public MotifFit {
        if (!across.isPositive() || !down.isPositive() || unlike.units() < 0) {
            throw new DesignException("motifs along " + across + " x " + down + ", at most " + unlike
                    + " unlike, can't be spaced; use lengths above 0, and 0 or more for what is unlike");
        }
        corners = Set.copyOf(corners);
    }

    /** Begins with the line along which the motifs are set, from corner to corner. */
    public static MotifFit along(Length across, Length down) {
        return new MotifFit(across, down, Leeway.just(Length.inches(6)), Length.ZERO, EnumSet.of(MotifSpacing.Corner.MEETING),
                new Reach(Length.ZERO, Length.ZERO), Middle.ANY);
    }

    /** Along a line so far outside a patchwork's edge. */
    public static MotifFit around(Patchwork inside, Length outside) {
        return along(inside.width().plus(outside.times(2)), inside.height().plus(outside.times(2)));
    }

    /** Just so far apart. */
    public MotifFit spaced(Length wished) {
        return new MotifFit(across, down, spacing.about(wished), unlike, corners, reach, middle);
    }

    /** Closer or wider apart, in whole steps from the wished spacing. */
    public MotifFit between(Length least, Length greatest) {
        return new MotifFit(across, down, spacing.between(least, greatest), unlike, corners, reach, middle);
    }

    /** The steps in which the spacing may change: the ruler's fraction. */
    public MotifFit steps(Length fraction) {
        return new MotifFit(across, down, spacing.steps(fraction), unlike, corners, reach, middle);
    }

    /** The spacing across and down may differ by so much, where the eye won't see it. */
    public MotifFit unlikeBy(Length most) {
        return new MotifFit(across, down, spacing, most, corners, reach, middle);
    }

    /** A motif of its own may turn the corner and reach so far along each side; motifs may still meet there. */
    public MotifFit turning(Length least, Length most) {
        return new MotifFit(across, down, spacing, unlike, EnumSet.allOf(MotifSpacing.Corner.class), new Reach(least, most), middle);
    }

    /** Only this may happen at the corners. */
    public MotifFit corners(MotifSpacing.Corner only) {
        return new MotifFit(across, down, spacing, unlike, Set.of(only), reach, middle);
    }

    /** What must lie at the middle of every side. */
    public MotifFit middle(Middle there) {
        return new MotifFit(across, down, spacing, unlike, corners, reach, there);
    }

    MotifFit moved(Length outwards) {
        return new MotifFit(across.plus(outwards.times(2)), down.plus(outwards.times(2)), spacing, unlike, corners, reach, middle);
    }

    @Override
    public List<MotifSpacing> solutions() {
        return MotifSearch.all(this);
    }

    @Override
    public List<Change<MotifSpacing>> others() {
        return MotifSearch.near(this);
    }

    @Override
    public String why() {
        return why(solutions());
    }

    private String why(List<MotifSpacing> all) {
        if (!all.isEmpty()) {
            return all.get(0) + (all.size() == 1 ? "; it is the only way." : "; there are " + all.size() + " ways in all.");
        }
        boolean meeting = corners.equals(Set.of(MotifSpacing.Corner.MEETING));
        if (spacing.isFixed() && meeting) {
            for (Length side : List.of(across, down)) {
                if (!side.isMultipleOf(spacing.wished())) {
                    return "motifs " + spacing.wished() + " apart don't come out whole along " + side + ": it holds "
                            + String.format(Locale.ROOT, "%.4g", side.ratioTo(spacing.wished())) + " of them.";
                }
            }
        }
        String number = switch (middle) {
            case ANY -> "a whole number";
            case MOTIF -> "an odd number";
            case MEETING -> "an even number";
        };
        return "no spacing from " + spacing.least() + " to " + spacing.greatest() + " in steps of " + spacing.step() + " goes " + number + " of times along both " + across + " and " + down
                + (meeting ? "" : " and leaves the same reach from " + reach.least() + " to " + reach.most() + " at every corner")
                + (unlike.isZero() ? "" : ", the two sides at most " + unlike + " unlike") + "; all were tried.";
    }

    @Override
    public Exhibit show() {
        List<MotifSpacing> all = solutions();
        List<Change<MotifSpacing>> others = all.isEmpty() ? others() : List.of();
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(why(all)));
        String title = all.isEmpty() ? "The nearest that can" : all.size() > 12 ? "The best 12 of " + all.size() : "All that can";
        Table table = Table.of(title, "motifs", "across", "down", "apart across", "apart down", "corner", "reach", "change");
        for (MotifSpacing m : all.stream().limit(12).toList()) {
            table = row(table, m, "");
        }
        for (Change<MotifSpacing> c : others) {
            table = row(table, c.solution(), c.words());
        }
        if (!table.rows().isEmpty()) {
            parts.add(Exhibit.of(table));
            MotifSpacing shown = all.isEmpty() ? others.get(0).solution() : all.get(0);
            parts.add(Exhibit.of(FitPictures.motifs(shown), shown.toString()));
        }
        return new Exhibit.Several(parts);
    }

    private static Table row(Table table, MotifSpacing m, String change) {
        return table.row(m.total(), m.across(), m.down(), m.alongEnds(), m.alongSides(),
                m.corner() == MotifSpacing.Corner.MEETING ? "meeting" : "one turns it", m.reach(), change);
    }

    @Override
    public String toString() {
        return "motifs along " + across + " x " + down + ", " + spacing.wished() + " apart"
                + corners.stream().map(c -> c.name().toLowerCase(Locale.ROOT)).sorted().collect(Collectors.joining(" or ", ", ", " at the corners"));
    }
}
