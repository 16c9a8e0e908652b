package org.calicograph.piecing.batch;

import java.util.Comparator;
import java.util.List;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;

/**
 * A small pieced unit that quilters sew in more ways than one, some of them several at a time. All sizes follow from geometry: a finished triangle is what is left of
 * the cut one when a seam allowance is taken off each of its sides.
 */
public sealed interface BatchUnit extends Drawable permits BatchUnit.Square, Geese {

    /** The name of the unit. */
    String name();

    /** Finished width. */
    Length width();

    /** Finished height. */
    Length height();

    /** What its cloths are called where no others are named, in the order in which a {@link Batch.Cut} counts them. */
    List<String> cloths();

    /** Every way of making it; the first cuts each piece singly, where there is such a way. */
    List<Batch> ways(CuttingRules rules);

    /** The way that takes the least cloth for so many; of equal ones that with the fewest pieces to sew. */
    default Batch leastCloth(int units, CuttingRules rules) {
        return ways(rules).stream().min(Comparator.comparingLong((Batch b) -> Math.round(1e4 * b.cloth(units).squareInches()))
                .thenComparingInt(b -> b.pieces(units))).orElseThrow();
    }

    /** The way with the fewest pieces to sew for so many; of equal ones that with the least cloth. */
    default Batch fewestPieces(int units, CuttingRules rules) {
        return ways(rules).stream().min(Comparator.comparingInt((Batch b) -> b.pieces(units))
                .thenComparingDouble(b -> b.cloth(units).squareInches())).orElseThrow();
    }

    /**
     * Every way beside the others for so many units.
     *
     * @throws IllegalArgumentException if none is wanted
     */
    default Exhibit made(int units) {
        if (units < 1) {
            throw new IllegalArgumentException("'" + name() + "' made " + units + " times is nothing; use 1 or more");
        }
        CuttingRules rules = CuttingRules.usual();
        Batch least = leastCloth(units, rules);
        Batch fewest = fewestPieces(units, rules);
        Table table = Table.of(Batch.begun(name()) + ": " + units + ", " + rules.exact(width()) + " x " + rules.exact(height()) + " finished", "Way", "A batch gives", "Cut", "Exact",
                "Trim to", "Cloth", "Over", "Chosen for");
        for (Batch b : ways(rules)) {
            String chosen = b.equals(least) && b.equals(fewest) ? "least cloth, fewest pieces" : b.equals(least) ? "least cloth" : b.equals(fewest) ? "fewest pieces" : "";
            table = table.row(b.name(), b.yield(), b.words(units, cloths(), rules), exact(b, rules),
                    b.trimTo().map(t -> rules.text(t.width()) + " x " + rules.text(t.height())).orElse(""),
                    b.area(units, rules), b.over(units) == 0 ? "" : b.over(units) + " over", chosen);
        }
        StringBuilder words = new StringBuilder();
        String print = "";
        for (Batch b : ways(rules)) {
            words.append(Batch.begun(b.name())).append(": ").append(b.steps()).append(b.print().equals(print) ? "" : " " + b.print())
                    .append(b.bias() ? " The outer edges lie on the bias: handle them as little as you can." : "").append('\n');
            print = b.print();
        }
        return Exhibit.several(Exhibit.of(table), Exhibit.words(words + "Make one batch first and measure it. " + Cutting.CAUTION));
    }

    private static String exact(Batch b, CuttingRules rules) {
        return String.join("; ", b.cuts().stream().map(c -> String.join(" x ", c.sides().stream().map(d -> rules.exact(d.exact())).distinct().toList())).distinct().toList());
    }

    @Override
    default Exhibit show() {
        return made(24);
    }

    /** A unit that is as high as wide. */
    sealed interface Square extends BatchUnit permits HalfSquares, QuarterSquares, FlippedCorners, SquareInSquare {

        /** Finished. */
        Length side();

        @Override
        default Length width() {
            return side();
        }

        @Override
        default Length height() {
            return side();
        }
    }

    /** @throws IllegalArgumentException if a finished size is not above 0 */
    static Length require(String what, Length size) {
        if (!size.isPositive()) {
            throw new IllegalArgumentException(what + " of " + size + " can't be sewn; use a finished size above 0, such as 3 in");
        }
        return size;
    }
}
