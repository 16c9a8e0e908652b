package org.calicograph.colouring;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every way of sharing patches out that could still cost less than the best known, kind by kind and in each kind by
 * cloths from the cheapest up: branch and bound, where each kind that is left is taken to have all the cloth that is left.
 */
final class WholeSearch {

    /** Steps after which it gives up: a fraction of a second. */
    private static final long MOST = 2_000_000;

    private final Assignment a;
    /** By kind: the cloths, the cheapest first. */
    private final int[][] order;
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
        for (int k = 0; k < a.kinds(); k++) {
            double[] cost = a.cost()[k];
            order[k] = IntStream.range(0, a.cloths()).boxed().sorted((c, d) -> Double.compare(cost[c], cost[d])).mapToInt(c -> c).toArray();
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

    /** What is left of a kind, from a rank on, and the kinds after it cost at least, were each alone with the room there is. */
    private double atLeast(int kind, int rank, int left) {
        double sum = 0;
        for (int k = kind; k < a.kinds(); k++) {
            int still = k == kind ? left : a.count()[k];
            for (int r = k == kind ? rank : 0; r < a.cloths() && still > 0; r++) {
                int n = fitting(order[k][r], k, still);
                sum += n * a.cost()[k][order[k][r]];
                still -= n;
            }
            if (still > 0) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return sum;
    }

    private int fitting(int cloth, int kind, int most) {
        return (int) Math.min(most, Math.floor((room[cloth] + Assignment.SLACK) / a.need()[kind]));
    }

    /** @return false once it has given up */
    private boolean place(int kind, int rank, int left, double cost) {
        if (++steps > MOST) {
            return false;
        }
        if (left == 0) {
            if (kind + 1 < a.kinds()) {
                return place(kind + 1, 0, a.count()[kind + 1], cost);
            }
            if (cost < least) {
                least = cost;
                best = java.util.Arrays.stream(now).map(int[]::clone).toArray(int[][]::new);
            }
            return true;
        }
        if (rank == a.cloths() || cost + atLeast(kind, rank, left) >= least) {
            return true;
        }
        int cloth = order[kind][rank];
        double need = a.need()[kind];
        int most = fitting(cloth, kind, left);
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
