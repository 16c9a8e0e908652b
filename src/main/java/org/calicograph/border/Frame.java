package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/** The measures of a border around a rectangle, and the four sides' places. */
record Frame(Patchwork inside, Length width, Length across, Length down) {

    static void requireRectangle(Patchwork inside, int number) {
        if (!inside.isRectangular()) {
            throw new DesignException("border " + number + " can't go around '" + inside.name()
                    + "', which is not a rectangle; set it in a square first");
        }
    }

    /** The side of a square patchwork. */
    static Length requireSquare(Patchwork inside, String round) {
        if (!inside.isRectangular() || inside.width().minus(inside.height()).abs().inInches() > Cover.TOLERANCE / 2) {
            throw new DesignException(round + " can't go around '" + inside.name() + "' of " + inside.width() + " x " + inside.height()
                    + ", which is not a square; set it in a square, or add an uneven border first");
        }
        return inside.width();
    }

    static Frame around(Patchwork inside, Length width, int number) {
        requireRectangle(inside, number);
        if (!width.isPositive()) {
            throw new DesignException("border " + number + " is " + width + " wide; use a width above 0");
        }
        return new Frame(inside, width, inside.width(), inside.height());
    }

    double w() {
        return width.inInches();
    }

    /** Full width and height with the border on, in inches. */
    double fullAcross() {
        return across.inInches() + 2 * w();
    }

    double fullDown() {
        return down.inInches() + 2 * w();
    }

    /**
     * The place of a side drafted for the top with its inner edge downwards and its left end at the
     * inner corner (0) or the outer corner (1): sides 0 top, 1 right, 2 bottom, 3 left.
     */
    Transform side(int side, boolean fromOuterCorner) {
        double start = fromOuterCorner ? 0 : w();
        Transform turn = Transform.turn(Angle.QUARTER.times(side));
        return turn.then(switch (side) {
            case 0 -> Transform.move(start, 0);
            case 1 -> Transform.move(fullAcross(), start);
            case 2 -> Transform.move(fullAcross() - start, fullDown());
            default -> Transform.move(0, fullDown() - start);
        });
    }

    /** The place of a corner block drafted for the top left: corners 0 top left, 1 top right, 2 bottom right, 3 bottom left. */
    Transform corner(int corner) {
        return side(corner, true);
    }

    Length length(int side) {
        return side % 2 == 0 ? across : down;
    }

    Assembly with(String id, List<Placed> border) {
        List<Placed> parts = new ArrayList<>();
        parts.add(new Placed("centre", inside, Transform.move(w(), w())));
        parts.addAll(border);
        return Assembly.of(inside.name() + " with " + id, Region.rectangle(new Box(0, 0, fullAcross(), fullDown())), parts);
    }
}
