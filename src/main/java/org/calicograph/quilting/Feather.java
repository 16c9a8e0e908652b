package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Length;

/**
 * Feathers, drawn as on paper: round tips are stepped off along an edge beside the spine, all alike as they are seen there,
 * and from every valley between two tips a line flows down to the spine. A whole number fits on each side. Valleys and feet
 * keep their order along the spine and every line falls in the same way, so that no two cross wherever the spine bends
 * no tighter than the lobes are high.
 *
 * <p>In a border the lobes lean from the middle of each side towards the corners, mirrored at both: at the middle they part
 * about an upright one, and round the corner they stand as a fan with one lobe on the diagonal. Along an open spine they grow lower and
 * narrower towards both ends, and a plume closes the tip.
 *
 * @param height of a lobe, from the spine to its tip
 * @param width  of a lobe at its tip, about: it is stretched until a whole number fits
 * @param vein   between the two lines of a double spine; 0 for one line
 */
public record Feather(Length height, Length width, Length vein) {

    private static final double LOWEST = 0.42;
    /** How far a lobe leans forward, of its height. */
    private static final double LEAN = 0.62;
    /** Over how much of the spine the lean comes and goes where the feather is mirrored, of the lean; above 1.5, so that feet keep their order. */
    private static final double RAMP = 2.4;
    /** A quarter of a circle as a cubic: how far its handles reach, of the radius. */
    private static final double ROUND = 0.5523;
    /** Pieces of a rib. */
    private static final int PIECES = 6;

    /** @throws IllegalArgumentException if the lobes have no rounded top, or no room beside a double spine */
    public Feather {
        if (!width.isPositive() || height.compareTo(width) < 0) {
            throw new IllegalArgumentException("a feather lobe " + height + " high and " + width
                    + " wide has no rounded top; make it at least as high as it is wide");
        }
        if (vein.units() < 0 || vein.half().compareTo(height.minus(width.half()).half()) > 0) {
            throw new IllegalArgumentException("a double spine with " + vein + " between its lines leaves no room for lobes " + height + " high; bring the lines nearer, to "
                    + height.dividedBy(6) + " or less");
        }
    }

    /** A feather with a single spine. */
    public Feather(Length height, Length width) {
        this(height, width, Length.ZERO);
    }

    /** The same with a double spine, its two lines so far apart. */
    public Feather doubled(Length between) {
        return new Feather(height, width, between);
    }

    /**
     * Along any smooth curve, both sides and the spine itself; a closed one all the way round.
     *
     * @throws IllegalArgumentException if it bends tighter than the lobes are high
     */
    public List<Path> along(Spine spine) {
        List<Path> paths = new ArrayList<>(spineLines(spine));
        for (int side = -1; side <= 1; side += 2) {
            requireReach(spine, side);
            double end = spine.length();
            if (spine.isClosed()) {
                Flank flank = new Flank(spine, side, 0, end, x -> 1, x -> LEAN * height.inInches());
                draw(flank, flank.evenly(), true, paths);
            } else {
                Flank flank = new Flank(spine, side, 0, end, x -> taper(x, spine), x -> LEAN * height.inInches() * taper(x, spine) * ramp(x));
                List<Double> valleys = flank.evenly();
                draw(flank, valleys.subList(1, valleys.size()), false, paths);
                paths.add(flank.first(valleys.get(1)));
            }
        }
        if (!spine.isClosed()) {
            paths.add(plume(spine));
        }
        return List.copyOf(paths);
    }

    /** A round wreath. Radius of the spine. */
    public List<Path> wreath(Point centre, Length radius) {
        return along(Spine.along(Path.circle(centre, radius.inInches())));
    }

