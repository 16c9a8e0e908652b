package org.calicograph.colouring;

import java.util.Arrays;
import java.util.Random;

/**
 * A good assignment that fits: begin with each kind where prices send it, move patches off cloths that
 * are overdrawn at the least loss for the cloth freed, then move and exchange patches while that gains.
 */
final class FittedAssignment {

    /** Exchanges are tried until so many have been looked at: a limit that is the same on every machine. */
    private static final long EXCHANGES = 200_000_000;

    /** How much worse, as a part of the cost, a step may be at first; later ones less and less. */
    private static final double WORSE = 0.001;

    private final Assignment a;
    private final int[][] x;
    private final double[] room;
    private long looked;

    private FittedAssignment(Assignment a, int[][] start) {
        this.a = a;
        this.x = start;
        this.room = a.room(x);
    }

    static int[][] from(Assignment a, double[] prices) {
        FittedAssignment f = new FittedAssignment(a, a.cheapest(prices));
        f.relieve();
        f.improve();
        return f.x;
    }

    /** From fractions: rounded down, then each patch left over where it costs least among the cloths that have room. */
    static int[][] from(Assignment a, double[][] shares) {
        int[][] start = new int[a.kinds()][a.cloths()];
        int[] left = a.count().clone();
        for (int k = 0; k < a.kinds(); k++) {
            for (int c = 0; c < a.cloths(); c++) {
                start[k][c] = Math.min(left[k], (int) Math.floor(shares[k][c] + 1e-7));
                left[k] -= start[k][c];
            }
        }
        FittedAssignment f = new FittedAssignment(a, start);
        for (int k = 0; k < a.kinds(); k++) {
            while (left[k]-- > 0) {
                int best = f.cheapestWithRoom(k);
                f.x[k][best]++;
                f.room[best] -= a.need()[k];
            }
        }
        f.relieve();
        f.improve();
        return f.x;
    }

    /**
     * Goes on from an assignment that fits: some patches are put where they would cost less, others make
     * room for them, and what comes of it is gone on from unless it is much worse (threshold accepting,
     * G. Dueck and T. Scheuer 1990). Ends at the target or after so many looks; gives the best it saw.
     */
    static int[][] shaken(Assignment a, int[][] from, double target, long seed) {
        Random random = new Random(seed);
        int[][] best = from;
        double least = a.costOf(best);
        int[][] now = from;
        double here = least;
        long looked = 0;
        while (least > target && looked < EXCHANGES) {
            FittedAssignment f = new FittedAssignment(a, copy(now));
            for (int kicks = 1 + random.nextInt(3); kicks > 0; kicks--) {
                f.kick(random);
            }
            f.relieve();
            f.improve();
            looked += f.looked + a.kinds();
            double cost = a.costOf(f.x);
            if (cost <= here + WORSE * least * (1 - (double) looked / EXCHANGES)) {
                now = f.x;
                here = cost;
            }
            if (cost < least) {
                least = cost;
                best = f.x;
            }
        }
        return best;
    }

    private static int[][] copy(int[][] x) {
        return Arrays.stream(x).map(int[]::clone).toArray(int[][]::new);
    }

    /** One patch that could cost less goes to a cheaper cloth, whether there is room or not. */
    private void kick(Random random) {
        for (int tries = 0; tries < 30; tries++) {
            int k = random.nextInt(a.kinds());
            int c = random.nextInt(a.cloths());
            int d = random.nextInt(a.cloths());
            if (x[k][c] > 0 && a.cost()[k][d] < a.cost()[k][c] - 1e-12) {
                move(k, c, d, 1);
                return;
            }
        }
    }

    private void relieve() {
        for (int c = 0; c < a.cloths(); c++) {
            while (room[c] < -Assignment.SLACK) {
                relieve(c);
            }
        }
    }

    private void improve() {
        for (int round = 0; round < 50 && (moves() || exchanges()); round++) {
            continue;
        }
    }

    private int cheapestWithRoom(int k) {
        int best = -1;
        for (int c = 0; c < a.cloths(); c++) {
            if (fitting(k, c) > 0 && (best < 0 || a.cost()[k][c] < a.cost()[k][best])) {
                best = c;
            }
        }
        return best;
    }

    private void move(int k, int from, int to, int times) {
        x[k][from] -= times;
        x[k][to] += times;
        room[from] += times * a.need()[k];
        room[to] -= times * a.need()[k];
    }

    private int fitting(int k, int c) {
        return Double.isInfinite(room[c]) ? Integer.MAX_VALUE : (int) Math.floor((room[c] + Assignment.SLACK) / a.need()[k]);
    }

    private void relieve(int c) {
        int bestKind = -1;
        int bestCloth = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < a.kinds(); k++) {
            for (int d = 0; x[k][c] > 0 && d < a.cloths(); d++) {
                if (d == c || fitting(k, d) < 1) {
                    continue;
                }
                // Freeing more than is overdrawn is worth no more.
                double loss = (a.cost()[k][d] - a.cost()[k][c]) / Math.min(a.need()[k], -room[c]);
                if (loss < least) {
                    least = loss;
                    bestKind = k;
                    bestCloth = d;
                }
            }
        }
        looked += (long) a.kinds() * a.cloths();
        int times = Math.min(x[bestKind][c], fitting(bestKind, bestCloth));
        int wanted = (int) Math.max(1, Math.floor(-room[c] / a.need()[bestKind]));
        move(bestKind, c, bestCloth, Math.min(times, wanted));
    }

    private boolean moves() {
        boolean any = false;
        for (int k = 0; k < a.kinds(); k++) {
            for (int c = 0; c < a.cloths(); c++) {
                for (int d = 0; x[k][c] > 0 && d < a.cloths(); d++) {
                    if (a.cost()[k][d] < a.cost()[k][c] - 1e-12) {
                        int times = Math.min(x[k][c], fitting(k, d));
                        if (times > 0) {
                            move(k, c, d, times);
                            any = true;
                        }
                    }
                }
            }
        }
        return any;
    }

    /** A patch of one kind and a patch of another change cloths; the second may also go to a third cloth. */
    private boolean exchanges() {
        boolean any = false;
        for (int k = 0; k < a.kinds(); k++) {
            for (int c = 0; c < a.cloths(); c++) {
                for (int d = 0; x[k][c] > 0 && d < a.cloths(); d++) {
                    if (a.cost()[k][d] < a.cost()[k][c] - 1e-12 && looked < EXCHANGES) {
                        any |= exchange(k, c, d);
                    }
                }
            }
        }
        return any;
    }

    private boolean exchange(int k, int c, int d) {
        double gain = a.cost()[k][c] - a.cost()[k][d];
        looked += a.kinds();
        for (int l = 0; l < a.kinds(); l++) {
            if (l == k || x[l][d] == 0 || room[d] + a.need()[l] < a.need()[k] - Assignment.SLACK) {
                continue;
            }
            looked += a.cloths();
            for (int e = 0; e < a.cloths(); e++) {
                double free = room[e] + (e == c ? a.need()[k] : 0);
                if (e != d && free >= a.need()[l] - Assignment.SLACK && a.cost()[l][e] - a.cost()[l][d] < gain - 1e-9) {
                    move(l, d, e, 1);
                    move(k, c, d, 1);
                    return true;
                }
            }
        }
        return false;
    }
}
