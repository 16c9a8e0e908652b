package org.calicograph.fitting;

import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;

/**
 * What to cut for the four strips of a plain border, before the cloth is joined to length.
 *
 * @param across  the finished width of what the border goes round
 * @param down    its finished height
 * @param width   the finished width of the border
 * @param seam    the seam allowance
 * @param mitred  true if the strips meet on a seam at 45 degrees; otherwise the sides go on first and the ends over them
 * @param extra   added to a mitred strip's outer length, its seams included; sources give from 1/2 to 6 in
 */
public record BorderStrips(Length across, Length down, Length width, Length seam, boolean mitred, Length extra) implements Drawable {

    public BorderStrips {
        if (!across.isPositive() || !down.isPositive() || !width.isPositive() || seam.units() < 0 || extra.units() < 0) {
            throw new DesignException("strips " + width + " wide round " + across + " x " + down + " with seams of " + seam + " and " + extra
                    + " extra can't be cut; use sizes above 0, and 0 or more for the others");
        }
    }

    /** Butted strips with 1/4 in seams. */
    public static BorderStrips butted(Length across, Length down, Length width) {
        return new BorderStrips(across, down, width, Length.inches(1, 4), false, Length.ZERO);
    }

    /** Mitred strips with 4 in extra (common practice, from memory). */
    public static BorderStrips mitred(Length across, Length down, Length width) {
        return new BorderStrips(across, down, width, Length.inches(1, 4), true, Length.inches(4));
    }

    /** The same strips with so much extra on each; what is over is trimmed. */
    public BorderStrips extra(Length length) {
        return new BorderStrips(across, down, width, seam, mitred, length);
    }

    /**
     * The length to cut for, of a top measured in several places so that the border draws it true: the mean,
     * to the nearest 1/8 in (common practice: both edges and the middle).
     */
    public static Length measured(Length... places) {
        if (places.length == 0) {
            throw new DesignException("a top measured in no place has no length; measure both edges and the middle");
        }
        Length sum = List.of(places).stream().reduce(Length.ZERO, Length::plus);
        return sum.dividedBy(places.length).roundedTo(Length.inches(1, 8));
    }

    /** How wide every strip is cut. */
    public Length cutWidth() {
        return width.plus(seam.times(2));
    }

    /** How long each of the left and right strips is cut. */
    public Length sides() {
        return mitred ? down.plus(width.times(2)).plus(extra) : down.plus(seam.times(2));
    }

    /** How long each of the top and bottom strips is cut. */
    public Length ends() {
        return across.plus(width.times(2)).plus(mitred ? extra : seam.times(2));
    }

    /** All four, end to end. */
    public Length total() {
        return sides().plus(ends()).times(2);
    }

    /** The finished width of the top with the border on. */
    public Length fullAcross() {
        return across.plus(width.times(2));
    }

    /** The finished height of the top with the border on. */
    public Length fullDown() {
        return down.plus(width.times(2));
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(Table.of((mitred ? "Mitred" : "Butted") + " border, " + width + " finished, to " + fullAcross() + " x " + fullDown(),
                "strip", "count", "cut wide", "cut long")
                .row(mitred ? "left and right" : "left and right, sewn first", 2, cutWidth(), sides())
                .row("top and bottom", 2, cutWidth(), ends()).row("in all", 4, cutWidth(), total()));
    }
}
