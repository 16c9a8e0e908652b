package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.calicograph.fabric.Print;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * How many pieces of one template lie on a strip of cloth: in rows, side by side, head to tail, each row moved aside from the last, whichever of
 * these takes least. Pieces keep half a line of the ruler between them, room for the pencil. A piece keeps its grain: it is turned about, or by a quarter, or not at all where
 * the print forbids it.
 */
public final class Nesting {

    private static final double ACCURACY = 0.002;
    /** The outlines are thinned out by less than this, a small part of the room between pieces. */
    private static final double THIN = 0.004;
    /** Rows are moved aside by so many parts of a step. */
    private static final int SHIFTS = 24;
    /** Rows that are let stand wider than they could sometimes let the next row in deeper. */
    private static final double[] WIDER = {1, 1.1, 1.2, 1.35, 1.5, 1.7, 2};
    /** Wider than the room between pieces. */
    private static final double PENCIL = 0.5;
    /** More rows are hard to keep straight. */
    private static final int MOST_ROWS = 12;
    /** A yard of cloth, which a table still holds. */
    private static final double WIDEST = 40;
    /** What a further row must save to be worth it, as a share. */
    private static final double ROW = 0.01;

    /** What becomes of the end of a strip that is not full: which of them is right depends on what else is cut from the cloth. */
    public enum Ends {
        /** No strips: every piece has a rectangle of its own. */
        APART(0),
        /** Other pieces are cut from it. */
        USED(0),
        /** Half of it is used. */
        HALF(0.5),
        /** It is left over. */
        LOST(1);

        private final double lost;

        Ends(double lost) {
            this.lost = lost;
        }
    }

    private final Region cut;
    private final Print.Direction way;
    private final Length step;
    private final Ends ends;
    private final Beds beds;

    /** What is found once for a shape, and read by all that differ only in what becomes of the ends. */
    private static final class Beds {
        private List<Bed> found = List.of();
    }

    private Nesting(Region cut, Print.Direction way, Length step, Ends ends, Beds beds) {
        this.beds = beds;
        this.ends = ends;
        this.cut = cut;
        this.way = way;
        this.step = step;
    }

    /** Of a cutting line, on cloth that may be turned, by the lines of the rules' ruler. */
    static Nesting of(Region cut, CuttingRules rules) {
        Box box = cut.bounds();
        return new Nesting(cut.transformed(Transform.move(-box.left(), -box.top())), Print.Direction.ANY, rules.rulerStep(), Ends.HALF, new Beds());
    }

    /** The same on cloth whose print runs so. */
    Nesting running(Print.Direction other) {
        return new Nesting(cut, other, step, ends, new Beds());
    }

    /** The same where the ends of strips are used so. */
    Nesting ending(Ends other) {
        return new Nesting(cut, way, step, other, beds);
    }

    /** The rectangle round one piece as it stands. */
    CutMethod.Run one() {
        Box box = cut.bounds();
        return new CutMethod.Run(Length.inches(box.width()).roundedUpTo(step), Length.inches(box.height()).roundedUpTo(step), 1);
    }

    /** Rectangles for so many pieces, none wider than the cloth where a piece itself is not. */
    List<CutMethod.Run> runs(int wanted, Length width) {
        List<CutMethod.Run> runs = new ArrayList<>();
        laid(wanted, width).forEach((run, laying) -> runs.addAll(Collections.nCopies(laying.times(), run)));
        return List.copyOf(runs);
    }

    /** The outlines of the pieces on one of these rectangles, from its left end in its own coordinates; none for a single piece. */
    List<Path> outlines(CutMethod.Run run, int wanted, Length width) {
        Laying laying = laid(wanted, width).get(run);
        if (laying == null || laying.rows() == 0) {
            return List.of();
        }
        List<Path> all = new ArrayList<>();
        for (int row = 0; row < laying.rows(); row++) {
            for (int i = 0; i < laying.bed().row(row, run.across().inInches()) && all.size() < run.pieces(); i++) {
                Bed.Lying lying = laying.bed().piece(row, i);
                all.add(Path.polygon(ring(laying.bed().quarter(), lying.about())).transformed(Transform.move(lying.at())));
            }
        }
        return List.copyOf(all);
    }

