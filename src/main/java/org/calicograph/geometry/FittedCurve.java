package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Cubics through a curve that is given by its formula: each takes over position and direction at both of
 * its ends, and is halved until it is near enough.
 */
public final class FittedCurve {

    private static final int PLACES = 16;
    private static final int DEEPEST = 20;

    private final DoubleFunction<Point> at;
    private final DoubleFunction<Point> velocity;
    private final double accuracy;
    private final List<Segment> pieces = new ArrayList<>();

    private FittedCurve(DoubleFunction<Point> at, DoubleFunction<Point> velocity, double accuracy) {
        this.at = at;
        this.velocity = velocity;
        this.accuracy = accuracy;
    }

    /**
     * The curve between two values of its parameter, within the accuracy in inches as measured at sixteen
     * places of each piece.
     *
     * @param at       where the curve is
     * @param velocity its derivative
     * @throws IllegalArgumentException if the accuracy or the stretch is not above 0
     */
    public static Path of(DoubleFunction<Point> at, DoubleFunction<Point> velocity, double from, double to, double accuracy) {
        if (!(accuracy > 0) || !(to > from)) {
            throw new IllegalArgumentException("a curve from " + from + " to " + to + " within " + accuracy
                    + " in can't be fitted; let it go forwards and use an accuracy above 0");
        }
        FittedCurve fit = new FittedCurve(at, velocity, accuracy);
        fit.add(from, to, 0);
        return new Path(fit.pieces);
    }

    private void add(double from, double to, int depth) {
        double third = (to - from) / 3;
        Point p = at.apply(from);
        Point q = at.apply(to);
        Cubic piece = new Cubic(p, p.plus(velocity.apply(from).times(third)), q.minus(velocity.apply(to).times(third)), q);
        if (depth >= DEEPEST || depth > 0 && isNear(piece, from, to)) {
            pieces.add(piece);
            return;
        }
        double middle = (from + to) / 2;
        add(from, middle, depth + 1);
        add(middle, to, depth + 1);
    }

    private boolean isNear(Cubic piece, double from, double to) {
        for (int i = 1; i < PLACES; i++) {
            double share = (double) i / PLACES;
            if (piece.at(share).distance(at.apply(from + (to - from) * share)) > accuracy) {
                return false;
            }
        }
        return true;
    }
}
