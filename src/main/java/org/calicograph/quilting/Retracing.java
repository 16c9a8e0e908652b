package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedPerfectMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DefaultUndirectedWeightedGraph;

/**
 * The least length to go over again so that the corners of odd degree become even: a minimum T-join,
 * exact, by minimum-weight perfect matching (Edmonds 1965; blossom V of JGraphT).
 *
 * <p>With few odd corners the matching runs over their shortest distances; with many, over a sparse
 * graph in which each corner is a clique of its edge ends, so that it grows with the edges and not with
 * the square of the odd corners. Both give the same length.
 */
final class Retracing {

    /** Up to this many odd corners the matching runs over all their distances. */
    static final int FEW = 120;

    private final Net net;
    private final int[][] at;
    private long matchingNanos;

    Retracing(Net net) {
        this.net = net;
        this.at = net.incidence();
    }

    long matchingNanos() {
        return matchingNanos;
    }

    /**
     * How often to add each edge. The odd corners must be even in number in each part of the net.
     *
     * @param openEnds if true, two of the odd corners, the best ones, stay odd: a route begins and ends there
     */
    int[] least(List<Integer> odd, boolean openEnds) {
        if (odd.isEmpty() || openEnds && odd.size() == 2) {
            return new int[net.edges().size()];
        }
        return odd.size() <= FEW ? overDistances(odd, openEnds) : overEdgeEnds(odd, openEnds);
    }

    int[] overDistances(List<Integer> odd, boolean openEnds) {
        int n = odd.size();
        DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph = graph();
        int all = openEnds ? n + 2 : n;
        for (int i = 0; i < all; i++) {
            graph.addVertex(i);
        }
        int[][] before = new int[n][];
        for (int i = 0; i < n; i++) {
            double[] distance = new double[net.corners()];
            before[i] = shortest(odd.get(i), distance);
            for (int j = i + 1; j < n; j++) {
                if (distance[odd.get(j)] < Double.POSITIVE_INFINITY) {
                    graph.setEdgeWeight(graph.addEdge(i, j), distance[odd.get(j)]);
                }
            }
            for (int end = n; end < all; end++) {
                graph.setEdgeWeight(graph.addEdge(i, end), 0);
            }
        }
        int[] extra = new int[net.edges().size()];
        for (DefaultEdge e : match(graph)) {
            int i = graph.getEdgeSource(e);
            int j = graph.getEdgeTarget(e);
            if (i < n && j < n) {
                int c = odd.get(j);
                while (c != odd.get(i)) {
                    int edge = before[i][c];
                    extra[edge]++;
                    c = net.edges().get(edge).other(c);
                }
            }
        }
        // Two shortest paths may share an edge: going over it twice more changes no corner's parity.
        for (int i = 0; i < extra.length; i++) {
            extra[i] %= 2;
        }
        return extra;
    }

    int[] overEdgeEnds(List<Integer> odd, boolean openEnds) {
        List<Net.Edge> edges = new ArrayList<>(net.edges());
        List<Integer> target = new ArrayList<>(odd);
        int corners = net.corners();
        if (openEnds) {
            // Two ends far away, each reachable from every odd corner at the same high toll, so that
            // each takes exactly one; an end is a chain of corners at no distance, to stay sparse.
            double toll = 1 + net.edges().stream().mapToDouble(Net.Edge::length).sum();
            for (int end = 0; end < 2; end++) {
                target.add(corners);
                for (int i = 0; i < odd.size(); i++) {
                    edges.add(new Net.Edge(odd.get(i), corners, toll, false));
                    if (i + 1 < odd.size()) {
                        edges.add(new Net.Edge(corners, corners + 1, 0, false));
                    }
                    corners++;
                }
            }
        }
        int[] join = join(new Net(corners, edges), target);
        return Arrays.copyOf(join, net.edges().size());
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

    private static DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph() {
        return new DefaultUndirectedWeightedGraph<>(DefaultEdge.class);
    }

    private java.util.Set<DefaultEdge> match(DefaultUndirectedWeightedGraph<Integer, DefaultEdge> graph) {
        long start = System.nanoTime();
        java.util.Set<DefaultEdge> edges = new KolmogorovWeightedPerfectMatching<>(graph).getMatching().getEdges();
        matchingNanos += System.nanoTime() - start;
        return edges;
    }

    /** For each corner the edge by which the shortest way from the source arrives, or -1. */
    int[] shortest(int source, double[] distance) {
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        int[] before = new int[net.corners()];
        Arrays.fill(before, -1);
        distance[source] = 0;
        PriorityQueue<double[]> queue = new PriorityQueue<>((a, b) -> Double.compare(a[0], b[0]));
        queue.add(new double[] {0, source});
        while (!queue.isEmpty()) {
            double[] head = queue.poll();
            int c = (int) head[1];
            if (head[0] > distance[c]) {
                continue;
            }
            for (int edge : at[c]) {
                int d = net.edges().get(edge).other(c);
                double reach = head[0] + net.edges().get(edge).length();
                if (reach < distance[d]) {
                    distance[d] = reach;
                    before[d] = edge;
                    queue.add(new double[] {reach, d});
                }
            }
        }
        return before;
    }
}
