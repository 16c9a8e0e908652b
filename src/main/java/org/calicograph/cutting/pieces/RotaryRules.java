package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;

/** The trade's shapes and what a seam allowance adds to each, from geometry. */
public final class RotaryRules {

    private static final double NEAR = 1e-3;
    /** Common practice: the longest ruler in use; what is longer is folded, and needs no template. */
    private static final Length LONGEST_RULER = Length.inches(24);

    private RotaryRules() { }

    /** The square that gives two half-square triangles of a finished short side: plus seam times (2 + root 2). */
    public static Dimension halfSquare(Length leg, CuttingRules rules) {
        return Dimension.large("square", leg.plus(rules.seam().times(2 + Math.sqrt(2))), rules);
    }

    /** The square that gives four quarter-square triangles of a finished long side: plus seam times (2 + 2 root 2). */
    public static Dimension quarterSquare(Length base, CuttingRules rules) {
        return Dimension.large("square", base.plus(rules.seam().times(2 + 2 * Math.sqrt(2))), rules);
    }

    /** The side setting square of an on-point setting: its quarters have the block's diagonal as long side. */
    public static Dimension sideSetting(Length block, CuttingRules rules) {
        return quarterSquare(block.times(Math.sqrt(2)), rules);
    }

    /** The corner setting square of an on-point setting: its halves have half the block's diagonal as short side. */
    public static Dimension cornerSetting(Length block, CuttingRules rules) {
        return halfSquare(block.times(Math.sqrt(0.5)), rules);
    }

    /** A side that is sewn as it is cut: finished plus two seams. */
    public static Dimension side(String name, Length finished, CuttingRules rules) {
        return Dimension.exactly(name, finished.plus(rules.seam().times(2)), rules);
    }

    /** The way to cut a finished shape whose straight grain runs along the axes. */
    public static CutMethod of(Region finished, CuttingRules rules) {
        Path outer = finished.outer().joined();
        if (!finished.isStraight() || !finished.holes().isEmpty()) {
            return template("curved shape", finished, "it has curved edges", rules);
        }
        List<Point> c = outer.corners();
        CutMethod method = switch (c.size()) {
            case 3 -> triangle(c, finished, rules);
            case 4 -> fourSided(c, finished, rules);
            case 6 -> hexagon(c, finished, rules);
            default -> template("shape of " + c.size() + " sides", finished, "no ruler cut gives its outline", rules);
        };
        for (Dimension d : method.dimensions()) {
            boolean trimmed = method instanceof CutMethod.Blanks b && (b.pieces() > 1 || isLong(b.across(), b.along()));
            if (!(method instanceof CutMethod.Template) && !trimmed && !d.isNear(rules)) {
                return template(method.shape(), finished, "no ruler line is near the " + d.name() + " of "
                        + rules.text(d.exact()), rules);
            }
        }
        return method;
    }

    private static CutMethod template(String shape, Region finished, String reason, CuttingRules rules) {
        return new CutMethod.Template(shape, List.of(), reason, nesting(finished, rules));
    }

    /** A piece as it stands, with its seam allowances, to be traced on strips. */
    static Nesting nesting(Region finished, CuttingRules rules) {
        return Nesting.of(CutOutline.of(finished, rules.seam()), rules);
    }

    private static CutMethod triangle(List<Point> c, Region finished, CuttingRules rules) {
        for (int i = 0; i < 3; i++) {
            Point corner = c.get(i);
            Point u = c.get((i + 1) % 3).minus(corner);
            Point v = c.get((i + 2) % 3).minus(corner);
            if (Math.abs(u.norm() - v.norm()) < NEAR && Math.abs(u.dot(v)) < NEAR * u.norm()) {
                if (onGrain(u)) {
                    Dimension d = halfSquare(Length.inches(u.norm()), rules);
                    return new CutMethod.Blanks("half-square triangle", List.of(d),
                            "Cut each square once corner to corner: two triangles, straight grain on the short sides.",
                            d.ruler(), d.ruler(), 2);
                }
                if (onGrain(u.minus(v))) {
                    Dimension d = quarterSquare(Length.inches(u.minus(v).norm()), rules);
                    return new CutMethod.Blanks("quarter-square triangle", List.of(d),
                            "Cut each square twice corner to corner: four triangles, straight grain on the long side.",
                            d.ruler(), d.ruler(), 4);
                }
            }
        }
        double a = c.get(0).distance(c.get(1));
        if (Math.abs(a - c.get(1).distance(c.get(2))) < NEAR && Math.abs(a - c.get(2).distance(c.get(0))) < NEAR) {
            double s = rules.seam().inInches();
            Dimension strip = Dimension.exactly("strip", Length.inches(a * Math.sqrt(3) / 2 + 3 * s), rules);
            Length side = Length.inches(a + 2 * Math.sqrt(3) * s);
            return new CutMethod.Strips("equilateral triangle", List.of(strip),
                    "Cut the strip at 60° one way and the other: triangles point up and down in turn.",
                    strip.ruler(), side, side.half(), side.half(), side.half().negated());
        }
        return template("triangle", finished, "its angles are not those of a ruler", rules);
    }

