package org.calicograph.patchwork;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/** Anything pieced that has an outline, with its top left corner at the origin. */
public sealed interface Patchwork permits Block, Assembly {

    /** What it is called. */
    String name();

    /** The finished outline, in inches. */
    Region outline();

    /** Every patch, moved to where it lies in this patchwork; the order is stable. */
    List<Patch> patches();

    /** The number of patches, without making them. */
    int patchCount();

    /** The same patchwork under a transform that keeps circles, moved back to the origin. */
    Patchwork transformed(Transform t);

    /**
     * The same patchwork with each patch in the fabric that the function gives. The function sees the
     * patch where it lies in this patchwork, with its full id.
     */
    Patchwork recoloured(Function<Patch, Fabric> choice);

    /** The roles of its patches. */
    Set<Role> roles();

    /**
     * The same patchwork with every patch of a role in a fabric; other patches stay as they are.
     *
     * @throws DesignException if no patch has that role
     */
    default Patchwork with(Role role, Fabric fabric) {
        return with(Map.of(role, fabric));
    }

    /**
     * The same patchwork with every patch of the given roles in their fabrics. Patches that were given a cloth of their
     * own, such as sashes, a plain border or setting triangles, stay as they are.
     *
     * @throws DesignException if it has no patch of any of the roles, or none of one that is not {@link Role#BACKGROUND},
     *                         {@link Role#LIGHT}, {@link Role#MEDIUM}, {@link Role#DARK} or {@link Role#ACCENT}
     */
    Patchwork with(Map<Role, Fabric> fabrics);

    /** The same work under another name. */
    Patchwork named(String name);

    /** Finished width, to the nearest 1/24 micrometre. */
    default Length width() {
        return Length.inches(outline().bounds().width());
    }

    /** Finished height, to the nearest 1/24 micrometre. */
    default Length height() {
        return Length.inches(outline().bounds().height());
    }

    /** Turned clockwise by quarter turns. */
    default Patchwork turned(int quarters) {
        return transformed(Transform.turn(Angle.QUARTER.times(Math.floorMod(quarters, 4))));
    }

    /** Turned clockwise by an angle; an upright block turned by an eighth stands on its point. */
    default Patchwork turned(Angle angle) {
        return transformed(Transform.turn(angle));
    }

    /** Left and right exchanged. */
    default Patchwork mirrored() {
        return transformed(Transform.mirrorAcross(0));
    }

    /** Larger or smaller as a whole, to the given finished width. */
    default Patchwork scaledTo(Length width) {
        if (!width.isPositive()) {
            throw new DesignException("'" + name() + "' can't be made " + width + " wide; use a width above 0");
        }
        return transformed(Transform.scale(width.inInches() / outline().bounds().width()));
    }

    /**
     * Trimmed about its middle to a finished width and height; what lies across the edge becomes partial blocks.
     *
     * @throws DesignException if it is smaller than that
     */
    default Trimming trimmedTo(Length width, Length height) {
        Point m = outline().bounds().centre();
        double w = width.inInches() / 2;
        double h = height.inInches() / 2;
        return Trimming.of(this, new Box(m.x() - w, m.y() - h, m.x() + w, m.y() + h));
    }

    /** True if the outline is an upright rectangle, within {@link Cover#TOLERANCE}. */
    default boolean isRectangular() {
        Box box = outline().bounds();
        return outline().holes().isEmpty() && outline().isStraight()
                && Math.abs(outline().area().squareInches() - box.width() * box.height())
                        <= Cover.TOLERANCE * (box.width() + box.height()) / 4;
    }
}
