package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.geometry.Point;

/**
 * For each point of a {@link Raster} the nearest of some sources, found by spreading from point to
 * neighbour, nearest first within a quarter of a grid step. Distances are straight ones to the source
 * that was carried along. Costs grow with the points.
 */
public final class Flood {

    private final Raster raster;
    private final float[] distance;
    private final int[] source;
    private final int[] before;
    private double[] xs = new double[64];
    private double[] ys = new double[64];
    private int sources;
    private final List<int[]> shelves = new ArrayList<>();
    private int[] counts = new int[64];
    private int nearest;
    private int waiting;

    public Flood(Raster raster) {
        this.raster = raster;
        distance = new float[raster.size()];
        source = new int[raster.size()];
        before = new int[raster.size()];
        Arrays.fill(distance, Float.POSITIVE_INFINITY);
        Arrays.fill(source, -1);
        Arrays.fill(before, -1);
    }

    private int source(double x, double y) {
        if (sources == xs.length) {
            xs = Arrays.copyOf(xs, 2 * sources);
            ys = Arrays.copyOf(ys, 2 * sources);
        }
        xs[sources] = x;
        ys[sources] = y;
        return sources++;
    }

    /** A new source at a point of the raster itself; sources are numbered from 0. */
    void sourceAt(int point) {
        offer(point, source(raster.x(point), raster.y(point)), -1);
    }

    /** A new source between points of the raster. */
    public void sourceAt(double x, double y) {
        int s = source(x, y);
        int at = raster.before(x, y);
        offer(at, s, -1);
        offer(at + 1, s, -1);
        offer(at + raster.columns, s, -1);
        offer(at + raster.columns + 1, s, -1);
    }

    private void offer(int point, int from, int previous) {
        float d = (float) Math.hypot(raster.x(point) - xs[from], raster.y(point) - ys[from]);
        if (d < distance[point]) {
            distance[point] = d;
            source[point] = from;
            before[point] = previous;
            push(point);
        }
    }

    /** To all eight neighbours, across everything. */
    public void spreadEverywhere() {
        int w = raster.columns;
        int[] around = {1, -1, w, -w, w + 1, w - 1, -w + 1, -w - 1};
        while (waiting > 0) {
            int v = next();
            if (v < 0) {
                continue;
            }
            int column = v % w;
            int row = v / w;
            for (int step : around) {
                int to = v + step;
                if (to >= 0 && to < distance.length && Math.abs(to % w - column) <= 1 && Math.abs(to / w - row) <= 1) {
                    offer(to, source[v], v);
                }
            }
        }
    }

    /** From cell to cell within the region; in the end each source's cells hang together. */
    void spreadOverCells() {
        spreadWithin();
        // A cell whose forerunner went to another source later may be cut off from its own: it goes to a neighbour's.
        int[] queue = new int[distance.length / 2];
        boolean[] rooted = new boolean[distance.length];
        int count = 0;
        for (int v = 0; v < distance.length; v++) {
            if (distance[v] == 0) {
                queue[count++] = v;
                rooted[v] = true;
            }
        }
        for (boolean own : new boolean[] {true, false}) {
            for (int i = 0; i < count; i++) {
                int v = queue[i];
                for (int step : raster.steps()) {
                    int to = v + 2 * step;
                    if (raster.joins(v, step) && !rooted[to] && (!own || source[to] == source[v])) {
                        rooted[to] = true;
                        source[to] = source[v];
                        before[to] = v;
                        queue[count++] = to;
                    }
                }
            }
        }
    }

    private void spreadWithin() {
        while (waiting > 0) {
            int v = next();
            for (int step : v < 0 ? new int[0] : raster.steps()) {
                if (raster.joins(v, step)) {
                    offer(v + 2 * step, source[v], v);
                }
            }
        }
    }

    public double distance(int point) {
        return distance[point];
    }

    /** The number of the source that a point belongs to, or -1. */
    int owner(int point) {
        return source[point];
    }

    public Point sourceOf(int point) {
        return Point.of(xs[source[point]], ys[source[point]]);
    }

    /** The point from which the source's flood arrived, or -1. */
    int before(int point) {
        return before[point];
    }

    int sources() {
        return sources;
    }

    // --- what waits, by rounded distance, nearest first

    private void push(int point) {
        int shelf = shelf(point);
        while (shelf >= shelves.size()) {
            shelves.add(new int[16]);
        }
        counts = counts.length > shelf ? counts : Arrays.copyOf(counts, 2 * shelf + 2);
        int[] entries = shelves.get(shelf);
        if (counts[shelf] == entries.length) {
            entries = Arrays.copyOf(entries, 2 * entries.length);
            shelves.set(shelf, entries);
        }
        entries[counts[shelf]++] = point;
        nearest = Math.min(nearest, shelf);
        waiting++;
    }

    private int shelf(int point) {
        return (int) (distance[point] / raster.pitch * 4);
    }

    /** The nearest waiting point, or -1 if it has been reached nearer since. */
    private int next() {
        while (counts[nearest] == 0) {
            nearest++;
        }
        waiting--;
        int point = shelves.get(nearest)[--counts[nearest]];
        return shelf(point) == nearest ? point : -1;
    }
}
