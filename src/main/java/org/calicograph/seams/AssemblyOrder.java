package org.calicograph.seams;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;

/** Finds an order of sewing. */
public final class AssemblyOrder {

    private static final double TOUCH = Neighbours.TOUCH;

    /** Round more patches than this it isn't tried from every one of them in turn. */
    private static final int LARGEST_RING = 13;

    private final List<Unit.Single> items;
    private final List<List<Point>> points = new ArrayList<>();
    private final Neighbours neighbours;

    private AssemblyOrder(List<Unit.Single> items) {
        this.items = items;
        for (Unit.Single s : items) {
            points.add(s.shape().outer().flattened(TOUCH / 2));
        }
        neighbours = new Neighbours(items.stream().map(Unit.Single::shape).toList());
    }

    /** The order for a block's patches, or for an assembly's parts, each part taken as one. */
    public static Unit of(Patchwork work) {
        if (work instanceof Block block) {
            return of(block.patches().stream().map(p -> new Unit.Single(p.id(), p.shape())).toList());
        }
        return of(((Assembly) work).parts().stream().map(p -> new Unit.Single(p.id(), p.outline())).toList());
    }

    /** @throws IllegalArgumentException if there is nothing to sew */
    public static Unit of(List<Unit.Single> items) {
        if (items.isEmpty()) {
            throw new IllegalArgumentException("there are no patches to sew; give at least one");
        }
        return new AssemblyOrder(List.copyOf(items)).parted(IntStream.range(0, items.size()).boxed().toList());
    }

    /** A family of parallel lines, and where each lies along the normal. */
    private record Rows(Point normal, List<List<Integer>> parts) { }

