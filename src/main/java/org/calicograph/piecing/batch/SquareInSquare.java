package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.RotaryRules;
import org.calicograph.measure.Length;

/** A square on its point within another, with four triangles in the corners. */
public record SquareInSquare(Length side) implements BatchUnit.Square {

    public SquareInSquare {
        BatchUnit.require("a square in a square", side);
    }

    /** Of a finished side of the whole. */
    public static SquareInSquare of(Length side) {
        return new SquareInSquare(side);
    }

    @Override
    public String name() {
        return "square in a square";
    }

    @Override
    public List<String> cloths() {
        return List.of("middle", "corners");
    }

    @Override
    public List<Batch> ways(CuttingRules rules) {
        Sizes sizes = new Sizes(rules);
        Length half = side.half();
        return List.of(
                new Batch("singly", List.of(Batch.Cut.whole(0, 1, RotaryRules.side("square", side.times(Math.sqrt(0.5)), rules)),
                        Batch.Cut.halved(1, 2, sizes.halved(half))), 1, Optional.of(sizes.cut(side, side)),
                        "Sew triangles to two sides of the square that face each other, press, and then to the other two; trim with a seam allowance beyond each point.",
                        "The middle stands on its point: a print that runs one way leans unless it is cut so.", false),
                new Batch("corners flipped", List.of(Batch.Cut.whole(0, 1, sizes.side(side)), Batch.Cut.whole(1, 4, sizes.side(half))), 1, Optional.empty(),
                        "Lay small squares on two corners that face each other, right sides together, sew from corner to corner, trim a seam allowance beyond the seams and flip the corners out; then the other two.",
                        "The middle's print stands as it is cut.", false));
    }
}
