package org.calicograph.book;

import java.util.List;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/** A quarter of a circle in a corner of a square, two thirds of its side across. */
final class CurvedBlock {

    private CurvedBlock() { }

    static Block shell(double side) {
        double r = side * 2 / 3;
        Path quarter = Path.from(0, 0).lineTo(r, 0).arcAbout(Point.ORIGIN, Angle.QUARTER).lineTo(0, 0).open();
        Path rest = Path.from(r, 0).lineTo(side, 0).lineTo(side, side).lineTo(0, side).lineTo(0, r).arcAbout(Point.ORIGIN, Angle.degrees(-90)).open();
        return Block.of("shell", Region.rectangle(Length.inches(side), Length.inches(side)),
                List.of(Patch.of("1", Role.DARK, Region.of(quarter)), Patch.of("2", Role.LIGHT, Region.of(rest))));
    }
}
