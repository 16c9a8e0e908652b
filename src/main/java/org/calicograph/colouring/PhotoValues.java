package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.Lab;
import org.calicograph.colour.Photo;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * A photograph reduced to a few values on a grid. The values are even steps of lightness (CIE L*) from the
 * darkest cell to the lightest; a cell's lightness is that of the mean of the light its pixels give.
 *
 * <p>As patches the values have roles, {@code value 1} the darkest, so that any cloth can be put in for each.
 */
public final class PhotoValues implements Drawable {

    private static final int MOST_CELLS = 40_000;

    private final int[][] grid;
    private final List<Fabric> fabrics;

    private PhotoValues(int[][] grid, List<Fabric> fabrics) {
        this.grid = grid;
        this.fabrics = List.copyOf(fabrics);
    }

    /**
     * @param across cells across; those down follow from the photograph's proportions
     * @param values 2 to 12
     * @throws IllegalArgumentException if there are more cells than pixels, more than 40 000, or too few or many values
     */
    public static PhotoValues of(Photo photo, int across, int values) {
        int down = (int) Math.max(1, Math.round((double) across * photo.height() / photo.width()));
        if (across < 1 || across > photo.width() || down > photo.height() || (long) across * down > MOST_CELLS) {
            throw new IllegalArgumentException("a photograph of " + photo.width() + " x " + photo.height() + " pixels can't be reduced to " + across
                    + " cells across; use 1 to " + Math.min(photo.width(), 200));
        }
        if (values < 2 || values > 12) {
            throw new IllegalArgumentException("a photograph can't be reduced to " + values + " values; use 2 to 12");
        }
        double[][] light = new double[down][across];
        double least = 100;
        double most = 0;
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                light[row][column] = lightness(photo, column * photo.width() / across, row * photo.height() / down,
                        (column + 1) * photo.width() / across, (row + 1) * photo.height() / down);
                least = Math.min(least, light[row][column]);
                most = Math.max(most, light[row][column]);
            }
        }
        int[][] grid = new int[down][across];
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                double share = most - least < 1e-9 ? 0 : (light[row][column] - least) / (most - least);
                grid[row][column] = Math.min(values - 1, (int) (share * values));
            }
        }
        List<Fabric> fabrics = new ArrayList<>();
        for (int v = 0; v < values; v++) {
            double value = least + (most - least) * (v + 0.5) / values;
            fabrics.add(Fabric.of("value " + (v + 1), new Lab(value, 0, 0, Lab.White.D65).xyz().linear().clipped()));
        }
        return new PhotoValues(grid, fabrics);
    }

    private static double lightness(Photo photo, int left, int top, int right, int bottom) {
        int w = right - left;
        Photo cell = Photo.drawn(w, bottom - top, (x, y) -> photo.pixel(left + x, top + y));
        return cell.meanColour().value();
    }

    /** The same with cloth of one's own for the values, the darkest first. */
    public PhotoValues in(List<Fabric> own) {
        if (own.size() != fabrics.size()) {
            throw new IllegalArgumentException(fabrics.size() + " values can't be shown in " + own.size() + " fabrics; give one for each, the darkest first");
        }
        return new PhotoValues(grid, own);
    }

    /** How many cells the grid has across. */
    public int across() {
        return grid[0].length;
    }

    /** How many cells the grid has down. */
    public int down() {
        return grid.length;
    }

    /** The value of a cell, from 1 for the darkest. */
    public int value(int column, int row) {
        return grid[row][column] + 1;
    }

    private Patch patch(String id, int value, Region shape) {
        return new Patch(id, Role.of("value " + (value + 1)), fabrics.get(value), shape);
    }

    /** A block of squares, one for each cell, named by row and column. */
    public Block squares(Length cell) {
        double s = cell.inInches();
        List<Patch> patches = new ArrayList<>();
        for (int row = 0; row < down(); row++) {
            for (int column = 0; column < across(); column++) {
                Box box = new Box(column * s, row * s, (column + 1) * s, (row + 1) * s);
                patches.add(patch("r" + (row + 1) + "c" + (column + 1), grid[row][column], Region.rectangle(box)));
            }
        }
        return Block.of("Squares of value", Region.rectangle(cell.times(across()), cell.times(down())), patches);
    }

    /**
     * A block of traced shapes: cells of one value that touch become one patch, edges between patches are
     * drawn straight where they run in steps, and patches of fewer cells than asked go to the neighbour
     * that they share most edge with.
     *
     * @param least 1 or more cells
     */
    public Block traced(Length width, int least) {
        if (!width.isPositive() || least < 1) {
            throw new IllegalArgumentException("a photograph can't be traced " + width + " wide with at least " + least
                    + " cells in a patch; use a width above 0 and 1 cell or more");
        }
        double cell = width.inInches() / across();
        List<Patch> patches = new ArrayList<>();
        for (TracedValues.Shape shape : TracedValues.of(grid, least)) {
            patches.add(patch("" + (patches.size() + 1), shape.value(), shape.region().transformed(Transform.scale(cell))));
        }
        return Block.of("Traced values", Region.rectangle(new Box(0, 0, across() * cell, down() * cell)), patches);
    }

    /** How many squares of each value there are. */
    public Table table() {
        Table table = Table.of("Squares by value", "value", "fabric", "L*", "squares");
        for (int v = 0; v < fabrics.size(); v++) {
            int count = 0;
            for (int[] row : grid) {
                for (int each : row) {
                    count += each == v ? 1 : 0;
                }
            }
            Colour colour = fabrics.get(v).colour();
            table = table.row(v + 1, fabrics.get(v).name(), Math.round(colour.value()), count);
        }
        return table;
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(TopPicture.of(squares(Length.inches(1)), 6), across() + " x " + down() + " cells in " + fabrics.size() + " values"),
                Exhibit.of(table()));
    }
}
