package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;

/**
 * The corners of patches, by which one tells whether two works are alike: the same patches lie in the same way to each
 * other, however the whole is turned. A mirror image is not alike. In time that grows with the corners.
 *
 * @param points by mark, seen from the middle of them all
 */
record Marks(Map<String, List<Point>> points) {

    /** Points of a draft this near are the same, in inches. */
    private static final double NEAR = 2e-3;

    /** A patch by what marks it: its letter, or its cloth. */
    record Marked(String mark, Region shape) { }

    static Marks of(List<Marked> patches) {
        Map<String, List<Point>> found = new TreeMap<>();
        double x = 0;
        double y = 0;
        int n = 0;
        for (Marked patch : patches) {
            List<Point> all = found.computeIfAbsent(patch.mark(), l -> new ArrayList<>());
            for (Segment side : patch.shape().outer().segments()) {
                List<Point> ends = side instanceof Line ? List.of(side.from()) : List.of(side.from(), side.middle());
                for (Point p : ends) {
                    all.add(p);
                    x += p.x();
                    y += p.y();
                    n++;
                }
            }
        }
        Point middle = new Point(x / n, y / n);
        found.replaceAll((mark, all) -> all.stream().map(p -> p.minus(middle)).toList());
        return new Marks(found);
    }

    /** What alike works share: how many corners each mark has, and how far they lie from the middle. */
    String bucket() {
        StringBuilder out = new StringBuilder();
        points.forEach((mark, all) -> out.append(mark).append(' ').append(all.size()).append(' ')
                .append(Math.round(all.stream().mapToDouble(Point::norm).average().orElse(0) * 20)).append(';'));
        return out.toString();
    }

    /** True if a turn brings these onto the others. */
    boolean alike(Marks other) {
        if (!points.keySet().equals(other.points.keySet())
                || points.entrySet().stream().anyMatch(e -> e.getValue().size() != other.points.get(e.getKey()).size())) {
            return false;
        }
        String rarest = "";
        Point handle = Point.ORIGIN;
        for (Map.Entry<String, List<Point>> e : points.entrySet()) {
            for (Point p : e.getValue()) {
                if (p.norm() > 10 * NEAR && (handle.norm() == 0 || e.getValue().size() < points.get(rarest).size())) {
                    rarest = e.getKey();
                    handle = p;
                }
            }
        }
        Map<String, Set<Long>> cells = other.cells();
        for (Point to : other.points.get(rarest)) {
            if (Math.abs(to.norm() - handle.norm()) < NEAR && fallsOn(cells, handle.dot(to), handle.cross(to))) {
                return true;
            }
        }
        return false;
    }

    private Map<String, Set<Long>> cells() {
        Map<String, Set<Long>> cells = new HashMap<>();
        points.forEach((mark, all) -> {
            Set<Long> own = new HashSet<>();
            for (Point p : all) {
                // Each point into the cells about it, so that one look-up finds whatever is near.
                for (int dx = -1; dx <= 1; dx++) {
                    for (int dy = -1; dy <= 1; dy++) {
                        own.add(cell(p.x() + dx * NEAR, p.y() + dy * NEAR));
                    }
                }
            }
            cells.put(mark, own);
        });
        return cells;
    }

    private static long cell(double x, double y) {
        return Math.round(x / NEAR) * 0x1_0000_0001L ^ Math.round(y / NEAR) << 20;
    }

    private boolean fallsOn(Map<String, Set<Long>> cells, double dot, double cross) {
        double size = Math.hypot(dot, cross);
        double cos = dot / size;
        double sin = cross / size;
        for (Map.Entry<String, List<Point>> e : points.entrySet()) {
            Set<Long> there = cells.get(e.getKey());
            for (Point p : e.getValue()) {
                if (!there.contains(cell(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos))) {
                    return false;
                }
            }
        }
        return true;
    }
}
