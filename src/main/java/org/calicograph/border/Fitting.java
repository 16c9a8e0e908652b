package org.calicograph.border;

import java.util.Comparator;
import org.calicograph.covering.DesignException;
import org.calicograph.measure.Length;

/**
 * One way in which a border's units come out whole: all that a pieced border takes from its fit.
 *
 * <p>Fittings are ranked by, in this order: no spacer before one, a spacer of one width all round before
 * two widths, units nearest to the size asked for, the narrower spacers, the fewer units.
 *
 * @param roundAcross the finished width of what it goes round, spacers not included
 * @param roundDown   its finished height
 * @param across      units along the top, corners apart, and as many along the bottom
 * @param down        units along each of the other sides
 * @param corners     what stands in the corners
 * @param mirrored    true if the second half of every side is the mirror image of the first
 * @param unit        the finished length of a unit along the side
 * @param asked       the length that was asked for
 * @param spacerSides the finished width of the spacer border on the left and right; none where 0
 * @param spacerEnds  the same for the top and bottom
 */
public record Fitting(Length roundAcross, Length roundDown, int across, int down, Corners corners, boolean mirrored, Length unit, Length asked,
                      Length spacerSides, Length spacerEnds) {

    /** What stands in the corners of a pieced border. */
    public enum Corners {
        /** Something else: a plain square, a block of its own, a mitre. */
        APART,
        /** One more unit in each corner, turned or plain. */
        UNIT
    }

    /** The order in which fittings are listed. */
    public static final Comparator<Fitting> BEST_FIRST = Comparator
            .comparing((Fitting f) -> f.spacerSides.isZero() && f.spacerEnds.isZero() ? 0 : f.spacerSides.equals(f.spacerEnds) ? 1 : 2)
            .thenComparing(f -> f.unit.minus(f.asked).abs())
            .thenComparing(f -> f.spacerSides.plus(f.spacerEnds))
            .thenComparing(Fitting::total)
            .thenComparing(Fitting::corners)
            .thenComparing(Fitting::across);

    /** @throws DesignException if the units don't come to the sides with the spacers, or can't be mirrored at the middle */
    public Fitting {
        if (across < 1 || down < 1 || !unit.isPositive() || spacerSides.units() < 0 || spacerEnds.units() < 0) {
            throw new DesignException("a border of " + across + " and " + down + " units of " + unit
                    + " can't be sewn; use at least 1 unit on each side, a length above 0 and spacers of 0 or more");
        }
        requireSum(across, unit, roundAcross, spacerSides);
        requireSum(down, unit, roundDown, spacerEnds);
        if (mirrored && (across % 2 != 0 || down % 2 != 0)) {
            throw new DesignException(across + " units across and " + down + " down can't be mirrored at the middle; use even numbers");
        }
    }

    private static void requireSum(int count, Length unit, Length side, Length spacer) {
        Length whole = side.plus(spacer.times(2));
        if (unit.times((long) count).minus(whole).abs().units() > (spacer.isZero() ? 0 : 1)) {
            throw new DesignException(count + " units of " + unit + " make " + unit.times((long) count) + ", not " + whole
                    + "; use units of " + whole.dividedBy(count));
        }
    }

    /** All the units, those in the corners included. */
    public int total() {
        return 2 * (across + down) + (corners == Corners.UNIT ? 4 : 0);
    }

    /** True if a plain border inside makes up the difference. */
    public boolean hasSpacer() {
        return !spacerSides.isZero() || !spacerEnds.isZero();
    }

    @Override
    public String toString() {
        String sides = across == down ? across + " on each side" : across + " across and " + down + " down";
        String spacer = !hasSpacer() ? "" : spacerSides.equals(spacerEnds) ? ", inside them a spacer of " + spacerSides + " finished"
                : ", inside them spacers of " + spacerSides + " on the sides and " + spacerEnds + " at the ends, finished";
        return total() + " units of " + unit + ": " + sides + (corners == Corners.UNIT ? " and one in each corner" : ", the corners apart")
                + (mirrored ? ", mirrored at the middle" : "") + spacer;
    }
}
