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
 * Six-Pointed Star: six diamonds of 60 degrees round the middle and six more of ground between them make a hexagon; all are set in.
 *
 * <p>Drafting: all diamonds have one side; the hexagon's side is twice as long (any textbook of geometry).
 */
public final class SixPointedStar {

    /** A star of the given finished width, across the hexagon's corners. */
    public static Block block(Length width) {
        double s = width.inInches() / 4;
        List<Patch> patches = new ArrayList<>();
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Point a = Point.polar(s, Angle.degrees(60 * i));
            Point b = Point.polar(s, Angle.degrees(60 * (i + 1)));
            Point tip = a.plus(b);
            Point before = a.plus(Point.polar(s, Angle.degrees(60 * (i - 1))));
            patches.add(Patch.of("star" + (i + 1), i % 2 == 0 ? DARK : MEDIUM, Region.polygon(Point.ORIGIN, a, tip, b)));
            patches.add(Patch.of("ground" + (i + 1), BACKGROUND, Region.polygon(a, before, a.times(2), tip)));
            rim.add(a.times(2));
        }
        return Block.of("Six-Pointed Star", Region.of(Path.polygon(rim)), patches);
    }
}
