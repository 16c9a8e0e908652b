package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines as a graph: corners numbered from 0, and edges between them.
 *
 * @param corners how many corners there are
 * @param edges   in any order; two may join the same corners, and one may lead back to its own
 */
public record Net(int corners, List<Edge> edges) {

    /**
     * @param length   0 or more
     * @param required true if it must be sewn; false if it may only be travelled along
     */
    public record Edge(int from, int to, double length, boolean required) {

        int other(int corner) {
            return corner == from ? to : from;
        }
    }

    public Net {
        edges = List.copyOf(edges);
        for (Edge e : edges) {
            if (Math.min(e.from(), e.to()) < 0 || Math.max(e.from(), e.to()) >= corners || !(e.length() >= 0)) {
                throw new IllegalArgumentException("edge " + e + " does not fit a net of " + corners
                        + " corners; number its ends from 0 and give it a length of 0 or more");
            }
        }
    }

    /** The numbers of the edges that end at each corner; an edge back to its own corner stands there twice. */
    int[][] incidence() {
        int[] count = new int[corners];
        for (Edge e : edges) {
            count[e.from()]++;
            count[e.to()]++;
        }
        int[][] at = new int[corners][];
        for (int c = 0; c < corners; c++) {
            at[c] = new int[count[c]];
        }
        Arrays.fill(count, 0);
        for (int i = 0; i < edges.size(); i++) {
            Edge e = edges.get(i);
            at[e.from()][count[e.from()]++] = i;
            at[e.to()][count[e.to()]++] = i;
        }
        return at;
    }

    double requiredLength() {
        return edges.stream().filter(Edge::required).mapToDouble(Edge::length).sum();
    }

    /** For each corner, the number of its part; corners hang together through the edges that pass the mask. */
    int[] parts(boolean requiredOnly) {
        Groups groups = new Groups(corners);
        for (Edge e : edges) {
            if (e.required() || !requiredOnly) {
                groups.join(e.from(), e.to());
            }
        }
        int[] part = new int[corners];
        for (int c = 0; c < corners; c++) {
            part[c] = groups.of(c);
        }
        return part;
    }

    /** The corners of odd degree when each edge is counted as often as given. */
    List<Integer> odd(int[] times) {
        int[] degree = new int[corners];
        for (int i = 0; i < edges.size(); i++) {
            degree[edges.get(i).from()] += times[i];
            degree[edges.get(i).to()] += times[i];
        }
        List<Integer> odd = new ArrayList<>();
        for (int c = 0; c < corners; c++) {
            if (degree[c] % 2 != 0) {
                odd.add(c);
            }
        }
        return odd;
    }
}
