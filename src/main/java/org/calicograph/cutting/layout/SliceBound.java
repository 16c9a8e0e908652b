package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Length;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The bound of thin slices: whatever the layout, a line across the cloth meets blanks whose sides add up
 * to no more than its width, and each blank is met along the whole of its other side. Prices on sides
 * that no such line can exceed prove a length; a linear program finds the best prices, and an exact
 * knapsack over the widths checks them, so the bound holds whatever the program's rounding.
 */
final class SliceBound {

    private static final int MOST_KINDS = 24;
    private static final int MOST_STEPS = 1 << 13;
    private static final int ROUNDS = 80;

    private final List<Kind> kinds;
    private final long unit;
    private final List<Integer> sides;
    private final int capacity;

    private SliceBound(List<Blank> blanks, long unit, int capacity) {
        this.capacity = capacity;
        this.unit = unit;
        this.kinds = Kind.of(blanks);
        sides = kinds.stream().flatMap(k -> k.blank().turnable() ? java.util.stream.Stream.of(k.across(unit), k.along(unit))
                : java.util.stream.Stream.of(k.across(unit))).filter(s -> s <= capacity).distinct().sorted().toList();
    }

    /** A length no layout is shorter than; nothing at all if there are too many kinds to tell. */
    static Length of(Length width, List<Blank> blanks) {
        long unit = 0;
        for (Blank b : blanks) {
            unit = LengthBound.gcd(LengthBound.gcd(unit, b.across().units()), b.along().units());
        }
        long steps = width.units() / unit;
        if (steps > MOST_STEPS || steps < 1) {
            return Length.ZERO;
        }
        SliceBound bound = new SliceBound(blanks, unit, (int) steps);
        return bound.kinds.size() > MOST_KINDS ? Length.ZERO : new Length((long) Math.ceil(bound.best() * unit * (1 - 1e-9)));
    }

    private double best() {
        List<int[]> slices = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            int[] alone = new int[sides.size()];
            alone[i] = capacity / sides.get(i);
            slices.add(alone);
        }
        double best = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double[] prices = prices(slices);
            int[] dearest = new int[sides.size()];
            double over = dearest(prices, dearest);
            best = Math.max(best, worth(prices) / Math.max(1, over));
            if (over <= 1 + 1e-7) {
                break;
            }
            slices.add(dearest);
        }
        return best;
    }

    /** What the blanks are worth at the prices: each at the cheaper of its two ways to lie. */
    private double worth(double[] prices) {
        double sum = 0;
        for (Kind k : kinds) {
            double asAsked = k.across(unit) <= capacity ? k.along(unit) * prices[sides.indexOf(k.across(unit))] : Double.MAX_VALUE;
            double turned = k.blank().turnable() && k.along(unit) <= capacity ? k.across(unit) * prices[sides.indexOf(k.along(unit))] : Double.MAX_VALUE;
            sum += k.count() * Math.min(asAsked, turned);
        }
        return sum;
    }

    private double[] prices(List<int[]> slices) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Variable> price = new ArrayList<>();
        for (int s : sides) {
            price.add(model.newVariable("side" + s).lower(0).upper(1));
        }
        int n = 0;
        for (Kind k : kinds) {
            Variable value = model.newVariable("kind" + n++).lower(0).weight(k.count());
            if (k.across(unit) <= capacity) {
                model.newExpression("asked" + n).upper(0).set(value, 1).set(price.get(sides.indexOf(k.across(unit))), -k.along(unit));
            }
            if (k.blank().turnable() && k.along(unit) <= capacity) {
                model.newExpression("turned" + n).upper(0).set(value, 1).set(price.get(sides.indexOf(k.along(unit))), -k.across(unit));
            }
        }
        for (int[] slice : slices) {
            Expression e = model.newExpression("slice" + n++).upper(1);
            for (int i = 0; i < slice.length; i++) {
                if (slice[i] > 0) {
                    e.set(price.get(i), slice[i]);
                }
            }
        }
        Optimisation.Result result = model.maximise();
        double[] prices = new double[sides.size()];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = Math.max(0, result.doubleValue(i));
        }
        return prices;
    }

    /** The dearest slice across the cloth (an unbounded knapsack, exact over the grid). */
    private double dearest(double[] prices, int[] into) {
        double[] value = new double[capacity + 1];
        int[] last = new int[capacity + 1];
        java.util.Arrays.fill(last, -1);
        for (int w = 1; w <= capacity; w++) {
            value[w] = value[w - 1];
            for (int i = 0; i < prices.length; i++) {
                int from = w - sides.get(i);
                if (from >= 0 && value[from] + prices[i] > value[w]) {
                    value[w] = value[from] + prices[i];
                    last[w] = i;
                }
            }
        }
        int w = capacity;
        while (w > 0) {
            if (last[w] >= 0) {
                into[last[w]]++;
                w -= sides.get(last[w]);
            } else {
                w--;
            }
        }
        return value[capacity];
    }
}
