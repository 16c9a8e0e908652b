package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Strips of one fabric.
 *
 * @param width       finished width
 * @param cornerBlock used only where the corner is a block
 */
public record PlainBorder(Fabric fabric, Length width, Corner corner, Patchwork cornerBlock) implements Border {

    /** How the strips meet. */
    public enum Corner { BUTTED, MITRED, BLOCK }

    /** The strips meet on a seam at 45 degrees. */
    public PlainBorder mitred() {
        return new PlainBorder(fabric, width, Corner.MITRED, cornerBlock);
    }

    /** A block stands in each corner, turned so that its top left is outermost. */
    public PlainBorder corners(Patchwork block) {
        return new PlainBorder(fabric, width, Corner.BLOCK, block);
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        Frame frame = Frame.around(inside, width, number);
        return frame.with(id, switch (corner) {
            case BUTTED -> butted(frame, id);
            case MITRED -> mitred(frame, id);
            case BLOCK -> cornered(frame, id, number);
        });
    }

    private List<Placed> butted(Frame f, String id) {
        Block upright = Block.plain(fabric, width, f.down());
        Block level = Block.plain(fabric, Length.inches(f.fullAcross()), width);
        return List.of(Placed.at(id + "-left", upright, 0, f.w()), Placed.at(id + "-right", upright, f.fullAcross() - f.w(), f.w()),
                Placed.at(id + "-top", level, 0, 0), Placed.at(id + "-bottom", level, 0, f.fullDown() - f.w()));
    }

    private List<Placed> mitred(Frame f, String id) {
        List<Placed> parts = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            double inner = f.length(side).inInches();
            Region shape = Region.of(Path.polygon(new Point(0, 0), new Point(inner + 2 * f.w(), 0),
                    new Point(inner + f.w(), f.w()), new Point(f.w(), f.w())));
            Block strip = Block.plain(fabric.name() + " strip", fabric, shape);
            parts.add(new Placed(id + "-" + PiecedBorder.SIDES.get(side), strip, f.side(side, true)));
        }
        return parts;
    }

    private List<Placed> cornered(Frame f, String id, int number) {
        requireCorner(cornerBlock, width, number);
        List<Placed> parts = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            Block strip = Block.plain(fabric, f.length(side), width);
            parts.add(new Placed(id + "-" + PiecedBorder.SIDES.get(side), strip, f.side(side, false)));
            parts.add(new Placed(id + "-corner" + (side + 1), cornerBlock, f.corner(side)));
        }
        return parts;
    }

    static void requireCorner(Patchwork block, Length width, int number) {
        boolean fits = block.isRectangular() && block.width().minus(width).abs().inInches() <= Cover.TOLERANCE / 2
                && block.height().minus(width).abs().inInches() <= Cover.TOLERANCE / 2;
        if (!fits) {
            String size = block.width().equals(block.height()) ? block.width().toString() : block.width() + " x " + block.height();
            throw new DesignException("Border " + number + " is " + width + " wide but its corner block is " + size
                    + "; make them equal or mitre the corner.");
        }
    }
}