    /**
     * In a border that runs round a box; the spine runs down its middle and turns every corner. Each side is mirrored at its
     * middle, and each corner at its diagonal.
     */
    public List<Path> inBorder(Box outer, Length borderWidth) {
        double w = borderWidth.inInches();
        double h = height.inInches();
        // At the border's inner corner the lobes, turning about the centre of the bend, must clear the corner.
        double widest = (w / Math.sqrt(2) - h) / (Math.sqrt(2) - 1);
        double radius = Math.min(Math.min(widest, Math.max(1.6 * h, 0.75 * w)), Math.min(outer.width(), outer.height()) / 2 - w / 2);
        if (radius < 1.15 * h) {
            throw new IllegalArgumentException("a feather with lobes " + height + " high can't turn the corner of a border " + borderWidth
                    + " wide; make its lobes at most " + borderWidth.times(0.47).roundedTo(Length.inches(1, 16)) + " high");
        }
        Spine spine = Spine.around(outer.grownBy(-w / 2), radius);
        double bend = Math.PI / 2 * radius;
        double across = outer.width() - w - 2 * radius;
        double down = outer.height() - w - 2 * radius;
        List<Path> paths = new ArrayList<>(spineLines(spine));
        double begin = 0;
        for (double straight : new double[] {across, down, across, down}) {
            double middle = begin + straight / 2;
            double corner = begin + straight + bend / 2;
            double next = begin + straight + bend + (straight == across ? down : across) / 2;
            for (int side = -1; side <= 1; side += 2) {
                double lean = LEAN * h;
                Flank there = new Flank(spine, side, middle, corner, x -> 1, x -> lean * smooth(Math.min(x - middle, corner - x) / (RAMP * lean)));
                Flank back = new Flank(spine, side, corner, next, x -> 1, x -> -lean * smooth(Math.min(x - corner, next - x) / (RAMP * lean)));
                List<Double> going = there.between();
                List<Double> coming = back.between();
                draw(there, going, false, paths);
                draw(back, coming, false, paths);
                // The lobes on the diagonal and at the middle of the next side lie between the two runs.
                double last = going.get(going.size() - 1);
                paths.add(there.cap(last, coming.get(0), 0));
                double over = coming.get(coming.size() - 1);
                paths.add(there.cap(over, 2 * next - over, 0));
            }
            begin += straight + bend;
        }
        return List.copyOf(paths);
    }

    private List<Path> spineLines(Spine spine) {
        if (vein.isZero()) {
            return List.of(spine.path());
        }
        double half = vein.inInches() / 2;
        return List.of(spine.beside(half), spine.beside(-half));
    }

    private void requireReach(Spine spine, int side) {
        double reach = spine.reach(side > 0);
        if (reach < height.inInches()) {
            throw new IllegalArgumentException("the spine bends with a radius of " + Length.inches(reach).roundedTo(Length.inches(1, 16))
                    + " but the feather's lobes are " + height + " high on that side; make them lower or the bend wider");
        }
    }

    /** The ribs at every valley, and the caps between them. On a closed flank the last is the first again. */
    private static void draw(Flank flank, List<Double> valleys, boolean closed, List<Path> paths) {
        for (int i = 0; i < valleys.size(); i++) {
            if (!closed || i < valleys.size() - 1) {
                paths.add(flank.rib(valleys.get(i)));
            }
            if (i > 0) {
                paths.add(flank.cap(valleys.get(i - 1), valleys.get(i), flank.lean().applyAsDouble(valleys.get(i))));
            }
        }
    }

    /** Lobes grow lower towards both ends of an open spine. */
    private double taper(double x, Spine spine) {
        double run = Math.min(3 * height.inInches(), spine.length() / 3);
        double near = Math.min(x, spine.length() - x);
        return near >= run ? 1 : LOWEST + (1 - LOWEST) * Math.sin(Math.PI / 2 * Math.max(0, near) / run);
    }

    /** The lean begins with nothing at the foot of an open spine. */
    private double ramp(double x) {
        return smooth(x / (RAMP * LEAN * height.inInches()));
    }

    private static double smooth(double x) {
        double t = Math.max(0, Math.min(1, x));
        return t * t * (3 - 2 * t);
    }

    /** One side of a stretch of spine, with this feather's height. */
    private final class Flank {
        private static final int STEPS = 1200;
        private final Spine spine;
        private final int side;
        private final double from;
        private final double to;
        private final java.util.function.DoubleUnaryOperator tall;
        private final java.util.function.DoubleUnaryOperator lean;
        /** How many lobes there are from the beginning up to each step, were they just as wide as asked. */
        private final double[] lobes = new double[STEPS + 1];

        Flank(Spine spine, int side, double from, double to, java.util.function.DoubleUnaryOperator tall, java.util.function.DoubleUnaryOperator lean) {
            this.spine = spine;
            this.side = side;
            this.from = from;
            this.to = to;
            this.tall = tall;
            this.lean = lean;
            double step = (to - from) / STEPS;
            for (int i = 0; i < STEPS; i++) {
                double x = from + (i + 0.5) * step;
                lobes[i + 1] = lobes[i] + step * stretched(x) / (tall.applyAsDouble(x) * width.inInches());
            }
        }

        java.util.function.DoubleUnaryOperator lean() {
            return lean;
        }

        /** How much longer the edge is than the spine there. */
        private double stretched(double x) {
            return Math.max(0.05, 1 - side * edge(x) * spine.curvatureAt(x));
        }

        /** How far the edge lies from the spine: the height less a round tip. */
        private double edge(double x) {
            return (height.inInches() - width.inInches() / 2) * tall.applyAsDouble(x);
        }

        /** Valleys from the beginning to the end, with a whole number of lobes between. */
        List<Double> evenly() {
            return placed(0);
        }

        /** Valleys with half a lobe before the first and after the last: the other halves are those of the mirror image. */
        List<Double> between() {
            return placed(0.5);
        }