    /** How pieces lie on strips, in words; empty where each has a rectangle of its own. */
    String words(int wanted, Length width) {
        Laying laying = laid(wanted, width).values().iterator().next();
        if (laying.rows() == 0) {
            return "";
        }
        return " Trace it along the strip as drawn" + (laying.bed().turns() ? ", every second one turned about" : "") + (laying.rows() == 1 ? "." : ", in " + laying.rows() + " rows.");
    }

    /** @param rows 0 where each piece has a rectangle of its own */
    private record Laying(Bed bed, int rows, int times) { }

    /** Whole strips first, then what is left over. */
    private Map<CutMethod.Run, Laying> laid(int wanted, Length width) {
        Map<CutMethod.Run, Laying> out = new LinkedHashMap<>();
        double best = single(wanted, width, out);
        if (wanted > 1 && ends != Ends.APART) {
            beds.found = beds.found.isEmpty() ? found() : beds.found;
            for (Bed bed : beds.found) {
                for (int rows = 1; rows <= MOST_ROWS && (rows == 1 || bed.along(rows, step).inInches() <= WIDEST); rows++) {
                    best = filled(bed, rows, wanted, width, best, out);
                }
            }
        }
        return out;
    }

    /** Every piece in a rectangle of its own, side by side; a piece that is wider than the cloth takes its area. */
    private double single(int wanted, Length width, Map<CutMethod.Run, Laying> out) {
        CutMethod.Run one = one();
        out.put(one, new Laying(null, 0, wanted));
        double least = Double.POSITIVE_INFINITY;
        for (boolean turned : way == Print.Direction.ANY ? new boolean[] {false, true} : new boolean[] {false}) {
            Length across = turned ? one.along() : one.across();
            Length along = turned ? one.across() : one.along();
            long per = width.units() / across.units();
            if (per > 0) {
                long left = wanted % per;
                least = Math.min(least, (wanted / per * width.inInches() + (left == 0 ? 0 : taken(across.inInches() * left, width))) * along.inInches());
            }
        }
        return least;
    }

    /** Takes the bed if it takes less than the best so far, rows counted in. */
    private double filled(Bed bed, int rows, int wanted, Length width, double best, Map<CutMethod.Run, Laying> out) {
        int full = bed.holds(rows, width.inInches());
        if (full == 0) {
            return best;
        }
        Length along = bed.along(rows, step);
        int times = wanted / full;
        int left = wanted % full;
        double dearer = 1 + ROW * (rows - 1);
        double cost = times * width.inInches() * along.inInches();
        if (cost * dearer >= best) {
            return best;
        }
        int fewRows = rows;
        int columns = 0;
        if (left > 0) {
            double least = Double.POSITIVE_INFINITY;
            for (int r = 1; r <= rows; r++) {
                int c = columns(bed, r, left);
                Length across = bed.across(r, c, step);
                double area = taken(across.inInches(), width) * bed.along(r, step).inInches();
                if (across.compareTo(width) <= 0 && area < least) {
                    least = area;
                    fewRows = r;
                    columns = c;
                }
            }
            cost += least;
        }
        if (cost * dearer >= best - 1e-9) {
            return best;
        }
        out.clear();
        if (times > 0) {
            // All of the strip that pieces reach, which may be less than the cloth's width.
            double end = 0;
            for (int r = 0; r < rows; r++) {
                int n = bed.row(r, width.inInches());
                end = n == 0 ? end : Math.max(end, bed.piece(r, n - 1).at().x() + bed.width());
            }
            Length across = Length.min(width, Length.inches(end - 1e-9).roundedUpTo(step));
            out.put(new CutMethod.Run(across, along, full), new Laying(bed, rows, times));
        }
        if (left > 0) {
            out.put(new CutMethod.Run(bed.across(fewRows, columns, step), bed.along(fewRows, step), left), new Laying(bed, fewRows, 1));
        }
        return cost * dearer;
    }

    /** The width that a strip takes which is not full: other pieces use perhaps half of the rest. */
    private double taken(double across, Length width) {
        return across + (width.inInches() - across) * ends.lost;
    }

    private static int columns(Bed bed, int rows, int pieces) {
        int columns = 1;
        while (rows * columns < pieces) {
            columns++;
        }
        return columns;
    }

    // ---- how rows fit into each other

    private List<Bed> found() {
        List<Bed> all = new ArrayList<>();
        for (boolean quarter : way == Print.Direction.ANY ? new boolean[] {false, true} : new boolean[] {false}) {
            for (boolean turns : way == Print.Direction.ONE_WAY ? new boolean[] {false} : new boolean[] {false, true}) {
                rows(quarter, turns, all);
            }
        }
        return List.copyOf(all);
    }

