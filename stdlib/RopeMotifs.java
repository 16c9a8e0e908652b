package org.calicograph.stdlib;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.quilting.Motif;

/** Quilting motifs of rope and of the compass, each about 4 in across; scale them with {@code scaledTo}. */
public final class RopeMotifs {

    /** One turn of a two-strand cable, to be repeated along a border. */
    public static Motif cable() {
        return Motif.of("cable", Path.from(-2, -0.8).curveTo(Point.of(-0.8, -0.8), Point.of(0.8, 0.8), Point.of(2, 0.8)).open(),
                Path.from(-2, 0.8).curveTo(Point.of(-0.8, 0.8), Point.of(0.8, -0.8), Point.of(2, -0.8)).open());
    }

    /** A loop in a running line, to be repeated: it begins and ends at the same height. */
    public static Motif loop() {
        return Motif.of("loop", Path.from(-2, 1).curveTo(Point.of(1.4, 1), Point.of(1.2, -1.6), Point.of(0, -1.6))
                .curveTo(Point.of(-1.2, -1.6), Point.of(-1.4, 1), Point.of(2, 1)).open());
    }

    /** Two links of a chain. */
    public static Motif links() {
        return Motif.of("links", Path.circle(Point.of(-0.7, 0), 1.3), Path.circle(Point.of(0.7, 0), 1.3));
    }

    /** A figure of eight in one line. */
    public static Motif eight() {
        return Motif.of("eight", Path.from(0, 0).curveTo(Point.of(1.4, -1.6), Point.of(2, -1), Point.of(2, 0))
                .curveTo(Point.of(2, 1), Point.of(1.4, 1.6), Point.of(0, 0)).curveTo(Point.of(-1.4, -1.6), Point.of(-2, -1), Point.of(-2, 0))
                .curveTo(Point.of(-2, 1), Point.of(-1.4, 1.6), Point.of(0, 0)).open());
    }

    /** A rope's end, coiled: a spiral of half circles. */
    public static Motif coil() {
        var line = Path.from(0, 0);
        double x = 0;
        for (int i = 1; i <= 8; i++) {
            x += (i % 2 == 0 ? -1 : 1) * 0.5 * i;
            line = line.arcTo(Point.of(x, 0), 1);
        }
        return Motif.of("coil", line.open());
    }

    /** Orange peel: four lenses about a point, in a ring. */
    public static Motif orangePeel() {
        List<Path> paths = new ArrayList<>(lenses(4, 0.4142135623730951));
        paths.add(Path.circle(Point.ORIGIN, 2));
        return new Motif("orange peel", paths);
    }

    /** Six lenses in a ring, as compasses step round a circle. */
    public static Motif compassFlower() {
        List<Path> paths = new ArrayList<>(lenses(6, 0.2679491924311227));
        paths.add(Path.circle(Point.ORIGIN, 2));
        return new Motif("compass flower", paths);
    }

    private static List<Path> lenses(int count, double bulge) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point tip = Point.polar(2, Angle.turn(i, count));
            paths.add(Path.from(0, 0).arcTo(tip, bulge).arcTo(Point.ORIGIN, bulge).open());
        }
        return paths;
    }

    /** A whirl: eight arcs from the middle to a ring. */
    public static Motif whirl() {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            paths.add(Path.from(0, 0).arcTo(Point.polar(2, Angle.turn(i, 8)), 0.4).open());
        }
        paths.add(Path.circle(Point.ORIGIN, 2));
        return new Motif("whirl", paths);
    }

    /** A compass rose: eight points in one line, four long and four short. */
    public static Motif rose() {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double r = i % 2 == 1 ? 0.6 : i % 4 == 0 ? 2 : 1.3;
            corners.add(Point.polar(r, Angle.degrees(-90 + 22.5 * i)));
        }
        return Motif.of("rose", Path.polygon(corners), Path.circle(Point.ORIGIN, 0.35));
    }

    /** All of them. */
    public static List<Motif> all() {
        return List.of(cable(), loop(), links(), eight(), coil(), orangePeel(), compassFlower(), whirl(), rose());
    }
}
