package org.calicograph.patchwork;

import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;

/**
 * A patchwork in its place within an assembly.
 *
 * @param id    unique within the assembly
 * @param place how it lies: turned, mirrored and moved, never scaled
 */
public record Placed(String id, Patchwork work, Transform place) {

    /** @throws DesignException if the place would change the size */
    public Placed {
        if (id.isBlank() || id.indexOf('/') >= 0) {
            throw new DesignException("'" + id + "' can't name a part of '" + work.name() + "'; use a word without a slash");
        }
        if (!place.keepsCircles() || Math.abs(place.scale() - 1) > 1e-9) {
            throw new DesignException("part '" + id + "' would change the size of '" + work.name()
                    + "'; scale the block first with scaledTo");
        }
    }

    /** A piece of work with its upper left corner at x, y in inches, under a name. */
    public static Placed at(String id, Patchwork work, double x, double y) {
        return new Placed(id, work, Transform.move(x, y));
    }

    /** A piece of one cloth that lies where its shape does. */
    public static Placed plain(String id, String name, Fabric fabric, Region shape) {
        return new Placed(id, Block.plain(name, fabric, shape), Transform.move(shape.bounds().topLeft()));
    }

    /** The same part moved on. */
    public Placed moved(Transform t) {
        return new Placed(id, work, place.then(t));
    }

    /** What it covers, where it lies. */
    public Region outline() {
        return work.outline().transformed(place);
    }
}
