package org.calicograph.cutting;

import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.cutting.pieces.CuttingRules;

/**
 * Cloth for a plain border, three ways: cut along the selvedge with no joins, or joined from strips across
 * the width of the fabric, straight or diagonally. A straight join loses two seam allowances; a diagonal
 * one, sewn corner to corner of the square in which two strips cross, loses the strip's cut width.
 *
 * @param width  cut width of the border
 * @param pieces cut lengths of its pieces
 * @param cloth  the usable width of the cloth
 */
public record BorderCloth(Length width, List<Length> pieces, Length cloth, CuttingRules rules) implements Drawable {

    /** How the border's length is got. */
    public enum Way { LENGTHWISE, STRAIGHT_JOINS, DIAGONAL_JOINS }

    /**
     * @param strips cut across the width, or lengths side by side along the selvedge
     * @param joins  seams within the border; not those at its corners
     * @param cloth  length of cloth
     */
    public record Amount(Way way, int strips, int joins, Length cloth) { }

    /** @throws IllegalArgumentException if there is no piece, or the border is too wide for the cloth or its joins */
    public BorderCloth {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty() || !width.isPositive() || width.times(2).compareTo(cloth) > 0) {
            throw new IllegalArgumentException("a border " + width + " wide of " + pieces.size() + " pieces can't be joined from cloth "
                    + cloth + " wide; give one piece or more, at most half as wide as the cloth");
        }
    }

    /** Two sides as long as the quilt, then two as long as it is wide with them; a finished border width and quilt. */
    public static BorderCloth butted(Length across, Length down, Length border, CuttingRules rules) {
        Length seams = rules.seam().times(2);
        Length side = down.plus(seams);
        Length end = across.plus(border.times(2)).plus(seams);
        return new BorderCloth(border.plus(seams), List.of(side, side, end, end), Fabric.USABLE_WIDTH, rules);
    }

    /**
     * Every piece as long as its side and the border twice, with something over to sew the mitre.
     *
     * @param extra from 1 to 6 in, as sources differ; 4 in is common practice (from memory)
     */
    public static BorderCloth mitred(Length across, Length down, Length border, Length extra, CuttingRules rules) {
        Length side = down.plus(border.times(2)).plus(extra);
        Length end = across.plus(border.times(2)).plus(extra);
        return new BorderCloth(border.plus(rules.seam().times(2)), List.of(side, side, end, end), Fabric.USABLE_WIDTH, rules);
    }

    /** The same from a fabric, at its width. */
    public BorderCloth from(Fabric fabric) {
        return new BorderCloth(width, pieces, fabric.usableWidth(), rules);
    }

    /** The length of all pieces. */
    public Length total() {
        return pieces.stream().reduce(Length.ZERO, Length::plus);
    }

    /** One way; what is left of a strip begins the next piece. */
    public Amount amount(Way way) {
        if (way == Way.LENGTHWISE) {
            int abreast = (int) (cloth.units() / width.units());
            List<Length> longest = pieces.stream().sorted(java.util.Comparator.reverseOrder()).toList();
            Length along = Length.ZERO;
            for (int i = 0; i < longest.size(); i += abreast) {
                along = along.plus(longest.get(i));
            }
            return new Amount(way, pieces.size(), 0, along);
        }
        StripJoins joins = joined(way);
        return new Amount(way, joins.strips().size(), joins.joins(), width.times((long) joins.strips().size()));
    }

    /**
     * Which parts each piece is joined from.
     *
     * @throws IllegalArgumentException if the way is along the selvedge, where nothing is joined
     */
    public StripJoins joined(Way way) {
        if (way == Way.LENGTHWISE) {
            throw new IllegalArgumentException("nothing is joined along the selvedge; ask for STRAIGHT_JOINS or DIAGONAL_JOINS");
        }
        return StripJoins.of(this, way);
    }

    /** What two strips lose where they are joined. */
    Length lost(Way way) {
        return way == Way.STRAIGHT_JOINS ? rules.seam().times(2) : width;
    }

    /** A length of strips, of this width, that no joining goes below: each piece with the seams that it can't do without. */
    Length leastJoined(Way way) {
        Length more = cloth.minus(lost(way));
        Length least = Length.ZERO;
        for (Length piece : pieces) {
            long parts = Math.max(1, (long) Math.ceil(piece.minus(lost(way)).ratioTo(more) - 1e-9));
            least = least.plus(piece).plus(lost(way).times(parts - 1));
        }
        return least;
    }

    /** Each way of cutting it, with its strips, joins and cloth. */
    public Table table() {
        Table table = Table.of("Border " + rules.text(width) + " wide, " + rules.text(total()) + " in all", "Way", "Strips", "Joins", "Cloth");
        for (Way way : Way.values()) {
            Amount a = amount(way);
            table = table.row(switch (way) {
                case LENGTHWISE -> "along the selvedge";
                case STRAIGHT_JOINS -> "across, joined straight";
                case DIAGONAL_JOINS -> "across, joined diagonally";
            }, a.strips(), a.joins(), rules.text(rules.taped(a.cloth())));
        }
        return table;
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(table()), Exhibit.words("Along the selvedge cloth stretches least and there is no join; across "
                + "takes less cloth. A diagonal join shows less than a straight one. A cutting plan takes whichever way needs the least cloth, or the one asked for. "
                + Cutting.CAUTION));
    }
}
