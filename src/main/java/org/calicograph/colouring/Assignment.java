package org.calicograph.colouring;

import java.util.Arrays;

/**
 * The problem behind running out: so many like patches of each kind, each to be cut from one of several
 * cloths of which only so much is there, at the least total cost. It is a generalised assignment problem.
 *
 * @param count    patches of each kind
 * @param need     cloth that one patch of the kind takes, in square inches; above 0
 * @param cost     by kind and cloth: what one patch costs in that cloth; 0 or more
 * @param capacity cloth there is, in square inches; infinite where as much as needed can be had. For
 *                 every kind at least one cloth is infinite, so that a solution exists
 */
record Assignment(int[] count, double[] need, double[][] cost, double[] capacity) {

    static final double SLACK = 1e-9;

    int kinds() {
        return count.length;
    }

    int cloths() {
        return capacity.length;
    }

    double costOf(int[][] solution) {
        double sum = 0;
        for (int k = 0; k < kinds(); k++) {
            for (int c = 0; c < cloths(); c++) {
                sum += solution[k][c] == 0 ? 0 : solution[k][c] * cost[k][c];
            }
        }
        return sum;
    }

    /** The same, but where all patches take alike, cloth that is too little for one more of them is not counted. */
    Assignment inWholePatches() {
        double one = need[0];
        if (Arrays.stream(need).anyMatch(n -> n != one)) {
            return this;
        }
        return new Assignment(count, need, cost, Arrays.stream(capacity)
                .map(c -> Double.isInfinite(c) ? c : one * Math.floor((c + SLACK) / one)).toArray());
    }

    /** What is left of each cloth. */
    double[] room(int[][] solution) {
        double[] room = capacity.clone();
        for (int k = 0; k < kinds(); k++) {
            for (int c = 0; c < cloths(); c++) {
                room[c] -= solution[k][c] * need[k];
            }
        }
        return room;
    }

    boolean fits(int[][] solution) {
        return Arrays.stream(room(solution)).allMatch(r -> r >= -SLACK);
    }

    /** Each kind wholly in the cloth that is cheapest once cloth has a price per square inch. */
    int[][] cheapest(double[] price) {
        int[][] solution = new int[kinds()][cloths()];
        for (int k = 0; k < kinds(); k++) {
            solution[k][cheapest(k, price)] = count[k];
        }
        return solution;
    }

    int cheapest(int k, double[] price) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < cloths(); c++) {
            double d = cost[k][c] + price[c] * need[k];
            if (d < least) {
                least = d;
                best = c;
            }
        }
        return best;
    }
}
