package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.measure.Length;

/** A square of two half-square triangles. */
public record HalfSquares(Length side) implements BatchUnit.Square {

    public HalfSquares {
        BatchUnit.require("a half-square unit", side);
    }

    /** Of a finished side. */
    public static HalfSquares of(Length side) {
        return new HalfSquares(side);
    }

    @Override
    public String name() {
        return "half-square unit";
    }

    @Override
    public List<String> cloths() {
        return List.of("one", "other");
    }

    @Override
    public List<Batch> ways(CuttingRules rules) {
        Sizes sizes = new Sizes(rules);
        Optional<Batch.Size> trim = Optional.of(sizes.cut(side, side));
        Dimension halved = sizes.halved(side);
        String pair = "Lay two squares right sides together, draw a line from corner to corner, sew a seam allowance to either side of it, and cut along it.";
        String about = "A print that runs one way stands on its head in half of them.";
        Dimension eight = sizes.large(halved.exact().times(2));
        String eightSteps = "Lay two squares right sides together, draw both lines from corner to corner, sew a seam allowance to either side of each, cut across and down through the middle, and along the lines.";
        // Sewn round, the cut triangle has the square's side as its long side.
        Dimension round = sizes.large(side.times(Math.sqrt(2)).plus(rules.seam().times(2 + 2 * Math.sqrt(2))));
        return List.of(
                new Batch("singly", List.of(Batch.Cut.halved(0, 1, halved), Batch.Cut.halved(1, 1, halved)), 2, Optional.empty(), "Sew a triangle of one to a triangle of the other along the long side, which is on the bias.",
                        "Triangles can be picked by their print.", false),
                new Batch("two at a time", both(halved), 2, Optional.empty(), pair, about, false),
                new Batch("two at a time, trimmed", both(sizes.halvedLarge(side)), 2, trim, "The same from larger squares. Press, and trim with the seam from corner to corner.", about, false),
                new Batch("eight at a time", both(eight), 8, Optional.empty(), eightSteps, "A print that runs one way turns four ways.", false),
                new Batch("eight at a time, trimmed", both(sizes.large(eight.exact().plus(rules.seam()))), 8, trim, "The same from larger squares. Press, and trim with the seam from corner to corner.",
                        "A print that runs one way turns four ways.", false),
                new Batch("four at a time, sewn round", both(round), 4, trim, "Lay two squares right sides together, sew a seam allowance from the edge all round, and cut from corner to corner both ways.",
                        "A print that runs one way lies aslant, along or across the seam.", true));
    }

    private static List<Batch.Cut> both(Dimension side) {
        return List.of(Batch.Cut.whole(0, 1, side), Batch.Cut.whole(1, 1, side));
    }
}
