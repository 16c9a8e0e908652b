package org.calicograph.fitting;

import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;

/**
 * How large a quilt has to be to cover a bed.
 *
 * <p>It hangs down by the drop on both sides and at the foot; the tuck is what goes under and over the
 * pillows at the head. Quilting and washing take up a share of the top, so the top is made larger than the
 * finished cover.
 *
 * @param drop   the fall below the mattress's upper edge, on both sides and at the foot
 * @param tuck   the extra length at the head, for pillows; may be none
 * @param takeUp the share that quilting and the first wash take up, from 0 to below 0.2; 0.03 is usual
 *               (common practice)
 */
public record BedCover(Mattress mattress, Length drop, Length tuck, double takeUp) implements Drawable {

    /** The usual take-up, 3 % (common practice). */
    public static final double USUAL_TAKE_UP = 0.03;

    public BedCover {
        if (drop.compareTo(Length.ZERO) < 0 || tuck.compareTo(Length.ZERO) < 0) {
            throw new IllegalArgumentException("a bed cover can't have a drop of " + drop + " and a tuck of " + tuck + "; use 0 or more");
        }
        if (!(takeUp >= 0 && takeUp < 0.2)) {
            throw new IllegalArgumentException("a take-up of " + takeUp + " is not usual; use a share from 0 to 0.2, such as 0.03");
        }
    }

    /** A cover without drop or tuck, with the usual take-up. */
    public static BedCover over(Mattress mattress) {
        return new BedCover(mattress, Length.ZERO, Length.ZERO, USUAL_TAKE_UP);
    }

    /** A comforter, 12 in down at both sides and the foot and none for the pillows: what most tables print (published quilt sizes). */
    public static BedCover comforter(Mattress mattress) {
        return over(mattress).drop(Length.inches(12));
    }

    /** A bedspread to the floor and over the pillows: 21 in down, 15 in at the head (common practice, from memory; beds differ, so measure yours). */
    public static BedCover bedspread(Mattress mattress) {
        return over(mattress).drop(Length.inches(21)).tuck(Length.inches(15));
    }

    /** The same cover with another fall at both sides and the foot. */
    public BedCover drop(Length fall) {
        return new BedCover(mattress, fall, tuck, takeUp);
    }

    /** The same cover with another length for the pillows. */
    public BedCover tuck(Length over) {
        return new BedCover(mattress, drop, over, takeUp);
    }

    /** The same cover with another share taken up by quilting and washing, 0.03 for 3 %. */
    public BedCover takeUp(double share) {
        return new BedCover(mattress, drop, tuck, share);
    }

    /** The width on the bed, once quilted. */
    public Length width() {
        return mattress.width().plus(drop.times(2));
    }

    /** The length on the bed, once quilted. */
    public Length length() {
        return mattress.length().plus(drop).plus(tuck);
    }

    /** The width of the top before quilting. */
    public Length topWidth() {
        return width().times(1 / (1 - takeUp));
    }

    /** The length of the top before quilting. */
    public Length topLength() {
        return length().times(1 / (1 - takeUp));
    }

    /** True if the quilt, once taken up, reaches the drop on both sides and the foot, and the tuck. */
    public boolean isCoveredBy(Quilt quilt) {
        return quilt.width().compareTo(topWidth()) >= 0 && quilt.height().compareTo(topLength()) >= 0;
    }

    /** One sentence: whether the quilt covers the bed, and by how much. */
    public String verdict(Quilt quilt) {
        Length across = quilt.width().times(1 - takeUp);
        Length down = quilt.height().times(1 - takeUp);
        Length sideDrop = across.minus(mattress.width()).half();
        Length footDrop = down.minus(mattress.length()).minus(tuck);
        String size = "'" + quilt.title() + "' of " + quilt.width().onRuler() + " x " + quilt.height().onRuler() + " comes to "
                + near(across) + " x " + near(down) + " once quilted: ";
        if (isCoveredBy(quilt)) {
            return size + "it covers the " + mattress.name() + " bed with a drop of " + near(sideDrop) + " on the sides and "
                    + near(footDrop) + " at the foot.";
        }
        return size + "it misses the " + mattress.name() + " bed's drop of " + drop + "; make the top at least "
                + topWidth().roundedUpTo(Length.inches(1, 8)) + " x " + topLength().roundedUpTo(Length.inches(1, 8)) + ".";
    }

    private static Length near(Length length) {
        return length.roundedTo(Length.inches(1, 8));
    }

    @Override
    public Exhibit show() {
        Length eighth = Length.inches(1, 8);
        return Exhibit.of(Table.of("Cover for a " + mattress, "", "across", "down")
                .row("mattress", mattress.width(), mattress.length())
                .row("drop", drop.times(2), drop)
                .row("tuck", Length.ZERO, tuck)
                .row("cover, quilted", width(), length())
                .row("take-up " + Math.round(takeUp * 1000) / 10.0 + " %", near(topWidth().minus(width())), near(topLength().minus(length())))
                .row("top, before quilting", topWidth().roundedUpTo(eighth), topLength().roundedUpTo(eighth)));
    }
}
