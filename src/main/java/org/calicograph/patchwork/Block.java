package org.calicograph.patchwork;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/** A patchwork that holds its patches itself. */
public final class Block implements Patchwork {

    private final String name;
    private final Region outline;
    private final List<Patch> patches;
    private final Optional<Applique> applique;

    private Block(String name, Region outline, List<Patch> patches) {
        this(name, outline, patches, Optional.empty());
    }

    private Block(String name, Region outline, List<Patch> patches, Optional<Applique> applique) {
        this.name = name;
        this.outline = outline;
        this.patches = List.copyOf(patches);
        this.applique = applique;
    }

    /** What shows of an appliqué. */
    static Block of(Applique applique, List<Patch> shown) {
        Block block = of(applique.name(), applique.ground().outline(), shown);
        return new Block(block.name, block.outline, block.patches, Optional.of(applique));
    }

    /**
     * The ground and the shapes that this block is what shows of, if it is not pieced: they are what is cut
     * and sewn. A block that is trimmed or set in a ground of its own no longer knows.
     */
    public Optional<Applique> applique() {
        return applique;
    }

    /**
     * A block of the given patches.
     *
     * @throws DesignException if two patches share an id, or the patches leave a gap in the outline,
     *     overlap or stick out by more than {@link Cover#TOLERANCE}
     */
    public static Block of(String name, Region outline, List<Patch> patches) {
        if (patches.isEmpty()) {
            throw new DesignException("block '" + name + "' has no patches; give it at least one");
        }
        Set<String> ids = new HashSet<>();
        for (Patch patch : patches) {
            if (!ids.add(patch.id())) {
                throw new DesignException("block '" + name + "' has two patches with the id '" + patch.id()
                        + "'; number them apart");
            }
        }
        Cover.check("block '" + name + "'", outline,
                patches.stream().map(p -> new Cover.Part("patch " + p.id() + " (" + p.role() + ")", p.shape())).toList());
        return new Block(name, outline, patches).atOrigin();
    }

    /** A block of one patch. */
    public static Block plain(Fabric fabric, Length width, Length height) {
        return plain(fabric.name(), fabric, Region.rectangle(width, height));
    }

    /**
     * A block of one patch of any shape. The cloth is its own: a role's stand-in has that role, and any other cloth has
     * a role of its name, which no map of roles changes by chance.
     */
    public static Block plain(String name, Fabric fabric, Region shape) {
        Role role = Role.of(fabric.name());
        Role own = role.standIn().equals(fabric) ? role : Role.of("the cloth " + fabric.name());
        return new Block(name, shape, List.of(new Patch("1", own, fabric, shape))).atOrigin();
    }

    /** Begins a square block on graph paper of so many squares each way. */
    public static BlockDraft onGrid(String name, int squares, Length side) {
        return BlockDraft.onGrid(name, squares, squares, side, side);
    }

    /** Begins a block on graph paper of so many squares across and down. */
    public static BlockDraft onGrid(String name, int across, int down, Length width, Length height) {
        return BlockDraft.onGrid(name, across, down, width, height);
    }

    private Block atOrigin() {
        Box box = outline.bounds();
        return Math.abs(box.left()) < 1e-9 && Math.abs(box.top()) < 1e-9 ? this
                : moved(Transform.move(-box.left(), -box.top()));
    }

    /** Off the origin for a while; an appliqué knows its own place. */
    Block moved(Transform t) {
        return new Block(name, outline.transformed(t), patches.stream().map(p -> p.transformed(t)).toList(), applique);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Region outline() {
        return outline;
    }

    @Override
    public List<Patch> patches() {
        return patches;
    }

    @Override
    public int patchCount() {
        return patches.size();
    }

    @Override
    public Block transformed(Transform t) {
        Assembly.requireEven(name, t);
        Block there = moved(t).atOrigin();
        return new Block(name, there.outline, there.patches, applique.map(a -> a.transformed(t)));
    }

    @Override
    public Block turned(int quarters) {
        return (Block) Patchwork.super.turned(quarters);
    }

    @Override
    public Block mirrored() {
        return (Block) Patchwork.super.mirrored();
    }

    @Override
    public Block scaledTo(Length width) {
        return (Block) Patchwork.super.scaledTo(width);
    }

    @Override
    public Block recoloured(Function<Patch, Fabric> choice) {
        return new Block(name, outline, patches.stream().map(p -> p.in(choice.apply(p))).toList(), applique.map(a -> a.recoloured(choice)));
    }

    @Override
    public Block with(Role role, Fabric fabric) {
        return with(Map.of(role, fabric));
    }

    @Override
    public Set<Role> roles() {
        Set<Role> all = new LinkedHashSet<>();
        patches.forEach(p -> all.add(p.role()));
        applique.ifPresent(a -> all.addAll(a.roles()));
        return all;
    }

    @Override
    public Block with(Map<Role, Fabric> fabrics) {
        Roles.require(name, roles(), fabrics);
        return recoloured(p -> fabrics.getOrDefault(p.role(), p.fabric()));
    }

    @Override
    public Block named(String other) {
        return new Block(other, outline, patches, applique.map(a -> new Applique(other, a.ground(), a.laid())));
    }

    /**
     * The block set in the middle of a square of background. The ground is parted along rays through the
     * block's tips, so that a star can be sewn in wedges.
     *
     * @throws DesignException if the block is larger than the square
     */
    public Block inSquare(Length side) {
        return inSquare(side, Role.BACKGROUND);
    }

    /** The same on a ground of another role. */
    public Block inSquare(Length side, Role ground) {
        return Ground.square(this, side, ground);
    }

    /** The same block with every patch in a new role and that role's cloth. */
    public Block withRoles(Function<Patch, Role> choice) {
        return new Block(name, outline, patches.stream()
                .map(p -> Patch.of(p.id(), choice.apply(p), p.shape())).toList(), applique.flatMap(a -> a.withRoles(choice)));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Block b && name.equals(b.name) && outline.equals(b.outline) && patches.equals(b.patches)
                && applique.equals(b.applique);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + patches.hashCode();
    }

    @Override
    public String toString() {
        return name + ", " + width().onRuler() + " x " + height().onRuler() + ", " + patches.size() + " patches";
    }
}
