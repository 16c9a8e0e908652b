package org.calicograph.cutting.layout;

/**
 * The least length of a subtree for every width: points with widths that grow and lengths that fall.
 *
 * @param area  the area of its blanks, in square grid units
 * @param waste the least waste of any point, in square grid units
 */
record Curve(int[] widths, int[] lengths, int size, double area, double waste) {

    /** More points than this are thinned out; what remains is still attainable. */
    private static final int MOST = 160;

    /** Working space for combining, one for each search. */
    static final class Bench {
        private int[] sideWidths = new int[1024];
        private int[] sideLengths = new int[1024];
        private int[] pileWidths = new int[1024];
        private int[] pileLengths = new int[1024];
        private long work;

        /**
         * The best of both cuts: side by side and one below the other; widths up to the widest. Points
         * that waste more than the limit are dropped, but never all of them.
         */
        Curve combine(Curve a, Curve b, int widest, double limit) {
            int sides = sideBySide(a, b, widest);
            int piles = piled(a, b, widest);
            int[] w = new int[sides + piles];
            int[] h = new int[sides + piles];
            work += sides + piles;
            int n = 0;
            int i = 0;
            int j = 0;
            int last = Integer.MAX_VALUE;
            double least = Double.MAX_VALUE;
            while (i < sides || j < piles) {
                boolean side = j >= piles || i < sides && (sideWidths[i] < pileWidths[j]
                        || sideWidths[i] == pileWidths[j] && sideLengths[i] <= pileLengths[j]);
                int ww = side ? sideWidths[i] : pileWidths[j];
                int hh = side ? sideLengths[i++] : pileLengths[j++];
                if (hh < last) {
                    w[n] = ww;
                    h[n++] = hh;
                    last = hh;
                    least = Math.min(least, (double) ww * hh);
                }
            }
            double area = a.area + b.area;
            double most = Math.max(least, area + limit);
            int lean = 0;
            for (int k = 0; k < n; k++) {
                if ((double) w[k] * h[k] <= most) {
                    w[lean] = w[k];
                    h[lean++] = h[k];
                }
            }
            n = lean;
            if (n > MOST) {
                for (int k = 0; k < MOST; k++) {
                    int from = (int) ((long) k * (n - 1) / (MOST - 1));
                    w[k] = w[from];
                    h[k] = h[from];
                }
                n = MOST;
            }
            return new Curve(w, h, n, area, n == 0 ? 0 : least - area);
        }

        /** Points of curves put together so far: what a search costs, the same on every machine. */
        long work() {
            return work;
        }

        private int sideBySide(Curve a, Curve b, int widest) {
            int n = 0;
            int i = 0;
            int j = 0;
            while (i < a.size && j < b.size) {
                int w = a.widths[i] + b.widths[j];
                if (w > widest) {
                    break;
                }
                int ha = a.lengths[i];
                int hb = b.lengths[j];
                sideWidths[n] = w;
                sideLengths[n++] = Math.max(ha, hb);
                i += ha >= hb ? 1 : 0;
                j += hb >= ha ? 1 : 0;
            }
            return n;
        }

        private int piled(Curve a, Curve b, int widest) {
            if (a.size == 0 || b.size == 0) {
                return 0;
            }
            int n = 0;
            int i = 0;
            int j = 0;
            int w = Math.max(a.widths[0], b.widths[0]);
            while (w <= widest) {
                while (i + 1 < a.size && a.widths[i + 1] <= w) {
                    i++;
                }
                while (j + 1 < b.size && b.widths[j + 1] <= w) {
                    j++;
                }
                pileWidths[n] = w;
                pileLengths[n++] = a.lengths[i] + b.lengths[j];
                int next = i + 1 < a.size ? a.widths[i + 1] : Integer.MAX_VALUE;
                next = j + 1 < b.size ? Math.min(next, b.widths[j + 1]) : next;
                if (next == Integer.MAX_VALUE) {
                    break;
                }
                w = next;
            }
            return n;
        }
    }

    boolean same(Curve other) {
        return size == other.size && area == other.area && java.util.Arrays.equals(widths, 0, size, other.widths, 0, size)
                && java.util.Arrays.equals(lengths, 0, size, other.lengths, 0, size);
    }

    /** The least length within a width, or a great number if it is too narrow. */
    int lengthWithin(int width) {
        int best = Integer.MAX_VALUE;
        for (int i = 0; i < size && widths[i] <= width; i++) {
            best = lengths[i];
        }
        return best;
    }
}
