package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Grandmother's Fan: blades spread from a corner.
 *
 * <p>Drafting: six blades of 15 degrees in a right angle, from a quarter of the side to seven eighths of it (common practice).
 */
public final class GrandmothersFan {

    /** A fan of six blades. */
    public static Block block(Length side) {
        return block(side, 6);
    }

    /** A fan of so many blades about the bottom left corner of a block of the given finished side. */
    public static Block block(Length side, int blades) {
        if (blades < 2 || blades > 24) {
            throw new IllegalArgumentException("a fan of " + blades + " blades can't be sewn; use 2 to 24");
        }
        Role[] cloth = {DARK, LIGHT, MEDIUM};
        Point corner = new Point(0, 1);
        double near = 0.25;
        double far = 0.875;
        Angle blade = Angle.degrees(90.0 / blades);
        BlockDraft draft = Block.onGrid("Grandmother's Fan", 1, side)
                .patch(ACCENT, Path.from(corner.plus(0, -near)).arcAbout(corner, Angle.QUARTER).lineTo(corner).close());
        for (int i = 0; i < blades; i++) {
            Angle from = blade.times(i).minus(Angle.QUARTER);
            Point in = corner.plus(Point.polar(near, from));
            Point out = corner.plus(Point.polar(far, from));
            draft = draft.patch(cloth[i % cloth.length], Path.from(in).lineTo(out).arcAbout(corner, blade)
                    .lineTo(corner.plus(Point.polar(near, from.plus(blade)))).arcTo(in, -Math.tan(blade.inRadians() / 4)).close());
        }
        return draft.patch(BACKGROUND, Path.from(corner.plus(0, -far)).arcAbout(corner, Angle.QUARTER)
                .lineTo(1, 1).lineTo(1, 0).lineTo(0, 0).close()).block();
    }
}
