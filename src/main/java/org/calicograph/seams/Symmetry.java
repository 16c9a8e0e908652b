package org.calicograph.seams;

import java.util.List;
import org.calicograph.geometry.Point;

/**
 * How often a group of patches comes back to itself in one turn about its middle, so that what is alike there can be sewn alike.
 *
 * @param times 1 if it never does before the turn is full
 */
record Symmetry(Point middle, int times) {

    private static final int MOST = 48;

    /** @param shapes the corners of every patch */
    static Symmetry of(List<List<Point>> shapes) {
        Point middle = middle(shapes);
        List<Point> middles = shapes.stream().map(s -> middle(List.of(s))).toList();
        int times = MOST;
        while (times > 1 && !comesBack(middles, middle, 2 * Math.PI / times)) {
            times--;
        }
        return new Symmetry(middle, times);
    }

    private static boolean comesBack(List<Point> all, Point middle, double angle) {
        for (Point p : all) {
            Point d = p.minus(middle);
            Point turned = middle.plus(d.x() * Math.cos(angle) - d.y() * Math.sin(angle), d.x() * Math.sin(angle) + d.y() * Math.cos(angle));
            if (all.stream().noneMatch(q -> q.near(turned, 2 * Neighbours.TOUCH))) {
                return false;
            }
        }
        return true;
    }

    static Point middle(List<List<Point>> shapes) {
        double x = 0;
        double y = 0;
        int count = 0;
        for (List<Point> shape : shapes) {
            for (Point p : shape.subList(0, shape.size() - 1)) {
                x += p.x();
                y += p.y();
                count++;
            }
        }
        return new Point(x / count, y / count);
    }

    /** The same for all points that come to one another when the group is turned to itself; tenths of a degree. */
    long turn(Point p) {
        Point d = p.minus(middle);
        long sector = Math.round(3600.0 / times);
        long turn = Math.round(Math.toDegrees(Math.atan2(d.y(), d.x())) * 10 + 3600.25) % sector;
        return turn == sector - 1 ? -1 : turn;
    }
}