        private List<Double> placed(double before) {
            double all = lobes[STEPS];
            int count = (int) Math.max(1, Math.round(all - 2 * before));
            double each = all / (count + 2 * before);
            List<Double> valleys = new ArrayList<>();
            for (int i = 0; i <= count; i++) {
                valleys.add(where((before + i) * each));
            }
            return valleys;
        }

        private double where(double count) {
            int low = 0;
            int high = STEPS;
            while (high - low > 1) {
                int mid = (low + high) >>> 1;
                if (lobes[mid] <= count) {
                    low = mid;
                } else {
                    high = mid;
                }
            }
            double share = Math.min(1, (count - lobes[low]) / Math.max(1e-12, lobes[high] - lobes[low]));
            return from + (low + Math.max(0, share)) * (to - from) / STEPS;
        }

        /** Away from the spine there. */
        private Point out(double x) {
            return spine.heading(x).quarterTurned().times(side);
        }

        /**
         * From the spine, which it leaves in the way it leans, to a valley, which it meets upright. It is drawn beside a level
         * line and laid beside the spine point by point, so that it keeps its place between its neighbours.
         */
        Path rib(double valley) {
            double leaning = lean.applyAsDouble(valley);
            double foot = valley - leaning;
            double base = vein.inInches() / 2;
            double rise = edge(valley) - base;
            Cubic level = new Cubic(Point.of(foot, side * base), Point.of(foot + 0.5 * leaning, side * (base + 0.16 * rise)),
                    Point.of(valley, side * (base + 0.52 * rise)), Point.of(valley, side * edge(valley)));
            List<Point> points = new ArrayList<>();
            for (int i = 0; i <= PIECES; i++) {
                Point at = level.at((double) i / PIECES);
                points.add(spine.at(at.x(), at.y()));
            }
            return through(points);
        }

        /** The first lobe of an open spine: from its very beginning round to a valley. */
        Path first(double valley) {
            Point low = spine.at(0, side * vein.inInches() / 2);
            Point high = spine.at(valley, side * edge(valley));
            double tall = edge(valley);
            return Path.from(low).curveTo(low.plus(out(0).times(0.9 * tall)).minus(spine.heading(0).times(0.1 * tall)), high.plus(out(valley).times(0.45 * tall)).minus(spine.heading(valley).times(0.3 * valley)), high).open();
        }

        /** A round tip from valley to valley, half as high as it is wide but no higher than the feather, a little forward; it stays between the two uprights. */
        Path cap(double one, double other, double leaning) {
            Point left = spine.at(one, side * edge(one));
            Point right = spine.at(other, side * edge(other));
            Point along = right.minus(left).unit();
            double half = left.distance(right) / 2;
            double high = Math.min(half, height.inInches() - left.midway(right).distance(spine.at((one + other) / 2, 0)));
            double forward = 0.14 * half * Math.signum(leaning);
            Point top = left.midway(right).plus(along.quarterTurned().times(side * high)).plus(along.times(forward));
            return Path.from(left).curveTo(left.plus(out(one).times(ROUND * high)).plus(along.times(0.05 * high)), top.minus(along.times(ROUND * (half + forward))), top)
                    .curveTo(top.plus(along.times(ROUND * (half - forward))), right.plus(out(other).times(ROUND * high)).minus(along.times(0.05 * high)), right).open();
        }
    }

    /** A smooth line through points, at each of them as steep as from the one before to the one after. */
    private static Path through(List<Point> points) {
        int n = points.size() - 1;
        List<Segment> parts = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point from = points.get(i);
            Point to = points.get(i + 1);
            Point leaving = i == 0 ? to.minus(from).times(1.5).minus(points.get(2).minus(from).times(0.25)) : to.minus(points.get(i - 1)).times(0.5);
            Point arriving = i == n - 1 ? to.minus(from).times(1.5).minus(to.minus(points.get(n - 2)).times(0.25)) : points.get(i + 2).minus(from).times(0.5);
            parts.add(new Cubic(from, from.plus(leaving.times(1 / 3.0)), to.minus(arriving.times(1 / 3.0)), to));
        }
        return new Path(parts);
    }

    /** The end of an open spine: a plume round its tip that joins the two last valleys. */
    private Path plume(Spine spine) {
        double end = spine.length();
        double edge = (height.inInches() - width.inInches() / 2) * taper(end, spine);
        double tip = end + 1.5 * edge;
        return spine.bent(Path.from(end, edge).curveTo(Point.of(end + 0.15 * edge, 1.35 * edge), Point.of(tip, 1.1 * edge), Point.of(tip, 0))
                .curveTo(Point.of(tip, -1.1 * edge), Point.of(end + 0.15 * edge, -1.35 * edge), Point.of(end, -edge)).open());
    }
}
