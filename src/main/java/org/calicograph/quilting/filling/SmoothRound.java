package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/**
 * A round of the {@link Contour}, smoothed. No point moves by half its distance from the walls, or from
 * the ways, which is the same there; so a smoothed round meets neither them nor another.
 *
 * @param points about a grid step apart, the first not repeated
 */
public record SmoothRound(List<Point> points) {

    private static final int TIMES = 6;
    private static final double MOST = 0.45;

    static SmoothRound of(List<Contour.Vertex> round, double pitch) {
        List<Contour.Vertex> even = even(round, pitch);
        int n = even.size();
        double[] x = even.stream().mapToDouble(v -> v.at().x()).toArray();
        double[] y = even.stream().mapToDouble(v -> v.at().y()).toArray();
        for (int time = 0; time < TIMES; time++) {
            double[] px = x.clone();
            double[] py = y.clone();
            for (int i = 0; i < n; i++) {
                int before = (i + n - 1) % n;
                int after = (i + 1) % n;
                Point from = even.get(i).at();
                Point to = Point.of((px[before] + 2 * px[i] + px[after]) / 4, (py[before] + 2 * py[i] + py[after]) / 4);
                double moved = to.distance(from);
                double most = MOST * even.get(i).room();
                Point held = moved <= most ? to : from.towards(to, most / moved);
                x[i] = held.x();
                y[i] = held.y();
            }
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            points.add(Point.of(x[i], y[i]));
        }
        return new SmoothRound(points);
    }

    /** Through every third point, without a bend. */
    public Path path() {
        int n = points.size();
        int knots = Math.max(4, (int) Math.round(n / 3.0));
        List<Point> through = new ArrayList<>();
        List<Point> headings = new ArrayList<>();
        for (int k = 0; k < knots; k++) {
            int i = (int) ((long) k * n / knots);
            through.add(points.get(i));
            headings.add(points.get((i + 1) % n).minus(points.get((i + n - 1) % n)).unit());
        }
        return Biarcs.closed(through, headings);
    }

    /** Vertices a pitch apart, at least 16. */
    private static List<Contour.Vertex> even(List<Contour.Vertex> round, double pitch) {
        int n = round.size();
        double[] begins = new double[n + 1];
        for (int i = 0; i < n; i++) {
            begins[i + 1] = begins[i] + round.get(i).at().distance(round.get((i + 1) % n).at());
        }
        int count = Math.max(16, (int) Math.round(begins[n] / pitch));
        List<Contour.Vertex> even = new ArrayList<>();
        int i = 0;
        for (int k = 0; k < count; k++) {
            double d = begins[n] * k / count;
            while (begins[i + 1] <= d) {
                i++;
            }
            double share = (d - begins[i]) / (begins[i + 1] - begins[i]);
            Contour.Vertex a = round.get(i);
            Contour.Vertex b = round.get((i + 1) % n);
            even.add(new Contour.Vertex(a.at().towards(b.at(), share), a.room() + (b.room() - a.room()) * share));
        }
        return even;
    }
}
