package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * Dresden Plate: pointed blades round a centre, laid on a ground.
 *
 * <p>Drafting: twenty blades of 18 degrees close the circle: 20 x 18 = 360 (common practice).
 */
public final class DresdenPlate {

    /** A plate of twenty blades. */
    public static Block block(Length side) {
        return block(side, 20);
    }

    /** A plate of so many pointed blades on a square ground of the given finished side. */
    public static Block block(Length side, int blades) {
        if (blades < 6 || blades > 40) {
            throw new IllegalArgumentException("a plate of " + blades + " blades can't be sewn; use 6 to 40");
        }
        Role[] cloth = {DARK, LIGHT, MEDIUM, ACCENT};
        double s = side.inInches();
        Point middle = new Point(s / 2, s / 2);
        double hub = 0.12 * s;
        double shoulder = 0.40 * s;
        double tip = 0.45 * s;
        Angle blade = Angle.turn(1, blades);
        List<Patch> patches = new ArrayList<>();
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < blades; i++) {
            Angle from = blade.times(i);
            Angle to = blade.times(i + 1 == blades ? 0 : i + 1);
            Point in = middle.plus(Point.polar(hub, from));
            Point out = middle.plus(Point.polar(shoulder, from));
            Point point = middle.plus(Point.polar(tip, from.plus(blade.dividedBy(2))));
            Path outline = Path.from(in).lineTo(out).lineTo(point).lineTo(middle.plus(Point.polar(shoulder, to)))
                    .lineTo(middle.plus(Point.polar(hub, to))).arcTo(in, -Math.tan(blade.inRadians() / 4)).close();
            patches.add(Patch.of("" + (i + 1), cloth[i % cloth.length], Region.of(outline)));
            rim.add(out);
            rim.add(point);
        }
        patches.add(Patch.of("hub", BACKGROUND, Region.of(Path.circle(middle, hub))));
        Region sheet = Region.rectangle(side, side);
        patches.add(Patch.of("ground", BACKGROUND, new Region(sheet.outer(), List.of(Path.polygon(rim)))));
        return Block.of("Dresden Plate", sheet, patches);
    }
}
