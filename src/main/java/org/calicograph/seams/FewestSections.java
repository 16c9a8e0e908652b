package org.calicograph.seams;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Segment;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;

/**
 * The fewest foundations for patches with straight edges, over every order of sewing.
 *
 * <p>Work is parted along a straight line only where no patch of it lies on both sides: what is sewn so is sewn by one straight seam from
 * edge to edge. One foundation holds what can be taken apart patch by patch in that way; taking one off never stands in the way of another,
 * so that no order need be tried. What one can't hold is parted along every line there is, and the parts likewise; parts that come up again
 * are known. Where that ends before {@link #PARTS} different parts, the number is the least there is.
 */
public final class FewestSections {

    /** Different parts looked at before the search contents itself with what it has. */
    private static final int PARTS = 40_000;
    private static final double TOLERANCE = 1e-4;

    private final List<Unit.Single> patches;
    private final List<int[]> sides = new ArrayList<>();
    private final Map<BitSet, Part> known = new HashMap<>();
    private final int limit;
    private Optional<BitSet> stuck = Optional.empty();

    /**
     * What was found.
     *
     * @param sections the foundations, those that are joined first standing first
     * @param joins    which are joined, in order, by their letters: the first is 'A to B'; one fewer than sections
     * @param atLeast  no fewer will do; the number of sections where the search came to its end
     */
    public record Found(List<Sections.Section> sections, List<String> joins, int atLeast) {
        public Found {
            sections = List.copyOf(sections);
            joins = List.copyOf(joins);
        }

        /** True if no order of sewing needs fewer. */
        public boolean isProved() {
            return atLeast == sections.size();
        }
    }

    /** How many sections a part needs: found, and at least; the line that parts it, or -1 where one section holds it. */
    private record Part(int found, int atLeast, int line) { }

    private FewestSections(List<Unit.Single> patches, int limit) {
        this.patches = patches;
        this.limit = limit;
        lines();
    }

    /** The fewest sections; empty where an edge is curved, the whole is not convex, or the patches can't all be parted by straight seams. */
    public static Optional<Found> of(List<Unit.Single> patches) {
        return of(patches, PARTS);
    }

    /** The same, with fewer different parts looked at. */
    public static Optional<Found> of(List<Unit.Single> patches, int parts) {
        if (patches.isEmpty() || patches.stream().anyMatch(p -> !p.shape().isStraight() || !p.shape().holes().isEmpty()) || !isConvex(patches)) {
            return Optional.empty();
        }
        FewestSections search = new FewestSections(patches, parts);
        BitSet all = new BitSet();
        all.set(0, patches.size());
        Part whole = search.part(all);
        if (whole.found() >= IMPOSSIBLE) {
            return Optional.empty();
        }
        List<Sections.Section> sections = new ArrayList<>();
        List<String> joins = new ArrayList<>();
        search.laid(all, sections, joins);
        return Optional.of(new Found(sections, joins, whole.atLeast()));
    }

    /** A line through a convex whole leaves two convex parts; through another it may leave three. */
    private static boolean isConvex(List<Unit.Single> patches) {
        List<Coordinate> corners = new ArrayList<>();
        double area = 0;
        for (Unit.Single p : patches) {
            p.shape().outer().segments().forEach(s -> corners.add(new Coordinate(s.from().x(), s.from().y())));
            area += p.shape().area().squareInches();
        }
        double hull = new ConvexHull(corners.toArray(Coordinate[]::new), Polygons.FACTORY).getConvexHull().getArea();
        return hull - area < 1e-6 + 1e-5 * hull;
    }

    /** Patches that no straight seam parts, if there are any: the fewest that were come upon. */
    public static List<Unit.Single> stuck(List<Unit.Single> patches) {
        FewestSections search = new FewestSections(patches, 2_000);
        BitSet all = new BitSet();
        all.set(0, patches.size());
        search.part(all);
        return search.stuck.map(s -> s.stream().mapToObj(patches::get).toList()).orElse(List.of());
    }

    private static final int IMPOSSIBLE = 1_000_000;

    /** Every line that an edge lies on, the longest edges first, and on which side of it each patch lies: 0 for both. */
    private void lines() {
        List<Segment> edges = new ArrayList<>();
        for (Unit.Single patch : patches) {
            for (Path path : patch.shape().paths()) {
                edges.addAll(path.segments());
            }
        }
        edges.sort(Comparator.comparingDouble((Segment s) -> -s.from().distance(s.to())));
        List<Segment> kept = new ArrayList<>();
        for (Segment edge : edges) {
            if (edge.from().distance(edge.to()) > TOLERANCE && kept.stream().noneMatch(k -> Math.abs(off(k, edge.from())) < TOLERANCE && Math.abs(off(k, edge.to())) < TOLERANCE)) {
                kept.add(edge);
            }
        }
        for (Segment line : kept) {
            int[] side = new int[patches.size()];
            for (int i = 0; i < side.length; i++) {
                double least = 0;
                double most = 0;
                for (Segment s : patches.get(i).shape().outer().segments()) {
                    least = Math.min(least, off(line, s.from()));
                    most = Math.max(most, off(line, s.from()));
                }
                side[i] = most < TOLERANCE ? -1 : least > -TOLERANCE ? 1 : 0;
            }
            sides.add(side);
        }
    }

