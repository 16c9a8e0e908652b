package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Block;

/**
 * Laurel Wreath: a ring of stem on a plain ground, leaves in pairs along it and berries between.
 *
 * <p>Drafting: the ring's radius is three tenths of the side, its parts come from dividing the circle evenly (common practice; the shares from memory).
 */
public final class LaurelWreath {

    /** A wreath of twelve pairs of leaves. */
    public static Applique applique(Length side) {
        return applique(side, 12);
    }

    /** A wreath of so many pairs of leaves on a square ground of the given finished side. */
    public static Applique applique(Length side, int pairs) {
        if (pairs < 4 || pairs > 20) {
            throw new IllegalArgumentException("a wreath of " + pairs + " pairs of leaves can't be laid; use 4 to 20");
        }
        double s = side.inInches();
        Point middle = new Point(s / 2, s / 2);
        double r = 0.3 * s;
        double stem = 0.009 * s;
        Region ring = new Region(Path.circle(middle, r + stem), List.of(Path.circle(middle, r - stem)));
        Region leaf = Region.of(Path.from(0, 0).arcTo(new Point(0.14 * s, 0), 0.4).arcTo(new Point(0, 0), 0.4).close());
        double gap = 0.012 * s;
        Transform out = Transform.turn(Angle.degrees(-55)).then(Transform.move(middle.x(), middle.y() - r - gap));
        Transform in = Transform.turn(Angle.degrees(50)).then(Transform.move(middle.x(), middle.y() - r + gap));
        Region berry = Region.of(Path.circle(middle.plus(Point.polar(r + 0.045 * s, Angle.turn(-1, 4).minus(Angle.turn(1, 5L * pairs)))), 0.02 * s));
        return Applique.on("Laurel Wreath", Block.plain(BACKGROUND.standIn(), side, side))
                .lay(DARK, ring)
                .layRound(MEDIUM, leaf.transformed(out), pairs)
                .layRound(MEDIUM, leaf.transformed(Transform.scale(0.8)).transformed(in), pairs)
                .layRound(ACCENT, berry, pairs);
    }
}
