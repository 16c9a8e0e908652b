package org.calicograph.colouring;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every way of sharing patches out that could still cost less than the best known, kind by kind and in each kind by
 * cloths from the cheapest up: branch and bound, where what is left is taken to go into its cheapest cloth.
 */
final class WholeSearch {

    /** Steps after which it gives up: a fraction of a second. */
    private static final long MOST = 2_000_000;

    private final Assignment a;
    /** By kind: the cloths, the cheapest first. */
    private final int[][] order;
    /** What the kinds from here on cost at least. */
    private final double[] rest;
    private final double[] room;
    private final int[][] now;
    private int[][] best;
    private double least;
    private long steps;

    private WholeSearch(Assignment a, int[][] known) {
        this.a = a;
        this.best = known;
        this.least = a.costOf(known);
        this.room = a.capacity().clone();
        this.now = new int[a.kinds()][a.cloths()];
        this.order = new int[a.kinds()][];
        this.rest = new double[a.kinds() + 1];
        for (int k = a.kinds() - 1; k >= 0; k--) {
            double[] cost = a.cost()[k];
            order[k] = IntStream.range(0, a.cloths()).boxed().sorted((c, d) -> Double.compare(cost[c], cost[d])).mapToInt(c -> c).toArray();
            rest[k] = rest[k + 1] + a.count()[k] * cost[order[k][0]];
        }
    }

    /**
     * What costs least of all; empty if there are too many ways to look at.
     *
     * @param known one that fits
     */
    static Optional<int[][]> least(Assignment a, int[][] known) {
        WholeSearch search = new WholeSearch(a, known);
        return search.place(0, 0, a.count()[0], 0) ? Optional.of(search.best) : Optional.empty();
    }

    /** @return false once it has given up */
    private boolean place(int kind, int rank, int left, double cost) {
        if (++steps > MOST) {
            return false;
        }
        if (left == 0) {
            if (kind + 1 < a.kinds()) {
                return cost + rest[kind + 1] >= least || place(kind + 1, 0, a.count()[kind + 1], cost);
            }
            if (cost < least) {
                least = cost;
                best = java.util.Arrays.stream(now).map(int[]::clone).toArray(int[][]::new);
            }
            return true;
        }
        if (rank == a.cloths() || cost + left * a.cost()[kind][order[kind][rank]] + rest[kind + 1] >= least) {
            return true;
        }
        int cloth = order[kind][rank];
        double need = a.need()[kind];
        int most = (int) Math.min(left, Math.floor((room[cloth] + Assignment.SLACK) / need));
        double before = room[cloth];
        for (int n = most; n >= 0; n--) {
            now[kind][cloth] = n;
            room[cloth] = before - n * need;
            if (!place(kind, rank + 1, left - n, cost + n * a.cost()[kind][cloth])) {
                return false;
            }
        }
        now[kind][cloth] = 0;
        room[cloth] = before;
        return true;
    }
}
