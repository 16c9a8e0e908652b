package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Point;

/**
 * The line half way between the ways through {@link Rooms} and their walls: one round for each part
 * of the region, since the ways of a part are one tree and the walls hang together.
 *
 * <p>Traced through the triangles of the {@link Raster} (each has one side cut, or two, or none), so it
 * never touches itself.
 */
public final class Contour {

    private final Raster raster;
    /** The distance to the nearest way less that to the nearest wall. */
    private final float[] height;
    private final float[] room;

    public Contour(Raster raster, Flood ways, Flood walls) {
        this.raster = raster;
        height = new float[raster.size()];
        room = new float[raster.size()];
        for (int v = 0; v < height.length; v++) {
            double edge = raster.edge.distance(v);
            double wall = raster.isInside(v) ? Math.min(edge, walls.distance(v)) : -edge;
            height[v] = (float) (ways.distance(v) - wall);
            room[v] = (float) Math.max(0, wall);
        }
    }

    /** @param room the distance to the nearest wall or edge, in inches */
    record Vertex(Point at, double room) { }

    /** Nearer to a wall than to a way. */
    public boolean isWallSide(int point) {
        return height[point] >= 0;
    }

    public List<SmoothRound> rounds() {
        boolean[] seen = new boolean[2 * raster.size()];
        List<SmoothRound> rounds = new ArrayList<>();
        for (int v = 0; v + 1 < raster.size(); v++) {
            if (height[v] < 0 != height[v + 1] < 0 && !seen[2 * v]) {
                rounds.add(SmoothRound.of(height[v] < 0 ? round(v, v + 1, seen) : round(v + 1, v, seen), raster.pitch));
            }
        }
        return rounds;
    }

    /** Closed, the first vertex not repeated. */
    private List<Vertex> round(int low, int high, boolean[] seen) {
        List<Vertex> round = new ArrayList<>();
        int u = low;
        int v = high;
        do {
            int step = v - u;
            if (step == 1 || step == -1) {
                seen[2 * Math.min(u, v)] = true;
            }
            round.add(vertex(u, v));
            int third = third(u, v);
            if (height[third] < 0) {
                u = third;
            } else {
                v = third;
            }
        } while (u != low || v != high);
        return round;
    }

    private Vertex vertex(int u, int v) {
        double share = Math.max(0.02, Math.min(0.98, height[u] / (height[u] - height[v])));
        return new Vertex(raster.at(u).towards(raster.at(v), share), room[u] + (room[v] - room[u]) * share);
    }

    /** The third corner of the triangle to the left of the step from one point to its neighbour. */
    private int third(int u, int v) {
        int w = raster.columns;
        int dx = v % w - u % w;
        int dy = v / w - u / w;
        if (dx != 0 && dy != 0) {
            // From cell to corner or back: over the middle of the side to the left.
            return dx == dy ? u + dx : u + dy * w;
        }
        int middle = raster.isCell(u) || raster.isCorner(u) ? v : u;
        return middle + dy - dx * w;
    }
}
