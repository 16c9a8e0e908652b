package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.measure.Angle;

/**
 * A chain of segments, each beginning where the one before ends; closed if the last ends where the
 * first begins. Ends that are the {@linkplain Point#same same point} are made equal, and segments of no
 * length left out, so that a path that closes within a hair has no side of a hair.
 */
public record Path(List<Segment> segments) {

    /** @throws IllegalArgumentException if there is no segment, or a segment begins away from the last one's end */
    public Path {
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a path without segments is no path; give it at least one line");
        }
        for (int i = 1; i < segments.size(); i++) {
            Point end = segments.get(i - 1).to();
            Point start = segments.get(i).from();
            if (!end.same(start)) {
                throw new IllegalArgumentException("segment " + (i + 1) + " of a path begins at " + start
                        + " but the one before ends at " + end + "; begin it there");
            }
        }
        segments = Chain.of(segments);
    }

    /** Straight lines through the points, left open. */
    public static Path through(List<Point> points) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            lines.add(new Line(points.get(i - 1), points.get(i)));
        }
        return new Path(lines);
    }

    /** An open line straight from point to point. */
    public static Path through(Point... points) {
        return through(Arrays.asList(points));
    }

    /** A closed polygon through the points. */
    public static Path polygon(List<Point> points) {
        if (points.size() < 3) {
            throw new IllegalArgumentException("a polygon of " + points.size() + " points has no inside; give it at least 3");
        }
        List<Point> ring = new ArrayList<>(points);
        if (!ring.get(0).same(ring.get(ring.size() - 1))) {
            ring.add(ring.get(0));
        }
        return through(ring);
    }

    /** A closed line straight from corner to corner, and back to the first. */
    public static Path polygon(Point... points) {
        return polygon(Arrays.asList(points));
    }

    /** The outline of a box. */
    public static Path rectangle(Box box) {
        return polygon(new Point(box.left(), box.top()), new Point(box.right(), box.top()),
                new Point(box.right(), box.bottom()), new Point(box.left(), box.bottom()));
    }

    /** A full circle, clockwise from its rightmost point, in two halves. Radius in inches. */
    public static Path circle(Point centre, double radius) {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("a circle of radius " + radius + " in has no inside; use a radius above 0");
        }
        Point right = centre.plus(radius, 0);
        Point left = centre.plus(-radius, 0);
        return new Path(List.of(new Arc(right, left, 1), new Arc(left, right, 1)));
    }

    /** The corners of a regular polygon about a centre, the first in the given direction. Radius in inches. */
    public static Path regular(int sides, Point centre, double radius, Angle first) {
        if (sides < 3) {
            throw new IllegalArgumentException("a regular polygon of " + sides + " sides can't close; give it at least 3");
        }
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            corners.add(centre.plus(Point.polar(radius, first.plus(Angle.turn(i, sides)))));
        }
        return polygon(corners);
    }

    /** A path drawn step by step from a starting point. */
    public static PathPen from(Point start) {
        return new PathPen(start);
    }

    /** A pen set down at x, y in inches; go on with lines and curves, then close it or leave it open. */
    public static PathPen from(double x, double y) {
        return new PathPen(new Point(x, y));
    }

    /** Where it begins. */
    public Point start() {
        return segments.get(0).from();
    }

    /** Where it ends; where it begins, if it is closed. */
    public Point end() {
        return segments.get(segments.size() - 1).to();
    }

    /** True if it comes back to its beginning. */
    public boolean isClosed() {
        return start().equals(end());
    }

    /** True if every segment is a straight line. */
    public boolean isStraight() {
        return segments.stream().allMatch(Line.class::isInstance);
    }

    /** The points at which segments meet: the first one once, the last one only if the path is open. */
    public List<Point> corners() {
        List<Point> corners = new ArrayList<>();
        segments.forEach(s -> corners.add(s.from()));
        if (!isClosed()) {
            corners.add(end());
        }
        return corners;
    }

    /** How long the line is, in inches. */
    public double length() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    /** The enclosed area in square inches: above 0 if the path runs clockwise on the page. */
    public double signedArea() {
        return segments.stream().mapToDouble(Segment::areaTerm).sum();
    }

    /** The smallest upright box that holds the whole line. */
    public Box bounds() {
        Box box = segments.get(0).bounds();
        for (Segment s : segments) {
            box = box.union(s.bounds());
        }
        return box;
    }

    /** The same line gone the other way. */
    public Path reversed() {
        List<Segment> back = new ArrayList<>();
        for (int i = segments.size() - 1; i >= 0; i--) {
            back.add(segments.get(i).reversed());
        }
        return new Path(back);
    }

    /** The same closed path run clockwise on the page. */
    public Path clockwise() {
        return signedArea() < 0 ? reversed() : this;
    }

    /** The line moved, turned, mirrored or made larger. */
    public Path transformed(Transform t) {
        List<Segment> moved = new ArrayList<>();
        for (Segment s : segments) {
            moved.addAll(s.transformed(t));
        }
        return new Path(moved);
    }

    /** The points of a polyline within the accuracy in inches, first and last included. */
    public List<Point> flattened(double accuracy) {
        List<Point> points = new ArrayList<>();
        points.add(start());
        segments.forEach(s -> s.flatten(accuracy, points));
        return points;
    }

    /** The points at which this path meets another, in this path's order; each once. */
    public List<Point> meetings(Path other) {
        List<Point> found = new ArrayList<>();
        for (Segment a : segments) {
            List<Double> shares = new ArrayList<>();
            for (Segment b : other.segments) {
                Crossing.of(a, b).forEach(c -> shares.add(c.first()));
            }
            shares.sort(null);
            for (double share : shares) {
                Point p = a.at(share);
                if (found.stream().noneMatch(q -> q.same(p))) {
                    found.add(p);
                }
            }
        }
        return found;
    }

    /** The same path with straight lines that run on in one direction joined into one. */
    public Path joined() {
        List<Segment> out = new ArrayList<>();
        for (Segment s : segments) {
            Segment last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last instanceof Line a && s instanceof Line b && runsOn(a, b)) {
                out.set(out.size() - 1, new Line(a.from(), b.to()));
            } else {
                out.add(s);
            }
        }
        if (isClosed() && out.size() > 3 && out.get(out.size() - 1) instanceof Line a
                && out.get(0) instanceof Line b && runsOn(a, b)) {
            out.set(0, new Line(a.from(), b.to()));
            out.remove(out.size() - 1);
        }
        return new Path(out);
    }

    private static boolean runsOn(Line a, Line b) {
        Point u = a.heading(0);
        Point v = b.heading(0);
        return u.dot(v) > 0 && Math.abs(u.cross(v)) <= 1e-7 * Math.max(u.norm(), v.norm());
    }
}
