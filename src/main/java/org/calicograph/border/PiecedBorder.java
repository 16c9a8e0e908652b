package org.calicograph.border;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Roles;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * <p>A border that has taken a fit draws just that: its counts, what stands in its corners, its mirroring and
 * its spacers. It goes round what the fit was made for and nothing else.
 *
 * @param unit     drafted for the top side, its outer edge upwards; its height is the border's width
 * @param corner   a square block, drafted for the top left corner; a plain one of background where none is given,
 *                 or the unit where the fit has one in each corner
 * @param mirrored true if the second half of every side is the mirror image of the first
 * @param alternate true if the right and the left side, each with the corner that it begins at, are the mirror image of top and bottom
 * @param fit      what it draws; where there is none, as many units as come out whole
 * @param spacer   the cloth of the fit's spacers, as a block of one patch
 */
public record PiecedBorder(Patchwork unit, Optional<Patchwork> corner, boolean mirrored, boolean alternate, Optional<Fitting> fit, Block spacer) implements Border {

    static final List<String> SIDES = List.of("top", "right", "bottom", "left");

    /** @throws DesignException if the unit is not a rectangle */
    public PiecedBorder {
        if (!unit.isRectangular()) {
            throw new DesignException("'" + unit.name() + "' is not a rectangle and can't be a border's unit; set it in a square first");
        }
    }

    static PiecedBorder of(Patchwork unit) {
        Length any = Length.inches(1);
        return new PiecedBorder(unit, Optional.empty(), false, false, Optional.empty(), Block.plain(Role.BACKGROUND.standIn(), any, any));
    }

    /** Its own block in each corner, drafted for the top left. */
    public PiecedBorder corners(Patchwork block) {
        return new PiecedBorder(unit, Optional.of(block), mirrored, alternate, fit, spacer);
    }

    /** The second half of every side the mirror image of the first. */
    public PiecedBorder mirroredAtMiddle() {
        return new PiecedBorder(unit, corner, true, alternate, fit, spacer);
    }

    /**
     * The right and the left side, each with the corner that it begins at, the mirror image of top and bottom. Chequers,
     * which change colour when they are turned by a quarter, go on round every corner so.
     */
    public PiecedBorder alternately() {
        return new PiecedBorder(unit, corner, mirrored, true, fit, spacer);
    }

    /** The spacers of its fit in this cloth. */
    public PiecedBorder spacersOf(Fabric cloth) {
        return new PiecedBorder(unit, corner, mirrored, alternate, fit, Block.plain(cloth, spacer.width(), spacer.height()));
    }

    /**
     * The same border with every patch of the given roles in their fabrics, in its units, corners and spacers.
     *
     * @throws DesignException as {@link Patchwork#with(Map)} has it, where none of them has the role
     */
    public PiecedBorder with(Map<Role, Fabric> fabrics) {
        Set<Role> all = new LinkedHashSet<>(unit.roles());
        corner.ifPresent(c -> all.addAll(c.roles()));
        all.addAll(spacer.roles());
        Roles.require("the border of " + unit.name(), all, fabrics);
        Function<Patch, Fabric> choice = p -> fabrics.getOrDefault(p.role(), p.fabric());
        return new PiecedBorder(unit.recoloured(choice), corner.map(c -> c.recoloured(choice)), mirrored, alternate, fit, spacer.recoloured(choice));
    }

    /** The same border with a role of its units in this cloth. */
    public PiecedBorder with(Role role, Fabric fabric) {
        return with(Map.of(role, fabric));
    }

    /**
     * The border as the fit has it: its units made larger or smaller as a whole, counted, cornered, mirrored
     * and spaced.
     *
     * @throws DesignException if the fit has a unit in each corner, and the unit is no square or another block
     *     was given for the corners
     */
    public PiecedBorder fitted(Fitting fitting) {
        Patchwork sized = unit.scaledTo(fitting.unit());
        Optional<Patchwork> block = corner.map(c -> c.scaledTo(sized.height()));
        if (fitting.corners() == Fitting.Corners.UNIT) {
            if (sized.width().minus(sized.height()).abs().inInches() > Cover.TOLERANCE / 2) {
                throw new DesignException("the fit has a unit in each corner, but '" + unit.name() + "' is " + sized.width() + " x " + sized.height()
                        + " there, no square; ask the fit for corners(Fitting.Corners.APART)");
            }
            if (block.isPresent() && !block.get().name().equals(sized.name())) {
                throw new DesignException("the fit has a unit in each corner, but the border has '" + block.get().name()
                        + "' there; leave out its corners, or ask the fit for corners(Fitting.Corners.APART)");
            }
            block = Optional.of(block.orElse(sized));
        }
        return new PiecedBorder(sized, block, mirrored || fitting.mirrored(), alternate, Optional.of(fitting), spacer);
    }

    /** The finished width on each side; the wider, where the fit's spacers are of two. */
    @Override
    public Length width() {
        return unit.height().plus(fit.map(f -> Length.max(f.spacerSides(), f.spacerEnds())).orElse(Length.ZERO));
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Frame.requireRectangle(inside, number);
        fit.ifPresent(f -> UnitCounts.requireRound(f, inside, number));
        if (fit.isEmpty() || !fit.get().hasSpacer()) {
            return units(inside, id, number);
        }
        Fabric cloth = spacer.patches().get(0).fabric();
        Assembly spaced = new UnevenBorder(cloth, fit.get().spacerSides(), fit.get().spacerEnds()).around(inside, id + "-spacer", number);
        Assembly outer = units(spaced, id, number);
        List<Placed> parts = new ArrayList<>();
        spaced.parts().forEach(p -> parts.add(p.moved(outer.parts().get(0).place())));
        parts.addAll(outer.parts().subList(1, outer.parts().size()));
        return Assembly.of(inside.name() + " with " + id, outer.outline(), parts);
    }

    private Assembly units(Patchwork inside, String id, int number) {
        Frame f = Frame.around(inside, unit.height(), number);
        Patchwork block = corner.orElseGet(() -> Block.plain(Role.BACKGROUND.standIn(), unit.height(), unit.height())
                .with(Map.of(Role.BACKGROUND, spacer.patches().get(0).fabric())));
        PlainBorder.requireCorner(block, unit.height(), number);
        Patchwork mirror = mirrored || alternate ? unit.mirrored() : unit;
        Patchwork turnedBlock = alternate ? block.mirrored() : block;
        List<Placed> parts = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            int count = UnitCounts.along(this, f.length(side), number, SIDES.get(side));
            double step = f.length(side).inInches() / count;
            for (int i = 0; i < count; i++) {
                boolean second = mirrored && 2 * i >= count;
                Patchwork work = second != (alternate && side % 2 == 1) ? mirror : unit;
                parts.add(new Placed(id + "-" + SIDES.get(side) + (i + 1), work, Transform.move(i * step, 0).then(f.side(side, false))));
            }
            parts.add(new Placed(id + "-corner" + (side + 1), side % 2 == 1 ? turnedBlock : block, f.corner(side)));
        }
        return f.with(id, parts);
    }
}
