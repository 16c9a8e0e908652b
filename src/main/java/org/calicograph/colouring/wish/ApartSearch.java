package org.calicograph.colouring.wish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.calicograph.fabric.Fabric;

/**
 * The search behind {@link Apart}. For a least difference it lays patch by patch, the one with the fewest fabrics left first, and
 * takes back what leads nowhere; the greatest least difference is found by halving, since what can be laid for one can be laid for
 * every smaller one.
 */
final class ApartSearch {

    /** Patches laid before one least difference is given up undecided. */
    private static final int TRIES = 400_000;

    private final double[][] apart;
    private final int[][] beside;
    private final double[][] fromFixed;
    private final int[] most;
    private final int patches;

    /** @param proved true if the choice can't be bettered, or if there is none */
    record Answer(Optional<List<Integer>> choice, double weakest, boolean proved) { }

    private enum Verdict { LAID, IMPOSSIBLE, UNDECIDED }

    ApartSearch(List<Fabric> fabrics, List<List<Integer>> beside, List<List<Fabric>> fixed, List<Integer> most) {
        patches = beside.size();
        int n = fabrics.size();
        apart = new double[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                apart[a][b] = between(fabrics.get(a), fabrics.get(b));
            }
        }
        this.beside = beside.stream().map(l -> l.stream().distinct().mapToInt(i -> i).toArray()).toArray(int[][]::new);
        fromFixed = new double[patches][n];
        for (int p = 0; p < patches; p++) {
            for (int f = 0; f < n; f++) {
                fromFixed[p][f] = Double.POSITIVE_INFINITY;
                for (Fabric other : fixed.get(p)) {
                    fromFixed[p][f] = Math.min(fromFixed[p][f], between(fabrics.get(f), other));
                }
            }
        }
        this.most = most.stream().mapToInt(i -> i).toArray();
    }

    /** Two fabrics of one colour are not alike if their names differ, but hardly apart either. */
    private static double between(Fabric a, Fabric b) {
        return a.name().equals(b.name()) ? 0 : Math.max(1e-6, a.colour().difference(b.colour()));
    }

    Answer best(boolean farthest) {
        int[] choice = new int[patches];
        List<Double> levels = levels();
        Verdict first = levels.isEmpty() ? Verdict.IMPOSSIBLE : lay(levels.get(0), choice);
        if (first != Verdict.LAID) {
            return new Answer(Optional.empty(), 0, first == Verdict.IMPOSSIBLE);
        }
        int low = 0;
        int high = farthest ? levels.size() : 1; // the first level that is known, or feared, to be too high
        boolean proved = true;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            int[] tried = new int[patches];
            Verdict verdict = lay(levels.get(middle), tried);
            if (verdict == Verdict.LAID) {
                choice = tried;
                low = middle;
            } else {
                high = middle;
                proved = verdict == Verdict.IMPOSSIBLE;
            }
        }
        return new Answer(Optional.of(Arrays.stream(choice).boxed().toList()), weakest(choice), proved);
    }

    /** Every difference that a seam can have, the least first. */
    private List<Double> levels() {
        TreeSet<Double> all = new TreeSet<>();
        for (double[] row : apart) {
            Arrays.stream(row).filter(d -> d > 0).forEach(all::add);
        }
        for (double[] row : fromFixed) {
            Arrays.stream(row).filter(d -> d > 0 && d < Double.POSITIVE_INFINITY).forEach(all::add);
        }
        if (all.isEmpty()) {
            all.add(1.0); // One fabric alone: it can be laid only where nothing touches.
        }
        return new ArrayList<>(all);
    }

    private double weakest(int[] choice) {
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < patches; p++) {
            least = Math.min(least, fromFixed[p][choice[p]]);
            for (int q : beside[p]) {
                least = Math.min(least, apart[choice[p]][choice[q]]);
            }
        }
        return least;
    }

    private Verdict lay(double level, int[] choice) {
        int n = apart.length;
        long[] fits = new long[n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                fits[a] |= apart[a][b] >= level ? 1L << b : 0;
            }
        }
        long[] may = new long[patches];
        for (int p = 0; p < patches; p++) {
            for (int f = 0; f < n; f++) {
                may[p] |= fromFixed[p][f] >= level ? 1L << f : 0;
            }
        }
        int[] left = most.clone();
        int[] used = new int[n];
        int[] order = new int[patches];
        long[] untried = new long[patches];
        long[][] before = new long[patches][];
        boolean[] laid = new boolean[patches];
        int depth = 0;
        boolean fresh = true;
        for (long tries = 0; tries < TRIES + 4L * patches; tries++) {
            if (depth == patches) {
                return Verdict.LAID;
            }
            if (fresh) {
                int p = tightest(may, laid, left);
                order[depth] = p;
                untried[depth] = open(may[p], left);
                laid[p] = true;
            }
            int p = order[depth];
            if (untried[depth] == 0) {
                laid[p] = false;
                if (depth == 0) {
                    return Verdict.IMPOSSIBLE;
                }
                depth--;
                int back = order[depth];
                for (int i = 0; i < beside[back].length; i++) {
                    may[beside[back][i]] = before[depth][i];
                }
                left[choice[back]] += most[choice[back]] == Integer.MAX_VALUE ? 0 : 1;
                used[choice[back]]--;
                fresh = false;
                continue;
            }
            int f = leastUsed(untried[depth], used, p);
            untried[depth] &= ~(1L << f);
            before[depth] = new long[beside[p].length];
            boolean dead = false;
            for (int i = 0; i < beside[p].length; i++) {
                int q = beside[p][i];
                before[depth][i] = may[q];
                if (!laid[q]) {
                    may[q] &= fits[f];
                    dead |= may[q] == 0;
                }
            }
            if (dead) {
                for (int i = 0; i < beside[p].length; i++) {
                    may[beside[p][i]] = before[depth][i];
                }
                fresh = false;
                continue;
            }
            choice[p] = f;
            left[f] -= most[f] == Integer.MAX_VALUE ? 0 : 1;
            used[f]++;
            depth++;
            fresh = true;
        }
        return Verdict.UNDECIDED;
    }

    private static long open(long may, int[] left) {
        for (int f = 0; f < left.length; f++) {
            may &= left[f] > 0 ? -1L : ~(1L << f);
        }
        return may;
    }

    /** The patch with the fewest fabrics left; of those the one with most neighbours. */
    private int tightest(long[] may, boolean[] laid, int[] left) {
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        for (int p = 0; p < patches; p++) {
            if (!laid[p]) {
                int n = Long.bitCount(open(may[p], left));
                if (n < fewest || n == fewest && beside[p].length > beside[best].length) {
                    fewest = n;
                    best = p;
                }
            }
        }
        return best;
    }

    /** The fabric used least so far, so that all come to be used; of equals another for each patch. */
    private static int leastUsed(long among, int[] used, int patch) {
        int best = -1;
        for (int k = 0; k < used.length; k++) {
            int f = (k + patch * 7) % used.length;
            if ((among >> f & 1) != 0 && (best < 0 || used[f] < used[best])) {
                best = f;
            }
        }
        return best;
    }
}
