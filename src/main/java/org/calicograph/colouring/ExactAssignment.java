package org.calicograph.colouring;

import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** An assignment as a linear programme, with ojAlgo: in fractions for a bound, in whole numbers for small cases. */
final class ExactAssignment {

    /** Kinds times cloths up to which the exact way is taken. */
    static final int LIMIT = 60;

    /** The least cost if patches could be shared out in fractions, and those fractions. */
    record Relaxed(double cost, double[][] shares) { }

    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Variable[][] x;

    private ExactAssignment(Assignment a, boolean whole, double kept) {
        x = new Variable[a.kinds()][a.cloths()];
        for (int k = 0; k < a.kinds(); k++) {
            Expression all = model.newExpression("kind" + k).level(a.count()[k]);
            for (int c = 0; c < a.cloths(); c++) {
                x[k][c] = model.newVariable("x" + k + "_" + c).integer(whole).lower(0).weight(a.cost()[k][c]);
                if (whole) {
                    x[k][c].upper(a.count()[k]);
                }
                all.set(x[k][c], 1);
            }
        }
        for (int c = 0; c < a.cloths(); c++) {
            if (!Double.isInfinite(a.capacity()[c])) {
                Expression cloth = model.newExpression("cloth" + c).upper(Math.max(0, a.capacity()[c] - kept));
                for (int k = 0; k < a.kinds(); k++) {
                    cloth.set(x[k][c], a.need()[k]);
                }
            }
        }
    }

    /** Empty if the solver gives up. */
    static Optional<Relaxed> relaxed(Assignment a, double kept) {
        ExactAssignment e = new ExactAssignment(a, false, kept);
        Optimisation.Result result = e.model.minimise();
        if (!result.getState().isOptimal()) {
            return Optional.empty();
        }
        double[][] shares = new double[a.kinds()][a.cloths()];
        for (int k = 0; k < a.kinds(); k++) {
            for (int c = 0; c < a.cloths(); c++) {
                shares[k][c] = e.x[k][c].getValue().doubleValue();
            }
        }
        return Optional.of(new Relaxed(result.getValue(), shares));
    }

    /** Empty if the solver gives up. */
    static Optional<int[][]> of(Assignment a) {
        ExactAssignment e = new ExactAssignment(a, true, 0);
        Optimisation.Result result = e.model.minimise();
        if (result.getState() != Optimisation.State.OPTIMAL) {
            return Optional.empty();
        }
        int[][] solution = new int[a.kinds()][a.cloths()];
        for (int k = 0; k < a.kinds(); k++) {
            int sum = 0;
            for (int c = 0; c < a.cloths(); c++) {
                solution[k][c] = (int) Math.round(e.x[k][c].getValue().doubleValue());
                sum += solution[k][c];
            }
            if (sum != a.count()[k]) {
                return Optional.empty();
            }
        }
        return a.fits(solution) ? Optional.of(solution) : Optional.empty();
    }
}
