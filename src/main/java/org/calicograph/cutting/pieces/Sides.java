package org.calicograph.cutting.pieces;

import java.util.List;
import org.calicograph.geometry.Point;

/**
 * How far a shape reaches to the left and to the right at every height, in slabs between the heights of its corners, in which both sides are straight.
 *
 * @param heights of the corners, rising; slab i lies between heights i and i + 1
 * @param sides   for each slab how far left and right it reaches at its lower height, then at its upper one
 */
record Sides(double[] heights, double[][] sides) {

    private static final double SAME = 1e-9;

    /** Of a ring of corners. */
    static Sides of(List<Point> ring) {
        double[] heights = ring.stream().mapToDouble(Point::y).sorted().toArray();
        int n = 0;
        for (double h : heights) {
            if (n == 0 || h > heights[n - 1] + SAME) {
                heights[n++] = h;
            }
        }
        heights = java.util.Arrays.copyOf(heights, n);
        double[][] sides = new double[Math.max(0, n - 1)][];
        for (int i = 0; i + 1 < n; i++) {
            sides[i] = slab(ring, heights[i], heights[i + 1]);
        }
        return new Sides(heights, sides);
    }

    private static double[] slab(List<Point> ring, double low, double high) {
        double[] out = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if (Math.min(a.y(), b.y()) <= low + SAME && Math.max(a.y(), b.y()) >= high - SAME) {
                double atLow = at(a, b, low);
                double atHigh = at(a, b, high);
                out[0] = Math.min(out[0], atLow);
                out[1] = Math.max(out[1], atLow);
                out[2] = Math.min(out[2], atHigh);
                out[3] = Math.max(out[3], atHigh);
            }
        }
        return out;
    }

    private static double at(Point a, Point b, double height) {
        double t = Math.min(1, Math.max(0, (height - a.y()) / (b.y() - a.y())));
        return a.x() + (b.x() - a.x()) * t;
    }

    /**
     * How far to the right another shape must be moved so that nowhere it reaches into this one; whatever is hollow towards the side counts as full.
     *
     * @param up how far it is moved up as well
     * @return minus infinity where they don't stand beside each other at all
     */
    double clears(Sides other, double up) {
        double most = Double.NEGATIVE_INFINITY;
        int i = 0;
        int j = 0;
        while (i < sides.length && j < other.sides.length) {
            double low = Math.max(heights[i], other.heights[j] + up);
            double high = Math.min(heights[i + 1], other.heights[j + 1] + up);
            if (high > low + SAME) {
                most = Math.max(most, right(i, low) - other.left(j, low - up));
                most = Math.max(most, right(i, high) - other.left(j, high - up));
            }
            if (heights[i + 1] < other.heights[j + 1] + up) {
                i++;
            } else {
                j++;
            }
        }
        return most;
    }

    private double left(int slab, double height) {
        return between(slab, height, 0);
    }

    private double right(int slab, double height) {
        return between(slab, height, 1);
    }

    private double between(int slab, double height, int side) {
        double t = (height - heights[slab]) / (heights[slab + 1] - heights[slab]);
        return sides[slab][side] + (sides[slab][side + 2] - sides[slab][side]) * t;
    }
}
