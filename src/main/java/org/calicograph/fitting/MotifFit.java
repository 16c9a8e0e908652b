package org.calicograph.fitting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.calicograph.drawing.Drawable;
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
 * @param spacing  from one motif to the next, as wished
 * @param closest  the least spacing allowed
 * @param widest   the greatest
 * @param step     spacings are whole multiples of this away from the wished one; 1/8 in where nothing else is asked
 * @param unlike   by how much the spacing across and down may differ; none where nothing else is asked
 * @param corners  what may happen at the corners
 * @param reachLeast the shortest reach of a motif that turns the corner, along each side
 * @param reachMost  the longest
 * @param middle   what must lie at the middle of every side
 */
public record MotifFit(Length across, Length down, Length spacing, Length closest, Length widest, Length step, Length unlike,
                       Set<MotifSpacing.Corner> corners, Length reachLeast, Length reachMost, Middle middle) implements Drawable {

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
        for (Length length : List.of(across, down, spacing, closest, step)) {
            if (!length.isPositive()) {
                throw new DesignException("motifs along " + across + " x " + down + ", " + spacing + " apart in steps of " + step
                        + ", can't be spaced; use lengths above 0");
            }
        }
        if (closest.compareTo(widest) > 0 || reachLeast.compareTo(reachMost) > 0 || unlike.units() < 0 || reachLeast.units() < 0) {
            throw new DesignException("motifs from " + closest + " to " + widest + " apart with a reach from " + reachLeast + " to " + reachMost
                    + " can't be spaced; give the lesser first, and 0 or more");
        }
        corners = Set.copyOf(corners);
    }

    /** Begins with the line along which the motifs are set, from corner to corner. */
    public static MotifFit along(Length across, Length down) {
        Length usual = Length.inches(6);
        return new MotifFit(across, down, usual, usual, usual, Length.inches(1, 8), Length.ZERO, EnumSet.of(MotifSpacing.Corner.MEETING),
                Length.ZERO, Length.ZERO, Middle.ANY);
    }

    /** Along a line so far outside a patchwork's edge. */
    public static MotifFit around(Patchwork inside, Length outside) {
        return along(inside.width().plus(outside.times(2)), inside.height().plus(outside.times(2)));
    }

    /** Just so far apart. */
    public MotifFit spaced(Length wished) {
        return new MotifFit(across, down, wished, wished, wished, step, unlike, corners, reachLeast, reachMost, middle);
    }

    /** Closer or wider apart, in whole steps from the wished spacing. */
    public MotifFit between(Length least, Length greatest) {
        return new MotifFit(across, down, spacing, least, greatest, step, unlike, corners, reachLeast, reachMost, middle);
    }

    /** The steps in which the spacing may change: the ruler's fraction. */
    public MotifFit steps(Length fraction) {
        return new MotifFit(across, down, spacing, closest, widest, fraction, unlike, corners, reachLeast, reachMost, middle);
    }

    /** The spacing across and down may differ by so much, where the eye won't see it. */
    public MotifFit unlikeBy(Length most) {
        return new MotifFit(across, down, spacing, closest, widest, step, most, corners, reachLeast, reachMost, middle);
    }

    /** A motif of its own may turn the corner and reach so far along each side; motifs may still meet there. */
    public MotifFit turning(Length least, Length most) {
        return new MotifFit(across, down, spacing, closest, widest, step, unlike, EnumSet.allOf(MotifSpacing.Corner.class), least, most, middle);
    }

    /** Only this may happen at the corners. */
    public MotifFit corners(MotifSpacing.Corner only) {
        return new MotifFit(across, down, spacing, closest, widest, step, unlike, Set.of(only), reachLeast, reachMost, middle);
    }

    /** What must lie at the middle of every side. */
    public MotifFit middle(Middle there) {
        return new MotifFit(across, down, spacing, closest, widest, step, unlike, corners, reachLeast, reachMost, there);
    }

    MotifFit moved(Length outwards) {
        return new MotifFit(across.plus(outwards.times(2)), down.plus(outwards.times(2)), spacing, closest, widest, step, unlike, corners, reachLeast,
                reachMost, middle);
    }

    /** Every spacing there is, the best first. */
    public List<MotifSpacing> solutions() {
        return MotifSearch.all(this);
    }

    /** The nearest that fit where nothing does as asked, each with what it gives up. */
    public List<Change<MotifSpacing>> others() {
        return MotifSearch.near(this);
    }

    /**
     * The best spacing; where there is none as asked, the nearest that can.
     *
     * @throws DesignException with the reason, if nothing near fits either
     */
    public MotifSpacing nearest() {
        List<MotifSpacing> all = solutions();
        if (!all.isEmpty()) {
            return all.get(0);
        }
        return others().stream().findFirst().map(Change::solution).orElseThrow(() -> new DesignException(why()));
    }

    /** One sentence: that it fits, or why it can't. */
    public String why() {
        return why(solutions());
    }

    private String why(List<MotifSpacing> all) {
        if (!all.isEmpty()) {
            return all.get(0) + (all.size() == 1 ? "; it is the only way." : "; there are " + all.size() + " ways in all.");
        }
        boolean meeting = corners.equals(Set.of(MotifSpacing.Corner.MEETING));
        if (closest.equals(widest) && meeting) {
            for (Length side : List.of(across, down)) {
                if (!side.isMultipleOf(spacing)) {
                    return "motifs " + spacing + " apart don't come out whole along " + side + ": it holds "
                            + String.format(Locale.ROOT, "%.4g", side.ratioTo(spacing)) + " of them.";
                }
            }
        }
        String number = switch (middle) {
            case ANY -> "a whole number";
            case MOTIF -> "an odd number";
            case MEETING -> "an even number";
        };
        return "no spacing from " + closest + " to " + widest + " in steps of " + step + " goes " + number + " of times along both " + across + " and " + down
                + (meeting ? "" : " and leaves the same reach from " + reachLeast + " to " + reachMost + " at every corner")
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
        return "motifs along " + across + " x " + down + ", " + spacing + " apart"
                + corners.stream().map(c -> c.name().toLowerCase(Locale.ROOT)).sorted().collect(Collectors.joining(" or ", ", ", " at the corners"));
    }
}
