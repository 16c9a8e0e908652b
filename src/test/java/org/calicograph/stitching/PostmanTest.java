package org.calicograph.stitching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.calicograph.stitching.route.Postman;
import org.calicograph.stitching.route.Net;
import org.calicograph.stitching.route.Retracing;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.stitching.route.Trail;
import org.junit.jupiter.api.Test;

class PostmanTest {

    /** Sources are named in the resource, graph by graph. */
    @Test
    void closed_routes_are_as_long_as_the_published_optima() throws IOException {
        Map<String, Net> nets = nets();
        int checked = 0;
        for (String[] row : rows("postman-optima.csv")) {
            Postman route = Postman.of(nets.get(row[0]), Postman.Ends.CLOSED);
            assertThat(route.length()).as(row[0]).isCloseTo(Double.parseDouble(row[1]), within(1e-9));
            assertThat(route.exact()).as(row[0]).isTrue();
            checked++;
        }
        assertThat(checked).isEqualTo(18);
    }

    /** Source: public repository postman_problems (commit 72d1c0d4, MIT), README: 32.12 miles with optional roads. */
    @Test
    void the_rural_route_is_as_long_as_published() throws IOException {
        Postman route = Postman.of(nets().get("sleeping_giant_rural"), Postman.Ends.CLOSED);
        assertThat(route.length()).isCloseTo(32.12, within(1e-9));
        assertThat(route.exact()).isTrue();
    }

    @Test
    void both_forms_of_the_matching_agree() {
        Random random = new Random(20);
        for (int round = 0; round < 60; round++) {
            Net net = net(random, 12 + random.nextInt(20), 25 + random.nextInt(30), 1);
            int[] once = new int[net.edges().size()];
            java.util.Arrays.fill(once, 1);
            List<Integer> odd = net.odd(once);
            for (boolean open : new boolean[] {false, true}) {
                double start = round % 3 == 0 ? Double.POSITIVE_INFINITY : round % 7;
                if (odd.size() > 2) {
                    double a = cost(net, once, new Retracing(net).overDistances(odd, open, start), open, start);
                    double b = cost(net, once, new Retracing(net).overEdgeEnds(odd, open, start), open, start);
                    assertThat(b).as("round %d open %s", round, open).isCloseTo(a, within(1e-9));
                }
            }
        }
    }

    @Test
    void routes_over_small_nets_equal_an_exhaustive_search_whatever_a_start_costs() {
        Random random = new Random(7);
        for (int round = 0; round < 150; round++) {
            Net net = net(random, 4 + random.nextInt(4), 6 + random.nextInt(5), round % 2 == 0 ? 1 : 0.5);
            for (Postman.Ends ends : Postman.Ends.values()) {
                Postman route = Postman.of(net, ends);
                double best = exhaustive(net, ends == Postman.Ends.CLOSED, Double.POSITIVE_INFINITY);
                assertThat(route.exact()).as("round %d %s", round, ends).isTrue();
                assertThat(route.length()).as("round %d %s", round, ends).isCloseTo(best, within(1e-9));
                covers(net, route);
            }
            double start = random.nextInt(30) / 4.0;
            Postman priced = Postman.of(net, Postman.Ends.OPEN, start);
            assertThat(priced.exact()).isTrue();
            covers(net, priced);
            assertThat(priced.length() + start * starts(net, priced)).as("round %d, %s a start", round, start)
                    .isCloseTo(start + exhaustive(net, false, start), within(1e-9));
        }
    }

