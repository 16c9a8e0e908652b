package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A round that makes a square a regular octagon, and the octagon a square again. Where no width is given,
 * the octagon's side is that of the square inside, and its width 1 + root 2 of it: then all its parts are
 * rectangles and half-square triangles.
 *
 * @param sides     the cloth of the four parts along the square's sides
 * @param diagonals the cloth of the four parts at the square's corners
 * @param corners   the cloth beyond the octagon
 * @param width     how far the octagon reaches beyond the square, finished; more than 0.207 of the square's side
 */
public record OctagonRound(Fabric sides, Fabric diagonals, Fabric corners, Optional<Length> width) implements Round {

    /** The same round, with the octagon reaching so far beyond the square. */
    public OctagonRound wide(Length reach) {
        return new OctagonRound(sides, diagonals, corners, Optional.of(reach));
    }

    /** The four parts at the corners of the square in another cloth. */
    public OctagonRound diagonals(Fabric other) {
        return new OctagonRound(sides, other, corners, width);
    }

    /** The side of a regular octagon that is so wide from side to side. */
    public static Length side(Length across) {
        return across.times(Math.sqrt(2) - 1);
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Length side = Frame.requireSquare(inside, "octagon " + number);
        double a = inside.outline().bounds().width();
        double least = a / (2 + 2 * Math.sqrt(2));
        double w = width.map(Length::inInches).orElse(a * Math.sqrt(0.5));
        if (w <= least + Cover.TOLERANCE) {
            throw new DesignException("octagon " + number + " reaches " + Length.inches(w) + " beyond a square of " + side
                    + ", whose corners stick out of it; let it reach more than " + Length.inches(least).roundedUpTo(Length.inches(1, 8)));
        }
        Length total = Length.inches(a + 2 * w);
        double c = (a + 2 * w) / (2 + Math.sqrt(2));
        Frame f = new Frame(inside, Length.inches(w), side, side);
        Region along = Region.polygon(new Point(c, 0), new Point(total.inInches() - c, 0), new Point(w + a, w), new Point(w, w));
        Region diagonal = Region.polygon(new Point(c, 0), new Point(w, w), new Point(0, c));
        Region outer = Region.polygon(new Point(0, 0), new Point(c, 0), new Point(0, c));
        List<Placed> parts = new ArrayList<>();
        for (int s = 0; s < 4; s++) {
            parts.add(Placed.plain(id + "-" + PiecedBorder.SIDES.get(s), "octagon side", sides, along).moved(f.side(s, true)));
            parts.add(Placed.plain(id + "-diagonal" + (s + 1), "octagon diagonal", diagonals, diagonal).moved(f.corner(s)));
            parts.add(Placed.plain(id + "-corner" + (s + 1), "octagon corner", corners, outer).moved(f.corner(s)));
        }
        return f.with(id, parts);
    }
}
