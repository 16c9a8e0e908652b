package org.calicograph.piecing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.calicograph.colour.Colour;
import org.calicograph.covering.DesignException;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Bias strips laid along lines so that they go over and under each other by turns, each cut where it goes under.
 *
 * @param lines  the middle lines of the strips, open or closed; they may cross themselves and each other, two at a place
 * @param width  the finished width of a strip
 * @param passes every place where a strip crosses, line by line in the order along it
 * @param pieces the strips to cut: each runs from one place where it goes under to the next, over all between
 */
public record Interlacing(List<Path> lines, Length width, List<Pass> passes, List<Piece> pieces) implements Drawable {

    private static final double ACCURACY = 1e-3;
    /** What is tucked under at either end of a piece (common practice: 1/4 in beyond the strip above). */
    private static final Length TUCK = Length.inches(1, 4);

    /**
     * A place where a strip crosses.
     *
     * @param line     counted from 0
     * @param along    inches from the line's beginning
     * @param crossing counted from 0; two passes have the same
     */
    public record Pass(int line, double along, int crossing, Point at, boolean over) { }

    /**
     * A strip to cut.
     *
     * @param along  its middle line, from place to place
     * @param closed true if it goes under nowhere, so that its ends are joined
     * @param length to cut, with what is tucked under at both ends
     */
    public record Piece(int line, Path along, boolean closed, Length length) { }

    /** A stretch of a flattened line. */
    private record Stretch(int line, int index, Point from, Point to, double along) {
        Envelope envelope() {
            return new Envelope(from.x(), to.x(), from.y(), to.y());
        }
    }

    public Interlacing {
        lines = List.copyOf(lines);
        passes = List.copyOf(passes);
        pieces = List.copyOf(pieces);
    }

