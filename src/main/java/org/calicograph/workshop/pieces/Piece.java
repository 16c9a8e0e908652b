package org.calicograph.workshop.pieces;

import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * Congruent patches of one fabric, cut alike.
 *
 * @param letter   what it is called in the instructions
 * @param finished the finished shape, grain along the axes, top left corner at the origin
 * @param method   how it is cut
 * @param patches  the ids of the patches, in the quilt's order
 */
public record Piece(String letter, Fabric fabric, Region finished, CutMethod method, List<String> patches) {

    public Piece {
        patches = List.copyOf(patches);
    }

    public int count() {
        return patches.size();
    }

    /** The cutting line, with the seam allowance on. */
    public Region cutOutline(Length seam) {
        return CutOutline.of(finished, seam);
    }

    /** The finished area of all of them. */
    public Area sewn() {
        return finished.area().times(count());
    }

    /** Finished width and height of what it fills, in words: {@code 3 x 3 in}. */
    public String size(CuttingRules rules) {
        return rules.exact(Length.inches(finished.bounds().width())) + " x " + rules.exact(Length.inches(finished.bounds().height()));
    }
}