    private static boolean onGrain(Point u) {
        return Math.min(Math.abs(u.x()), Math.abs(u.y())) < NEAR;
    }

    private static CutMethod fourSided(List<Point> c, Region finished, CuttingRules rules) {
        Point a = c.get(1).minus(c.get(0));
        Point b = c.get(2).minus(c.get(1));
        Point d = c.get(3).minus(c.get(2));
        Point e = c.get(0).minus(c.get(3));
        boolean firstParallel = parallel(a, d);
        boolean secondParallel = parallel(b, e);
        if (firstParallel && secondParallel) {
            return Math.abs(a.unit().dot(b.unit())) < 1e-6 ? rectangle(a, b, finished, rules) : parallelogram(a, b, finished, rules);
        }
        if (firstParallel) {
            return trapezoid(a, d, b, e, finished, rules);
        }
        return secondParallel ? trapezoid(b, e, d, a, finished, rules) : template("four-sided shape", finished, "no two sides are parallel", rules);
    }

    private static boolean parallel(Point u, Point v) {
        return Math.abs(u.unit().cross(v.unit())) < 1e-5;
    }

    private static CutMethod rectangle(Point a, Point b, Region finished, CuttingRules rules) {
        boolean square = Math.abs(a.norm() - b.norm()) < NEAR;
        String shape = square ? "square" : "rectangle";
        boolean level = Math.abs(a.x()) > Math.abs(a.y());
        Dimension across = side(square ? "side" : "width", Length.inches((level ? a : b).norm()), rules);
        Dimension along = side("length", Length.inches((level ? b : a).norm()), rules);
        List<Dimension> sides = square ? List.of(across) : List.of(across, along);
        String how = square ? "Cut squares." : "Cut rectangles.";
        if (isLong(across.exact(), along.exact())) {
            List<Dimension> far = sides.stream().filter(d -> !d.isNear(rules)).toList();
            how += far.stream().map(d -> " No ruler line is near its " + (d.exact().compareTo(LONGEST_RULER) > 0 ? "length" : "width") + ": cut it large, sew it on, then trim it to "
                    + rules.text(d.exact().roundedTo(rules.isMetric() ? rules.fineStep() : rules.fineStep().half())) + ".").collect(java.util.stream.Collectors.joining());
            sides = sides.stream().map(d -> d.isNear(rules) ? d : Dimension.large(d.name(), d.exact(), rules)).toList();
        }
        return new CutMethod.Blanks(shape, sides, how, sides.get(0).ruler(), sides.get(sides.size() - 1).ruler(), 1);
    }

    /** Longer than any ruler: borders and sashes, which are trimmed once they are sewn on and not cut round a template. */
    private static boolean isLong(Length across, Length along) {
        return Length.max(across, along).compareTo(LONGEST_RULER) > 0;
    }

    private static CutMethod parallelogram(Point a, Point b, Region finished, CuttingRules rules) {
        boolean rhombus = Math.abs(a.norm() - b.norm()) < NEAR;
        // The strip runs along the edge on the grain; if neither lies on it, along the longer one.
        Point along = onGrain(a) || !onGrain(b) && a.norm() >= b.norm() ? a : b;
        Point slope = along == a ? b : a;
        double sin = Math.abs(along.unit().cross(slope.unit()));
        double degrees = Math.toDegrees(Math.asin(Math.min(1, sin)));
        double rounded = Math.rint(degrees);
        boolean ruled = Math.abs(degrees - rounded) < 0.01 && (rounded == 30 || rounded == 45 || rounded == 60);
        // A diamond is its own mirror image; another parallelogram is not, and the two are never exchanged.
        String shape = rhombus ? "diamond" : "parallelogram leaning " + (leansRight(along, slope) ? "right" : "left");
        if (!ruled) {
            return template(shape, finished, String.format(java.util.Locale.ROOT, "its angle of %.1f° is not on a ruler", degrees), rules);
        }
        double s = rules.seam().inInches();
        Dimension strip = side("strip", Length.inches(slope.norm() * sin), rules);
        Dimension step = Dimension.exactly("distance between slanted cuts", Length.inches(along.norm() * sin + 2 * s), rules);
        Length edge = Length.inches(along.norm() + 2 * s / sin);
        double lean = (slope.norm() * sin + 2 * s) / Math.tan(Math.toRadians(rounded));
        return new CutMethod.Strips(shape, List.of(strip, step),
                "Trim the strip's end at " + (int) rounded + "°" + (rhombus ? "" : ", leaning " + (leansRight(along, slope) ? "right" : "left")
                        + " as the right side of the cloth lies up") + ", then cut parallel to it.",
                strip.ruler(), edge.plus(Length.inches(lean)), edge, Length.inches(lean), Length.inches(lean));
    }

