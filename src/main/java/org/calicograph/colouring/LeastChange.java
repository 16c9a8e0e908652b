package org.calicograph.colouring;

import java.util.Arrays;
import java.util.Optional;

/**
 * The best assignment that was found, and how good it surely is.
 *
 * <p>Small cases are searched whole, from a solver's answer. Others are solved in fractions first, which gives the
 * bound; from there, and from fractions with a little of each cloth kept back for rounding, assignments
 * that fit are made and improved. Cases too large for that are solved in fractions for {@link Buckets} of
 * like kinds, and take their bound from prices.
 *
 * @param solution patches of each kind in each cloth
 * @param cost     what it costs
 * @param bound    no assignment costs less
 * @param exact    true if nothing costs less than this
 */
record LeastChange(int[][] solution, double cost, double bound, boolean exact) {

    /** Kinds times cloths up to which fractions are found in seconds. */
    private static final int FRACTIONS = 20_000;
    /** Kinds times cloths up to which fractions are found at once. */
    private static final int QUICK = 1_500;
    /** Buckets in all when it is prices that are looked for. */
    private static final int COARSE = 300;
    /** Near enough to stop looking, and near enough to be content after a long look. */
    private static final double NEAR = 1.002;
    private static final double FAIR = 1.015;

    static LeastChange of(Assignment a) {
        int[][] solution = FittedAssignment.from(a, new double[a.cloths()]);
        if (a.costOf(solution) == 0) {
            return new LeastChange(solution, 0, 0, true);
        }
        int size = a.kinds() * a.cloths();
        if (size <= ExactAssignment.LIMIT) {
            int[][] start = solution;
            // The solver's word that nothing costs less was wrong in some cases: its answer is only where the search begins.
            solution = ExactAssignment.of(a).map(whole -> better(a, start, whole)).orElse(start);
            Optional<int[][]> least = WholeSearch.least(a, solution);
            if (least.isPresent()) {
                double cost = a.costOf(least.get());
                return new LeastChange(least.get(), cost, cost, true);
            }
            double cost = a.costOf(solution);
            double bound = ExactAssignment.relaxed(a.inWholePatches(), 0).map(ExactAssignment.Relaxed::cost).orElse(0.0);
            if (cost <= bound * NEAR) {
                return new LeastChange(solution, cost, Math.min(bound, cost), cost <= bound + Assignment.SLACK * (1 + cost));
            }
        }
        Optional<ExactAssignment.Relaxed> relaxed = size <= FRACTIONS ? ExactAssignment.relaxed(a, 0) : Optional.empty();
        double bound;
        if (relaxed.isPresent()) {
            bound = relaxed.get().cost();
            solution = better(a, solution, FittedAssignment.from(a, relaxed.get().shares()));
            double mean = mean(a);
            double[] back = size <= QUICK ? new double[] {0.1, 0.2, 0.35, 0.5, 0.75, 1, 1.5, 2} : new double[] {0.4};
            for (double share : back) {
                if (a.costOf(solution) > bound * NEAR) {
                    int[][] from = solution;
                    solution = ExactAssignment.relaxed(a, share * mean)
                            .map(r -> better(a, from, FittedAssignment.from(a, r.shares()))).orElse(from);
                }
            }
        } else {
            Buckets buckets = new Buckets(a, FRACTIONS / 8 / a.cloths());
            for (double share : new double[] {0, 0.5}) {
                int[][] from = solution;
                solution = ExactAssignment.relaxed(buckets.merged(), share * mean(a))
                        .map(r -> better(a, from, FittedAssignment.from(a, buckets.dealt(r.shares())))).orElse(from);
            }
            PriceBound prices = PriceBound.of(a, a.costOf(solution), new Buckets(a, COARSE).prices());
            bound = prices.value();
        }
        solution = FittedAssignment.shaken(a, solution, bound * NEAR, 1);
        for (long seed = 2; seed <= 4 && a.costOf(solution) > bound * FAIR; seed++) {
            solution = FittedAssignment.shaken(a, solution, bound * FAIR, seed);
        }
        double cost = a.costOf(solution);
        return new LeastChange(solution, cost, Math.min(bound, cost), false);
    }

    private static double mean(Assignment a) {
        return Arrays.stream(a.need()).average().orElseThrow();
    }

    private static int[][] better(Assignment a, int[][] one, int[][] other) {
        return a.costOf(other) < a.costOf(one) ? other : one;
    }
}
