package org.calicograph.workshop.piecing;

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
import org.calicograph.quilt.Assembly;
import org.calicograph.quilt.Block;
import org.calicograph.quilt.Patchwork;

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
                seams.add(merged(neighbours.between(parts.get(i - 1), parts.get(i))));
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
                        Point u = line.heading(0).unit();
                        u = u.x() < -1e-9 || Math.abs(u.x()) <= 1e-9 && u.y() < 0 ? u.times(-1) : u;
                        normals.putIfAbsent(Math.round(Math.toDegrees(Math.atan2(u.y(), u.x())) * 500), u.quarterTurned());
                    }
                }
            }
        }
        return normals.values().stream().map(n -> rows(all, n)).flatMap(Optional::stream)
                .max(Comparator.comparingInt((Rows r) -> r.parts().size())
                        .thenComparingDouble(r -> Math.abs(r.normal().y()) > 1 - 1e-9 ? 2 : Math.abs(r.normal().x()) > 1 - 1e-9 ? 1 : 0));
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

    private record Group(List<Integer> items, Unit unit) { }

    /** @param size of what it makes, in 1/200 square inches */
    private record Joining(int a, int b, List<Segment> run, int corners, boolean alike, long size) {
        private static final Comparator<Joining> ORDER = Comparator.comparing((Joining j) -> j.corners != 0 || j.isCurved())
                .thenComparing(j -> j.corners < 0).thenComparing(Joining::isCurved)
                .thenComparingInt(Joining::corners).thenComparing(j -> !j.alike).thenComparingLong(Joining::size)
                .thenComparingLong(j -> -j.length())
                .thenComparingInt(Joining::b).thenComparingInt(Joining::a);

        long length() {
            return Math.round(200 * run.stream().mapToDouble(Segment::length).sum());
        }

        boolean isCurved() {
            return run.stream().anyMatch(s -> !(s instanceof Line));
        }
    }

    /** For patches that no line parts: round each of them in turn if they are a ring, else from the bottom up. */
    private Unit built(List<Integer> all) {
        SeamKind turning = ringed(all) ? SeamKind.PARTIAL : SeamKind.SET_IN;
        Unit up = upwards(all, turning);
        if (turning == SeamKind.SET_IN || all.size() > LARGEST_RING) {
            return up;
        }
        Unit best = up;
        for (int i = 0; i < all.size(); i++) {
            Unit round = PartSeams.marked(round(all, i));
            best = PartSeams.awkward(round) < PartSeams.awkward(best) ? round : best;
        }
        return best;
    }

    /** One patch after another sewn to what began with the given one. */
    private Unit round(List<Integer> all, int seed) {
        List<Group> groups = new ArrayList<>();
        all.forEach(i -> groups.add(new Group(List.of(i), items.get(i))));
        groups.add(0, groups.remove(seed));
        while (groups.size() > 1) {
            Joining next = joinings(groups).stream().filter(j -> j.a() == 0)
                    .min(Comparator.comparingInt(j -> j.corners() < 0 ? Integer.MAX_VALUE : j.corners())).orElseThrow();
            join(List.of(next), groups, SeamKind.PARTIAL);
        }
        return groups.get(0).unit();
    }

    private Unit upwards(List<Integer> all, SeamKind turning) {
        List<Group> groups = new ArrayList<>();
        all.forEach(i -> groups.add(new Group(List.of(i), items.get(i))));
        while (groups.size() > 1) {
            List<Joining> found = new ArrayList<>(joinings(groups));
            Joining best = found.stream().min(Joining.ORDER).orElseThrow(() ->
                    new IllegalArgumentException("patches " + all.stream().map(i -> items.get(i).id()).toList()
                            + " don't share an edge; check the drafting"));
            found.removeIf(j -> !likeness(j, groups).equals(likeness(best, groups)));
            found.sort(Joining.ORDER);
            join(found, groups, turning);
        }
        return PartSeams.marked(groups.get(0).unit());
    }

    /** All joinings that are alike in one go, each group in one of them at most, so that they can be sewn in a chain. */
    private void join(List<Joining> alike, List<Group> groups, SeamKind turning) {
        java.util.Set<Integer> used = new java.util.TreeSet<>();
        java.util.Set<Integer> gone = new java.util.TreeSet<>(Comparator.reverseOrder());
        for (Joining next : alike) {
            if (used.contains(next.a()) || used.contains(next.b())) {
                continue;
            }
            used.addAll(List.of(next.a(), next.b()));
            gone.add(next.b());
            Group a = groups.get(next.a());
            Group b = groups.get(next.b());
            SeamKind kind = next.corners() != 0 ? turning : next.isCurved() ? SeamKind.CURVED : SeamKind.STRAIGHT;
            List<Integer> both = new ArrayList<>(a.items());
            both.addAll(b.items());
            groups.set(next.a(), new Group(both, new Unit.Sewn(kind, List.of(a.unit(), b.unit()), List.of(merged(next.run())))));
        }
        gone.forEach(i -> groups.remove((int) i));
    }

    /** What two joinings have in common that are sewn alike. */
    private List<Long> likeness(Joining j, List<Group> groups) {
        double a = area(groups.get(j.a()));
        double b = area(groups.get(j.b()));
        return List.of(Math.round(Math.min(a, b) * 200), Math.round(Math.max(a, b) * 200), j.length(), (long) j.corners(),
                j.isCurved() ? 1L : 0L);
    }

    private List<Joining> joinings(List<Group> groups) {
        List<Joining> found = new ArrayList<>();
        for (int a = 0; a < groups.size(); a++) {
            for (int b = a + 1; b < groups.size(); b++) {
                List<Segment> run = neighbours.between(groups.get(a).items(), groups.get(b).items());
                if (!run.isEmpty()) {
                    double one = area(groups.get(a));
                    double other = area(groups.get(b));
                    boolean alike = groups.get(a).items().size() == groups.get(b).items().size() && Math.abs(one - other) < 1e-3;
                    found.add(new Joining(a, b, run, Neighbours.corners(run), alike, Math.round((one + other) * 200)));
                }
            }
        }
        return found;
    }

    private double area(Group g) {
        return g.items().stream().mapToDouble(i -> items.get(i).shape().area().squareInches()).sum();
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

    /** Edges that run on in one line joined into one. */
    private static List<Segment> merged(List<Segment> run) {
        List<Segment> left = new ArrayList<>(run);
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < left.size() && !again; i++) {
                for (int j = i + 1; j < left.size() && !again; j++) {
                    if (left.get(i) instanceof Line a && left.get(j) instanceof Line b) {
                        Optional<Line> one = joined(a, b);
                        if (one.isPresent()) {
                            left.set(i, one.get());
                            left.remove(j);
                            again = true;
                        }
                    }
                }
            }
        }
        return left;
    }

    private static Optional<Line> joined(Line a, Line b) {
        for (Line other : List.of(b, b.reversed())) {
            boolean straight = a.heading(0).unit().dot(other.heading(0).unit()) > 1 - 1e-6;
            if (straight && a.to().near(other.from(), 2 * TOUCH)) {
                return Optional.of(new Line(a.from(), other.to()));
            }
            if (straight && other.to().near(a.from(), 2 * TOUCH)) {
                return Optional.of(new Line(other.from(), a.to()));
            }
        }
        return Optional.empty();
    }
}
