package org.calicograph.exhibition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which widths go on which lengths: as many as can, then on as few walls as can. A branch-and-bound search that tries the
 * widest first; it ends with the best there is, or after a stated number of tries with the best found. All in whole units.
 *
 * @param wallOf for every width the wall it goes on, or -1
 * @param proved true if nothing better exists
 */
record Placement(int[] wallOf, boolean proved) {

    private static final long TRIES = 3_000_000;

    int hung() {
        return (int) Arrays.stream(wallOf).filter(w -> w >= 0).count();
    }

    int walls() {
        return (int) Arrays.stream(wallOf).filter(w -> w >= 0).distinct().count();
    }

    /**
     * @param widths what each takes, its gap to the next included
     * @param lengths what each wall holds, a gap included
     * @param allowed true if a width may go on a wall, where it is low enough
     */
    static Placement of(long[] widths, long[] lengths, boolean[][] allowed) {
        return new Search(widths, lengths, allowed).run();
    }

    private static final class Search {
        private final long[] widths;
        private final long[] room;
        private final boolean[][] allowed;
        private final Integer[] order;
        private final int[] now;
        private final int[] load;
        private int[] best;
        private int bestHung = -1;
        private int bestWalls;
        private long tries;

        Search(long[] widths, long[] lengths, boolean[][] allowed) {
            this.widths = widths;
            this.room = lengths.clone();
            this.allowed = allowed;
            this.order = new Integer[widths.length];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, Comparator.comparingLong((Integer i) -> -widths[i]).thenComparingInt(i -> i));
            this.now = new int[widths.length];
            Arrays.fill(now, -1);
            this.load = new int[lengths.length];
            this.best = now.clone();
        }

        Placement run() {
            go(0, 0, 0);
            return new Placement(best, tries <= TRIES);
        }

        private void go(int at, int hung, int walls) {
            if (++tries > TRIES) {
                return;
            }
            if (at == order.length) {
                if (hung > bestHung || hung == bestHung && walls < bestWalls) {
                    bestHung = hung;
                    bestWalls = walls;
                    best = now.clone();
                }
                return;
            }
            int most = hung + mostOf(at);
            if (most < bestHung || most == bestHung && walls >= bestWalls) {
                return;
            }
            int q = order[at];
            for (int w : choices(q)) {
                room[w] -= widths[q];
                now[q] = w;
                load[w]++;
                go(at + 1, hung + 1, walls + (load[w] == 1 ? 1 : 0));
                load[w]--;
                now[q] = -1;
                room[w] += widths[q];
            }
            go(at + 1, hung, walls);
        }

        /** Walls with room: those in use before bare ones, the fullest first; of bare walls that are alike only one. */
        private List<Integer> choices(int q) {
            List<Integer> all = new ArrayList<>();
            for (int w = 0; w < room.length; w++) {
                if (allowed[q][w] && room[w] >= widths[q] && !hasTwin(w)) {
                    all.add(w);
                }
            }
            all.sort(Comparator.comparingInt((Integer w) -> load[w] > 0 ? 0 : 1).thenComparingLong(w -> room[w]));
            return all;
        }

        private boolean hasTwin(int w) {
            for (int v = 0; v < w; v++) {
                if (load[v] == 0 && load[w] == 0 && room[v] == room[w] && takesTheSame(v, w)) {
                    return true;
                }
            }
            return false;
        }

        private boolean takesTheSame(int v, int w) {
            for (boolean[] each : allowed) {
                if (each[v] != each[w]) {
                    return false;
                }
            }
            return true;
        }

        /** How many of those left could hang if the walls were one: the narrowest first. */
        private int mostOf(int at) {
            long sum = 0;
            for (long r : room) {
                sum += r;
            }
            int count = 0;
            for (int i = order.length - 1; i >= at && sum >= widths[order[i]]; i--) {
                sum -= widths[order[i]];
                count++;
            }
            return count;
        }
    }
}
