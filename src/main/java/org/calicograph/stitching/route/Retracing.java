package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedPerfectMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DefaultUndirectedWeightedGraph;

/**
 * The least length to go over again so that the corners of odd degree become even, or as few of them
 * stay odd as pays: a minimum T-join, exact, by minimum-weight perfect matching (Edmonds 1965; blossom V of JGraphT).
 *
 * <p>With few odd corners the matching runs over their shortest distances; with many, over a sparse
 * graph in which each corner is a clique of its edge ends, so that it grows with the edges and not with
 * the square of the odd corners. Both give the same length.
 */
public final class Retracing {

    /** Up to this many odd corners the matching runs over all their distances. */
    static final int FEW = 120;

    /** The greatest weight that the matching is given, before it is doubled; far enough below its limit for what adds up on the way. */
    private static final double MOST = 1 << 28;

    private final Net net;
    private final int[][] at;
    private long matchingNanos;

    public Retracing(Net net) {
        this.net = net;
        this.at = net.incidence();
    }

    long matchingNanos() {
        return matchingNanos;
    }

    /**
     * How often to add each edge. The net must hang together.
     *
     * @param openEnds if true, two of the odd corners, the best ones, stay odd: a route begins and ends there
     * @param start    with open ends, two more odd corners stay odd for as much as this length saves: a run ends at
     *                 one and another begins at the other; infinite if none may
     */
    int[] least(List<Integer> odd, boolean openEnds, double start) {
        if (odd.isEmpty() || openEnds && odd.size() == 2) {
            return new int[net.edges().size()];
        }
        return odd.size() <= FEW ? overDistances(odd, openEnds, start) : overEdgeEnds(odd, openEnds, start);
    }

    public int[] overDistances(List<Integer> odd, boolean openEnds, double start) {
        double most = openEnds ? start : Double.POSITIVE_INFINITY;
        int n = odd.size();
        DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph = graph();
        int all = openEnds ? n + 2 : n;
        for (int i = 0; i < all; i++) {
            graph.addVertex(i);
        }
        List<Ways> ways = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            ways.add(new Ways(net, at, List.of(odd.get(i))));
            for (int j = i + 1; j < n; j++) {
                graph.setEdgeWeight(graph.addEdge(i, j), Math.min(most, ways.get(i).distance(odd.get(j))));
            }
            for (int end = n; end < all; end++) {
                graph.setEdgeWeight(graph.addEdge(i, end), 0);
            }
        }
        int[] extra = new int[net.edges().size()];
        for (DefaultEdge e : match(graph)) {
            int i = graph.getEdgeSource(e);
            int j = graph.getEdgeTarget(e);
            if (i < n && j < n && ways.get(i).distance(odd.get(j)) <= most) {
                ways.get(i).edgesTo(odd.get(j)).forEach(edge -> extra[edge]++);
            }
        }
        // Two shortest paths may share an edge: going over it twice more changes no corner's parity.
        for (int i = 0; i < extra.length; i++) {
            extra[i] %= 2;
        }
        return extra;
    }

    public int[] overEdgeEnds(List<Integer> odd, boolean openEnds, double start) {
        List<Net.Edge> edges = new ArrayList<>(net.edges());
        List<Integer> target = new ArrayList<>(odd);
        int corners = net.corners();
        if (openEnds) {
            // Two ends far away, each reachable from every odd corner at the same high toll, so that
            // each takes exactly one.
            double toll = 1 + net.edges().stream().mapToDouble(Net.Edge::length).sum();
            for (int end = 0; end < 2; end++) {
                target.add(corners);
                corners = reachable(odd, corners, toll, edges);
            }
            if (start < toll) {
                // A place through which any two odd corners meet for the price of a start.
                corners = reachable(odd, corners, start / 2, edges);
            }
        }
        int[] join = join(new Net(corners, edges), target);
        return Arrays.copyOf(join, net.edges().size());
    }

    /** A place that every odd corner reaches at a toll: a chain of corners at no distance, to stay sparse. The corners there are then. */
    private static int reachable(List<Integer> odd, int from, double toll, List<Net.Edge> edges) {
        for (int i = 0; i < odd.size(); i++) {
            edges.add(new Net.Edge(odd.get(i), from + i, toll, false));
            if (i + 1 < odd.size()) {
                edges.add(new Net.Edge(from + i, from + i + 1, 0, false));
            }
        }
        return from + odd.size();
    }

    private int[] join(Net wide, List<Integer> target) {
        boolean[] isTarget = new boolean[wide.corners()];
        target.forEach(c -> isTarget[c] = true);
        DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph = graph();
        int m = wide.edges().size();
        for (int i = 0; i < 2 * m; i++) {
            graph.addVertex(i);
        }
        int next = 2 * m;
        DefaultEdge[] across = new DefaultEdge[m];
        List<List<Integer>> ends = new ArrayList<>();
        for (int c = 0; c < wide.corners(); c++) {
            ends.add(new ArrayList<>());
        }
        for (int i = 0; i < m; i++) {
            Net.Edge e = wide.edges().get(i);
            across[i] = graph.addEdge(2 * i, 2 * i + 1);
            graph.setEdgeWeight(across[i], e.length());
            if (e.from() != e.to()) {
                ends.get(e.from()).add(2 * i);
                ends.get(e.to()).add(2 * i + 1);
            }
        }
        for (int c = 0; c < wide.corners(); c++) {
            List<Integer> clique = ends.get(c);
            if (clique.size() % 2 != (isTarget[c] ? 1 : 0)) {
                graph.addVertex(next);
                clique.add(next++);
            }
            for (int i = 0; i < clique.size(); i++) {
                for (int j = i + 1; j < clique.size(); j++) {
                    graph.setEdgeWeight(graph.addEdge(clique.get(i), clique.get(j)), 0);
                }
            }
        }
        int[] used = new int[m];
        java.util.Set<DefaultEdge> matched = match(graph);
        for (int i = 0; i < m; i++) {
            Net.Edge e = wide.edges().get(i);
            used[i] = e.from() != e.to() && matched.contains(across[i]) ? 1 : 0;
        }
        return used;
    }

    /**
     * What lengths are counted in, in inches: 2^-20, or the least doubling of it that keeps the longest below
     * {@link #MOST}. The matching takes a step of more than 1e10 to mean that there is no matching at all.
     */
    private static double unit(double longest) {
        double unit = 1.0 / (1 << 20);
        while (longest / unit > MOST) {
            unit *= 2;
        }
        return unit;
    }

    private static DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph() {
        return new DefaultUndirectedWeightedGraph<>(DefaultEdge.class);
    }

    private java.util.Set<DefaultEdge> match(DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph) {
        long start = Cpu.nanos();
        // Even whole numbers: halves of them stay exact in double precision, where sums of roundings keep the matching from ending.
        double unit = unit(graph.edgeSet().stream().mapToDouble(graph::getEdgeWeight).max().orElse(1));
        graph.edgeSet().forEach(e -> graph.setEdgeWeight(e, 2 * Math.rint(graph.getEdgeWeight(e) / unit)));
        java.util.Set<DefaultEdge> edges = new KolmogorovWeightedPerfectMatching<>(graph).getMatching().getEdges();
        matchingNanos += Cpu.nanos() - start;
        return edges;
    }
}
