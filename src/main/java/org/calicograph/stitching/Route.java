package org.calicograph.stitching;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Length;
import org.calicograph.quilting.Offset;
import org.calicograph.stitching.route.Net;
import org.calicograph.stitching.route.Postman;
import org.calicograph.stitching.route.RequiredPieces;
import org.calicograph.stitching.route.Trail;

/**
 * Lines in sewing order: the fewest starts, and with those the least length gone over again; or, where a start
 * has its price, the least of both together.
 *
 * @param runs   each sewn in one go, in order
 * @param bound  no route costs less than this length, in inches, with as many starts as this one
 * @param exact  true if none costs less than this one
 * @param matching the matching's share of the time taken, from 0 to 1
 */
public record Route(List<Run> runs, double bound, boolean exact, double matching) {

    /** One piece of line in the order of sewing. */
    public record Pass(Segment line, Kind kind) { }

    /** Sewn for the first time, over a line already planned, or along a line lent for travelling. */
    public enum Kind { NEW, AGAIN, TRAVEL }

    /** From one start to one stop. */
    public record Run(List<Pass> passes) {
        public Run {
            passes = List.copyOf(passes);
        }

        /** The line that it follows. */
        public Path path() {
            return new Path(passes.stream().map(Pass::line).toList());
        }

        /** How long it is, in inches. */
        public double length() {
            return passes.stream().mapToDouble(p -> p.line().length()).sum();
        }

        Run reversed() {
            List<Pass> back = new ArrayList<>();
            for (int i = passes.size() - 1; i >= 0; i--) {
                back.add(new Pass(passes.get(i).line().reversed(), passes.get(i).kind()));
            }
            // What is sewn second is what is gone over again.
            java.util.Set<List<Object>> seen = new java.util.HashSet<>();
            List<Pass> named = new ArrayList<>();
            for (Pass p : back) {
                boolean first = seen.add(keyOf(p.line()));
                named.add(p.kind() == Kind.TRAVEL ? p : new Pass(p.line(), first ? Kind.NEW : Kind.AGAIN));
            }
            return new Run(named);
        }
    }

    public Route {
        runs = List.copyOf(runs);
    }

    /** The route over the lines, cut where they cross, starting near the top left. */
    public static Route over(Collection<Path> lines) {
        return over(lines, List.of(), Point.ORIGIN);
    }

    /**
     * @param lines  to be sewn, every one
     * @param lent   lines that may be travelled along to get from one to the other: seams, echoes
     * @param near   where the sewing begins, as near as the fewest starts allow
     * @throws IllegalArgumentException if there is nothing to sew
     */
    public static Route over(Collection<Path> lines, Collection<Path> lent, Point near) {
        return over(lines, lent, near, Double.POSITIVE_INFINITY);
    }

    /**
     * The same, where a start costs as much as going over a length again: what is gained by more starts is weighed
     * against what is sewn twice.
     *
     * @param start 0 or more; 0 sews nothing twice
     */
    public static Route over(Collection<Path> lines, Collection<Path> lent, Point near, Length start) {
        return over(lines, lent, near, start.inInches());
    }

    private static Route over(Collection<Path> lines, Collection<Path> lent, Point near, double start) {
        Drawn drawn = drawn(lines, lent);
        Postman postman = Postman.of(drawn.net(), Postman.Ends.OPEN, start);
        return new Route(ordered(runs(drawn, postman.times(), near), near), postman.bound(), postman.exact(), postman.matching());
    }

    /** Lines cut where they cross: an edge of the net for each piece. */
    record Drawn(Net net, List<Segment> pieces) { }

