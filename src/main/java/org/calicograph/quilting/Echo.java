package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Length;
import org.calicograph.stitching.Route;

/** Lines that follow the edge of a region at a distance, row after row. */
public final class Echo {

    private static final int MOST_ROWS = 2000;
    /** A round within which no circle of twice this part of the spacing has room is a sliver. */
    private static final double SLIVER = 8;

    private Echo() { }

    /** In the ditch: along the seams of the regions themselves, each seam once where a {@link Route} is made of them. */
    public static List<Path> inTheDitch(List<Region> regions) {
        List<Path> paths = new ArrayList<>();
        regions.forEach(r -> paths.addAll(r.paths()));
        return List.copyOf(paths);
    }

    /** One line within the region, the same distance from its edge all round. */
    public static List<Path> outline(Region region, Length distance) {
        return inside(region, distance, distance, 1);
    }

    /** Rows within the region until it is full. */
    public static List<Path> inside(Region region, Length spacing) {
        return inside(region, spacing, spacing, MOST_ROWS);
    }

    /**
     * Rows within the region, the first at a distance from its edge. What is left in the middle and is nowhere wider than a quarter of
     * the spacing gets no round of its own: it would cost a start and a stop, and the row before it is near enough.
     *
     * @param rows at most so many; fewer where the region is full before
     */
    public static List<Path> inside(Region region, Length first, Length spacing, int rows) {
        check(first, spacing, rows);
        List<Path> paths = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            List<Region> left = Offset.inward(region, first.inInches() + row * spacing.inInches());
            if (left.isEmpty()) {
                break;
            }
            for (Region r : left) {
                if (row == 0 || !Offset.inward(r, spacing.inInches() / SLIVER).isEmpty()) {
                    paths.addAll(r.paths());
                }
            }
        }
        return List.copyOf(paths);
    }

    /**
     * Rows around the outside of a shape, as far as the ground reaches; with enough rows they fill it.
     *
     * @param ground the lines stay within it; pieces shorter than a quarter of the spacing are left out
     */
    public static List<Path> around(Region shape, Region ground, Length spacing, int rows) {
        check(spacing, spacing, rows);
        List<Path> paths = new ArrayList<>();
        Trim trim = Trim.within(ground);
        for (int row = 1; row <= Math.min(rows, MOST_ROWS); row++) {
            List<Path> shown = trim.of(Offset.outward(shape, row * spacing.inInches()).paths());
            if (shown.isEmpty()) {
                break;
            }
            shown.stream().filter(p -> p.length() >= spacing.inInches() / 4).forEach(paths::add);
        }
        return List.copyOf(paths);
    }

    private static void check(Length first, Length spacing, int rows) {
        if (first.compareTo(Length.ZERO) < 0 || !spacing.isPositive() || rows < 1) {
            throw new IllegalArgumentException(rows + " rows of echoes, the first at " + first + " and then every " + spacing
                    + ", can't be drawn; use 1 row or more, a spacing above 0");
        }
    }
}
