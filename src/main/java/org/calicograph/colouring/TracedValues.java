package org.calicograph.colouring;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.locationtech.jts.coverage.CoverageSimplifier;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Geometry;

/** Cells of one value grown together into shapes that cover the grid; the inner edges are simplified as one, so that no gap opens. */
final class TracedValues {

    /** How far an edge may move, in cells: a stair of cells becomes a slope. */
    private static final double TOLERANCE = 1.6;

    /** @param region in cells */
    record Shape(int value, Region region) { }

    private final int[][] grid;
    private final int down;
    private final int across;
    private int[][] label;
    private int count;

    private TracedValues(int[][] grid) {
        this.grid = grid;
        this.down = grid.length;
        this.across = grid[0].length;
    }

    static List<Shape> of(int[][] values, int least) {
        int[][] copy = new int[values.length][];
        for (int i = 0; i < values.length; i++) {
            copy[i] = values[i].clone();
        }
        TracedValues traced = new TracedValues(copy);
        traced.findParts();
        while (traced.mergeSmallest(least)) {
            traced.findParts();
        }
        return traced.shapes();
    }

    /** Gives every part, cells of one value joined by edges, a number of its own. */
    private void findParts() {
        label = new int[down][across];
        count = 0;
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                if (label[row][column] == 0) {
                    fill(row, column, ++count);
                }
            }
        }
    }

    private void fill(int row, int column, int number) {
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {row, column});
        label[row][column] = number;
        while (!open.isEmpty()) {
            int[] at = open.pop();
            for (int[] next : around(at[0], at[1])) {
                if (label[next[0]][next[1]] == 0 && grid[next[0]][next[1]] == grid[row][column]) {
                    label[next[0]][next[1]] = number;
                    open.push(next);
                }
            }
        }
    }

    private List<int[]> around(int row, int column) {
        List<int[]> cells = new ArrayList<>();
        for (int[] step : new int[][] {{-1, 0}, {0, 1}, {1, 0}, {0, -1}}) {
            int r = row + step[0];
            int c = column + step[1];
            if (r >= 0 && c >= 0 && r < down && c < across) {
                cells.add(new int[] {r, c});
            }
        }
        return cells;
    }

    /** Parts too small take the value that they share most edge with, the smallest sizes first; false if none is left. */
    private boolean mergeSmallest(int least) {
        int[] size = new int[count + 1];
        for (int[] row : label) {
            for (int each : row) {
                size[each]++;
            }
        }
        int smallest = Integer.MAX_VALUE;
        for (int i = 1; i <= count; i++) {
            smallest = Math.min(smallest, size[i]);
        }
        if (smallest >= least || count == 1) {
            return false;
        }
        List<Map<Integer, Integer>> borders = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            borders.add(new TreeMap<>());
        }
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                for (int[] next : around(row, column)) {
                    if (label[next[0]][next[1]] != label[row][column]) {
                        borders.get(label[row][column]).merge(label[next[0]][next[1]], 1, Integer::sum);
                    }
                }
            }
        }
        // Of neighbours that are both small only one gives way at a time.
        int[] into = new int[count + 1];
        for (int i = 1; i <= count; i++) {
            if (size[i] == smallest && borders.get(i).keySet().stream().noneMatch(b -> into[b] != 0)) {
                into[i] = borders.get(i).entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
            }
        }
        int[] valueOf = new int[count + 1];
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                valueOf[label[row][column]] = grid[row][column];
            }
        }
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                int target = into[label[row][column]];
                if (target != 0) {
                    grid[row][column] = valueOf[target];
                }
            }
        }
        return true;
    }

    private List<Shape> shapes() {
        List<List<Geometry>> cells = new ArrayList<>();
        int[] value = new int[count];
        for (int i = 0; i < count; i++) {
            cells.add(new ArrayList<>());
        }
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                Region cell = Region.rectangle(new Box(column, row, column + 1, row + 1));
                cells.get(label[row][column] - 1).add(Polygons.of(cell, Region.ACCURACY));
                value[label[row][column] - 1] = grid[row][column];
            }
        }
        Geometry[] parts = new Geometry[count];
        for (int i = 0; i < count; i++) {
            parts[i] = CoverageUnion.union(cells.get(i).toArray(Geometry[]::new));
        }
        Geometry[] simple = CoverageSimplifier.simplifyInner(parts, TOLERANCE);
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            for (Region region : Polygons.regions(simple[i])) {
                shapes.add(new Shape(value[i], region));
            }
        }
        return shapes;
    }
}
