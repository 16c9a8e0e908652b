package org.calicograph.wire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;

/**
 * How a quilt is cut, read off its one cutting plan.
 *
 * @param patches for each patch, by its id in the picture, how it is cut, in words; none if there is no plan
 * @param whole   what to buy, and what the amounts rest on
 * @param cloths  what is cut of each cloth, in the plan's order
 * @param why     why there is no plan; empty if there is one
 */
public record CutList(Map<String, String> patches, Exhibit whole, List<Cloth> cloths, String why) {

    /** @param name the cloth's own; two cloths may share it */
    public record Cloth(String name, Exhibit list) { }

    public CutList {
        cloths = List.copyOf(cloths);
    }

    /** No plan, and why. */
    public static CutList none(String why) {
        return new CutList(Map.of(), Exhibit.NOTHING, List.of(), why);
    }

    /** How a patch is cut; empty where the plan does not know it. */
    public Optional<String> of(String patch) {
        return Optional.ofNullable(patches.get(patch));
    }
}
