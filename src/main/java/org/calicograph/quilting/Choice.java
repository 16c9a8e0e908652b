package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.NearestNames;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * Patches chosen to be quilted alike.
 *
 * @param patches in the order of their patchwork
 */
public record Choice(List<Patch> patches) {

    public Choice {
        patches = List.copyOf(patches);
    }

    /** Every patch of the work, to choose from. */
    public static Choice of(Patchwork work) {
        return new Choice(work.patches());
    }

    /** Those of them for which the test holds. */
    public Choice where(Predicate<Patch> test) {
        return new Choice(patches.stream().filter(test).toList());
    }

    /** @throws IllegalArgumentException if none of them is in that fabric */
    public Choice in(Fabric fabric) {
        return some(where(p -> p.fabric().equals(fabric)), "is in the fabric", fabric.name(), patches.stream().map(p -> p.fabric().name()).toList());
    }

    /** @throws IllegalArgumentException if none of them has that role */
    public Choice in(Role role) {
        return some(where(p -> p.role().equals(role)), "has the role", role.name(), patches.stream().map(p -> p.role().name()).toList());
    }

    private static Choice some(Choice found, String what, String wanted, List<String> names) {
        List<String> there = names.stream().distinct().sorted().toList();
        if (found.patches.isEmpty() && !there.isEmpty()) {
            throw new IllegalArgumentException("no patch chosen " + what + " '" + wanted + "'; there are '" + String.join("', '", there) + "'"
                    + NearestNames.likely(wanted, there));
        }
        return found;
    }

    /** Those of one part of an assembly, by the beginning of their ids: a block ('r2c3'), a round or border, the 'centre'. */
    public Choice within(String part) {
        return where(p -> p.id().equals(part) || p.id().startsWith(part + "/") || p.id().contains("/" + part + "/"));
    }

    /** Those of the same finished shape as one patch, turned or mirrored as may be: equal area, perimeter and corners. */
    public Choice shapedLike(Patch like) {
        Region r = like.shape();
        return where(p -> p.shape().outer().segments().size() == r.outer().segments().size()
                && Math.abs(p.shape().area().squareInches() - r.area().squareInches()) < 1e-3
                && Math.abs(p.shape().perimeter() - r.perimeter()) < 1e-3);
    }

    /** The shape of each, where it lies. */
    public List<Region> regions() {
        return patches.stream().map(Patch::shape).toList();
    }

    /** What the patches cover together, those that touch as one region; polygons within {@link Region#ACCURACY}. */
    public List<Region> joined() {
        if (patches.isEmpty()) {
            return List.of();
        }
        List<Geometry> all = new ArrayList<>();
        regions().forEach(r -> all.add(Polygons.of(r, Region.ACCURACY).buffer(1e-4, 1)));
        return Polygons.regions(CascadedPolygonUnion.union(all).buffer(-1e-4, 1)).stream().map(r -> new Region(r.outer().joined(),
                r.holes().stream().map(org.calicograph.geometry.Path::joined).toList())).toList();
    }
}
