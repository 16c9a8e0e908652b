package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * Equilateral Triangles: a row of triangles that all have angles of 60 degrees, with a half one at either end.
 *
 * <p>Drafting: the height is 0.866 of the side, half the root of three (any textbook of geometry).
 */
public final class EquilateralTriangles {

    /** A row of so many triangles of the given finished side. */
    public static Block row(Length side, int triangles) {
        if (triangles < 1) {
            throw new IllegalArgumentException("a row of " + triangles + " triangles is none; use 1 or more");
        }
        double s = side.inInches();
        double h = s * Math.sqrt(3) / 2;
        double half = s / 2;
        double width = half * (triangles + 1);
        List<Patch> patches = new ArrayList<>();
        patches.add(Patch.of("first", LIGHT, Region.polygon(new Point(0, 0), new Point(half, 0), new Point(0, h))));
        for (int i = 0; i < triangles; i++) {
            double x = i * half;
            Region shape = i % 2 == 0 ? Region.polygon(new Point(x + half, 0), new Point(x + s, h), new Point(x, h))
                    : Region.polygon(new Point(x, 0), new Point(x + s, 0), new Point(x + half, h));
            patches.add(Patch.of("" + (i + 1), i % 2 == 0 ? DARK : LIGHT, shape));
        }
        double y = triangles % 2 == 0 ? h : 0;
        patches.add(Patch.of("last", triangles % 2 == 0 ? DARK : LIGHT,
                Region.polygon(new Point(width, 0), new Point(width, h), new Point(width - half, y))));
        return Block.of("Equilateral Triangles", Region.rectangle(new org.calicograph.geometry.Box(0, 0, width, h)), patches);
    }

    /** Five triangles, in a row of the given finished width. */
    public static Block block(Length width) {
        return row(width.dividedBy(3), 5);
    }
}