    static Drawn drawn(Collection<Path> lines, Collection<Path> lent) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a route over no lines has no start; give it at least one line");
        }
        List<Segment> all = new ArrayList<>();
        lines.forEach(p -> p.segments().forEach(s -> addArcs(s, all)));
        int count = all.size();
        lent.forEach(p -> p.segments().forEach(s -> addArcs(s, all)));
        List<Segment> pieces = Arrangement.pieces(all);
        RequiredPieces required = RequiredPieces.of(lent.isEmpty() ? List.of() : all.subList(0, count));
        Map<Point, Integer> corners = new HashMap<>();
        List<Net.Edge> edges = new ArrayList<>();
        for (Segment s : pieces) {
            int from = corners.computeIfAbsent(s.from(), k -> corners.size());
            int to = corners.computeIfAbsent(s.to(), k -> corners.size());
            edges.add(new Net.Edge(from, to, s.length(), lent.isEmpty() || required.holds(s)));
        }
        return new Drawn(new Net(corners.size(), edges), pieces);
    }

    /** Cubics become arcs within 1e-4 in, whose crossings are found in closed form. */
    private static void addArcs(Segment s, List<Segment> all) {
        all.addAll(s instanceof org.calicograph.geometry.Cubic c ? Offset.arcs(c, 0) : List.of(s));
    }

    /** A segment whichever way it runs. */
    static List<Object> keyOf(Segment s) {
        Point a = s.from();
        Point b = s.to();
        boolean inOrder = a.x() < b.x() || a.x() == b.x() && a.y() <= b.y();
        Point m = s.middle();
        List<Object> middle = List.of(Math.rint(m.x() * 1e5), Math.rint(m.y() * 1e5));
        return inOrder ? List.of(a, b, middle) : List.of(b, a, middle);
    }

    private static List<Run> runs(Drawn drawn, List<Integer> times, Point near) {
        List<Segment> pieces = drawn.pieces();
        List<Run> runs = new ArrayList<>();
        boolean[] sewn = new boolean[pieces.size()];
        for (Net.Share share : drawn.net().shares(times.stream().mapToInt(Integer::intValue).toArray())) {
            List<Integer> part = share.edges();
            Trail.Bend bend = (a, atEnd, b, fromEnd) -> bend(pieces.get(part.get(a)), atEnd, pieces.get(part.get(b)), fromEnd,
                    part.get(a).equals(part.get(b)));
            int first = 0;
            for (int i = 1; i < part.size(); i++) {
                if (pieces.get(part.get(i)).from().distance(near) < pieces.get(part.get(first)).from().distance(near)) {
                    first = i;
                }
            }
            for (List<Trail.Step> steps : new Trail(share.net(), bend).runs(first)) {
                List<Pass> passes = new ArrayList<>();
                for (Trail.Step step : steps) {
                    int i = part.get(step.edge());
                    Segment s = step.reversed() ? pieces.get(i).reversed() : pieces.get(i);
                    Kind kind = !share.net().edges().get(step.edge()).required() ? Kind.TRAVEL : sewn[i] ? Kind.AGAIN : Kind.NEW;
                    sewn[i] = true;
                    passes.add(new Pass(s, kind));
                }
                runs.add(new Run(passes));
            }
        }
        return runs;
    }

    /** Radians from straight on; turning back on the same line is the last choice. */
    private static double bend(Segment a, boolean aEnd, Segment b, boolean bEnd, boolean same) {
        Point in = aEnd ? a.heading(1) : a.heading(0).times(-1);
        Point out = bEnd ? b.heading(1).times(-1) : b.heading(0);
        return Math.abs(Math.atan2(in.cross(out), in.dot(out))) + (same ? 1 : 0);
    }

    /** Each run begins at whichever end is nearer, the next run is the nearest one left. */
    private static List<Run> ordered(List<Run> runs, Point near) {
        List<Run> left = new ArrayList<>(runs);
        List<Run> out = new ArrayList<>();
        Point here = near;
        while (!left.isEmpty()) {
            Point at = here;
            Run next = left.stream().min(Comparator.comparingDouble(r -> Math.min(start(r).distance(at), stop(r).distance(at)))).orElseThrow();
            left.remove(next);
            Run run = stop(next).distance(at) < start(next).distance(at) - 1e-9 ? next.reversed() : next;
            out.add(run);
            here = stop(run);
        }
        return out;
    }

    static Point start(Run run) {
        return run.passes().get(0).line().from();
    }

    static Point stop(Run run) {
        return run.passes().get(run.passes().size() - 1).line().to();
    }

    /** How many times the thread is started. */
    public int starts() {
        return runs.size();
    }

    /** The length of the whole route, in inches. */
    public double length() {
        return runs.stream().mapToDouble(Run::length).sum();
    }

    /** The length sewn more than once or along lent lines, in inches. */
    public double retraced() {
        return runs.stream().flatMap(r -> r.passes().stream()).filter(p -> p.kind() != Kind.NEW)
                .mapToDouble(p -> p.line().length()).sum();
    }

    /** The paths in sewing order, one a run. */
    public List<Path> paths() {
        return runs.stream().map(Run::path).toList();
    }
}
