package org.calicograph.seams;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.jgrapht.traverse.DepthFirstIterator;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Patches that no line parts, and what has been sewn from them so far: every two groups that share an edge can be joined. */
final class Joinings {

    private static final double TOUCH = Neighbours.TOUCH;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final List<Unit.Single> items;
    private final Neighbours neighbours;
    private final Symmetry symmetry;
    private final List<Group> groups = new ArrayList<>();
    private List<Joining> open = new ArrayList<>();

    /** @param all indexes into the items */
    Joinings(List<Unit.Single> items, List<Integer> all, Neighbours neighbours) {
        this.items = items;
        this.neighbours = neighbours;
        symmetry = Symmetry.of(all.stream().map(i -> corners(items.get(i))).toList());
        for (int i : all) {
            Unit.Single item = items.get(i);
            add(new Group(List.of(i), item, item.shape().area().squareInches(), hull(corners(item).stream().map(p -> new Coordinate(p.x(), p.y())))));
        }
    }

    /** What is sewn to one unit already, or a patch alone. */
    private static final class Group {
        private final List<Integer> items;
        private final Unit unit;
        private final double area;
        private final Geometry hull;

        Group(List<Integer> items, Unit unit, double area, Geometry hull) {
            this.items = items;
            this.unit = unit;
            this.area = area;
            this.hull = hull;
        }

        int first() {
            return items.get(0);
        }
    }

    /**
     * @param hollow tenths of what both make by which it falls short of its convex hull: a unit without bays takes straight seams
     * @param alike  true for as many patches and as much cloth on both sides
     * @param turn   of its place, the same for all that come to one another when the whole is turned to itself
     */
    private record Joining(Group a, Group b, List<Segment> run, int corners, long hollow, boolean alike, long turn) {
        private static final Comparator<Joining> ORDER = Comparator.comparing((Joining j) -> j.corners != 0 || j.isCurved())
                .thenComparing(j -> j.corners < 0).thenComparing(Joining::isCurved)
                .thenComparingInt(Joining::corners).thenComparing(j -> !j.alike).thenComparingLong(Joining::hollow)
                .thenComparingLong(j -> fine(j.a.area + j.b.area)).thenComparingLong(j -> -j.length()).thenComparingLong(Joining::turn)
                .thenComparingInt(j -> j.b.first()).thenComparingInt(j -> j.a.first());

        long length() {
            return fine(run.stream().mapToDouble(Segment::length).sum());
        }

        boolean isCurved() {
            return run.stream().anyMatch(s -> !(s instanceof Line));
        }

        boolean has(Group g) {
            return a == g || b == g;
        }

        /** What two joinings have in common that are sewn alike. */
        List<Long> likeness() {
            return List.of(fine(Math.min(a.area, b.area)), fine(Math.max(a.area, b.area)), length(), (long) corners, isCurved() ? 1L : 0L);
        }

        private static long fine(double inches) {
            return Math.round(200 * inches);
        }
    }

    private static List<Point> corners(Unit.Single item) {
        return item.shape().outer().flattened(TOUCH / 2);
    }

    private static Geometry hull(Stream<Coordinate> points) {
        return new ConvexHull(points.toArray(Coordinate[]::new), FACTORY).getConvexHull();
    }

    private static Geometry hull(Group a, Group b) {
        return hull(Stream.of(a, b).flatMap(g -> Stream.of(g.hull.getCoordinates())));
    }

    private void add(Group one) {
        for (Group other : groups) {
            List<Segment> run = neighbours.between(other.items, one.items);
            if (!run.isEmpty()) {
                double both = one.area + other.area;
                long hollow = (long) Math.floor(10 * (hull(one, other).getArea() - both) / both + 0.1);
                boolean alike = one.items.size() == other.items.size() && Math.abs(one.area - other.area) < 1e-3;
                open.add(new Joining(other, one, run, Neighbours.corners(run), hollow, alike, symmetry.turn(run.get(0).middle())));
            }
        }
        groups.add(one);
    }

    private void replace(Set<Group> gone, List<Group> made) {
        groups.removeAll(gone);
        open.removeIf(j -> gone.contains(j.a()) || gone.contains(j.b()));
        made.forEach(this::add);
    }

    /** One patch after another sewn to what began with the given one. */
    Unit round(int seed) {
        Group core = groups.get(seed);
        while (groups.size() > 1) {
            Group from = core;
            Joining next = open.stream().filter(j -> j.has(from)).min(Comparator.comparingInt((Joining j) -> j.corners() < 0 ? Integer.MAX_VALUE : j.corners())
                    .thenComparingInt(j -> (j.a() == from ? j.b() : j.a()).first())).orElseThrow(this::apart);
            join(List.of(next), SeamKind.PARTIAL);
            core = groups.get(groups.size() - 1);
        }
        return core.unit;
    }

