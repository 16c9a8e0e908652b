package org.calicograph.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * The colours of a photograph by k-means in OKLab.
 *
 * <p>Pixels are first gathered in 32 steps each of red, green and blue; each bin counts with the number
 * of its pixels, at their mean. The centres start by k-means++ (D. Arthur and S. Vassilvitskii, 2007),
 * several times from one seed, and the run with the least squared distance stays. {@link Random} is
 * specified to the bit, so the result is the same on every machine.
 *
 * @param colours the centres, the largest share first
 * @param shares  the part of the pixels nearest to each; they add up to 1
 */
public record Clusters(List<Colour> colours, List<Double> shares) {

    /** The seed where none is given. */
    public static final long SEED = 1851;
    private static final int STARTS = 6;
    private static final int ROUNDS = 60;

    /** The colours of a photograph gathered round so many middles; one seed always gives the same. */
    public static Clusters of(Photo photo, int wanted, long seed) {
        if (wanted < 1 || wanted > 64) {
            throw new IllegalArgumentException("a palette of " + wanted + " colours can't be taken from a photograph; use 1 to 64");
        }
        double[][] points = bins(photo);
        if (points.length == 0) {
            throw new IllegalArgumentException("every pixel of the photograph is clear; give one with something in it");
        }
        int k = Math.min(wanted, points.length);
        Random random = new Random(seed);
        double[][] best = {};
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < STARTS; i++) {
            double[][] centres = start(points, k, random);
            double error = settle(points, centres);
            if (error < least) {
                least = error;
                best = centres;
            }
        }
        return sorted(points, best);
    }

    /** Bins as OKLab and weight: {l, a, b, w}. */
    private static double[][] bins(Photo photo) {
        long[] sums = new long[32 * 32 * 32 * 4];
        int count = photo.count();
        for (int i = 0; i < count; i++) {
            int p = photo.pixel(i);
            if (p >>> 31 == 0) {
                continue;
            }
            int at = ((p >> 9 & 0x7C00) | (p >> 6 & 0x3E0) | (p >> 3 & 0x1F)) << 2;
            sums[at] += p >> 16 & 255;
            sums[at + 1] += p >> 8 & 255;
            sums[at + 2] += p & 255;
            sums[at + 3]++;
        }
        List<double[]> points = new ArrayList<>();
        for (int at = 0; at < sums.length; at += 4) {
            double n = sums[at + 3];
            if (n > 0) {
                Oklab lab = new Colour(sums[at] / n / 255, sums[at + 1] / n / 255, sums[at + 2] / n / 255).oklab();
                points.add(new double[] {lab.lightness(), lab.a(), lab.b(), n});
            }
        }
        return points.toArray(double[][]::new);
    }

    private static double[][] start(double[][] points, int k, Random random) {
        double[][] centres = new double[k][];
        double[] near = new double[points.length];
        java.util.Arrays.fill(near, 1);
        for (int c = 0; c < k; c++) {
            double total = 0;
            for (int i = 0; i < points.length; i++) {
                total += near[i] * points[i][3];
            }
            double pick = random.nextDouble() * total;
            int chosen = points.length - 1;
            for (int i = 0; i < points.length; i++) {
                pick -= near[i] * points[i][3];
                if (pick < 0) {
                    chosen = i;
                    break;
                }
            }
            centres[c] = points[chosen].clone();
            for (int i = 0; i < points.length; i++) {
                double d = squared(points[i], centres[c]);
                near[i] = c == 0 ? d : Math.min(near[i], d);
            }
        }
        return centres;
    }

    /** Moves the centres until they rest; gives the squared distance that is left. */
    private static double settle(double[][] points, double[][] centres) {
        int k = centres.length;
        double last = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            double[][] sums = new double[k][4];
            double error = 0;
            for (double[] p : points) {
                int c = nearest(p, centres);
                error += squared(p, centres[c]) * p[3];
                for (int d = 0; d < 3; d++) {
                    sums[c][d] += p[d] * p[3];
                }
                sums[c][3] += p[3];
            }
            for (int c = 0; c < k; c++) {
                if (sums[c][3] > 0) {
                    for (int d = 0; d < 3; d++) {
                        centres[c][d] = sums[c][d] / sums[c][3];
                    }
                }
            }
            if (last - error <= 1e-9 * error) {
                return error;
            }
            last = error;
        }
        return last;
    }

    private static int nearest(double[] p, double[][] centres) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < centres.length; c++) {
            double d = squared(p, centres[c]);
            if (d < least) {
                least = d;
                best = c;
            }
        }
        return best;
    }

    private static double squared(double[] p, double[] q) {
        double l = p[0] - q[0];
        double a = p[1] - q[1];
        double b = p[2] - q[2];
        return l * l + a * a + b * b;
    }

    private static Clusters sorted(double[][] points, double[][] centres) {
        double[] weights = new double[centres.length];
        double total = 0;
        for (double[] p : points) {
            weights[nearest(p, centres)] += p[3];
            total += p[3];
        }
        double all = total;
        List<Integer> order = IntStream.range(0, centres.length).boxed().filter(c -> weights[c] > 0)
                .sorted(Comparator.<Integer>comparingDouble(c -> -weights[c]).thenComparingDouble(c -> centres[c][0])).toList();
        return new Clusters(order.stream().map(c -> new Oklab(centres[c][0], centres[c][1], centres[c][2]).colour()).toList(),
                order.stream().map(c -> weights[c] / all).toList());
    }
}
