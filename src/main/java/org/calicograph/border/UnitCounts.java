package org.calicograph.border;

import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patchwork;

/** How many units of a pieced border go along a side, and what is said where they don't. */
final class UnitCounts {

    private UnitCounts() { }

    /** @throws DesignException if the fit was made for another rectangle, with what fits round this one */
    static void requireRound(Fitting fit, Patchwork inside, int number) {
        if (same(fit.roundAcross(), inside.width()) && same(fit.roundDown(), inside.height())) {
            return;
        }
        throw new DesignException("Border " + number + " was fitted round " + fit.roundAcross() + " x " + fit.roundDown() + " but goes round "
                + inside.width() + " x " + inside.height() + ". " + there(inside.width(), inside.height(), fit)
                + " Fit it anew with Fit.around what is inside.");
    }

    private static boolean same(Length a, Length b) {
        return a.minus(b).abs().inInches() <= Cover.TOLERANCE / 2;
    }

    private static String there(Length across, Length down, Fitting fit) {
        long a = nearest(across, fit, fit.unit());
        long d = nearest(down, fit, fit.unit());
        if (same(fit.unit().times(a), across) && same(fit.unit().times(d), down)) {
            return "There " + a + " units of " + fit.unit() + " go along each of two sides and " + d + " along each of the others.";
        }
        if (same(across.dividedBy(a), down.dividedBy(d))) {
            return "There " + a + " and " + d + " units of " + across.dividedBy(a) + " fit.";
        }
        long wide = (long) Math.ceil(across.ratioTo(fit.unit()) - 1e-9);
        long high = (long) Math.ceil(down.ratioTo(fit.unit()) - 1e-9);
        wide += fit.mirrored() ? wide % 2 : 0;
        high += fit.mirrored() ? high % 2 : 0;
        return "There " + wide + " and " + high + " units of " + fit.unit() + " fit with spacers of "
                + fit.unit().times(wide).minus(across).half() + " on the sides and " + fit.unit().times(high).minus(down).half() + " at the ends.";
    }

    private static long nearest(Length side, Fitting fit, Length unit) {
        long by = fit.mirrored() ? 2 : 1;
        return Math.max(1, Math.round(side.ratioTo(unit) / by)) * by;
    }

    /** The number along a side: the fit's, or where there is none the whole number that the side holds. */
    static int along(PiecedBorder border, Length side, int number, String name) {
        Length unit = border.unit().width();
        int count = (int) Math.max(1, Math.rint(side.ratioTo(unit)));
        Length over = unit.times((long) count).minus(side);
        if (over.abs().inInches() > Cover.TOLERANCE) {
            throw new DesignException("Border " + number + ": " + count + " units of " + unit + " make " + unit.times((long) count) + " but the " + name
                    + " is " + side + "; make the unit " + side.dividedBy(count)
                    + " wide, or add a plain border inside so that the side comes to a whole number of units.");
        }
        if (border.mirrored() && count % 2 != 0) {
            throw new DesignException("Border " + number + ": " + count + " units along the " + name
                    + " can't be mirrored at the middle; use an even number, or leave out mirroredAtMiddle.");
        }
        return count;
    }
}
