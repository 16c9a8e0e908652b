package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.measure.Length;

/**
 * A square with its corners cut off and triangles in their place, as in a snowball.
 *
 * @param side    of the whole
 * @param corner  the short sides of each triangle
 * @param corners how many corners have one, 1 to 4
 */
public record FlippedCorners(Length side, Length corner, int corners) implements BatchUnit.Square {

    public FlippedCorners {
        BatchUnit.require("a square with flipped corners", side);
        BatchUnit.require("a corner", corner);
        if (corners < 1 || corners > 4) {
            throw new IllegalArgumentException("a square has no " + corners + " corners to flip; use 1 to 4");
        }
        if (corner.compareTo(side) > 0 || corners > 2 && corner.times(2).compareTo(side) > 0) {
            throw new IllegalArgumentException("corners of " + corner + " reach over each other on a side of " + side + "; use at most "
                    + (corners > 2 ? side.half() : side));
        }
    }

    /** Four corners: a snowball. */
    public static FlippedCorners of(Length side, Length corner) {
        return new FlippedCorners(side, corner, 4);
    }

    @Override
    public String name() {
        return "square with " + corners + (corners == 1 ? " corner" : " corners") + " of another cloth";
    }

    @Override
    public List<String> cloths() {
        return List.of("middle", "corners");
    }

    @Override
    public List<Batch> ways(CuttingRules rules) {
        Sizes sizes = new Sizes(rules);
        Batch.Cut middle = Batch.Cut.whole(0, 1, sizes.side(side));
        Dimension halved = sizes.halved(corner);
        // Two squares give four triangles: one batch for an even number of corners, two units for an odd one.
        int units = corners % 2 == 0 ? 1 : 2;
        return List.of(
                new Batch("corners flipped", List.of(middle, Batch.Cut.whole(1, corners, sizes.side(corner))), 1, Optional.empty(),
                        "Lay a small square on each corner, right sides together, sew from corner to corner, trim a seam allowance beyond the seam and flip the corner out.",
                        "The middle's print stands as it is cut.", false),
                new Batch("singly", List.of(new Batch.Cut(0, units, List.of(sizes.side(side)), "corners cut off along a line " + rules.text(cutOff(rules)) + " from each corner, measured along the sides", 1),
                        Batch.Cut.halved(1, corners * units / 2, halved)), units, Optional.empty(),
                        "Sew a triangle to each corner that was cut off.", "Triangles can be picked by their print.", false));
    }

    /** How far from a corner of the cut square its corner is cut off, to the next fine line of the ruler: the seam runs at the finished corner, one allowance inside. */
    Length cutOff(CuttingRules rules) {
        return corner.plus(rules.seam().times(2)).minus(rules.seam().times(Math.sqrt(2))).roundedTo(rules.fineStep());
    }
}