    /** True if the slanted sides, gone along upwards with the strip lying across, go to the right. The same for the shape turned half about. */
    private static boolean leansRight(Point along, Point slope) {
        Point up = along.cross(slope) > 0 ? slope.times(-1) : slope;
        return up.dot(along) > 0;
    }

    private static CutMethod trapezoid(Point base, Point top, Point leg, Point other, Region finished, CuttingRules rules) {
        Point longer = base.norm() >= top.norm() ? base : top;
        Point shorter = longer == base ? top : base;
        double one = Math.toDegrees(Math.asin(Math.min(1, Math.abs(base.unit().cross(leg.unit())))));
        double two = Math.toDegrees(Math.asin(Math.min(1, Math.abs(base.unit().cross(other.unit())))));
        if (!onGrain(longer) || !ruled(one) || !ruled(two)) {
            return template("trapezoid", finished, "its slanted sides are not at 45°, 60° or 90°", rules);
        }
        double s = rules.seam().inInches();
        double height = Math.abs(longer.unit().cross(leg));
        Dimension strip = side("strip", Length.inches(height), rules);
        double grown = s * (half(one) + half(two));
        double shrunk = s * (1 / Math.tan(Math.toRadians(90 - one / 2)) + 1 / Math.tan(Math.toRadians(90 - two / 2)));
        Dimension longEdge = Dimension.exactly("long edge", Length.inches(longer.norm() + grown), rules);
        double shortEdge = shorter.norm() + shrunk;
        return new CutMethod.Strips("trapezoid", List.of(strip, longEdge),
                "Mark the long edge on the strip and cut the slanted ends at " + (int) Math.rint(one) + "° and " + (int) Math.rint(two)
                        + "°; turn every second one head to tail.",
                strip.ruler(), longEdge.ruler(), Length.inches((longEdge.ruler().inInches() + shortEdge) / 2),
                lean(strip, one), lean(strip, two).negated());
    }

    /** How far a cut at so many degrees goes along the strip. */
    private static Length lean(Dimension strip, double degrees) {
        return Length.inches(strip.ruler().inInches() / Math.tan(Math.toRadians(degrees)));
    }

    /** What a seam adds to the long edge at a corner of so many degrees: its cotangent at half. */
    private static double half(double degrees) {
        return 1 / Math.tan(Math.toRadians(degrees / 2));
    }

    private static boolean ruled(double degrees) {
        return Math.abs(degrees - 45) < 0.01 || Math.abs(degrees - 60) < 0.01 || Math.abs(degrees - 90) < 0.01;
    }

    private static CutMethod hexagon(List<Point> c, Region finished, CuttingRules rules) {
        double a = c.get(0).distance(c.get(1));
        Point centre = finished.centroid();
        boolean regular = true;
        List<Dimension> none = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            regular &= Math.abs(c.get(i).distance(c.get((i + 1) % 6)) - a) < NEAR && Math.abs(c.get(i).distance(centre) - a) < NEAR;
        }
        if (!regular) {
            return template("shape of 6 sides", finished, "it is not a regular hexagon", rules);
        }
        Dimension strip = side("strip", Length.inches(a * Math.sqrt(3)), rules);
        none.add(strip);
        Length corner = Length.inches(2 * a + 4 * rules.seam().inInches() / Math.sqrt(3));
        return new CutMethod.Strips("hexagon", none,
                "Cut the strip into 60° diamonds as wide as the strip, then trim both points so that all six sides are equal.",
                strip.ruler(), Length.inches(corner.inInches() * 1.5), corner, lean(strip, 60), lean(strip, 60));
    }
}
