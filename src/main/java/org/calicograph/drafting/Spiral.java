package org.calicograph.drafting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.FittedCurve;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * Involutes and spirals about the origin, as paths. They turn clockwise on the page as they grow.
 *
 * <p>The involute of a circle, Archimedes' spiral and the logarithmic spiral are cubics within
 * {@link #ACCURACY}. The spirals of arcs about the corners of a polygon are exact: they are what a compass
 * draws, and the involutes of those polygons.
 */
public final class Spiral {

    /** How far a spiral's cubics may stray from its formula, in inches. */
    public static final double ACCURACY = 1e-4;

    private static final double MOST_TURNS = 50;

    private Spiral() { }

    /**
     * The involute of a circle: the end of a taut thread that is unwound from it. The point is
     * a (cos t + t sin t, sin t - t cos t), and the length of the curve a t squared / 2.
     *
     * @param radius  the circle's, a
     * @param unwound how far the thread has been unwound, t; above 0
     */
    public static Path involute(Length radius, Angle unwound) {
        requireStretch("an involute", radius, unwound);
        double a = radius.inInches();
        return FittedCurve.of(t -> new Point(a * (Math.cos(t) + t * Math.sin(t)), a * (Math.sin(t) - t * Math.cos(t))),
                t -> new Point(a * t * Math.cos(t), a * t * Math.sin(t)), 0, unwound.inRadians(), ACCURACY);
    }

    /** The involute function of an angle, tan x - x, in radians. */
    public static double involuteFunction(Angle angle) {
        return angle.tan() - angle.inRadians();
    }

    /**
     * Archimedes' spiral: every turn lies the same distance outside the one before, as rope is coiled on a deck.
     *
     * @param inner where it begins, from the middle; may be nothing
     * @param gap   from one turn to the next
     */
    public static Path archimedean(Length inner, Length gap, Angle turning) {
        requireStretch("a coil", gap, turning);
        if (inner.units() < 0) {
            throw new IllegalArgumentException("a coil begins " + inner + " from the middle; use 0 or more");
        }
        double r = inner.inInches();
        double b = gap.inInches() / (2 * Math.PI);
        return FittedCurve.of(t -> new Point((r + b * t) * Math.cos(t), (r + b * t) * Math.sin(t)),
                t -> new Point(b * Math.cos(t) - (r + b * t) * Math.sin(t), b * Math.sin(t) + (r + b * t) * Math.cos(t)),
                0, turning.inRadians(), ACCURACY);
    }

    /**
     * The logarithmic spiral: it grows by the same factor every turn, as a winkle's shell does.
     *
     * @param inner  where it begins, from the middle
     * @param growth the factor for each full turn; above 1
     */
    public static Path logarithmic(Length inner, double growth, Angle turning) {
        requireStretch("a whorl", inner, turning);
        if (!(growth > 1) || !(Math.pow(growth, turning.degrees() / 360) < 1e6)) {
            throw new IllegalArgumentException("a whorl that grows by " + growth + " every turn, for " + turning
                    + ", can't be drawn; use a factor above 1, such as 2, and fewer turns");
        }
        double a = inner.inInches();
        double k = Math.log(growth) / (2 * Math.PI);
        return FittedCurve.of(t -> Point.polar(a * Math.exp(k * t), Angle.radians(t)),
                t -> new Point(k * Math.cos(t) - Math.sin(t), k * Math.sin(t) + Math.cos(t)).times(a * Math.exp(k * t)),
                0, turning.inRadians(), ACCURACY);
    }

    /**
     * A spiral of arcs about the corners of a regular polygon in turn: each arc's radius is a side longer
     * than the one before. With four corners it is the carpenter's scroll, with three the triangle's.
     *
     * @param corners 2 or more; with 2 they are half circles
     * @param side    of the polygon
     * @param arcs    how many
     */
    public static Path ofArcs(int corners, Length side, int arcs) {
        if (corners < 2 || arcs < 1 || arcs > MOST_TURNS * corners || !side.isPositive()) {
            throw new IllegalArgumentException("a spiral of " + arcs + " arcs about " + corners + " corners " + side
                    + " apart can't be drawn; use 2 corners or more, a side above 0 and up to " + (int) MOST_TURNS + " turns");
        }
        Angle sweep = Angle.turn(1, corners);
        List<Point> centres = new ArrayList<>();
        double radius = side.inInches() / (2 * Math.sin(Math.PI / corners));
        for (int i = 0; i < corners; i++) {
            centres.add(Point.polar(radius, sweep.times(i)));
        }
        List<Segment> pieces = new ArrayList<>();
        Point here = centres.get(corners - 1);
        for (int i = 0; i < arcs; i++) {
            Arc arc = Arc.about(centres.get(i % corners), here, sweep);
            pieces.add(arc);
            here = arc.to();
        }
        return new Path(pieces);
    }

    private static void requireStretch(String what, Length size, Angle turning) {
        if (!size.isPositive() || !(turning.degrees() > 0 && turning.degrees() <= 360 * MOST_TURNS)) {
            throw new IllegalArgumentException(what + " of " + size + " through " + turning + " can't be drawn; use a length above 0 and up to "
                    + (int) MOST_TURNS + " turns");
        }
    }
}
