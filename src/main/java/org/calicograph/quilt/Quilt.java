package org.calicograph.quilt;

import java.util.List;
import java.util.Optional;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * A quilt: a top, and what finishes its edge.
 *
 * @param title   what it is called at the show
 * @param binding its fabric; empty if the edge is left unbound
 * @param bindingWidth how much of the binding shows on the front; it lies over the seam allowance and
 *     doesn't add to the finished size
 * @param backing its fabric; empty if not chosen yet
 */
public record Quilt(String title, Patchwork top, Optional<Fabric> binding, Length bindingWidth, Optional<Fabric> backing) {

    /** The usual double-fold binding shows 1/4 in on the front (common practice). */
    public static final Length USUAL_BINDING = Length.inches(1, 4);

    /** @throws DesignException if the binding has no width */
    public Quilt {
        if (!bindingWidth.isPositive()) {
            throw new DesignException("the binding of '" + title + "' is " + bindingWidth + " wide; use a width above 0");
        }
    }

    /** A quilt of a title, and its whole top. */
    public static Quilt of(String title, Patchwork top) {
        return new Quilt(title, top, Optional.empty(), USUAL_BINDING, Optional.empty());
    }

    /** Backed with a fabric, from which its sleeve is cut too; wide backings say how wide they are. */
    public Quilt backed(Fabric fabric) {
        return new Quilt(title, top, binding, bindingWidth, Optional.of(fabric));
    }

    /** The same quilt with its binding in this cloth. */
    public Quilt bound(Fabric fabric) {
        return new Quilt(title, top, Optional.of(fabric), bindingWidth, backing);
    }

    /** The same quilt under another title. */
    public Quilt titled(String other) {
        return new Quilt(other, top, binding, bindingWidth, backing);
    }

    /** Another top in the same finish: a recoloured one, say. */
    public Quilt withTop(Patchwork other) {
        return new Quilt(title, other, binding, bindingWidth, backing);
    }

    /** The finished width of the top. */
    public Length width() {
        return top.width();
    }

    /** The finished height of the top. */
    public Length height() {
        return top.height();
    }

    /** Every patch of the top, where it lies. */
    public List<Patch> patches() {
        return top.patches();
    }

    @Override
    public String toString() {
        return title + ", " + width().onRuler() + " x " + height().onRuler() + ", " + top.patchCount() + " patches";
    }
}
