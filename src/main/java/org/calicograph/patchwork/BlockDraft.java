package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A block being drafted on graph paper. Coordinates are squares of the grid from the top left corner;
 * fractions of a square are allowed. Each step returns a draft of its own, and {@link #block} ends the
 * drafting: there the covering law is checked.
 */
public final class BlockDraft {

    private final String name;
    private final Box sheet;
    private final Transform toInches;
    private final double across;
    private final double down;
    private final List<Patch> patches;

    private BlockDraft(String name, Box sheet, Transform toInches, double across, double down, List<Patch> patches) {
        this.name = name;
        this.sheet = sheet;
        this.toInches = toInches;
        this.across = across;
        this.down = down;
        this.patches = patches;
    }

    static BlockDraft onGrid(String name, int across, int down, Length width, Length height) {
        if (across < 1 || down < 1) {
            throw new DesignException("block '" + name + "' is drafted on " + across + " x " + down
                    + " squares; use at least 1 x 1");
        }
        if (!width.isPositive() || !height.isPositive()) {
            throw new DesignException("block '" + name + "' is " + width + " x " + height + "; use a size above 0");
        }
        Box sheet = Box.of(width, height);
        return new BlockDraft(name, sheet, Transform.scale(sheet.width() / across, sheet.height() / down), across, down, List.of());
    }

    private BlockDraft with(List<Patch> more) {
        List<Patch> all = new ArrayList<>(patches);
        all.addAll(more);
        return new BlockDraft(name, sheet, toInches, across, down, all);
    }

    private BlockDraft with(Role role, Path grid) {
        Region shape = Region.of(grid.transformed(toInches));
        return with(List.of(Patch.of(Integer.toString(patches.size() + 1), role, shape)));
    }

    /** A square of the given side with its top left corner at a crossing of the grid. */
    public BlockDraft square(Role role, double x, double y, double side) {
        return rectangle(role, x, y, side, side);
    }

    /** A rectangle with its upper left corner at x, y, so wide and so high, all in units of the grid. */
    public BlockDraft rectangle(Role role, double x, double y, double width, double height) {
        return with(role, Path.rectangle(new Box(x, y, x + width, y + height)));
    }

    /** A patch with straight sides: x and y of each corner in turn. */
    public BlockDraft patch(Role role, double... corners) {
        if (corners.length < 6 || corners.length % 2 != 0) {
            throw new DesignException("a patch of block '" + name + "' has " + corners.length
                    + " numbers; give x and y for each of at least 3 corners");
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            points.add(new Point(corners[i], corners[i + 1]));
        }
        return with(role, Path.polygon(points));
    }

    /** A patch with any closed outline, curved or not, in squares of the grid. */
    public BlockDraft patch(Role role, Path outline) {
        return with(role, outline);
    }

    /** Two triangles in a square, parted from bottom left to top right. */
    public BlockDraft halvesRising(double x, double y, double side, Role upperLeft, Role lowerRight) {
        return patch(upperLeft, x, y, x + side, y, x, y + side).patch(lowerRight, x + side, y, x + side, y + side, x, y + side);
    }

    /** Two triangles in a square, parted from top left to bottom right. */
    public BlockDraft halvesFalling(double x, double y, double side, Role upperRight, Role lowerLeft) {
        return patch(upperRight, x, y, x + side, y, x + side, y + side).patch(lowerLeft, x, y, x + side, y + side, x, y + side);
    }

    /** Four triangles in a square, parted along both diagonals. */
    public BlockDraft quarters(double x, double y, double side, Role top, Role right, Role bottom, Role left) {
        double m = side / 2;
        return patch(top, x, y, x + side, y, x + m, y + m)
                .patch(right, x + side, y, x + side, y + side, x + m, y + m)
                .patch(bottom, x + side, y + side, x, y + side, x + m, y + m)
                .patch(left, x, y + side, x, y, x + m, y + m);
    }

    /** A goose flying up: a triangle on its long side, twice as wide as high, with a sky triangle on either side. */
    public BlockDraft gooseUp(double x, double y, double height, Role goose, Role sky) {
        double w = 2 * height;
        return patch(sky, x, y, x + height, y, x, y + height).patch(goose, x + height, y, x + w, y + height, x, y + height)
                .patch(sky, x + height, y, x + w, y, x + w, y + height);
    }

    /** Everything drafted so far, repeated at four quarter turns about the middle of a square sheet. */
    public BlockDraft turnedFourTimes() {
        return turned(4);
    }

    /** Everything drafted so far, repeated so many times in even turns about the middle of the sheet. */
    public BlockDraft turned(int times) {
        if (times == 4 && across != down) {
            throw new DesignException("block '" + name + "' is " + across + " x " + down
                    + " squares and can't be turned by a quarter onto itself; draft it on a square sheet");
        }
        List<Transform> turns = new ArrayList<>();
        for (int turn = 1; turn < times; turn++) {
            turns.add(Transform.turn(Angle.turn(turn, times), sheet.centre()));
        }
        return copied(turns);
    }

    /** Everything drafted so far, and its mirror image in the upright middle of the sheet. */
    public BlockDraft mirrored() {
        return copied(List.of(Transform.mirrorAcross(sheet.centre().x())));
    }

    private BlockDraft copied(List<Transform> places) {
        List<Patch> more = new ArrayList<>();
        for (Transform place : places) {
            for (Patch p : patches) {
                more.add(p.transformed(place).named(Integer.toString(patches.size() + more.size() + 1)));
            }
        }
        return with(more);
    }

    /**
     * The finished block.
     *
     * @throws DesignException if the patches don't cover the sheet
     */
    public Block block() {
        return Block.of(name, Region.rectangle(sheet), patches);
    }
}