    /**
     * Strips along lines.
     *
     * @throws DesignException if the lines can't go over and under by turns, three meet at one place, or two crossings are so near that a
     *     strip would lie over and under at once; it names the place
     */
    public static Interlacing of(Length width, List<Path> lines) {
        if (!width.isPositive()) {
            throw new DesignException("strips " + width + " wide can't be laid; use a width above 0");
        }
        List<Pass> found = crossings(lines, width.inInches());
        boolean[] over = byTurns(found);
        List<Pass> passes = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Pass p = found.get(i);
            passes.add(new Pass(p.line(), p.along(), p.crossing(), p.at(), over[i]));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            int own = line;
            pieces.addAll(pieces(own, lines.get(line), passes.stream().filter(p -> p.line() == own && !p.over()).mapToDouble(Pass::along).toArray(), width));
        }
        return new Interlacing(lines, width, passes, pieces);
    }

    /** Every crossing, as two passes, sorted along each line. */
    private static List<Pass> crossings(List<Path> lines, double width) {
        List<Stretch> all = new ArrayList<>();
        int[] counts = new int[lines.size()];
        for (int l = 0; l < lines.size(); l++) {
            List<Point> points = lines.get(l).flattened(ACCURACY);
            double along = 0;
            for (int i = 1; i < points.size(); i++) {
                all.add(new Stretch(l, i - 1, points.get(i - 1), points.get(i), along));
                along += points.get(i - 1).distance(points.get(i));
            }
            counts[l] = points.size() - 1;
        }
        STRtree index = new STRtree();
        all.forEach(s -> index.insert(s.envelope(), s));
        List<Pass> passes = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        for (Stretch a : all) {
            for (Object o : index.query(a.envelope())) {
                Stretch b = (Stretch) o;
                boolean later = b.line() > a.line() || b.line() == a.line() && b.index() > a.index() + 1
                        && !(a.index() == 0 && b.index() == counts[b.line()] - 1 && lines.get(b.line()).isClosed());
                if (!later) {
                    continue;
                }
                Point u = a.to().minus(a.from());
                Point v = b.to().minus(b.from());
                double turn = u.cross(v);
                if (Math.abs(turn) < 1e-12) {
                    continue;
                }
                double s = b.from().minus(a.from()).cross(v) / turn;
                double t = b.from().minus(a.from()).cross(u) / turn;
                // Half open, so that a crossing at the joint of two stretches counts once.
                if (s >= 0 && s < 1 && t >= 0 && t < 1) {
                    Point at = a.from().plus(u.times(s));
                    places.stream().filter(p -> p.distance(at) < width).findFirst().ifPresent(p -> {
                        throw new DesignException("strips " + Length.inches(width) + " wide cross at " + place(p) + " and again at " + place(at)
                                + ", too near to go over and under; make the strips narrower, or move a line");
                    });
                    passes.add(new Pass(a.line(), a.along() + s * u.norm(), places.size(), at, false));
                    passes.add(new Pass(b.line(), b.along() + t * v.norm(), places.size(), at, false));
                    places.add(at);
                }
            }
        }
        passes.sort(Comparator.comparingInt(Pass::line).thenComparingDouble(Pass::along));
        return passes;
    }

    /** Over and under by turns along every line, and one of each at every crossing. */
    private static boolean[] byTurns(List<Pass> passes) {
        int n = passes.size();
        int[] state = new int[n];
        int[] mate = new int[n];
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (passes.get(i).crossing() == passes.get(j).crossing()) {
                    mate[i] = j;
                    mate[j] = i;
                }
            }
        }
        for (int first = 0; first < n; first++) {
            if (state[first] != 0) {
                continue;
            }
            state[first] = 1;
            Deque<Integer> open = new ArrayDeque<>(List.of(first));
            while (!open.isEmpty()) {
                int i = open.poll();
                List<Integer> others = new ArrayList<>(List.of(mate[i]));
                if (i > 0 && passes.get(i - 1).line() == passes.get(i).line()) {
                    others.add(i - 1);
                }
                if (i + 1 < n && passes.get(i + 1).line() == passes.get(i).line()) {
                    others.add(i + 1);
                }
                for (int other : others) {
                    if (state[other] == state[i]) {
                        throw new DesignException("the strips can't go over and under by turns: about " + place(passes.get(other).at())
                                + " one would have to do both; close the lines, or move an end so that it crosses one more");
                    }
                    if (state[other] == 0) {
                        state[other] = -state[i];
                        open.add(other);
                    }
                }
            }
        }
        boolean[] over = new boolean[n];
        for (int i = 0; i < n; i++) {
            over[i] = state[i] > 0;
        }
        return over;
    }

    private static List<Piece> pieces(int line, Path path, double[] cuts, Length width) {
        double whole = path.length();
        Arrays.sort(cuts);
        List<Piece> pieces = new ArrayList<>();
        if (cuts.length == 0) {
            return List.of(new Piece(line, path, path.isClosed(), Length.inches(whole).plus(TUCK.times(2)).roundedUpTo(Length.inches(1, 8))));
        }
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.length; i++) {
            spans.add(new double[] {cuts[i], cuts[i + 1]});
        }
        if (path.isClosed()) {
            spans.add(new double[] {cuts[cuts.length - 1], whole + cuts[0]});
        } else {
            spans.add(0, new double[] {0, cuts[0]});
            spans.add(new double[] {cuts[cuts.length - 1], whole});
        }
        for (double[] span : spans) {
            if (span[1] - span[0] > width.inInches() / 2) {
                Length cut = Length.inches(span[1] - span[0]).plus(width).plus(TUCK.times(2)).roundedUpTo(Length.inches(1, 8));
                pieces.add(new Piece(line, between(path, span[0], span[1]), false, cut));
            }
        }
        return pieces;
    }

    /** A part of a line as a polyline within a thousandth of an inch; past the end of a closed line it goes on at the beginning. */
    private static Path between(Path path, double from, double to) {
        List<Point> points = path.flattened(ACCURACY);
        if (to > path.length() + 1e-9) {
            points = new ArrayList<>(points);
            points.addAll(path.flattened(ACCURACY).subList(1, path.flattened(ACCURACY).size()));
        }
        List<Point> part = new ArrayList<>();
        double along = 0;
        for (int i = 1; i < points.size(); i++) {
            double step = points.get(i - 1).distance(points.get(i));
            double a = Math.max(from, along);
            double b = Math.min(to, along + step);
            if (a < b - 1e-12) {
                if (part.isEmpty()) {
                    part.add(points.get(i - 1).towards(points.get(i), (a - along) / step));
                }
                part.add(points.get(i - 1).towards(points.get(i), (b - along) / step));
            }
            along += step;
        }
        return Path.through(part);
    }

    private static String place(Point p) {
        return String.format(Locale.ROOT, "(%.2f, %.2f)", p.x(), p.y());
    }

    /** The strips as they lie. */
    public Picture picture() {
        return picture(Colour.hex("#7fa3c2"));
    }

    /** The strips as they lie, in a colour. */
    public Picture picture(Colour cloth) {
        double w = width.inInches();
        double edge = w / 9;
        Colour dark = cloth.shade(0.45);
        List<Picture> parts = new ArrayList<>();
        for (Path line : lines) {
            parts.add(new Picture.Shape(List.of(line), Paint.NONE, Pen.of(dark, w)));
        }
        for (Path line : lines) {
            parts.add(new Picture.Shape(List.of(line), Paint.NONE, Pen.of(cloth, w - 2 * edge)));
        }
        for (Pass pass : passes) {
            if (pass.over()) {
                Path line = lines.get(pass.line());
                double reach = 0.5 * w + edge;
                double from = pass.along() - reach;
                double to = pass.along() + reach;
                if (from < 0 && line.isClosed()) {
                    from += line.length();
                    to += line.length();
                }
                Path part = between(line, Math.max(0, from), line.isClosed() ? to : Math.min(line.length(), to));
                // Cut off square at its ends, so that only the strip above shows its edges.
                parts.add(new Picture.Shape(Region.of(band(part, w / 2)).paths(), Paint.of(dark), Pen.NONE));
                parts.add(new Picture.Shape(Region.of(band(part, w / 2 - edge)).paths(), Paint.of(cloth), Pen.NONE));
            }
        }
        return Picture.group(parts);
    }

    /** A strip's outline, its ends square. */
    private static Path band(Path middle, double half) {
        List<Point> points = middle.flattened(ACCURACY);
        List<Point> left = new ArrayList<>();
        List<Point> right = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point along = points.get(Math.min(points.size() - 1, i + 1)).minus(points.get(Math.max(0, i - 1)));
            Point out = along.times(half / along.norm()).quarterTurned();
            left.add(points.get(i).plus(out));
            right.add(0, points.get(i).minus(out));
        }
        left.addAll(right);
        return Path.polygon(left);
    }

    /** What to cut: for each line its pieces in order, with what is tucked under. */
    public Table table() {
        Table table = Table.of("Bias strips, " + width + " wide finished", "line", "piece", "cut so long", "ends");
        int number = 0;
        int before = -1;
        for (Piece p : pieces) {
            number = p.line() == before ? number + 1 : 1;
            before = p.line();
            table = table.row(p.line() + 1, number, p.length(), p.closed() ? "joined to a ring" : "tucked under");
        }
        return table;
    }

    /** All the pieces together, to be cut from bias. */
    public Length bias() {
        return pieces.stream().map(Piece::length).reduce(Length.ZERO, Length::plus);
    }

    @Override
    public Exhibit show() {
        int crossings = passes.size() / 2;
        String words = crossings + (crossings == 1 ? " crossing, " : " crossings, ") + pieces.size() + (pieces.size() == 1 ? " strip" : " strips") + ", " + bias() + " of bias in all. "
                + "Lay them in any order, tuck every end under the strip that goes over it, then sew both edges down; mind the hot iron as you press the strips, and the needle.";
        return Exhibit.several(Exhibit.of(picture(), words), Exhibit.of(table()));
    }
}
