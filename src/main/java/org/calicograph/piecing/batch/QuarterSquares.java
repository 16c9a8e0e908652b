package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.measure.Length;

/**
 * A square of four quarter-square triangles, an hourglass: two of one cloth face each other, and the other two are alike or not.
 *
 * @param three true if those that face each other across are of two more cloths, as in an Ohio star
 */
public record QuarterSquares(Length side, boolean three) implements BatchUnit.Square {

    public QuarterSquares {
        BatchUnit.require("a quarter-square unit", side);
    }

    /** Of a finished side. */
    public static QuarterSquares of(Length side) {
        return new QuarterSquares(side, false);
    }

    /** The same with the other two triangles of two cloths. */
    public QuarterSquares ofThree() {
        return new QuarterSquares(side, true);
    }

    @Override
    public String name() {
        return three ? "quarter-square unit of three cloths" : "quarter-square unit";
    }

    @Override
    public List<String> cloths() {
        return three ? List.of("facing", "second", "third") : List.of("one", "other");
    }

    @Override
    public List<Batch> ways(CuttingRules rules) {
        Sizes sizes = new Sizes(rules);
        Dimension quartered = sizes.quartered(side);
        int yield = three ? 4 : 2;
        String halves = three ? "Make half-square units of the facing cloth, two with the second cloth and two with the third: lay two squares right sides together, draw a line from corner to corner, "
                : "Make two half-square units from a pair of squares: draw a line from corner to corner, ";
        String steps = halves + "sew a seam allowance to either side of it, and cut along it. Lay " + (three ? "one of each" : "the two") + " right sides together, seams nested"
                + (three ? " and the facing cloth on another" : " and cloths opposite") + ", and do the same across the seam.";
        String print = "A print that runs one way does not stay upright.";
        String name = three ? "four at a time" : "two at a time";
        return List.of(
                new Batch("singly", cuts(quartered, "cut twice corner to corner", 4), yield, Optional.empty(), "Sew triangles in pairs along a short side, and the pairs to each other.",
                        "Triangles can be picked by their print.", false),
                new Batch(name, cuts(quartered, "", 1), yield, Optional.empty(), steps, print, false),
                new Batch(name + ", trimmed", cuts(sizes.quarteredLarge(side), "", 1), yield, Optional.of(sizes.cut(side, side)),
                        "The same from larger squares. Press, and trim with the middle of the unit at half its size both ways.", print, false));
    }

    private List<Batch.Cut> cuts(Dimension side, String then, int parts) {
        Batch.Cut one = new Batch.Cut(0, three ? 2 : 1, List.of(side), then, parts);
        Batch.Cut other = new Batch.Cut(1, 1, List.of(side), then, parts);
        return three ? List.of(one, other, new Batch.Cut(2, 1, List.of(side), then, parts)) : List.of(one, other);
    }
}
