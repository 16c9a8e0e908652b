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
 * Grandmother's Flower Garden: a flower of seven hexagons, pieced over papers.
 *
 * <p>Drafting: regular hexagons; a petal's middle lies the root of three times their side from the flower's (any textbook of geometry).
 */
public final class FlowerGarden {

    /** A flower of the given finished width, across the points of two petals. */
    public static Block block(Length width) {
        double s = width.inInches() / 5;
        double away = s * Math.sqrt(3);
        List<Patch> patches = new ArrayList<>();
        patches.add(Patch.of("1", ACCENT, Region.of(Path.regular(6, Point.ORIGIN, s, Angle.ZERO))));
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Angle out = Angle.degrees(30 + 60 * i);
            Point middle = Point.polar(away, out);
            patches.add(Patch.of("" + (i + 2), i % 2 == 0 ? DARK : MEDIUM, Region.of(Path.regular(6, middle, s, Angle.ZERO))));
            for (int corner = -90; corner <= 30; corner += 60) {
                rim.add(middle.plus(Point.polar(s, out.plus(Angle.degrees(corner)))));
            }
        }
        return Block.of("Grandmother's Flower Garden", Region.of(Path.polygon(rim)), patches);
    }
}
