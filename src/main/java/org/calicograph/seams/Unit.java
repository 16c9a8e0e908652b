package org.calicograph.seams;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;

/** A patch, or what has been sewn together from patches. */
public sealed interface Unit {

    /** A patch, or a part taken as one. */
    record Single(String id, Region shape) implements Unit { }

    /**
     * Units sewn together one after another.
     *
     * @param parts two or more, in order; each is sewn to what is there already
     * @param seams the seam lines of each step: one list fewer than there are parts
     */
    record Sewn(SeamKind kind, List<Unit> parts, List<List<Segment>> seams) implements Unit {
        public Sewn {
            parts = List.copyOf(parts);
            seams = seams.stream().map(List::copyOf).toList();
            if (parts.size() < 2 || seams.size() != parts.size() - 1) {
                throw new IllegalArgumentException("a unit of " + parts.size() + " parts has " + seams.size()
                        + " seams; give two parts or more, and a seam between each two");
            }
        }
    }

    /** The patches, in the order of sewing. */
    default List<Single> singles() {
        if (this instanceof Single s) {
            return List.of(s);
        }
        List<Single> all = new ArrayList<>();
        ((Sewn) this).parts().forEach(p -> all.addAll(p.singles()));
        return List.copyOf(all);
    }

    /** Every joining below and including this one, innermost first. */
    default List<Sewn> steps() {
        List<Sewn> all = new ArrayList<>();
        if (this instanceof Sewn s) {
            s.parts().forEach(p -> all.addAll(p.steps()));
            all.add(s);
        }
        return List.copyOf(all);
    }

    /** True if every seam of the whole unit is straight. */
    default boolean isStraight() {
        return steps().stream().allMatch(s -> s.kind() == SeamKind.STRAIGHT);
    }
}