    private void rows(boolean quarter, boolean turns, List<Bed> into) {
        Sides[] beside = new Sides[2];
        Sides[] below = new Sides[2];
        for (int i = 0; i < 2; i++) {
            List<Point> lying = grown(ring(quarter, turns && i == 1), step.inInches() / 4);
            beside[i] = Sides.of(lying);
            below[i] = Sides.of(lying.stream().map(p -> new Point(p.y(), p.x())).toList());
        }
        Box whole = cut.bounds();
        double width = quarter ? whole.height() : whole.width();
        double height = quarter ? whole.width() : whole.height();
        double step = beside[0].clears(beside[1], 0);
        double back = beside[1].clears(beside[0], 0);
        for (double wider : WIDER) {
            for (boolean begun : turns ? new boolean[] {false, true} : new boolean[] {false}) {
                best(new Bed(quarter, turns, width, height, step * wider, back * wider, 0, false, begun, 0, 0), below, into);
            }
            best(new Bed(quarter, turns, width, height, step * wider, back * wider, 0, true, false, 0, 0), below, into);
        }
    }

    /** The bed with its rows moved aside as far as lets them lie closest. */
    private static void best(Bed loose, Sides[] below, List<Bed> into) {
        Bed best = null;
        for (int k = 0; k < SHIFTS; k++) {
            Bed bed = loose.aside((loose.turns() ? loose.step() + loose.back() : loose.step()) * k / SHIFTS);
            double down = below(bed, below, 0, 1);
            double on = down;
            if (loose.slant()) {
                for (int row = 2; row * down < loose.height(); row++) {
                    down = Math.max(down, below(bed, below, 0, row) / row);
                }
                on = down;
            } else {
                double apart = Math.max(below(bed, below, 0, 2), below(bed, below, 1, 3));
                on = Math.max(below(bed, below, 1, 2), apart - down);
            }
            bed = bed.apart(down, on);
            best = best == null || bed.each() < best.each() - 1e-9 ? bed : best;
        }
        into.add(best);
    }

    /** How far a row must lie below another, pieces touching. */
    private static double below(Bed bed, Sides[] below, int above, int row) {
        double most = 0;
        int many = 4 + 2 * (int) Math.ceil(bed.width() / (bed.step() + bed.back()));
        // A pair of pieces of the lower row among enough of the upper one.
        for (int j = 0; j < 2; j++) {
            Bed.Lying lower = bed.piece(row, many + many % 2 + j);
            for (int i = 0; i <= 2 * many + 3; i++) {
                Bed.Lying upper = bed.piece(above, i);
                if (Math.abs(lower.at().x() - upper.at().x()) > bed.width() + PENCIL) {
                    continue;
                }
                most = Math.max(most, below[upper.about() ? 1 : 0].clears(below[lower.about() ? 1 : 0], lower.at().x() - upper.at().x()));
            }
        }
        return most;
    }

    /** The outline with half the room for the pencil round it, so that outlines that touch keep all of it between the pieces. */
    private static List<Point> grown(List<Point> ring, double by) {
        return open(Polygons.of(Region.of(Path.polygon(ring)), ACCURACY).buffer(by, 2));
    }

    private static List<Point> open(Geometry polygon) {
        Coordinate[] closed = ((Polygon) polygon).getExteriorRing().getCoordinates();
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i + 1 < closed.length; i++) {
            ring.add(new Point(closed[i].x, closed[i].y));
        }
        return ring;
    }

    /** The outline as it lies, its box at the origin. */
    private List<Point> ring(boolean quarter, boolean about) {
        Transform turn = Transform.turn(Angle.degrees((quarter ? 90 : 0) + (about ? 180 : 0)));
        Region lying = cut.transformed(turn);
        Box box = lying.bounds();
        return open(DouglasPeuckerSimplifier.simplify(Polygons.of(Region.of(lying.outer().transformed(Transform.move(-box.left(), -box.top()))), ACCURACY), THIN));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Nesting n && cut.equals(n.cut) && way == n.way && step.equals(n.step) && ends == n.ends;
    }

    @Override
    public int hashCode() {
        return Objects.hash(cut, way, step, ends);
    }

    @Override
    public String toString() {
        return "nesting of " + one().across() + " x " + one().along();
    }
}
