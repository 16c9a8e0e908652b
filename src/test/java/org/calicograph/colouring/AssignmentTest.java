package org.calicograph.colouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AssignmentTest {

    /** Colours on a line, cloths short by a fifth or so, and one to buy. */
    private static Assignment problem(Random random, int kinds, int cloths, int most) {
        int[] count = new int[kinds];
        double[] need = new double[kinds];
        double[][] cost = new double[kinds][cloths + 1];
        double[] capacity = new double[cloths + 1];
        capacity[cloths] = Double.POSITIVE_INFINITY;
        double[] colour = random.doubles(cloths, 0, 60).toArray();
        for (int k = 0; k < kinds; k++) {
            count[k] = 1 + random.nextInt(most);
            double area = 0.5 + random.nextDouble() * 12;
            need[k] = area + 2 * Math.sqrt(area);
            int own = random.nextInt(cloths);
            for (int c = 0; c < cloths; c++) {
                cost[k][c] = area * Math.abs(colour[c] - colour[own]);
            }
            cost[k][cloths] = area * 1000;
            capacity[own] += count[k] * need[k];
        }
        for (int c = 0; c < cloths; c++) {
            capacity[c] *= 0.7 + random.nextDouble() * 0.6;
        }
        return new Assignment(count, need, cost, capacity);
    }

    /** Every way to cut, one patch after another. */
    private static double leastByTryingAll(Assignment a, int kind, int placed, int from, double[] room, double sum, double best) {
        if (sum >= best) {
            return best;
        }
        if (kind == a.kinds()) {
            return sum;
        }
        if (placed == a.count()[kind]) {
            return leastByTryingAll(a, kind + 1, 0, 0, room, sum, best);
        }
        double least = best;
        for (int c = from; c < a.cloths(); c++) {
            if (room[c] >= a.need()[kind]) {
                room[c] -= a.need()[kind];
                least = leastByTryingAll(a, kind, placed + 1, c, room, sum + a.cost()[kind][c], least);
                room[c] += a.need()[kind];
            }
        }
        return least;
    }

    @Test
    void the_exact_way_finds_what_trying_all_finds() {
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            Assignment a = problem(random, 2 + random.nextInt(4), 2 + random.nextInt(3), 3);
            double least = leastByTryingAll(a, 0, 0, 0, a.capacity().clone(), 0, Double.POSITIVE_INFINITY);
            int[][] exact = ExactAssignment.of(a).orElseThrow();
            assertThat(a.fits(exact)).isTrue();
            assertThat(a.costOf(exact)).as("case %s", i).isCloseTo(least, within(1e-6 * (1 + least)));
        }
    }

    /** Whole amounts of cloth, in which patches fit exactly or by a hair not, and a stash that has nothing to do with what was meant. */
    private static Assignment whole(Random random) {
        int kinds = 1 + random.nextInt(5);
        int cloths = 1 + random.nextInt(4);
        double[][] cost = new double[kinds][cloths + 1];
        double[] need = new double[kinds];
        double[] capacity = random.ints(cloths + 1, 1, 40).asDoubleStream().toArray();
        capacity[cloths] = Double.POSITIVE_INFINITY;
        for (int k = 0; k < kinds; k++) {
            need[k] = 4 + 3 * random.nextInt(4);
            for (int c = 0; c < cloths; c++) {
                cost[k][c] = random.nextInt(4) == 0 ? 0 : need[k] * random.nextInt(60);
            }
            cost[k][cloths] = need[k] * 1000;
        }
        return new Assignment(random.ints(kinds, 1, 5).toArray(), need, cost, capacity);
    }

    @Test
    void what_is_called_the_least_change_is_the_least_of_all_in_two_thousand_small_cases() {
        Random random = new Random(13);
        int exact = 0;
        for (int i = 0; i < 2_000; i++) {
            Assignment a = i % 2 == 0 ? whole(random) : problem(random, 2 + random.nextInt(4), 2 + random.nextInt(3), 3);
            double least = leastByTryingAll(a, 0, 0, 0, a.capacity().clone(), 0, Double.POSITIVE_INFINITY);
            LeastChange found = LeastChange.of(a);
            assertThat(a.fits(found.solution())).isTrue();
            assertThat(found.bound()).as("case %s", i).isLessThanOrEqualTo(least + 1e-6 * (1 + least));
            if (found.exact()) {
                exact++;
                assertThat(found.cost()).as("case %s", i).isCloseTo(least, within(1e-6 * (1 + least)));
            }
        }
        assertThat(exact).isEqualTo(2_000);
    }

    @Test
    void no_bound_is_above_the_least_cost() {
        Random random = new Random(6);
        for (int i = 0; i < 60; i++) {
            Assignment a = problem(random, 2 + random.nextInt(4), 2 + random.nextInt(3), 3);
            double least = leastByTryingAll(a, 0, 0, 0, a.capacity().clone(), 0, Double.POSITIVE_INFINITY);
            int[][] fitted = FittedAssignment.from(a, new double[a.cloths()]);
            assertThat(a.fits(fitted)).isTrue();
            assertThat(PriceBound.of(a, a.costOf(fitted)).value()).isLessThanOrEqualTo(least * (1 + 1e-9) + 1e-9);
            assertThat(PriceBound.of(a, a.costOf(fitted), new Buckets(a, 3).prices()).value())
                    .isLessThanOrEqualTo(least * (1 + 1e-9) + 1e-9);
        }
    }

    @Test
    void large_cases_come_within_two_per_cent_of_the_bound_and_never_take_more_than_there_is() {
        Random random = new Random(7);
        for (int i = 0; i < 8; i++) {
            Assignment a = i < 5 ? problem(random, 10 + random.nextInt(60), 4 + random.nextInt(10), 400)
                    : i < 6 ? problem(random, 900, 8, 5) : problem(random, 10_000, 2 + 4 * (i - 5), 1);
            int patches = Arrays.stream(a.count()).sum();
            LeastChange found = LeastChange.of(a);
            assertThat(a.fits(found.solution())).isTrue();
            for (int k = 0; k < a.kinds(); k++) {
                assertThat(Arrays.stream(found.solution()[k]).sum()).isEqualTo(a.count()[k]);
            }
            assertThat(a.costOf(found.solution())).isEqualTo(found.cost());
            assertThat(found.cost() - found.bound()).as("%s patches in %s kinds, %s cloths", patches, a.kinds(), a.cloths())
                    .isBetween(0.0, 0.02 * found.cost());
        }
    }
}
