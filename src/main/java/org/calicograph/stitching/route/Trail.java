package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.calicograph.quilting.filling.Groups;

/**
 * Runs over every edge of a net once, going straight on where it can: in one go where the net has no odd
 * corner or two, else in as many as there are pairs of odd corners.
 *
 * <p>At each corner the ends of edges are paired, the straightest pair first; that leaves rounds. Two
 * rounds that meet at a corner become one by exchanging two pairs there, at the corner where that
 * bends the route least, until one is left. Costs n log n beside corners of very high degree.
 */
public final class Trail {

    /** Bends, in radians from straight on: what it costs to run from the end of one edge into another. */
    public interface Bend {
        double between(int edgeArriving, boolean atItsEnd, int edgeLeaving, boolean fromItsEnd);
    }

    /** One edge in the order of the route. */
    public record Step(int edge, boolean reversed) { }

    private final Net net;
    private final Bend bend;
    /** Edge ends: 2 i is where edge i begins, 2 i + 1 where it ends. */
    private final int[] mate;
    private final List<List<Integer>> ends = new ArrayList<>();
    /** Edges from here on only lead from the end of one run to the beginning of the next. */
    private final int sewn;

    /** @param net connected */
    public Trail(Net net, Bend bend) {
        this.bend = bend;
        this.sewn = net.edges().size();
        int[] once = new int[sewn];
        Arrays.fill(once, 1);
        List<Integer> odd = net.odd(once);
        List<Net.Edge> all = new ArrayList<>(net.edges());
        for (int i = 0; i < odd.size(); i += 2) {
            all.add(new Net.Edge(odd.get(i), odd.get(i + 1), 0, false));
        }
        this.net = new Net(net.corners(), all);
        this.mate = new int[2 * all.size()];
    }

    /** The runs; a round begins with the edge given. */
    public List<List<Step>> runs(int first) {
        pair();
        merge();
        List<List<Step>> runs = new ArrayList<>();
        List<Step> run = new ArrayList<>();
        int begin = sewn < net.edges().size() ? mate[2 * sewn + 1] : 2 * first;
        int end = begin;
        do {
            if (end / 2 >= sewn) {
                runs.add(run);
                run = new ArrayList<>();
            } else {
                run.add(new Step(end / 2, end % 2 == 1));
            }
            end = mate[end ^ 1];
        } while (end != begin);
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    private double cost(int a, int b) {
        if (a / 2 >= sewn || b / 2 >= sewn) {
            return Math.PI * 0.75;
        }
        return bend.between(a / 2, a % 2 == 1, b / 2, b % 2 == 1);
    }

    private void pair() {
        for (int c = 0; c < net.corners(); c++) {
            ends.add(new ArrayList<>());
        }
        for (int i = 0; i < net.edges().size(); i++) {
            ends.get(net.edges().get(i).from()).add(2 * i);
            ends.get(net.edges().get(i).to()).add(2 * i + 1);
        }
        Arrays.fill(mate, -1);
        for (List<Integer> here : ends) {
            List<int[]> pairs = new ArrayList<>();
            for (int i = 0; i < here.size(); i++) {
                for (int j = i + 1; j < here.size(); j++) {
                    pairs.add(new int[] {here.get(i), here.get(j)});
                }
            }
            pairs.sort(Comparator.comparingDouble(p -> cost(p[0], p[1])));
            for (int[] p : pairs) {
                if (mate[p[0]] < 0 && mate[p[1]] < 0) {
                    mate[p[0]] = p[1];
                    mate[p[1]] = p[0];
                }
            }
        }
    }

    private record Swap(double cost, int corner, int a, int b) { }

    private void merge() {
        Groups rounds = new Groups(net.edges().size());
        for (int end = 0; end < mate.length; end++) {
            rounds.join(end / 2, mate[end] / 2);
        }
        PriorityQueue<Swap> queue = new PriorityQueue<>(Comparator.comparingDouble(Swap::cost).thenComparingInt(Swap::corner));
        for (int c = 0; c < ends.size(); c++) {
            offer(c, rounds, queue);
        }
        while (!queue.isEmpty()) {
            Swap s = queue.poll();
            if (rounds.of(s.a() / 2) != rounds.of(s.b() / 2)) {
                int x = mate[s.a()];
                int y = mate[s.b()];
                mate[s.a()] = s.b();
                mate[s.b()] = s.a();
                mate[x] = y;
                mate[y] = x;
                rounds.join(s.a() / 2, s.b() / 2);
            }
            offer(s.corner(), rounds, queue);
        }
    }

    /** The cheapest exchange at a corner where different rounds meet: a with b, and their old mates with each other. */
    private void offer(int corner, Groups rounds, PriorityQueue<Swap> queue) {
        Swap best = null;
        List<Integer> here = ends.get(corner);
        for (int a : here) {
            for (int b : here) {
                if (a < b && rounds.of(a / 2) != rounds.of(b / 2)) {
                    double cost = cost(a, b) + cost(mate[a], mate[b]) - cost(a, mate[a]) - cost(b, mate[b]);
                    if (best == null || cost < best.cost()) {
                        best = new Swap(cost, corner, a, b);
                    }
                }
            }
        }
        if (best != null) {
            queue.add(best);
        }
    }
}
