package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * Route inspection (the Chinese postman): how often to go over each edge of a {@link Net} so that
 * every required edge is covered in the fewest starts, and with those in the least length.
 *
 * <p>Where the required edges of a part hang together the length is the least there is. Where they hang
 * together only through edges that may be travelled (the rural postman, NP-hard) they are joined by a
 * shortest spanning tree of links first (after Frederickson 1979), and {@link #bound} says below which
 * length no route can be.
 *
 * @param times    for each edge, how often the route goes over it; at least 1 where it is required
 * @param length   of the whole route
 * @param bound    no route with as few starts is shorter
 * @param exact    true if the length is known to be the least
 * @param matching the share of the time that the matching took, from 0 to 1
 */
record Postman(List<Integer> times, double length, double bound, boolean exact, double matching) {

    /** Back to where it began, or ending wherever is best. */
    enum Ends { CLOSED, OPEN }

    static Postman of(Net net, Ends ends) {
        long start = System.nanoTime();
        int[] times = new int[net.edges().size()];
        double bound = 0;
        boolean exact = true;
        long matching = 0;
        for (List<Integer> part : parts(net)) {
            // One part of the net at a time, with its corners numbered afresh.
            Map<Integer, Integer> number = new HashMap<>();
            List<Net.Edge> edges = new ArrayList<>();
            for (int i : part) {
                Net.Edge e = net.edges().get(i);
                edges.add(new Net.Edge(number.computeIfAbsent(e.from(), k -> number.size()),
                        number.computeIfAbsent(e.to(), k -> number.size()), e.length(), e.required()));
            }
            Part solved = part(new Net(number.size(), edges), ends == Ends.OPEN);
            for (int i = 0; i < part.size(); i++) {
                times[part.get(i)] = solved.times[i];
            }
            bound += solved.bound;
            exact &= solved.exact;
            matching += solved.matching;
        }
        double length = 0;
        for (int i = 0; i < times.length; i++) {
            length += times[i] * net.edges().get(i).length();
        }
        double share = (double) matching / Math.max(1, System.nanoTime() - start);
        return new Postman(Arrays.stream(times).boxed().toList(), length, exact ? length : Math.min(bound, length), exact, share);
    }

    private record Part(int[] times, double bound, boolean exact, long matching) { }

    /** The edges of each part that has something to sew. */
    private static List<List<Integer>> parts(Net net) {
        int[] part = net.parts(false);
        Map<Integer, List<Integer>> byPart = new java.util.TreeMap<>();
        for (int i = 0; i < net.edges().size(); i++) {
            byPart.computeIfAbsent(part[net.edges().get(i).from()], k -> new ArrayList<>()).add(i);
        }
        return byPart.values().stream().filter(p -> p.stream().anyMatch(i -> net.edges().get(i).required())).toList();
    }

    private static Part part(Net net, boolean open) {
        int[] once = new int[net.edges().size()];
        for (int i = 0; i < once.length; i++) {
            once[i] = net.edges().get(i).required() ? 1 : 0;
        }
        Retracing retracing = new Retracing(net);
        int[] plain = sum(once, retracing.least(net.odd(once), open));
        double least = length(net, plain);
        if (connected(net, plain)) {
            return new Part(plain, least, true, retracing.matchingNanos());
        }
        List<Integer> links = links(net);
        int[] linked = once.clone();
        double linkLength = 0;
        for (int i : links) {
            linked[i]++;
            linkLength += net.edges().get(i).length();
        }
        int[] times = sum(linked, retracing.least(net.odd(linked), open));
        dropNeedless(net, once, times);
        double bound = Math.max(least, net.requiredLength() + linkLength);
        return new Part(times, bound, length(net, times) <= bound + 1e-9, retracing.matchingNanos());
    }

    private static int[] sum(int[] a, int[] b) {
        int[] s = a.clone();
        for (int i = 0; i < s.length; i++) {
            s[i] += b[i];
        }
        return s;
    }

    private static double length(Net net, int[] times) {
        double length = 0;
        for (int i = 0; i < times.length; i++) {
            length += times[i] * net.edges().get(i).length();
        }
        return length;
    }

    private static boolean connected(Net net, int[] times) {
        Groups groups = new Groups(net.corners());
        int apart = 0;
        boolean[] touched = new boolean[net.corners()];
        for (int i = 0; i < times.length; i++) {
            if (times[i] > 0) {
                Net.Edge e = net.edges().get(i);
                for (int c : new int[] {e.from(), e.to()}) {
                    apart += touched[c] ? 0 : 1;
                    touched[c] = true;
                }
                apart -= groups.join(e.from(), e.to()) ? 1 : 0;
            }
        }
        return apart <= 1;
    }

    /** A shortest spanning tree between the required parts, through edges that may be travelled. */
    private static List<Integer> links(Net net) {
        int[] part = net.parts(true);
        int[][] at = net.incidence();
        double[] distance = new double[net.corners()];
        int[] before = new int[net.corners()];
        int[] owner = new int[net.corners()];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        Arrays.fill(owner, -1);
        PriorityQueue<double[]> queue = new PriorityQueue<>(Comparator.comparingDouble(a -> a[0]));
        for (Net.Edge e : net.edges()) {
            for (int c : e.required() ? new int[] {e.from(), e.to()} : new int[0]) {
                distance[c] = 0;
                owner[c] = part[c];
                queue.add(new double[] {0, c});
            }
        }
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
                    owner[d] = owner[c];
                    queue.add(new double[] {reach, d});
                }
            }
        }
        List<Integer> bridges = new ArrayList<>();
        for (int i = 0; i < net.edges().size(); i++) {
            Net.Edge e = net.edges().get(i);
            if (owner[e.from()] >= 0 && owner[e.to()] >= 0 && owner[e.from()] != owner[e.to()]) {
                bridges.add(i);
            }
        }
        bridges.sort(Comparator.comparingDouble(i -> {
            Net.Edge e = net.edges().get(i);
            return distance[e.from()] + e.length() + distance[e.to()];
        }));
        Groups groups = new Groups(net.corners());
        List<Integer> tree = new ArrayList<>();
        for (int i : bridges) {
            Net.Edge e = net.edges().get(i);
            if (groups.join(owner[e.from()], owner[e.to()])) {
                tree.add(i);
                for (int c : new int[] {e.from(), e.to()}) {
                    for (int walk = c; before[walk] >= 0; walk = net.edges().get(before[walk]).other(walk)) {
                        tree.add(before[walk]);
                    }
                }
            }
        }
        return tree.stream().distinct().toList();
    }

    /** Going over an edge twice changes no parity: where the route hangs together without, it goes. */
    private static void dropNeedless(Net net, int[] once, int[] times) {
        List<Integer> candidates = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            if (times[i] - 2 >= once[i]) {
                candidates.add(i);
            }
        }
        candidates.sort(Collections.reverseOrder(Comparator.comparingDouble(i -> net.edges().get(i).length())));
        for (int i : candidates) {
            times[i] -= 2;
            if (!connected(net, times)) {
                times[i] += 2;
            }
        }
    }
}
