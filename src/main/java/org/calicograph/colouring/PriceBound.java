package org.calicograph.colouring;

/**
 * A cost that no assignment can beat: Lagrangian relaxation of the amounts of cloth, the prices raised by
 * subgradient steps (M. Held, P. Wolfe, H. Crowder 1974; step of B. Polyak). Every set of prices gives a
 * valid bound; the best found is kept.
 *
 * @param value  no assignment costs less
 * @param prices of each cloth per square inch, at which the bound was found
 */
record PriceBound(double value, double[] prices) {

    private static final int STEPS = 600;
    private static final int PATIENCE = 12;

    /** @param known the cost of some assignment, to aim at */
    static PriceBound of(Assignment a, double known) {
        return of(a, known, new double[a.cloths()]);
    }

    /** @param first prices to begin with; 0 where as much as needed can be had */
    static PriceBound of(Assignment a, double known, double[] first) {
        int m = a.cloths();
        double[] price = first.clone();
        PriceBound best = new PriceBound(0, price.clone());
        double theta = 1;
        int idle = 0;
        for (int step = 0; step < STEPS && theta > 1e-5; step++) {
            double[] over = new double[m];
            double value = 0;
            for (int c = 0; c < m; c++) {
                over[c] = Double.isInfinite(a.capacity()[c]) ? 0 : -a.capacity()[c];
                value += price[c] * over[c];
            }
            for (int k = 0; k < a.kinds(); k++) {
                int c = a.cheapest(k, price);
                value += a.count()[k] * (a.cost()[k][c] + price[c] * a.need()[k]);
                over[c] += a.count()[k] * a.need()[k];
            }
            if (value > best.value() + 1e-12 * Math.abs(known)) {
                idle = value > best.value() + 1e-4 * Math.abs(known) ? 0 : idle + 1;
                best = new PriceBound(value, price.clone());
            } else {
                idle++;
            }
            if (idle >= PATIENCE) {
                theta /= 2;
                idle = 0;
                price = best.prices().clone();
                continue;
            }
            double norm = 0;
            for (int c = 0; c < m; c++) {
                if (Double.isInfinite(a.capacity()[c]) || (price[c] == 0 && over[c] < 0)) {
                    over[c] = 0;
                }
                norm += over[c] * over[c];
            }
            if (norm < 1e-18 || known <= value) {
                break;
            }
            double length = theta * (known - value) / norm;
            for (int c = 0; c < m; c++) {
                price[c] = Math.max(0, price[c] + length * over[c]);
            }
        }
        return best;
    }
}
