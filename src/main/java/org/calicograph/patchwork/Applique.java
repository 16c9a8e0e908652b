package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.Map;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.locationtech.jts.geom.Geometry;

/**
 * Shapes laid on a ground and sewn down by their edges. The ground is pieced and cut whole, each shape is
 * cut whole too; {@link #block} is what shows of them.
 *
 * @param ground what lies beneath
 * @param laid   the shapes in the order in which they are laid, the first at the bottom, each with an id of its own
 */
public record Applique(String name, Patchwork ground, List<Patch> laid) {

    /** @throws DesignException naming the shape, if one reaches beyond the ground or two share an id */
    public Applique {
        laid = List.copyOf(laid);
        List<String> ids = new ArrayList<>();
        for (Patch shape : laid) {
            if (ids.contains(shape.id())) {
                throw new DesignException("'" + name + "' has two shapes with the id '" + shape.id() + "'; number them apart");
            }
            ids.add(shape.id());
            for (Region out : beyond(shape.shape(), ground)) {
                if (out.area().squareInches() > Cover.TOLERANCE * out.perimeter() / 2) {
                    throw new DesignException("shape '" + shape.id() + "' of '" + name + "' reaches beyond its ground near "
                            + out.inside() + "; make it smaller or move it inwards");
                }
            }
        }
    }

    private static List<Region> beyond(Region shape, Patchwork ground) {
        Box all = ground.outline().bounds();
        Box box = shape.bounds();
        boolean inside = all.contains(box.topLeft()) && all.contains(new Point(box.right(), box.bottom()));
        return inside && ground.isRectangular() ? List.of() : shape.minus(ground.outline());
    }

    /** A ground with nothing on it yet. */
    public static Applique on(String name, Patchwork ground) {
        return new Applique(name, ground, List.of());
    }

    /** One shape more, on top of the others, in inches from the ground's top left corner. */
    public Applique lay(Role role, Region shape) {
        return with(List.of(Patch.of("laid" + (laid.size() + 1), role, shape)));
    }

    /** A shape and its copies, so many in all, turned evenly about the middle of the ground. */
    public Applique layRound(Role role, Region shape, int times) {
        if (times < 1) {
            throw new DesignException("a shape of '" + name + "' is to be laid " + times + " times; use 1 or more");
        }
        Point middle = ground.outline().bounds().centre();
        List<Patch> more = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            more.add(Patch.of("laid" + (laid.size() + i + 1), role, shape.transformed(Transform.turn(Angle.turn(i, times), middle))));
        }
        return with(more);
    }

    private Applique with(List<Patch> more) {
        List<Patch> all = new ArrayList<>(laid);
        all.addAll(more);
        return new Applique(name, ground, all);
    }

    /** The roles of its shapes and of its ground. */
    public Set<Role> roles() {
        Set<Role> all = new LinkedHashSet<>(ground.roles());
        laid.forEach(p -> all.add(p.role()));
        return all;
    }

    /**
     * The same with every shape of a role in a fabric, and the ground too.
     *
     * @throws DesignException if nothing has that role
     */
    public Applique with(Role role, Fabric fabric) {
        Roles.require(name, roles(), Map.of(role, fabric));
        return recoloured(p -> p.role().equals(role) ? fabric : p.fabric());
    }

    /** As a block of it is turned, mirrored or scaled: the ground's top left corner stays at the origin. */
    Applique transformed(Transform t) {
        Point corner = ground.outline().transformed(t).bounds().topLeft();
        Transform onto = t.then(Transform.move(-corner.x(), -corner.y()));
        return new Applique(name, ground.transformed(t), laid.stream().map(p -> p.transformed(onto)).toList());
    }

    Applique recoloured(Function<Patch, Fabric> choice) {
        return new Applique(name, ground.recoloured(choice), laid.stream().map(p -> p.in(choice.apply(p))).toList());
    }

    /** In new roles, if the ground is a block. */
    Optional<Applique> withRoles(Function<Patch, Role> choice) {
        return ground instanceof Block block ? Optional.of(new Applique(name, block.withRoles(choice),
                laid.stream().map(p -> Patch.of(p.id(), choice.apply(p), p.shape())).toList())) : Optional.empty();
    }

    /**
     * What shows when all is laid, as a block whose patches cover its outline: for settings, colours and
     * quilting. Where a shape lies within one patch of the ground and under no other, its edge stays the
     * curve that it is; elsewhere edges are polygons within {@link Region#ACCURACY}. What is to be cut and
     * sewn is not what shows; the block remembers this appliqué for that.
     */
    public Block block() {
        List<Patch> shown = new ArrayList<>();
        List<Patch> all = new ArrayList<>(ground.patches());
        int first = all.size();
        all.addAll(laid);
        for (int i = 0; i < all.size(); i++) {
            shown.addAll(visible(all.get(i), all.subList(Math.max(i + 1, first), all.size())));
        }
        return Block.of(this, shown);
    }

    private static List<Patch> visible(Patch patch, List<Patch> above) {
        Geometry shape = Polygons.of(patch.shape(), Region.ACCURACY);
        Geometry inner = above.isEmpty() ? shape : shape.buffer(-1e-3);
        List<Geometry> over = new ArrayList<>();
        List<Path> holes = new ArrayList<>(patch.shape().holes());
        boolean allWithin = true;
        for (Patch each : above) {
            if (!each.shape().bounds().touches(patch.shape().bounds())) {
                continue;
            }
            Geometry other = Polygons.of(each.shape(), Region.ACCURACY);
            if (Polygons.intersection(shape, other).getArea() > 1e-7) {
                allWithin = allWithin && each.shape().holes().isEmpty() && inner.covers(other)
                        && over.stream().noneMatch(o -> o.isWithinDistance(other, 1e-3));
                over.add(other);
                holes.add(each.shape().outer());
            }
        }
        if (over.isEmpty()) {
            return List.of(patch);
        }
        List<Region> left = allWithin ? List.of(new Region(patch.shape().outer(), holes))
                : Polygons.regions(Polygons.difference(shape, Polygons.union(over)));
        List<Patch> parts = new ArrayList<>();
        for (Region region : left) {
            String id = left.size() == 1 ? patch.id() : patch.id() + "-" + (parts.size() + 1);
            parts.add(new Patch(id, patch.role(), patch.fabric(), region));
        }
        return parts;
    }

    @Override
    public String toString() {
        return name + ", " + ground.width().onRuler() + " x " + ground.height().onRuler() + ", " + laid.size() + " shapes laid on " + ground.patchCount()
                + (ground.patchCount() == 1 ? " patch" : " patches");
    }
}
