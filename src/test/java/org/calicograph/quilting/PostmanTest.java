package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
                if (odd.size() > 2) {
                    double a = length(net, new Retracing(net).overDistances(odd, open));
                    double b = length(net, new Retracing(net).overEdgeEnds(odd, open));
                    assertThat(b).as("round %d open %s", round, open).isCloseTo(a, within(1e-9));
                }
            }
        }
    }

    @Test
    void routes_over_small_nets_equal_an_exhaustive_search() {
        Random random = new Random(7);
        int exact = 0;
        double worst = 1;
        for (int round = 0; round < 150; round++) {
            Net net = net(random, 4 + random.nextInt(4), 6 + random.nextInt(5), round % 2 == 0 ? 1 : 0.5);
            for (Postman.Ends ends : Postman.Ends.values()) {
                Postman route = Postman.of(net, ends);
                double best = exhaustive(net, ends == Postman.Ends.CLOSED);
                if (route.exact()) {
                    assertThat(route.length()).as("round %d %s", round, ends).isCloseTo(best, within(1e-9));
                    exact++;
                } else {
                    assertThat(route.length()).isGreaterThanOrEqualTo(best - 1e-9);
                    assertThat(route.bound()).isLessThanOrEqualTo(best + 1e-9);
                    worst = Math.max(worst, route.length() / best);
                }
                for (int i = 0; i < net.edges().size(); i++) {
                    assertThat(route.times().get(i)).isGreaterThanOrEqualTo(net.edges().get(i).required() ? 1 : 0);
                }
            }
        }
        System.out.println("exact " + exact + " of 300; longest of the others " + worst + " of the least");
        assertThat(exact).isGreaterThan(200);
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
            List<Trail.Step> steps = new Trail(new Net(net.corners(), edges), (a, x, b, y) -> (a * 31 + b * 17) % 7).steps(0);
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

    /** Shortest walk over (corner, set of required edges covered, first corner), by Dijkstra. */
    private static double exhaustive(Net net, boolean closed) {
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
