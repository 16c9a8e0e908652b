package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Kinds that are much alike put together, for problems with thousands of kinds: solved in fractions for
 * the buckets, the answer says roughly where each kind goes.
 */
final class Buckets {

    /** In square inches. */
    private static final double LESS = 2;

    private final Assignment all;
    private final List<int[]> members = new ArrayList<>();

    /** Kinds whose costs stand in the same proportions are bucketed by their need, about so many buckets in all. */
    Buckets(Assignment all, int wanted) {
        this.all = all;
        Comparator<Integer> order = Comparator.comparingInt(this::own).thenComparingDouble(k -> all.need()[k]);
        int[] sorted = IntStream.range(0, all.kinds()).boxed().sorted(order).mapToInt(k -> k).toArray();
        int size = Math.max(1, sorted.length / wanted);
        for (int from = 0; from < sorted.length;) {
            int to = from;
            while (to < sorted.length && to - from < size && own(sorted[to]) == own(sorted[from])) {
                to++;
            }
            members.add(Arrays.copyOfRange(sorted, from, to));
            from = to;
        }
    }

    /** The cloth that costs the kind least: its own. */
    private int own(int k) {
        return all.cheapest(k, new double[all.cloths()]);
    }

    Assignment merged() {
        int n = members.size();
        int[] count = new int[n];
        double[] need = new double[n];
        double[][] cost = new double[n][all.cloths()];
        for (int b = 0; b < n; b++) {
            for (int k : members.get(b)) {
                count[b] += all.count()[k];
                need[b] += all.count()[k] * all.need()[k];
                for (int c = 0; c < all.cloths(); c++) {
                    cost[b][c] += all.count()[k] * all.cost()[k][c];
                }
            }
            need[b] /= count[b];
            for (int c = 0; c < all.cloths(); c++) {
                cost[b][c] /= count[b];
            }
        }
        return new Assignment(count, need, cost, all.capacity());
    }

    /** What a square inch more of each cloth would save, by solving with a little less of each in turn. */
    double[] prices() {
        Assignment merged = merged();
        double[] prices = new double[all.cloths()];
        double cost = ExactAssignment.relaxed(merged, 0).map(ExactAssignment.Relaxed::cost).orElse(0.0);
        for (int c = 0; c < all.cloths(); c++) {
            double there = all.capacity()[c];
            double less = Math.min(there, LESS);
            if (!Double.isInfinite(there) && less > 0) {
                double[] capacity = all.capacity().clone();
                capacity[c] -= less;
                prices[c] = ExactAssignment.relaxed(new Assignment(merged.count(), merged.need(), merged.cost(), capacity), 0)
                        .map(r -> Math.max(0, (r.cost() - cost) / less)).orElse(0.0);
            }
        }
        return prices;
    }

    /** The buckets' fractions dealt out to their kinds in turn. */
    double[][] dealt(double[][] shares) {
        double[][] dealt = new double[all.kinds()][all.cloths()];
        for (int b = 0; b < members.size(); b++) {
            int c = 0;
            double left = shares[b][0];
            for (int k : members.get(b)) {
                for (int i = 0; i < all.count()[k]; i++) {
                    while (left < 0.5 && c < all.cloths() - 1) {
                        left += shares[b][++c];
                    }
                    dealt[k][c]++;
                    left--;
                }
            }
        }
        return dealt;
    }
}
