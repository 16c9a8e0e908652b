package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * One way of making a unit: what is cut, and what is done with it.
 *
 * @param name   of the way
 * @param cuts   what is cut for one batch
 * @param yield  how many units a batch gives
 * @param trimTo what each unit is trimmed to, across and down; empty if it is used as it comes
 * @param steps  what is done, in plain words
 * @param print  what becomes of a print that runs one way
 * @param bias   true if the outer edges of the units are cut on the bias and stretch
 */
public record Batch(String name, List<Cut> cuts, int yield, Optional<Size> trimTo, String steps, String print, boolean bias) {

    /**
     * Rectangles of one size from one cloth.
     *
     * @param cloth which of the unit's cloths, counted from 0
     * @param count for one batch
     * @param sides the side of a square, or width and height
     * @param then  what is done with each before it is sewn; empty if nothing
     * @param parts how many pieces it is then
     */
    public record Cut(int cloth, int count, List<Dimension> sides, String then, int parts) {

        public Cut {
            sides = List.copyOf(sides);
        }

        /** Sewn as it is cut. */
        static Cut whole(int cloth, int count, Dimension... sides) {
            return new Cut(cloth, count, List.of(sides), "", 1);
        }

        /** Squares cut into two triangles each. */
        static Cut halved(int cloth, int count, Dimension side) {
            return new Cut(cloth, count, List.of(side), "cut once corner to corner", 2);
        }

        /** Squares cut into four triangles each. */
        static Cut quartered(int cloth, int count, Dimension side) {
            return new Cut(cloth, count, List.of(side), "cut twice corner to corner", 4);
        }

        /** Cloth within one of them. */
        public Area area() {
            return Area.of(sides.get(0).ruler(), sides.get(sides.size() - 1).ruler());
        }
    }

    /** A width and a height, seam allowances on. */
    public record Size(Length width, Length height) { }

    public Batch {
        cuts = List.copyOf(cuts);
    }

    /** How many batches give so many units. */
    public int batches(int units) {
        return (units + yield - 1) / yield;
    }

    /** Units beyond those that are wanted. */
    public int over(int units) {
        return batches(units) * yield - units;
    }

    /** The cloth for so many units, as the rectangles are, without what lies between them. */
    public Area cloth(int units) {
        return cuts.stream().map(c -> c.area().times(c.count())).reduce(Area.ZERO, Area::plus).times(batches(units));
    }

    /** The same in words, to the nearest square inch or square centimetre. */
    String area(int units, CuttingRules rules) {
        return rules.isMetric() ? Math.round(cloth(units).inSquareMetres() * 10_000) + " sq cm" : Math.round(cloth(units).squareInches()) + " sq in";
    }

    /** Words as they begin a sentence. */
    static String begun(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** How many pieces are laid under the needle for so many units. */
    public int pieces(int units) {
        return batches(units) * cuts.stream().mapToInt(c -> c.count() * c.parts()).sum();
    }

    /** What is cut for so many units, in words, with the names of the cloths. */
    String words(int units, List<String> cloths, CuttingRules rules) {
        return String.join("; ", cuts.stream().map(c -> {
            int n = batches(units) * c.count();
            String sides = String.join(" x ", c.sides().stream().map(d -> rules.text(d.ruler())).toList());
            String what = c.sides().size() == 1 ? n == 1 ? " square of " : " squares of " : n == 1 ? " rectangle of " : " rectangles of ";
            return cloths.get(c.cloth()) + ": " + n + what + sides + (c.then().isEmpty() ? "" : ", " + c.then());
        }).toList());
    }
}