    /** Straight joinings first, those of a kind in one go, and those last that turn a corner. */
    Unit upwards(SeamKind turning) {
        while (groups.size() > 1) {
            List<Long> best = open.stream().min(Joining.ORDER).orElseThrow(this::apart).likeness();
            List<Joining> found = open.stream().filter(j -> j.likeness().equals(best)).sorted(Joining.ORDER).toList();
            if (!strips(found)) {
                join(found, turning);
            }
        }
        return groups.get(0).unit;
    }

    private IllegalArgumentException apart() {
        return new IllegalArgumentException("patches " + groups.stream().map(g -> items.get(g.first()).id()).toList()
                + " don't share an edge; check the drafting");
    }

    /** All joinings that are alike in one go, each group in one of them at most, so that they can be sewn in a chain. */
    private void join(List<Joining> alike, SeamKind turning) {
        Set<Group> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Group> made = new ArrayList<>();
        for (Joining next : alike) {
            if (!used.contains(next.a()) && !used.contains(next.b())) {
                used.addAll(List.of(next.a(), next.b()));
                made.add(sewn(next.corners() != 0 ? turning : next.isCurved() ? SeamKind.CURVED : SeamKind.STRAIGHT, List.of(next.a(), next.b())));
            }
        }
        replace(used, made);
    }

    /** Sews alike groups that lie in a row, such as the feathers of a star, into strips, each in one go; false if there are none. */
    private boolean strips(List<Joining> alike) {
        if (!alike.get(0).alike() || alike.get(0).corners() != 0 || alike.get(0).isCurved()) {
            return false;
        }
        Map<Long, SimpleGraph<Group, DefaultEdge>> across = new TreeMap<>();
        for (Joining j : alike) {
            SimpleGraph<Group, DefaultEdge> touching = across.computeIfAbsent(AssemblyOrder.direction(j.run().get(0).heading(0).unit()),
                    d -> new SimpleGraph<>(DefaultEdge.class));
            touching.addVertex(j.a());
            touching.addVertex(j.b());
            touching.addEdge(j.a(), j.b());
        }
        List<List<Group>> rows = new ArrayList<>();
        across.values().forEach(touching -> new ConnectivityInspector<>(touching).connectedSets().forEach(row -> endToEnd(row, touching).ifPresent(rows::add)));
        rows.sort(Comparator.comparingInt((List<Group> row) -> -row.size())
                .thenComparingLong(row -> symmetry.turn(middle(row))).thenComparingInt(row -> row.get(0).first()));
        Set<Group> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Group> made = new ArrayList<>();
        for (List<Group> row : rows) {
            if (Collections.disjoint(used, row)) {
                used.addAll(row);
                made.add(sewn(SeamKind.STRAIGHT, row));
            }
        }
        replace(used, made);
        return !made.isEmpty();
    }

    /** Three or more in a row from one end to the other; empty if they don't lie so. */
    private static Optional<List<Group>> endToEnd(Set<Group> row, SimpleGraph<Group, DefaultEdge> touching) {
        Optional<Group> end = row.stream().filter(g -> touching.degreeOf(g) == 1).min(Comparator.comparingInt(Group::first));
        if (row.size() < 3 || end.isEmpty() || row.stream().anyMatch(g -> touching.degreeOf(g) > 2)) {
            return Optional.empty();
        }
        List<Group> order = new ArrayList<>();
        new DepthFirstIterator<>(touching, end.get()).forEachRemaining(order::add);
        return Optional.of(order);
    }

    private Point middle(List<Group> row) {
        return Symmetry.middle(row.stream().flatMap(g -> g.items.stream()).map(i -> corners(items.get(i))).toList());
    }

    /** The groups sewn together one after another. */
    private Group sewn(SeamKind kind, List<Group> row) {
        List<Integer> all = new ArrayList<>();
        List<List<Segment>> seams = new ArrayList<>();
        for (Group next : row) {
            if (!all.isEmpty()) {
                seams.add(merged(neighbours.between(all, next.items)));
            }
            all.addAll(next.items);
        }
        return new Group(all, new Unit.Sewn(kind, row.stream().map(g -> g.unit).toList(), seams), row.stream().mapToDouble(g -> g.area).sum(),
                hull(row.stream().flatMap(g -> Stream.of(g.hull.getCoordinates()))));
    }

    /** Edges that run on in one line joined into one. */
    static List<Segment> merged(List<Segment> run) {
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
