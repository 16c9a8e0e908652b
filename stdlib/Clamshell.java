package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * Clamshell: a shell with a round head on a foot between two shoulders, set in rows.
 *
 * <p>Drafting: a half circle above; below, two quarter circles of the same radius about the lower corners (common practice).
 */
public final class Clamshell {

    /** One shell of the given finished width, which is also its height. */
    public static Block block(Length width) {
        double r = width.inInches() / 2;
        Point left = new Point(0, r);
        Point right = new Point(2 * r, r);
        Path shell = Path.from(left).arcAbout(new Point(r, r), Angle.QUARTER).arcTo(right, Math.tan(Math.PI / 8))
                .arcAbout(new Point(2 * r, 2 * r), Angle.QUARTER.negated()).arcTo(left, -Math.tan(Math.PI / 8)).close();
        Region shape = Region.of(shell);
        return Block.of("Clamshell", shape, List.of(Patch.of("1", DARK, shape)));
    }
}
