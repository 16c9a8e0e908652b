package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.alg.shortestpath.TreeSingleSourcePathsImpl;
import org.jgrapht.alg.util.Pair;
import org.jgrapht.graph.WeightedPseudograph;

/**
 * The shortest ways through a {@link Net} from the nearest of some corners to every other: from one place more, joined
 * to each of those corners at no length (Dijkstra 1959, by JGraphT).
 */
final class Ways {

    private final Net net;
    private final int everywhere;
    private final Map<Integer, Pair<Double, Integer>> reached;
    private final int[] source;

    /** @param incidence the numbers of the edges that may be used, by corner */
    Ways(Net net, int[][] incidence, Collection<Integer> sources) {
        this.net = net;
        everywhere = net.corners();
        WeightedPseudograph<Integer, Integer> graph = new WeightedPseudograph<>(null, null);
        for (int c = 0; c <= everywhere; c++) {
            graph.addVertex(c);
        }
        for (int c = 0; c < everywhere; c++) {
            for (int edge : incidence[c]) {
                Net.Edge e = net.edges().get(edge);
                // Each edge stands at both its ends, one back to its own corner twice there; once is enough.
                if (graph.addEdge(e.from(), e.to(), edge)) {
                    graph.setEdgeWeight(edge, e.length());
                }
            }
        }
        int lead = net.edges().size();
        for (int c : sources.stream().distinct().toList()) {
            graph.addEdge(everywhere, c, lead);
            graph.setEdgeWeight(lead++, 0);
        }
        SingleSourcePaths<Integer, Integer> paths = new DijkstraShortestPath<>(graph).getPaths(everywhere);
        reached = ((TreeSingleSourcePathsImpl<Integer, Integer>) paths).getDistanceAndPredecessorMap();
        source = new int[net.corners()];
        java.util.Arrays.fill(source, -2);
    }

    /** Infinite where no way leads. */
    double distance(int corner) {
        Pair<Double, Integer> way = reached.get(corner);
        return way == null ? Double.POSITIVE_INFINITY : way.getFirst();
    }

    /** The corner from which the way comes, or -1. */
    int source(int corner) {
        List<Integer> passed = new ArrayList<>();
        int c = corner;
        while (source[c] == -2) {
            passed.add(c);
            Pair<Double, Integer> way = reached.get(c);
            if (way == null) {
                source[c] = -1;
            } else if (way.getSecond() >= net.edges().size()) {
                source[c] = c;
            } else {
                c = net.edges().get(way.getSecond()).other(c);
            }
        }
        for (int each : passed) {
            source[each] = source[c];
        }
        return source[corner];
    }

    /** The edges of the way to a corner that is reached, last first. */
    List<Integer> edgesTo(int corner) {
        List<Integer> way = new ArrayList<>();
        for (int c = corner; reached.get(c) != null && reached.get(c).getSecond() < net.edges().size(); c = net.edges().get(way.get(way.size() - 1)).other(c)) {
            way.add(reached.get(c).getSecond());
        }
        return way;
    }
}
