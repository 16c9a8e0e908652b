package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** The shortest ways through a {@link Net} from the nearest of some corners to every other (Dijkstra 1959). */
final class Ways {

    private record Reached(double distance, int corner) { }

    private final Net net;
    private final double[] distance;
    private final int[] before;
    private final int[] source;

    Ways(Net net, int[][] incidence, Collection<Integer> sources) {
        this.net = net;
        distance = new double[net.corners()];
        before = new int[net.corners()];
        source = new int[net.corners()];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        Arrays.fill(source, -1);
        PriorityQueue<Reached> queue = new PriorityQueue<>(Comparator.comparingDouble(Reached::distance).thenComparingInt(Reached::corner));
        for (int c : sources) {
            distance[c] = 0;
            source[c] = c;
            queue.add(new Reached(0, c));
        }
        while (!queue.isEmpty()) {
            Reached head = queue.poll();
            int c = head.corner();
            if (head.distance() > distance[c]) {
                continue;
            }
            for (int edge : incidence[c]) {
                int d = net.edges().get(edge).other(c);
                double reach = head.distance() + net.edges().get(edge).length();
                if (reach < distance[d]) {
                    distance[d] = reach;
                    before[d] = edge;
                    source[d] = source[c];
                    queue.add(new Reached(reach, d));
                }
            }
        }
    }

    /** Infinite where no way leads. */
    double distance(int corner) {
        return distance[corner];
    }

    /** The corner from which the way comes, or -1. */
    int source(int corner) {
        return source[corner];
    }

    /** The edges of the way to a corner that is reached, last first. */
    List<Integer> edgesTo(int corner) {
        List<Integer> way = new ArrayList<>();
        for (int c = corner; before[c] >= 0; c = net.edges().get(before[c]).other(c)) {
            way.add(before[c]);
        }
        return way;
    }
}
