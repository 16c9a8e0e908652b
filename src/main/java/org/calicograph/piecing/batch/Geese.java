package org.calicograph.piecing.batch;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.measure.Length;

/** A flying goose: a large triangle, half as high as wide, with two small ones beside it. */
public record Geese(Length width) implements BatchUnit {

    public Geese {
        BatchUnit.require("a flying goose", width);
    }

    /** Of a finished width; the height is half of it. */
    public static Geese of(Length width) {
        return new Geese(width);
    }

    @Override
    public String name() {
        return "flying goose";
    }

    @Override
    public Length height() {
        return width.half();
    }

    @Override
    public List<String> cloths() {
        return List.of("goose", "sky");
    }

    @Override
    public List<Batch> ways(CuttingRules rules) {
        Sizes sizes = new Sizes(rules);
        Length half = width.half();
        String four = "Lay two small squares on opposite corners of the large one, right sides together, overlapping in its middle; draw a line from corner to corner, sew a seam allowance to either side of it, "
                + "cut along it and press. Lay a small square on the corner that is left of each half and do the same.";
        String print = "A print that runs one way turns from goose to goose.";
        return List.of(
                new Batch("singly", List.of(Batch.Cut.quartered(0, 1, sizes.quartered(width)),
                        Batch.Cut.halved(1, 4, sizes.halved(half))), 4, Optional.empty(),
                        "Sew a small triangle to each short side of the large one.", "Of the large triangles of a square only one has a print that runs one way upright.", false),
                new Batch("four at a time", List.of(Batch.Cut.whole(0, 1, sizes.quartered(width)), Batch.Cut.whole(1, 4, sizes.halved(half))), 4,
                        Optional.empty(), four, print, false),
                new Batch("four at a time, trimmed", List.of(Batch.Cut.whole(0, 1, sizes.quarteredLarge(width)),
                        Batch.Cut.whole(1, 4, sizes.halvedLarge(half))), 4, Optional.of(sizes.cut(width, half)),
                        "The same from larger squares. Press, and trim with a seam allowance beyond the point of the goose.", print, false),
                new Batch("one at a time, corners flipped", List.of(Batch.Cut.whole(0, 1, sizes.side(width), sizes.side(half)),
                        Batch.Cut.whole(1, 2, sizes.side(half))), 1, Optional.empty(),
                        "Lay a square on one end of the rectangle, right sides together, sew from corner to corner, trim a seam allowance beyond the seam and flip the corner out; then the other end.",
                        "A print that runs one way stands as it is cut.", false));
    }
}
