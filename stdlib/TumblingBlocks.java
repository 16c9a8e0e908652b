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
 * Tumbling Blocks: three 60 degree diamonds make a hexagon that looks like a cube.
 *
 * <p>Drafting: six points on a circle, 60 degrees apart, and its middle; all three diamonds are set in (common practice).
 */
public final class TumblingBlocks {

    /** A hexagon of the given finished side, from point to point upright. */
    public static Block block(Length side) {
        double s = side.inInches();
        Point[] corner = new Point[6];
        for (int i = 0; i < 6; i++) {
            corner[i] = Point.polar(s, Angle.degrees(60 * i - 90));
        }
        Role[] faces = {LIGHT, DARK, MEDIUM};
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int first = (2 * i + 5) % 6;
            patches.add(Patch.of("" + (i + 1), faces[i],
                    Region.polygon(Point.ORIGIN, corner[first], corner[(first + 1) % 6], corner[(first + 2) % 6])));
        }
        return Block.of("Tumbling Blocks", Region.of(Path.polygon(corner)), patches);
    }
}
