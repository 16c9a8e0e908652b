package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A unit repeated along every side, with a block in each corner.
 *
 * @param unit     drafted for the top side, its outer edge upwards; its height is the border's width
 * @param corner   a square block, drafted for the top left corner
 * @param mirrored true if the second half of every side is the mirror image of the first
 */
public record PiecedBorder(Patchwork unit, Patchwork corner, boolean mirrored) implements Border {

    static final List<String> SIDES = List.of("top", "right", "bottom", "left");

    /** @throws DesignException if the unit is not a rectangle */
    public PiecedBorder {
        if (!unit.isRectangular()) {
            throw new DesignException("'" + unit.name() + "' is not a rectangle and can't be a border's unit; set it in a square first");
        }
    }

    static PiecedBorder of(Patchwork unit) {
        Patchwork corner = Block.plain(Role.BACKGROUND.standIn(), unit.height(), unit.height());
        return new PiecedBorder(unit, corner, false);
    }

    public PiecedBorder corners(Patchwork block) {
        return new PiecedBorder(unit, block, mirrored);
    }

    public PiecedBorder mirroredAtMiddle() {
        return new PiecedBorder(unit, corner, true);
    }

    /** The same border with every patch of the given roles in their fabrics. */
    public PiecedBorder with(Map<Role, Fabric> fabrics) {
        return new PiecedBorder(unit.with(fabrics), corner.with(fabrics), mirrored);
    }

    public PiecedBorder with(Role role, Fabric fabric) {
        return with(Map.of(role, fabric));
    }

    /**
     * The border with its units made larger or smaller as a whole, so that they fit the given counts.
     *
     * @throws DesignException if the unit's width isn't that of the fit
     */
    public PiecedBorder fitted(UnitCount count) {
        return new PiecedBorder(unit.scaledTo(count.unit()), corner.scaledTo(unit.scaledTo(count.unit()).height()), mirrored);
    }

    @Override
    public Length width() {
        return unit.height();
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Frame f = Frame.around(inside, width(), number);
        PlainBorder.requireCorner(corner, width(), number);
        Patchwork mirror = mirrored ? unit.mirrored() : unit;
        List<Placed> parts = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            int count = count(f.length(side), number, SIDES.get(side));
            double step = f.length(side).inInches() / count;
            for (int i = 0; i < count; i++) {
                Patchwork work = mirrored && 2 * i >= count ? mirror : unit;
                parts.add(new Placed(id + "-" + SIDES.get(side) + (i + 1), work, Transform.move(i * step, 0).then(f.side(side, false))));
            }
            parts.add(new Placed(id + "-corner" + (side + 1), corner, f.corner(side)));
        }
        return f.with(id, parts);
    }

    private int count(Length side, int number, String name) {
        int count = (int) Math.max(1, Math.rint(side.ratioTo(unit.width())));
        Length over = unit.width().times((long) count).minus(side);
        if (over.abs().inInches() > Cover.TOLERANCE) {
            Length unitThatFits = side.dividedBy(count);
            throw new DesignException("Border " + number + ": " + count + " units of " + unit.width() + " make "
                    + unit.width().times((long) count) + " but the " + name + " is " + side + "; make the unit " + unitThatFits
                    + " wide, or add a plain border inside so that the side comes to a whole number of units.");
        }
        if (mirrored && count % 2 != 0) {
            throw new DesignException("Border " + number + ": " + count + " units along the " + name
                    + " can't be mirrored at the middle; use an even number, or leave out mirroredAtMiddle.");
        }
        return count;
    }
}