    private static double off(Segment line, Point p) {
        Point along = line.to().minus(line.from());
        return along.cross(p.minus(line.from())) / along.norm();
    }

    /** The patches of a part on one side of a line; empty if one lies on both. */
    private Optional<BitSet> beyond(int line, BitSet part) {
        BitSet far = new BitSet();
        int[] side = sides.get(line);
        for (int i = part.nextSetBit(0); i >= 0; i = part.nextSetBit(i + 1)) {
            if (side[i] == 0) {
                return Optional.empty();
            }
            if (side[i] > 0) {
                far.set(i);
            }
        }
        return Optional.of(far);
    }

    /** The order of sewing onto one foundation; empty if one can't hold the part. */
    private List<Integer> order(BitSet part) {
        BitSet left = (BitSet) part.clone();
        List<Integer> taken = new ArrayList<>();
        boolean more = true;
        while (left.cardinality() > 1 && more) {
            more = false;
            for (int line = 0; line < sides.size() && left.cardinality() > 1; line++) {
                Optional<BitSet> far = beyond(line, left);
                if (far.isPresent()) {
                    int beyond = far.get().cardinality();
                    BitSet one = far.get();
                    if (left.cardinality() - beyond == 1) {
                        one = (BitSet) left.clone();
                        one.andNot(far.get());
                    }
                    if (one.cardinality() == 1) {
                        taken.add(0, one.nextSetBit(0));
                        left.andNot(one);
                        more = true;
                    }
                }
            }
        }
        if (left.cardinality() > 1) {
            return List.of();
        }
        taken.add(0, left.nextSetBit(0));
        return taken;
    }

    private Part part(BitSet set) {
        Part before = known.get(set);
        if (before != null) {
            return before;
        }
        Part found = order(set).isEmpty() ? parted(set) : new Part(1, 1, -1);
        known.put(set, found);
        return found;
    }

    private Part parted(BitSet set) {
        List<Integer> ways = new ArrayList<>();
        List<BitSet> near = new ArrayList<>();
        List<BitSet> far = new ArrayList<>();
        for (int line = 0; line < sides.size(); line++) {
            Optional<BitSet> beyond = beyond(line, set);
            if (beyond.isPresent() && !beyond.get().isEmpty() && beyond.get().cardinality() < set.cardinality()) {
                BitSet rest = (BitSet) set.clone();
                rest.andNot(beyond.get());
                ways.add(line);
                near.add(rest);
                far.add(beyond.get());
            }
        }
        if (ways.isEmpty()) {
            if (stuck.isEmpty() || set.cardinality() < stuck.get().cardinality()) {
                stuck = Optional.of((BitSet) set.clone());
            }
            return new Part(IMPOSSIBLE, IMPOSSIBLE, -1);
        }
        Part best = new Part(IMPOSSIBLE, 2, ways.get(0));
        int atLeast = IMPOSSIBLE;
        for (int k = 0; k < ways.size(); k++) {
            Part a = part(near.get(k));
            Part b = part(far.get(k));
            // Where one line leads to patches that no seam parts, every other does: they lie on one side of each that could part them.
            int found = Math.min(IMPOSSIBLE, a.found() + b.found());
            atLeast = Math.min(atLeast, a.atLeast() + b.atLeast());
            if (found < best.found()) {
                best = new Part(found, 2, ways.get(k));
            }
            if (best.found() == 2 || best.found() >= IMPOSSIBLE) {
                break; // Two is the least for what one can't hold.
            }
            if (known.size() > limit) {
                return new Part(best.found(), 2, best.line());
            }
        }
        return new Part(best.found(), best.found() == 2 ? 2 : Math.max(2, Math.min(atLeast, best.found())), best.line());
    }

    /** Adds the part's sections and joins; what it is called then: the letters of its sections. */
    private List<String> laid(BitSet set, List<Sections.Section> sections, List<String> joins) {
        Part part = part(set);
        if (part.line() < 0) {
            sections.add(new Sections.Section(order(set).stream().map(patches::get).toList()));
            return List.of(letter(sections.size() - 1));
        }
        BitSet far = beyond(part.line(), set).orElseThrow();
        BitSet near = (BitSet) set.clone();
        near.andNot(far);
        List<String> one = laid(near, sections, joins);
        List<String> other = laid(far, sections, joins);
        joins.add(String.join("", one) + " to " + String.join("", other));
        List<String> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }

    /** A to Z, then AA. */
    public static String letter(int index) {
        return (index < 26 ? "" : letter(index / 26 - 1)) + (char) ('A' + index % 26);
    }
}
