package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Points at which lines meet: whatever lies within {@link Point#TOLERANCE} of a known one is that one. */
final class Meetings {

    private record Square(long column, long row) { }

    private final Map<Square, List<Point>> known = new HashMap<>();

    Point at(Point p) {
        long column = (long) Math.floor(p.x() / Point.TOLERANCE / 4);
        long row = (long) Math.floor(p.y() / Point.TOLERANCE / 4);
        for (long c = column - 1; c <= column + 1; c++) {
            for (long r = row - 1; r <= row + 1; r++) {
                for (Point q : known.getOrDefault(new Square(c, r), List.of())) {
                    if (p.same(q)) {
                        return q;
                    }
                }
            }
        }
        known.computeIfAbsent(new Square(column, row), s -> new ArrayList<>(1)).add(p);
        return p;
    }
}
