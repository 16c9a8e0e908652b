package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Butted strips of one fabric, of one width on the sides and another at the ends: the spacer that makes a
 * pieced border come out whole on both.
 *
 * @param sides the finished width on the left and right; may be none
 * @param ends  the finished width at the top and bottom; may be none
 */
public record UnevenBorder(Fabric fabric, Length sides, Length ends) implements Border {

    public UnevenBorder {
        if (sides.compareTo(Length.ZERO) < 0 || ends.compareTo(Length.ZERO) < 0 || sides.isZero() && ends.isZero()) {
            throw new DesignException("a border of " + sides + " on the sides and " + ends + " at the ends can't be sewn; use 0 or more, one above 0");
        }
    }

    /** The wider of the two. */
    @Override
    public Length width() {
        return Length.max(sides, ends);
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Frame.around(inside, width(), number);
        double s = sides.inInches();
        double e = ends.inInches();
        Length across = inside.width().plus(sides.times(2));
        Length down = inside.height().plus(ends.times(2));
        List<Placed> parts = new ArrayList<>();
        parts.add(new Placed("centre", inside, Transform.move(s, e)));
        if (!sides.isZero()) {
            Block strip = Block.plain(fabric, sides, inside.height());
            parts.add(Placed.at(id + "-left", strip, 0, e));
            parts.add(Placed.at(id + "-right", strip, across.inInches() - s, e));
        }
        if (!ends.isZero()) {
            Block strip = Block.plain(fabric, across, ends);
            parts.add(Placed.at(id + "-top", strip, 0, 0));
            parts.add(Placed.at(id + "-bottom", strip, 0, down.inInches() - e));
        }
        return Assembly.of(inside.name() + " with " + id, Region.rectangle(new Box(0, 0, across.inInches(), down.inInches())), parts);
    }
}
