package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;

/**
 * Rob Peter to Pay Paul: what is taken from the sides of one square is given to the next; set it with its colours exchanged in turn.
 *
 * <p>Drafting: open the compass to the side of the block and strike arcs from corner to corner, of 60 degrees each (common practice).
 */
public final class RobPeter {

    /** One block of the given finished side. */
    public static Block block(Length side) {
        double bulge = Math.tan(Math.PI / 12);
        Point a = new Point(0, 0);
        Point b = new Point(1, 0);
        Point c = new Point(1, 1);
        Point d = new Point(0, 1);
        return Block.onGrid("Rob Peter to Pay Paul", 1, side)
                .patch(LIGHT, Path.from(a).lineTo(b).arcTo(a, bulge).close()).turnedFourTimes()
                .patch(DARK, Path.from(a).arcTo(b, -bulge).arcTo(c, -bulge).arcTo(d, -bulge).arcTo(a, -bulge).close())
                .block();
    }
}