    @Test
    void routes_over_drawn_lines_and_seams_equal_an_exhaustive_search() {
        Random random = new Random(11);
        int joined = 0;
        for (int round = 0; round < 40; round++) {
            List<Path> lines = new ArrayList<>();
            List<Path> seams = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                Point at = Point.of(random.nextInt(5), random.nextInt(5));
                Point to = at.plus(random.nextBoolean() ? 2 : 0, 1 + random.nextInt(2));
                (i < 3 ? lines : seams).add(Path.through(at, to));
            }
            seams.add(Path.through(Point.of(0, 2), Point.of(6, 2)));
            Net net = Route.drawn(lines, seams).net();
            if (net.edges().stream().filter(Net.Edge::required).count() > 11) {
                continue;
            }
            double start = 0.25 + random.nextInt(12) / 4.0;
            Route route = Route.over(lines, seams, Point.ORIGIN, Length.inches(start));
            assertThat(route.exact()).isTrue();
            assertThat(route.length() + start * route.starts()).as("round %d", round).isCloseTo(start + exhaustive(net, false, start), within(1e-6));
            double sewn = route.length() - route.retraced();
            assertThat(sewn).isCloseTo(net.requiredLength(), within(1e-6));
            joined += route.runs().stream().anyMatch(r -> r.passes().stream().anyMatch(p -> p.kind() == Route.Kind.TRAVEL)) ? 1 : 0;
        }
        assertThat(joined).as("routes that travel along a seam").isGreaterThan(5);
    }

    @Test
    void on_larger_nets_the_cost_lies_above_its_bound_and_every_line_is_covered() {
        Random random = new Random(19);
        for (int round = 0; round < 6; round++) {
            Net net = net(random, 120, 260, 0.3);
            double start = 2 + round;
            Postman route = Postman.of(net, Postman.Ends.OPEN, start);
            covers(net, route);
            assertThat(route.bound()).isBetween(net.requiredLength() - 1e-9, route.length() + 1e-9);
            double cost = route.length() + start * starts(net, route);
            assertThat(cost / (cost - route.length() + route.bound())).as("above the bound").isLessThan(1.1);
        }
    }

    private static void covers(Net net, Postman route) {
        for (int i = 0; i < net.edges().size(); i++) {
            assertThat(route.times().get(i)).isGreaterThanOrEqualTo(net.edges().get(i).required() ? 1 : 0);
        }
    }

    private static int starts(Net net, Postman route) {
        int starts = 0;
        for (Net.Share share : net.shares(route.times().stream().mapToInt(Integer::intValue).toArray())) {
            int[] once = new int[share.edges().size()];
            java.util.Arrays.fill(once, 1);
            starts += Math.max(1, share.net().odd(once).size() / 2);
        }
        return starts;
    }

    @Test
    void a_trail_runs_over_every_edge_once_and_each_begins_where_the_last_ends() {
        Random random = new Random(3);
        for (int round = 0; round < 80; round++) {
            Net net = net(random, 5 + random.nextInt(12), 12 + random.nextInt(30), 1);
            Postman postman = Postman.of(net, Postman.Ends.OPEN);
            List<Net.Edge> edges = new ArrayList<>();
            for (int i = 0; i < net.edges().size(); i++) {
                for (int k = 0; k < postman.times().get(i); k++) {
                    edges.add(net.edges().get(i));
                }
            }
            List<Trail.Step> steps = new Trail(new Net(net.corners(), edges), (a, x, b, y) -> (a * 31 + b * 17) % 7).runs(0).get(0);
            assertThat(steps.stream().map(Trail.Step::edge).distinct().count()).isEqualTo(edges.size());
            int here = -1;
            for (Trail.Step s : steps) {
                Net.Edge e = edges.get(s.edge());
                int from = s.reversed() ? e.to() : e.from();
                assertThat(here == -1 || here == from).isTrue();
                here = e.other(from);
            }
        }
    }

    /** What is gone over again, and each start after the first. */
    private static double cost(Net net, int[] once, int[] extra, boolean open, double start) {
        int[] times = once.clone();
        java.util.Arrays.setAll(times, i -> once[i] + extra[i]);
        int more = Math.max(0, net.odd(times).size() / 2 - 1);
        assertThat(open || net.odd(times).isEmpty()).isTrue();
        return length(net, extra) + (more == 0 ? 0 : more * start);
    }

    private static double length(Net net, int[] times) {
        double sum = 0;
        for (int i = 0; i < times.length; i++) {
            sum += times[i] * net.edges().get(i).length();
        }
        return sum;
    }

    /** Connected through all its edges; a share of them required, at least one. */
    private static Net net(Random random, int corners, int edges, double share) {
        List<Net.Edge> all = new ArrayList<>();
        for (int i = 0; i < Math.max(edges, corners - 1); i++) {
            int a = i < corners - 1 ? i + 1 : random.nextInt(corners);
            int b = i < corners - 1 ? random.nextInt(i + 1) : random.nextInt(corners);
            all.add(new Net.Edge(a, b, 1 + random.nextInt(40) / 4.0, i == 0 || random.nextDouble() < share));
        }
        return new Net(corners, all);
    }

    /** Shortest walk over (corner, set of required edges covered, first corner), by Dijkstra; a further start leads anywhere at its price. */
    private static double exhaustive(Net net, boolean closed, double start) {
        List<Integer> bits = new ArrayList<>();
        for (int i = 0; i < net.edges().size(); i++) {
            bits.add(net.edges().get(i).required() ? 1 << (int) net.edges().subList(0, i).stream().filter(Net.Edge::required).count() : 0);
        }
        int full = bits.stream().mapToInt(b -> b).reduce(0, (a, b) -> a | b);
        double best = Double.POSITIVE_INFINITY;
        for (int begin = 0; begin < net.corners(); begin++) {
            double[][] distance = new double[net.corners()][full + 1];
            for (double[] row : distance) {
                java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
            }
            PriorityQueue<double[]> queue = new PriorityQueue<>((a, b) -> Double.compare(a[0], b[0]));
            distance[begin][0] = 0;
            queue.add(new double[] {0, begin, 0});
            while (!queue.isEmpty()) {
                double[] head = queue.poll();
                int c = (int) head[1];
                int done = (int) head[2];
                if (head[0] > distance[c][done]) {
                    continue;
                }
                if (done == full && (!closed || c == begin)) {
                    best = Math.min(best, head[0]);
                    break;
                }
                for (int d = 0; d < net.corners(); d++) {
                    if (head[0] + start < distance[d][done]) {
                        distance[d][done] = head[0] + start;
                        queue.add(new double[] {distance[d][done], d, done});
                    }
                }
                for (int i = 0; i < net.edges().size(); i++) {
                    Net.Edge e = net.edges().get(i);
                    if (e.from() == c || e.to() == c) {
                        int d = e.other(c);
                        int then = done | bits.get(i);
                        if (head[0] + e.length() < distance[d][then]) {
                            distance[d][then] = head[0] + e.length();
                            queue.add(new double[] {distance[d][then], d, then});
                        }
                    }
                }
            }
        }
        return best;
    }

    private static Map<String, Net> nets() throws IOException {
        Map<String, List<String[]>> byName = new LinkedHashMap<>();
        rows("postman-edges.csv").forEach(r -> byName.computeIfAbsent(r[0], k -> new ArrayList<>()).add(r));
        Map<String, Net> nets = new HashMap<>();
        byName.forEach((name, rows) -> {
            Map<String, Integer> corners = new HashMap<>();
            List<Net.Edge> edges = rows.stream().map(r -> new Net.Edge(corners.computeIfAbsent(r[1], k -> corners.size()),
                    corners.computeIfAbsent(r[2], k -> corners.size()), Double.parseDouble(r[3]), r[4].equals("1"))).toList();
            nets.put(name, new Net(corners.size(), edges));
        });
        return nets;
    }

    private static List<String[]> rows(String resource) throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                PostmanTest.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            return in.lines().filter(l -> !l.startsWith("#")).map(l -> l.split(",")).toList();
        }
    }
}
