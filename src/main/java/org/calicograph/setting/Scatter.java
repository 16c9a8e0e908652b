package org.calicograph.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.calicograph.covering.DesignException;
import org.calicograph.patchwork.Patchwork;

/**
 * So many of each of several blocks, scattered by chance so that no two alike touch along an edge, or even at a corner.
 *
 * @param kinds    the blocks
 * @param counts   how many of each; as many together as there are places
 * @param corners  true if alike blocks may not even touch at a corner
 * @param shuffle  another one gives another scatter
 */
public record Scatter(int columns, int rows, List<Patchwork> kinds, List<Integer> counts, boolean corners, long shuffle) {

    private static final int TRIES = 60;
    private static final long STEPS = 200_000;

    public Scatter {
        Setting.requireCounts("scattered", columns, rows);
        kinds = List.copyOf(kinds);
        counts = List.copyOf(counts);
        int sum = counts.stream().mapToInt(Integer::intValue).sum();
        if (kinds.size() != counts.size() || kinds.isEmpty() || counts.stream().anyMatch(c -> c < 0)) {
            throw new DesignException(kinds.size() + " blocks and " + counts.size() + " counts can't be scattered; give a count of 0 or more for each block");
        }
        if (sum != columns * rows) {
            throw new DesignException("a scatter of " + columns + " x " + rows + " has " + columns * rows + " places, and there are " + sum + " blocks; make the counts come to "
                    + columns * rows);
        }
        int most = mostAlike(columns, rows, corners);
        for (int k = 0; k < counts.size(); k++) {
            if (counts.get(k) > most) {
                throw new DesignException(counts.get(k) + " of '" + kinds.get(k).name() + "' can't lie apart on " + columns + " x " + rows + " places: " + most + " can"
                        + (corners ? " where not even corners may touch" : "") + "; use fewer, or more places");
            }
        }
    }

    /** As many of each as goes, in turn, where alike blocks may touch at corners. */
    public static Scatter of(int columns, int rows, Patchwork... kinds) {
        if (kinds.length == 0) {
            throw new DesignException("no block is there to be scattered; give two or more");
        }
        List<Integer> counts = new ArrayList<>();
        for (int k = 0; k < kinds.length; k++) {
            counts.add(columns * rows / kinds.length + (k < columns * rows % kinds.length ? 1 : 0));
        }
        return new Scatter(columns, rows, List.of(kinds), counts, false, 1);
    }

    /** So many of each, in the order of the blocks. */
    public Scatter counts(Integer... each) {
        return new Scatter(columns, rows, kinds, Arrays.asList(each), corners, shuffle);
    }

    /** The same where alike blocks may not touch at corners either. */
    public Scatter cornersToo() {
        return new Scatter(columns, rows, kinds, counts, true, shuffle);
    }

    /** Another scatter of the same. */
    public Scatter shuffled(long number) {
        return new Scatter(columns, rows, kinds, counts, corners, number);
    }

    /** The most of one kind that can lie apart: every other place as on a chequerboard, or every other of every other row. */
    public static int mostAlike(int columns, int rows, boolean corners) {
        return corners ? (columns + 1) / 2 * ((rows + 1) / 2) : (columns * rows + 1) / 2;
    }

    /**
     * Which block lies in each place.
     *
     * @throws DesignException if none was found, saying whether that proves that there is none
     */
    public BlockAt blocks() {
        int[] found = search();
        return (column, row) -> kinds.get(found[row * columns + column]);
    }

    private int[] search() {
        for (int t = 0; t < TRIES; t++) {
            Search search = new Search(new Random(shuffle * 1_000_003 + t));
            if (search.place(0)) {
                return search.at;
            }
            if (search.steps < STEPS) {
                throw new DesignException("these counts can't be scattered over " + columns + " x " + rows + " places without two alike touching: every way was tried; change a count");
            }
        }
        throw new DesignException("no scatter over " + columns + " x " + rows + " places was found in " + TRIES + " tries, though there may be one; even the counts out, or try another shuffle");
    }

    private final class Search {
        private final Random chance;
        private final int[] at = new int[columns * rows];
        private final int[] left = counts.stream().mapToInt(Integer::intValue).toArray();
        private long steps;

        Search(Random chance) {
            this.chance = chance;
            Arrays.fill(at, -1);
        }

        boolean place(int p) {
            if (p == at.length) {
                return true;
            }
            if (++steps >= STEPS) {
                return false;
            }
            for (int k : order(at.length - p)) {
                if (left[k] > 0 && isFree(p, k)) {
                    at[p] = k;
                    left[k]--;
                    if (place(p + 1)) {
                        return true;
                    }
                    left[k]++;
                    at[p] = -1;
                }
            }
            return false;
        }

        /** Kinds by chance, those of which many are left likelier to come first. */
        private int[] order(int places) {
            double[] keys = new double[left.length];
            for (int k = 0; k < keys.length; k++) {
                double share = (double) left[k] / places;
                keys[k] = share > 0.45 ? 2 + share : Math.pow(chance.nextDouble(), 1 / Math.max(1e-9, share));
            }
            return java.util.stream.IntStream.range(0, keys.length).boxed().sorted((a, b) -> Double.compare(keys[b], keys[a])).mapToInt(Integer::intValue).toArray();
        }

        private boolean isFree(int p, int kind) {
            int c = p % columns;
            int r = p / columns;
            return !(c > 0 && at[p - 1] == kind || r > 0 && at[p - columns] == kind
                    || corners && r > 0 && (c > 0 && at[p - columns - 1] == kind || c < columns - 1 && at[p - columns + 1] == kind));
        }
    }
}
