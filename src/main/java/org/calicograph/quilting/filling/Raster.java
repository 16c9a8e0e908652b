package org.calicograph.quilting.filling;

import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * A fine square grid over a region: which of its points lie within, and how far each is from the edge.
 *
 * <p>Points of even column and row are <em>cells</em>; those with both odd are the <em>corners</em>
 * between four cells; the rest are the middles of the sides between two cells. Cut along the diagonals
 * from cell to corner, the grid is a triangulation.
 */
public final class Raster {

    final int columns;
    final int rows;
    /** Between neighbouring points, in inches. */
    public final double pitch;
    /** For each point, the nearest point of the region's edge. */
    public final Flood edge;
    private final double left;
    private final double top;
    private final boolean[] inside;
    private final boolean[] open;

    public Raster(Region region, double pitch) {
        this.pitch = pitch;
        Box b = region.bounds();
        columns = 2 * (int) Math.ceil(b.width() / pitch / 2) + 7;
        rows = 2 * (int) Math.ceil(b.height() / pitch / 2) + 7;
        left = b.centre().x() - (columns - 1) / 2.0 * pitch;
        top = b.centre().y() - (rows - 1) / 2.0 * pitch;
        Polygon area = Polygons.of(region, Math.min(2e-3, pitch / 20));
        edge = new Flood(this);
        boolean[] near = new boolean[size()];
        for (Path path : region.paths()) {
            Point last = null;
            for (Point p : path.flattened(Math.min(2e-3, pitch / 20))) {
                if (last != null) {
                    sample(last, p, near);
                }
                last = p;
            }
        }
        inside = new boolean[size()];
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        for (int v = 1; v < inside.length; v++) {
            inside[v] = near[v] ? locator.locate(new Coordinate(x(v), y(v))) == Location.INTERIOR : v % columns > 0 && inside[v - 1];
        }
        edge.spreadEverywhere();
        open = new boolean[size()];
        for (int v = 0; v < open.length; v++) {
            // Open neighbours are a pitch apart: their clear circles together cover the step between them.
            open[v] = inside[v] && edge.distance(v) > 0.55 * pitch;
        }
    }

    private void sample(Point from, Point to, boolean[] near) {
        int parts = Math.max(1, (int) Math.ceil(from.distance(to) / pitch * 4));
        for (int i = 0; i < parts; i++) {
            Point p = from.towards(to, (i + 0.5) / parts);
            edge.sourceAt(p.x(), p.y());
            int at = before(p.x(), p.y());
            for (int r = -1; r <= 2; r++) {
                for (int c = -1; c <= 2; c++) {
                    near[at + r * columns + c] = true;
                }
            }
        }
    }

    public int size() {
        return columns * rows;
    }

    /** The point of the grid next to the left of and above a place. */
    public int before(double x, double y) {
        return (int) Math.floor((y - top) / pitch) * columns + (int) Math.floor((x - left) / pitch);
    }

    public double x(int point) {
        return left + point % columns * pitch;
    }

    public double y(int point) {
        return top + point / columns * pitch;
    }

    public Point at(int point) {
        return Point.of(x(point), y(point));
    }

    public boolean isInside(int point) {
        return inside[point];
    }

    /** Within the region and clear of its edge. */
    boolean isOpen(int point) {
        return open[point];
    }

    void close(int point) {
        open[point] = false;
    }

    boolean isCell(int point) {
        return point % columns % 2 == 0 && point / columns % 2 == 0;
    }

    boolean isCorner(int point) {
        return point % columns % 2 == 1 && point / columns % 2 == 1;
    }

    /** True if one may step from a cell over the middle of a side, one grid step away, to the next cell. */
    boolean joins(int cell, int step) {
        return open[cell] && open[cell + step] && open[cell + 2 * step];
    }

    /** The steps to the four neighbours of a point. */
    int[] steps() {
        return new int[] {1, columns, -1, -columns};
    }
}
