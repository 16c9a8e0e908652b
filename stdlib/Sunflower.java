package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * Sunflower: kites round a hub, in a circle set into a square.
 *
 * <p>Drafting: divide the circle into as many parts as there are kites; their shoulders meet halfway between them, at three quarters of the radius (common practice; the share from memory).
 */
public final class Sunflower {

    /** A sunflower of twelve kites. */
    public static Block block(Length side) {
        return block(side, 12);
    }

    /** A sunflower of so many kites in a square of the given finished side. */
    public static Block block(Length side, int kites) {
        if (kites < 6 || kites > 32) {
            throw new IllegalArgumentException("a sunflower of " + kites + " kites can't be sewn; use 6 to 32");
        }
        double s = side.inInches();
        Point middle = new Point(s / 2, s / 2);
        double hub = 0.14 * s;
        double far = 0.46 * s;
        double shoulder = 0.75 * far;
        Angle part = Angle.turn(1, kites);
        double bulge = Math.tan(part.inRadians() / 4);
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < kites; i++) {
            Angle up = part.times(i).minus(Angle.QUARTER);
            Angle next = part.times(i + 1 == kites ? 0 : i + 1).minus(Angle.QUARTER);
            Point foot = middle.plus(Point.polar(hub, up));
            Point tip = middle.plus(Point.polar(far, up));
            Point left = middle.plus(Point.polar(shoulder, up.minus(part.dividedBy(2))));
            Point right = middle.plus(Point.polar(shoulder, up.plus(part.dividedBy(2))));
            Point foot2 = middle.plus(Point.polar(hub, next));
            Point tip2 = middle.plus(Point.polar(far, next));
            patches.add(Patch.of("kite" + (i + 1), i % 2 == 0 ? DARK : MEDIUM, Region.polygon(foot, left, tip, right)));
            patches.add(Patch.of("in" + (i + 1), ACCENT, Region.of(Path.from(foot).lineTo(right).lineTo(foot2).arcTo(foot, -bulge).close())));
            patches.add(Patch.of("out" + (i + 1), LIGHT, Region.of(Path.from(right).lineTo(tip).arcTo(tip2, bulge).lineTo(right).close())));
        }
        patches.add(Patch.of("hub", MEDIUM, Region.of(Path.circle(middle, hub))));
        Region sheet = Region.rectangle(side, side);
        patches.add(Patch.of("ground", BACKGROUND, new Region(sheet.outer(), List.of(Path.circle(middle, far)))));
        return Block.of("Sunflower", sheet, patches);
    }
}
