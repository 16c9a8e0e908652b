package org.calicograph.fitting;

import java.util.Comparator;
import org.calicograph.measure.Length;
import org.calicograph.border.UnitCount;

/**
 * One way in which a border's units come out whole.
 *
 * <p>Fittings are ranked by, in this order: no spacer before one, a spacer of one width all round before
 * two widths, units nearest to the size asked for, the narrower spacers, the fewer units.
 *
 * @param across      units along the top, corners apart, and as many along the bottom
 * @param down        units along each of the other sides
 * @param corners     what stands in the corners
 * @param unit        the finished length of a unit along the side
 * @param asked       the length that was asked for
 * @param spacerSides the finished width of the spacer border on the left and right; none where 0
 * @param spacerEnds  the same for the top and bottom
 */
public record Fitting(int across, int down, Corners corners, Length unit, Length asked, Length spacerSides, Length spacerEnds) {

    /** What stands in the corners of a pieced border. */
    public enum Corners {
        /** Something else: a plain square, a block of its own, a mitre. */
        APART,
        /** One more unit in each corner, turned or plain. */
        UNIT
    }

    static final Comparator<Fitting> BEST_FIRST = Comparator
            .comparing((Fitting f) -> f.spacerSides.isZero() && f.spacerEnds.isZero() ? 0 : f.spacerSides.equals(f.spacerEnds) ? 1 : 2)
            .thenComparing(f -> f.unit.minus(f.asked).abs())
            .thenComparing(f -> f.spacerSides.plus(f.spacerEnds))
            .thenComparing(Fitting::total)
            .thenComparing(Fitting::corners)
            .thenComparing(Fitting::across);

    /** All the units, those in the corners included. */
    public int total() {
        return 2 * (across + down) + (corners == Corners.UNIT ? 4 : 0);
    }

    /** The counts as a pieced border takes them. */
    public UnitCount counts() {
        return new UnitCount(across, down, unit);
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
        return total() + " units of " + unit + ": " + sides + (corners == Corners.UNIT ? " and one in each corner" : ", the corners apart") + spacer;
    }
}
