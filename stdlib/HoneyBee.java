package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Block;

/**
 * Honey Bee: a nine patch in a frame, with a body and two wings laid at each of its corners.
 *
 * <p>Drafting: seven squares of graph paper each way, three of them for the nine patch; bodies and wings are one shape between two arcs
 * (common practice; the shape's proportions from memory).
 */
public final class HoneyBee {

    /** The pieced ground of the given finished side. */
    public static Block ground(Length side) {
        var draft = Block.onGrid("Honey Bee ground", 7, side)
                .square(BACKGROUND, 0, 0, 2).rectangle(BACKGROUND, 2, 0, 3, 2).turnedFourTimes();
        for (int i = 0; i < 9; i++) {
            draft = draft.square(i % 2 == 0 ? MEDIUM : BACKGROUND, 2 + i % 3, 2 + i / 3, 1);
        }
        return draft.block();
    }

    /** The ground with its bees. */
    public static Applique applique(Length side) {
        double unit = side.inInches() / 7;
        Point corner = new Point(2 * unit, 2 * unit);
        Applique bees = Applique.on("Honey Bee", ground(side));
        for (int wing = -1; wing <= 1; wing++) {
            Point foot = Point.polar(0.15 * unit, Angle.ZERO);
            Point tip = Point.polar((wing == 0 ? 1.9 : 1.6) * unit, Angle.ZERO);
            Region petal = Region.of(Path.from(foot).arcTo(tip, 0.45).arcTo(foot, 0.45).close());
            Transform lie = Transform.turn(Angle.degrees(-135 + 72 * wing)).then(Transform.move(corner));
            bees = bees.layRound(wing == 0 ? DARK : ACCENT, petal.transformed(lie), 4);
        }
        return bees;
    }
}
