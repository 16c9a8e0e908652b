package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.covering.Cover;
import org.calicograph.patchwork.Patch;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Which patches share a seam, found from their edges: straight pieces of two outlines that run along
 * each other within {@link Cover#TOLERANCE}. Touching in a point is not a seam. An index of the edges
 * keeps the work at n log n for patches of a kind.
 */
public final class Neighbours {

    /** Shorter stretches are corners, in inches. */
    private static final double LEAST = 0.01;

    private record Edge(int patch, Point from, Point to) {
        Envelope envelope() {
            return new Envelope(from.x(), to.x(), from.y(), to.y());
        }
    }

    private Neighbours() { }

    /** In the order of the patches. */
    public static List<Seam> of(List<Patch> patches) {
        List<Edge> edges = edges(patches);
        STRtree index = new STRtree();
        for (int e = 0; e < edges.size(); e++) {
            index.insert(edges.get(e).envelope(), e);
        }
        TreeMap<Long, List<Path>> found = new TreeMap<>();
        for (int e = 0; e < edges.size(); e++) {
            Edge edge = edges.get(e);
            Envelope near = edge.envelope();
            near.expandBy(Cover.TOLERANCE);
            for (Object o : index.query(near)) {
                int f = (int) o;
                Edge other = edges.get(f);
                if (f > e && other.patch() != edge.patch()) {
                    shared(edge, other, found);
                }
            }
        }
        List<Seam> seams = new ArrayList<>(found.size());
        found.forEach((key, lines) -> {
            if (lines.stream().mapToDouble(Path::length).sum() > LEAST) {
                seams.add(new Seam(patches.get((int) (key >> 32)), patches.get((int) (key & 0xFFFFFFFFL)), lines));
            }
        });
        return seams;
    }

    private static List<Edge> edges(List<Patch> patches) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) {
            for (Path path : patches.get(i).shape().paths()) {
                List<Point> points = path.flattened(Region.ACCURACY);
                for (int k = 1; k < points.size(); k++) {
                    edges.add(new Edge(i, points.get(k - 1), points.get(k)));
                }
            }
        }
        return edges;
    }

    private static void shared(Edge a, Edge b, TreeMap<Long, List<Path>> found) {
        double length = a.from().distance(a.to());
        if (length == 0 || b.from().distance(b.to()) == 0) {
            return;
        }
        Point u = a.to().minus(a.from()).times(1 / length);
        Point p = b.from().minus(a.from());
        Point q = b.to().minus(a.from());
        double tp = p.dot(u);
        double tq = q.dot(u);
        double low = Math.max(0, Math.min(tp, tq));
        double high = Math.min(length, Math.max(tp, tq));
        if (high - low < Cover.TOLERANCE) {
            return;
        }
        double dp = u.cross(p);
        double slope = (u.cross(q) - dp) / (tq - tp);
        if (Math.abs(dp + slope * (low - tp)) > Cover.TOLERANCE || Math.abs(dp + slope * (high - tp)) > Cover.TOLERANCE) {
            return;
        }
        long key = (long) Math.min(a.patch(), b.patch()) << 32 | Math.max(a.patch(), b.patch());
        found.computeIfAbsent(key, k -> new ArrayList<>())
                .add(Path.through(a.from().plus(u.times(low)), a.from().plus(u.times(high))));
    }
}
