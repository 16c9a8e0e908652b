package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.patchwork.Placed;
import org.calicograph.seams.Unit;

/**
 * Marked points of what is sewn together, by which one tells whether two joinings are alike: the same parts lie in the
 * same way to each other, however the whole is turned. A mirror image is not alike.
 *
 * @param points by mark, seen from the middle of them all
 */
record Marks(Map<String, List<Point>> points) {

    /** Points of a draft this near are the same, in inches. */
    private static final double NEAR = 2e-3;

    /**
     * @param letters what each single is called
     * @param placed  the places of those that are works themselves
     */
    static Marks of(Unit unit, Map<String, String> letters, Map<String, Placed> placed) {
        Map<String, List<Point>> found = new TreeMap<>();
        for (Unit.Single s : unit.singles()) {
            String letter = letters.getOrDefault(s.id(), s.id());
            for (Segment side : s.shape().outer().segments()) {
                found.computeIfAbsent(letter, l -> new ArrayList<>()).add(side.from());
                if (!(side instanceof Line)) {
                    found.get(letter).add(side.middle());
                }
            }
            Placed part = placed.get(s.id());
            if (part != null && part.work().patchCount() > 1) {
                found.computeIfAbsent(letter + " top left", l -> new ArrayList<>()).add(part.place().of(Point.ORIGIN));
                found.computeIfAbsent(letter + " top right", l -> new ArrayList<>()).add(part.place().of(Point.of(part.work().width(), part.work().height().times(0))));
            }
        }
        double x = 0;
        double y = 0;
        int n = 0;
        for (List<Point> all : found.values()) {
            for (Point p : all) {
                x += p.x();
                y += p.y();
                n++;
            }
        }
        Point middle = new Point(x / n, y / n);
        found.replaceAll((mark, all) -> all.stream().map(p -> p.minus(middle)).toList());
        return new Marks(found);
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
        for (Point to : other.points.get(rarest)) {
            if (Math.abs(to.norm() - handle.norm()) < NEAR && fallsOn(other, handle.dot(to), handle.cross(to))) {
                return true;
            }
        }
        return false;
    }

    private boolean fallsOn(Marks other, double dot, double cross) {
        double size = Math.hypot(dot, cross);
        double cos = dot / size;
        double sin = cross / size;
        for (Map.Entry<String, List<Point>> e : points.entrySet()) {
            List<Point> there = other.points.get(e.getKey());
            for (Point p : e.getValue()) {
                Point turned = new Point(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos);
                if (there.stream().noneMatch(q -> q.near(turned, NEAR))) {
                    return false;
                }
            }
        }
        return true;
    }
}