    private Unit parted(List<Integer> all) {
        if (all.size() == 1) {
            return items.get(all.get(0));
        }
        Optional<Rows> best = rows(all);
        if (best.isEmpty()) {
            return built(all);
        }
        List<List<Integer>> parts = best.get().parts();
        List<Unit> units = new ArrayList<>();
        List<List<Segment>> seams = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            units.add(parted(parts.get(i)));
            if (i > 0) {
                seams.add(Joinings.merged(neighbours.between(parts.get(i - 1), parts.get(i))));
            }
        }
        return new Unit.Sewn(SeamKind.STRAIGHT, units, seams);
    }

    /** Among the directions that part the patches, the one with the most rows; level before upright before slanted. */
    private Optional<Rows> rows(List<Integer> all) {
        Map<Long, Point> normals = new LinkedHashMap<>();
        for (int i : all) {
            for (Path path : items.get(i).shape().paths()) {
                for (Segment s : path.segments()) {
                    if (s instanceof Line line && line.length() > TOUCH) {
                        Point u = forwards(line.heading(0).unit());
                        normals.putIfAbsent(direction(u), u.quarterTurned());
                    }
                }
            }
        }
        return normals.values().stream().map(n -> rows(all, n)).flatMap(Optional::stream)
                .max(Comparator.comparingInt((Rows r) -> r.parts().size())
                        .thenComparingDouble(r -> Math.abs(r.normal().y()) > 1 - 1e-9 ? 2 : Math.abs(r.normal().x()) > 1 - 1e-9 ? 1 : 0));
    }

    /** The same for lines that run the same way or back. */
    private static Point forwards(Point u) {
        return u.x() < -1e-9 || Math.abs(u.x()) <= 1e-9 && u.y() < 0 ? u.times(-1) : u;
    }

    /** In 1/500 degrees. */
    static long direction(Point u) {
        Point forwards = forwards(u);
        return Math.round(Math.toDegrees(Math.atan2(forwards.y(), forwards.x())) * 500);
    }

    private Optional<Rows> rows(List<Integer> all, Point normal) {
        record Span(int item, double from, double to) { }
        List<Span> spans = new ArrayList<>();
        for (int i : all) {
            double lo = Double.MAX_VALUE;
            double hi = -Double.MAX_VALUE;
            for (Point p : points.get(i)) {
                lo = Math.min(lo, p.dot(normal));
                hi = Math.max(hi, p.dot(normal));
            }
            spans.add(new Span(i, lo, hi));
        }
        spans.sort(Comparator.comparingDouble(Span::from).thenComparingInt(Span::item));
        List<List<Integer>> parts = new ArrayList<>();
        double reach = -Double.MAX_VALUE;
        for (Span s : spans) {
            if (parts.isEmpty() || s.from() >= reach - TOUCH) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(s.item());
            reach = Math.max(reach, s.to());
        }
        if (parts.size() < 2) {
            return Optional.empty();
        }
        for (int i = 1; i < parts.size(); i++) {
            if (neighbours.between(parts.get(i - 1), parts.get(i)).isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(new Rows(normal, parts));
    }

    /** For patches that no line parts: round each of them in turn if they are a ring, else from the bottom up. */
    private Unit built(List<Integer> all) {
        SeamKind turning = ringed(all) ? SeamKind.PARTIAL : SeamKind.SET_IN;
        Unit best = PartSeams.marked(new Joinings(items, all, neighbours).upwards(turning));
        if (turning == SeamKind.SET_IN || all.size() > LARGEST_RING) {
            return best;
        }
        for (int i = 0; i < all.size(); i++) {
            Unit round = PartSeams.marked(new Joinings(items, all, neighbours).round(i));
            best = PartSeams.awkward(round) < PartSeams.awkward(best) ? round : best;
        }
        return best;
    }

    /** True if at every inner crossing a seam runs straight on, so that only a ring of ends stands in the way. */
    private boolean ringed(List<Integer> all) {
        for (int i : all) {
            if (!items.get(i).shape().isStraight()) {
                return false;
            }
            for (Point corner : items.get(i).shape().outer().joined().corners()) {
                if (isInner(corner, all) && !passes(corner, all)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isInner(Point p, List<Integer> all) {
        double around = 0;
        for (int i : all) {
            around += angleAt(p, items.get(i).shape());
        }
        return around > 2 * Math.PI - 0.01;
    }

    private static double angleAt(Point p, Region shape) {
        List<Point> c = shape.outer().joined().corners();
        for (int k = 0; k < c.size(); k++) {
            if (c.get(k).near(p, TOUCH)) {
                Point u = c.get((k + 1) % c.size()).minus(c.get(k));
                Point v = c.get((k + c.size() - 1) % c.size()).minus(c.get(k));
                double angle = Math.atan2(u.cross(v), u.dot(v));
                return angle < 0 ? angle + 2 * Math.PI : angle;
            }
        }
        return onEdge(p, shape) ? Math.PI : 0;
    }

    private static boolean onEdge(Point p, Region shape) {
        return shape.outer().segments().stream().anyMatch(s -> s instanceof Line l && distance(p, l) < TOUCH);
    }

    private static double distance(Point p, Line l) {
        Point u = l.heading(0);
        double share = Math.max(0, Math.min(1, p.minus(l.from()).dot(u) / u.dot(u)));
        return p.distance(l.at(share));
    }

    /** True if an edge runs straight through the point: beside one patch, or on in a second. */
    private boolean passes(Point p, List<Integer> all) {
        List<Point> out = new ArrayList<>();
        for (int i : all) {
            for (Segment s : items.get(i).shape().outer().segments()) {
                if (s.from().near(p, TOUCH)) {
                    out.add(s.heading(0).unit());
                } else if (s.to().near(p, TOUCH)) {
                    out.add(s.heading(1).unit().times(-1));
                } else if (s instanceof Line l && distance(p, l) < TOUCH) {
                    return true;
                }
            }
        }
        return out.stream().anyMatch(u -> out.stream().anyMatch(v -> u.dot(v) < -1 + 1e-5));
    }
}
