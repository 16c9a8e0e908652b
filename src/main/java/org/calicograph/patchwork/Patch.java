package org.calicograph.patchwork;

import java.util.Locale;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.OwnBox;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * One piece of cloth as it shows in the finished top.
 *
 * @param id     unique within its patchwork
 * @param role   what it is for in the design; stays when the fabric changes
 * @param fabric the cloth it is cut from, or the role's stand-in
 * @param shape  the finished shape, without seam allowance, in inches
 */
public record Patch(String id, Role role, Fabric fabric, Region shape) {

    public Patch {
        if (id.isBlank()) {
            throw new DesignException("a patch of " + role + " has no id; number it");
        }
    }

    /** A patch in its role's stand-in cloth. */
    public static Patch of(String id, Role role, Region shape) {
        return new Patch(id, role, role.standIn(), shape);
    }

    /** The same patch cut from another cloth. */
    public Patch in(Fabric other) {
        return new Patch(id, role, other, shape);
    }

    /** The same patch under another name. */
    public Patch named(String other) {
        return new Patch(other, role, fabric, shape);
    }

    /** The patch moved, turned, mirrored or made larger; its grain goes with it. */
    public Patch transformed(Transform t) {
        return new Patch(id, role, fabric, shape.transformed(t));
    }

    /** A few words for those who point at it: fabric and finished size, along itself however it is turned. */
    public String title() {
        OwnBox box = OwnBox.of(shape);
        return fabric.name() + ", " + size(box) + " finished";
    }

    private static String size(OwnBox box) {
        if (Length.System.ofProcess() == Length.System.METRIC) {
            return Length.inches(box.width()) + " x " + Length.inches(box.height());
        }
        return size(box.width()) + " x " + size(box.height()) + " in";
    }

    private static String size(double inches) {
        String text = Length.inches(inches).in(Length.System.INCH);
        String bare = text.substring(0, text.length() - 3);
        return bare.contains(".") ? String.format(Locale.ROOT, "%.3f", inches) : bare;
    }
}
