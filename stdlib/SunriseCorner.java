package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;

/**
 * Sunrise Corner: a quarter sun with sharp rays between two arcs.
 *
 * <p>Drafting: divide the right angle into four parts of 22.5 degrees; the tips stand at 11.25, 33.75, 56.25 and 78.75 degrees (textbooks of drafting).
 */
public final class SunriseCorner {

    /** A quarter sun of four rays. */
    public static Block block(Length side) {
        return block(side, 4);
    }

    /** A quarter sun of so many rays about the bottom left corner. */
    public static Block block(Length side, int rays) {
        if (rays < 2 || rays > 16) {
            throw new IllegalArgumentException("a quarter sun of " + rays + " rays can't be sewn; use 2 to 16");
        }
        Point corner = new Point(0, 1);
        double near = 0.45;
        double far = 0.85;
        Angle part = Angle.degrees(90.0 / rays);
        Angle up = Angle.QUARTER.negated();
        BlockDraft draft = Block.onGrid("Sunrise Corner", 1, side)
                .patch(MEDIUM, Path.from(corner.plus(0, -near)).arcAbout(corner, Angle.QUARTER).lineTo(corner).close());
        for (int i = 0; i < rays; i++) {
            Angle from = up.plus(part.times(i));
            Point foot = corner.plus(Point.polar(near, from));
            Point next = corner.plus(Point.polar(near, from.plus(part)));
            Point tip = corner.plus(Point.polar(far, from.plus(part.dividedBy(2))));
            draft = draft.patch(DARK, Path.from(foot).lineTo(tip).lineTo(next).arcTo(foot, -Math.tan(part.inRadians() / 4)).close());
        }
        for (int i = 0; i <= rays; i++) {
            Angle at = up.plus(part.times(i));
            Angle from = i == 0 ? at : at.minus(part.dividedBy(2));
            Angle to = i == rays ? at : at.plus(part.dividedBy(2));
            draft = draft.patch(LIGHT, Path.from(corner.plus(Point.polar(near, at))).lineTo(corner.plus(Point.polar(far, from)))
                    .arcAbout(corner, to.minus(from)).close());
        }
        return draft.patch(BACKGROUND, Path.from(corner.plus(0, -far)).arcAbout(corner, Angle.QUARTER)
                .lineTo(1, 1).lineTo(1, 0).lineTo(0, 0).close()).block();
    }
}
