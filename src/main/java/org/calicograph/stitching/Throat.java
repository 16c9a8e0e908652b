package org.calicograph.stitching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;

/**
 * What passes under a machine: to the right of the needle the quilt must go through as a roll.
 *
 * <p>A width w of layers of thickness t, rolled tightly, is a cylinder of diameter {@code 2 sqrt(w t / pi)}
 * (its end has the area w t). With the feed dogs up (a walking foot) the quilt turns with the line, so
 * the width to the right of the line counts; in free motion it keeps one way up, entered from whichever
 * side leaves less. By hand nothing limits the roll; a hoop holds what is being sewn.
 *
 * @param space      between needle and machine
 * @param thickness  of the layers when rolled, loosely
 * @param freeMotion true if the quilt need not turn with the line
 */
public record Throat(Length space, Length thickness, boolean freeMotion) {

    public Throat {
        if (!space.isPositive() || !thickness.isPositive()) {
            throw new IllegalArgumentException("a throat of " + space + " and layers of " + thickness + " pass nothing; measure both, above 0");
        }
    }

    /** The roll that a width makes. */
    public Length roll(Length width) {
        return Length.inches(2 * Math.sqrt(width.inInches() * thickness.inInches() / Math.PI));
    }

    /** The widest part of a quilt that goes through. */
    public Length widest() {
        double r = space.inInches() / 2;
        return Length.inches(Math.PI * r * r / thickness.inInches());
    }

    /** A place, and the roll that goes through there. */
    public record Tight(Point at, Length roll) { }

    /** Where the route asks too much, one place a run at most, the worst. */
    public List<Tight> tight(Route route, Region quilt) {
        return route.runs().stream().map(r -> worst(r, quilt.bounds())).filter(t -> t.roll().compareTo(space) > 0).toList();
    }

    /** The same runs, each in the direction whose thickest roll is less. */
    public Route eased(Route route, Region quilt) {
        Box box = quilt.bounds();
        List<Route.Run> runs = new ArrayList<>();
        for (Route.Run run : route.runs()) {
            Route.Run back = run.reversed();
            runs.add(worst(back, box).roll().compareTo(worst(run, box).roll()) < 0 ? back : run);
        }
        return new Route(runs, route.bound(), route.exact(), route.matching());
    }

    /**
     * Of several plans the one to sew under this throat: the fewest starts; of those the fewest places that do not go
     * through, then the least turning of the whole quilt. The first of equals.
     *
     * @throws IllegalArgumentException if there is none
     */
    public QuiltingPlan easiest(List<QuiltingPlan> plans) {
        record Effort(QuiltingPlan plan, int starts, int tight, double turns) { }
        return plans.stream().map(plan -> {
            List<Route> routes = plan.layers().stream().map(l -> eased(l.route(), plan.area())).toList();
            return new Effort(plan, routes.stream().mapToInt(Route::starts).sum(), routes.stream().mapToInt(r -> tight(r, plan.area()).size()).sum(),
                    routes.stream().mapToDouble(this::turns).sum());
        }).min(Comparator.comparingInt(Effort::starts).thenComparingInt(Effort::tight).thenComparingDouble(e -> Math.rint(e.turns() * 1e6)))
                .orElseThrow(() -> new IllegalArgumentException("no plans to choose from; give at least one")).plan();
    }

    private Tight worst(Route.Run run, Box box) {
        Point at = Route.start(run);
        double most = 0;
        for (Route.Pass pass : run.passes()) {
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                Point p = pass.line().at(share);
                double bulk = bulk(p, pass.line().heading(share), box);
                if (bulk > most) {
                    most = bulk;
                    at = p;
                }
            }
        }
        return new Tight(at, roll(Length.inches(most)));
    }

    /** The width to the right of the needle, in inches. */
    private double bulk(Point at, Point heading, Box box) {
        if (freeMotion) {
            return Math.min(Math.min(at.x() - box.left(), box.right() - at.x()), Math.min(at.y() - box.top(), box.bottom() - at.y()));
        }
        Point right = heading.unit().quarterTurned();
        double most = 0;
        for (Point c : new Point[] {box.topLeft(), Point.of(box.right(), box.top()), Point.of(box.left(), box.bottom()), Point.of(box.right(), box.bottom())}) {
            most = Math.max(most, c.minus(at).dot(right));
        }
        return most;
    }

    /** The turning of the whole quilt that a route asks for, in full turns; none in free motion. */
    public double turns(Route route) {
        if (freeMotion) {
            return 0;
        }
        double sum = 0;
        for (Route.Run run : route.runs()) {
            Point last = null;
            for (Route.Pass pass : run.passes()) {
                Point in = pass.line().heading(0);
                sum += last == null ? 0 : Math.abs(Math.atan2(last.cross(in), last.dot(in)));
                for (int i = 0; i < 8; i++) {
                    Point u = pass.line().heading(i / 8.0);
                    Point v = pass.line().heading((i + 1) / 8.0);
                    sum += Math.abs(Math.atan2(u.cross(v), u.dot(v)));
                }
                last = pass.line().heading(1);
            }
        }
        return sum / (2 * Math.PI);
    }
}
