package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.calicograph.measure.Length;

/**
 * A layout by greed: blank after blank is cut from the offcut that it fits best, and what is left of that is two offcuts. Every order
 * that is usual and every rule for fit and cut is tried; then the best order is changed a little again and again, by annealing.
 *
 * <p>One laying costs the number of blanks times that of the offcuts, of which no more than {@link #KEPT} are kept.
 */
final class Offcuts {

    /** More blanks than this are not laid so. */
    static final int MOST = 3000;
    private static final int KEPT = 160;
    private static final long OPEN = Long.MAX_VALUE / 8;
    private static final int FEW = 800;
    /** Lengths of a sheet tried, as shares of what the blanks' area takes; 0 for none. */
    private static final double[] SHARES = {0, 1, 1.01, 1.02, 1.04, 1.07};
    private static final int FITS = 3;
    private static final int SPLITS = 3;

    private final List<Blank> blanks;
    private final int n;
    private final long width;
    private final long[] across;
    private final long[] along;
    private final boolean[] turnable;
    private final double area;
    // The offcuts: a tree of them, since each is cut into a blank, what lies beside it and what lies beyond it.
    private final long[] w;
    private final long[] h;
    private final long[] y;
    private final int[] taken;
    private final boolean[] turned;
    private final boolean[] level;
    private final int[] beside;
    private final int[] beyond;
    private final int[] free = new int[KEPT + 2];
    private int nodes;
    private int count;
    private long top;
    /** How far the sheet is filled. */
    private long filled;
    /** The length of a sheet that is filled first, with the rest of the cloth beyond it; 0 for none. */
    private long sheet;
    private double weight;

    private Offcuts(Length width, List<Blank> blanks) {
        this.blanks = blanks;
        this.n = blanks.size();
        this.width = width.units();
        across = blanks.stream().mapToLong(b -> b.across().units()).toArray();
        along = blanks.stream().mapToLong(b -> b.along().units()).toArray();
        turnable = new boolean[n];
        for (int i = 0; i < n; i++) {
            turnable[i] = blanks.get(i).turnable();
        }
        area = IntStream.range(0, n).mapToDouble(i -> (double) across[i] * along[i]).sum();
        int most = 2 * n + 2;
        w = new long[most];
        h = new long[most];
        y = new long[most];
        taken = new int[most];
        turned = new boolean[most];
        level = new boolean[most];
        beside = new int[most];
        beyond = new int[most];
    }

