package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.quilting.filling.Groups;

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

        public int other(int corner) {
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
        int[] all = new int[edges.size()];
        Arrays.fill(all, 1);
        return incidence(all);
    }

    /** The same without the edges whose number of times is 0. */
    int[][] incidence(int[] times) {
        int[] count = new int[corners];
        for (int i = 0; i < times.length; i++) {
            count[edges.get(i).from()] += times[i] > 0 ? 1 : 0;
            count[edges.get(i).to()] += times[i] > 0 ? 1 : 0;
        }
        int[][] at = new int[corners][];
        for (int c = 0; c < corners; c++) {
            at[c] = new int[count[c]];
        }
        Arrays.fill(count, 0);
        for (int i = 0; i < times.length; i++) {
            if (times[i] > 0) {
                Edge e = edges.get(i);
                at[e.from()][count[e.from()]++] = i;
                at[e.to()][count[e.to()]++] = i;
            }
        }
        return at;
    }

    public double requiredLength() {
        return edges.stream().filter(Edge::required).mapToDouble(Edge::length).sum();
    }

    /** The corners of odd degree when each edge is counted as often as given. */
    public List<Integer> odd(int[] times) {
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

    /**
     * Some edges as a net of their own, its corners numbered afresh.
     *
     * @param edges the numbers that its edges have in the whole net, in order
     */
    public record Share(Net net, List<Integer> edges) { }

    /** An edge may be named more than once. */
    Share share(List<Integer> some) {
        Map<Integer, Integer> number = new HashMap<>();
        List<Edge> own = new ArrayList<>();
        for (int i : some) {
            Edge e = edges.get(i);
            int from = number.computeIfAbsent(e.from(), k -> number.size());
            own.add(new Edge(from, number.computeIfAbsent(e.to(), k -> number.size()), e.length(), e.required()));
        }
        return new Share(new Net(number.size(), own), List.copyOf(some));
    }

    /** What hangs together and has something to sew, each as a net of its own, its edges there as often as given. */
    public List<Share> shares(int[] times) {
        Groups groups = new Groups(corners);
        for (int i = 0; i < times.length; i++) {
            if (times[i] > 0) {
                groups.join(edges.get(i).from(), edges.get(i).to());
            }
        }
        Map<Integer, List<Integer>> byGroup = new TreeMap<>();
        for (int i = 0; i < times.length; i++) {
            for (int k = 0; k < times[i]; k++) {
                byGroup.computeIfAbsent(groups.of(edges.get(i).from()), g -> new ArrayList<>()).add(i);
            }
        }
        return byGroup.values().stream().filter(part -> part.stream().anyMatch(i -> edges.get(i).required())).map(this::share).toList();
    }
}