    /**
     * The shortest panel found.
     *
     * @param steps how much is spent on changing the best order; one step looks at one offcut
     * @param goal  a length that is short enough
     */
    static Panel lay(Length width, List<Blank> blanks, long steps, long seed, Length goal) {
        Offcuts cloth = new Offcuts(width, blanks);
        int[] best = new int[0];
        int fit = 0;
        int split = 0;
        long sheet = 0;
        long shortest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double share : blanks.size() > FEW ? new double[] {0, 1.01} : SHARES) {
            cloth.sheet = (long) (share * cloth.area / cloth.width);
            for (int[] order : cloth.orders()) {
                for (int f = 0; f < FITS; f++) {
                    for (int s = 0; s < SPLITS; s++) {
                        double cost = cloth.laid(order, f, s);
                        if (best.length == 0 || cloth.length() < shortest || cloth.length() == shortest && cost < least) {
                            least = cost;
                            shortest = cloth.length();
                            best = order;
                            fit = f;
                            split = s;
                            sheet = cloth.sheet;
                        }
                    }
                }
            }
        }
        cloth.sheet = sheet;
        cloth.annealed(best.clone(), fit, split, steps, seed, goal.units());
        List<Panel> both = new ArrayList<>();
        cloth.panel(0).ifPresent(both::add);
        if (cloth.sheet > 0) {
            cloth.panel(1).ifPresent(both::add);
        }
        return Panel.stacked(both);
    }

    private List<int[]> orders() {
        List<Comparator<Integer>> ways = List.of(
                Comparator.comparingLong(i -> -Math.max(across[i], turnable[i] ? along[i] : 0)),
                Comparator.comparingLong(i -> -along[i]),
                Comparator.comparingLong(i -> -across[i]),
                Comparator.comparingDouble(i -> -(double) across[i] * along[i]),
                Comparator.comparingLong(i -> -(across[i] + along[i])),
                Comparator.comparingLong(i -> -Math.min(across[i], along[i])));
        List<int[]> all = new ArrayList<>();
        for (Comparator<Integer> way : ways) {
            all.add(IntStream.range(0, n).boxed().sorted(way.thenComparingLong(i -> -Math.max(across[i], along[i])).thenComparingInt(i -> i))
                    .mapToInt(i -> i).toArray());
        }
        return all;
    }

    /** Changes the order, and leaves the best laid. */
    private void annealed(int[] order, int firstFit, int firstSplit, long steps, long seed, long goal) {
        SplittableRandom random = new SplittableRandom(seed);
        int fit = firstFit;
        int split = firstSplit;
        double now = laid(order, fit, split);
        int[] best = order.clone();
        int bestFit = fit;
        int bestSplit = split;
        long bestSheet = sheet;
        double least = now;
        long bestTop = length();
        long rounds = steps / Math.max(1, (long) n * Math.min(KEPT, n / 3 + 4));
        double expected = area / width;
        for (long r = 0; r < rounds && n > 1 && bestTop > goal; r++) {
            double heat = expected * 0.006 * Math.pow(0.02, (double) r / rounds);
            int a = random.nextInt(n);
            int b = random.nextInt(n);
            boolean moved = random.nextInt(3) > 0;
            int oldFit = fit;
            int oldSplit = split;
            long oldSheet = sheet;
            boolean ruled = random.nextInt(40) == 0;
            if (ruled && random.nextBoolean()) {
                sheet = random.nextInt(6) == 0 ? 0 : (long) (bestTop * (1 - 0.02 * random.nextDouble()));
            } else if (ruled) {
                fit = random.nextInt(FITS);
                split = random.nextInt(SPLITS);
            } else if (moved) {
                move(order, a, b);
            } else {
                swap(order, a, b);
            }
            boolean ordered = !ruled;
            double next = laid(order, fit, split);
            if (next <= now || random.nextDouble() < Math.exp((now - next) / heat)) {
                now = next;
                if (length() < bestTop || length() == bestTop && next < least) {
                    bestTop = length();
                    least = next;
                    best = order.clone();
                    bestFit = fit;
                    bestSplit = split;
                    bestSheet = sheet;
                }
            } else {
                if (ordered && moved) {
                    move(order, b, a);
                } else if (ordered) {
                    swap(order, a, b);
                }
                fit = oldFit;
                split = oldSplit;
                sheet = oldSheet;
            }
        }
        sheet = bestSheet;
        laid(best, bestFit, bestSplit);
    }

    private static void move(int[] order, int from, int to) {
        int value = order[from];
        if (from < to) {
            System.arraycopy(order, from + 1, order, from, to - from);
        } else {
            System.arraycopy(order, to, order, to + 1, from - to);
        }
        order[to] = value;
    }

    private static void swap(int[] order, int a, int b) {
        int value = order[a];
        order[a] = order[b];
        order[b] = value;
    }

    /** Lays the blanks in an order; the length that takes, and a little for how high they lie. */
    private double laid(int[] order, int fit, int split) {
        nodes = 0;
        count = 0;
        top = sheet;
        filled = 0;
        weight = 0;
        if (sheet > 0) {
            open(width, sheet, 0);
        }
        open(width, OPEN, sheet);
        for (int i : order) {
            put(i, fit, split);
        }
        return length() + 0.3 * weight / area;
    }

    /** How long the cloth is that is laid: what is left at the end of the sheet is not counted, since the rest can lie nearer. */
    private long length() {
        return filled + top - sheet;
    }

    private int open(long wide, long high, long at) {
        int node = nodes++;
        w[node] = wide;
        h[node] = high;
        y[node] = at;
        taken[node] = -1;
        beside[node] = -1;
        beyond[node] = -1;
        if (wide > 0 && high > 0) {
            if (count > KEPT) {
                forget();
            }
            free[count++] = node;
        }
        return node;
    }

    /** The smallest offcut goes; the open end of the cloth never does. */
    private void forget() {
        int worst = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            double size = (double) w[free[k]] * h[free[k]];
            if (size < least) {
                least = size;
                worst = k;
            }
        }
        free[worst] = free[--count];
    }

    private void put(int i, int fit, int split) {
        int best = -1;
        boolean bestTurned = false;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            int node = free[k];
            for (int turn = 0; turn < (turnable[i] && across[i] != along[i] ? 2 : 1); turn++) {
                long iw = turn == 0 ? across[i] : along[i];
                long ih = turn == 0 ? along[i] : across[i];
                if (iw > w[node] || ih > h[node]) {
                    continue;
                }
                double score = score(node, iw, ih, fit);
                if (score < least) {
                    least = score;
                    best = k;
                    bestTurned = turn == 1;
                }
            }
        }
        int node = free[best];
        free[best] = free[--count];
        long iw = bestTurned ? along[i] : across[i];
        long ih = bestTurned ? across[i] : along[i];
        taken[node] = i;
        turned[node] = bestTurned;
        if (y[node] < sheet) {
            filled = Math.max(filled, y[node] + ih);
        } else {
            top = Math.max(top, y[node] + ih);
        }
        weight += (double) iw * ih * (y[node] + ih / 2.0);
        long rest = w[node] - iw;
        long left = h[node] - ih;
        level[node] = h[node] >= OPEN / 2 || (split == 0 ? rest < left : split == 1 ? rest >= left : (double) rest * ih < (double) left * iw);
        if (level[node]) {
            beside[node] = open(rest, ih, y[node]);
            beyond[node] = open(w[node], left, y[node] + ih);
        } else {
            beside[node] = open(rest, h[node], y[node]);
            beyond[node] = open(iw, left, y[node] + ih);
        }
    }

    private double score(int node, long iw, long ih, int fit) {
        long raised = Math.max(0, y[node] + ih - top);
        long rest = w[node] - iw;
        long left = h[node] >= OPEN / 2 ? ih : h[node] - ih;
        double own = switch (fit) {
            case 0 -> (double) rest / width + (double) left / (ih + left);
            case 1 -> (double) Math.min(rest, left) / width + 1e-3 * Math.max(rest, left) / width;
            default -> ((double) w[node] * (ih + left) - (double) iw * ih) / ((double) width * width);
        };
        return (double) raised / width * 1e3 + own;
    }

    private Optional<Panel> panel(int root) {
        List<Panel> rows = new ArrayList<>();
        int node = root;
        // What lies beyond a level cut is taken in turn, so that a long cloth needs no deep stack.
        while (node >= 0 && taken[node] >= 0 && level[node]) {
            List<Panel> row = new ArrayList<>(List.of(new Panel.Taken(blanks.get(taken[node]), turned[node])));
            panel(beside[node]).ifPresent(row::add);
            rows.add(Panel.abreast(row));
            node = beyond[node];
        }
        if (node >= 0 && taken[node] >= 0) {
            List<Panel> column = new ArrayList<>(List.of(new Panel.Taken(blanks.get(taken[node]), turned[node])));
            panel(beyond[node]).ifPresent(column::add);
            List<Panel> both = new ArrayList<>(List.of(Panel.stacked(column)));
            panel(beside[node]).ifPresent(both::add);
            rows.add(Panel.abreast(both));
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(Panel.stacked(rows));
    }
}
