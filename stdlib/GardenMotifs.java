package org.calicograph.stdlib;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.quilting.Motif;

/** Quilting motifs from behind the sea wall, each about 4 in across; scale them with {@code scaledTo}. */
public final class GardenMotifs {

    private static Path petal(double from, double to, double bulge) {
        return Path.from(0, -from).arcTo(Point.of(0, -to), bulge).arcTo(Point.of(0, -from), bulge).open();
    }

    /** Thrift: six round petals about an eye. */
    public static Motif thrift() {
        List<Path> paths = new ArrayList<>(ring(6, 0.5, 2, 0.55));
        paths.add(Path.circle(Point.ORIGIN, 0.5));
        return new Motif("thrift", paths);
    }

    private static List<Path> ring(int times, double from, double to, double bulge) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            paths.add(petal(from, to, bulge).transformed(org.calicograph.geometry.Transform.turn(Angle.turn(i, times))));
        }
        return paths;
    }

    /** A daisy: twelve slender petals about an eye. */
    public static Motif daisy() {
        List<Path> paths = new ArrayList<>(ring(12, 0.6, 2, 0.22));
        paths.add(Path.circle(Point.ORIGIN, 0.6));
        return new Motif("daisy", paths);
    }

    /** A plain leaf with its midrib and three veins a side. */
    public static Motif leaf() {
        List<Path> paths = new ArrayList<>();
        paths.add(petal(-2, 2, 0.42));
        paths.add(Path.through(Point.of(0, 2), Point.of(0, -2)));
        for (int i = 0; i < 3; i++) {
            double y = 0.95 - i * 0.6;
            paths.add(Path.through(Point.of(-0.6, y - 0.5), Point.of(0, y), Point.of(0.6, y - 0.5)));
        }
        return new Motif("leaf", paths);
    }

    /** A heart in one line. */
    public static Motif heart() {
        return Motif.of("heart", Path.from(0, 2).curveTo(Point.of(-3, -0.2), Point.of(-1.8, -2.6), Point.of(0, -0.9))
                .curveTo(Point.of(1.8, -2.6), Point.of(3, -0.2), Point.of(0, 2)).open());
    }

    /** Four hearts, their points together. */
    public static Motif fourHearts() {
        return Motif.rosette("four hearts", 4, Point.of(0, 2), heart().paths().toArray(Path[]::new)).mirrored();
    }

    /** A tulip: three petals in a cup, a stem and two leaves. */
    public static Motif tulip() {
        return Motif.of("tulip", Path.from(-1, -2).curveTo(Point.of(-1.4, -0.6), Point.of(-0.8, 0), Point.of(0, 0))
                .curveTo(Point.of(0.8, 0), Point.of(1.4, -0.6), Point.of(1, -2)).lineTo(0.5, -1.2).lineTo(0, -2).lineTo(-0.5, -1.2).lineTo(-1, -2).open(),
                Path.through(Point.of(0, 0), Point.of(0, 2)),
                Path.from(0, 2).curveTo(Point.of(-0.3, 1), Point.of(-0.8, 0.7), Point.of(-1.4, 0.7)).curveTo(Point.of(-1.2, 1.4), Point.of(-0.7, 1.9), Point.of(0, 2)).open(),
                Path.from(0, 2).curveTo(Point.of(0.3, 1), Point.of(0.8, 0.7), Point.of(1.4, 0.7)).curveTo(Point.of(1.2, 1.4), Point.of(0.7, 1.9), Point.of(0, 2)).open());
    }

    /** An ear of marram grass: seeds in pairs up a stem. */
    public static Motif marram() {
        List<Path> paths = new ArrayList<>();
        paths.add(Path.through(Point.of(0, 2.2), Point.of(0, -1.4)));
        for (int i = 0; i < 4; i++) {
            double y = 1 - 0.8 * i;
            for (int side = -1; side <= 1; side += 2) {
                Point foot = Point.of(0, y);
                Point tip = Point.of(side * 0.8, y - 0.8);
                paths.add(Path.from(foot).arcTo(tip, 0.35).arcTo(foot, 0.35).open());
            }
        }
        paths.add(petal(1.4, 2.2, 0.4));
        return new Motif("marram", paths);
    }

    /** A hip on its stalk, with a crown. */
    public static Motif rosehip() {
        return Motif.of("rosehip", Path.circle(Point.of(0, 0.6), 1.2),
                Path.through(Point.of(-0.5, 1.69), Point.of(-0.6, 2.3), Point.of(0, 1.95), Point.of(0.6, 2.3), Point.of(0.5, 1.69)),
                Path.from(0, -0.6).arcTo(Point.of(0.7, -2), -0.2).open());
    }

    /** A squash blossom: two rounds of four petals, one behind the other. */
    public static Motif blossom() {
        List<Path> paths = new ArrayList<>(ring(4, 0.3, 2, 0.5));
        for (int i = 0; i < 4; i++) {
            Angle a = Angle.degrees(45 + 90 * i);
            paths.add(Path.through(Point.polar(0.3, a), Point.polar(1.7, a)));
        }
        paths.add(Path.circle(Point.ORIGIN, 0.3));
        return new Motif("blossom", paths);
    }

    /** All of them. */
    public static List<Motif> all() {
        return List.of(thrift(), daisy(), leaf(), heart(), fourHearts(), tulip(), marram(), rosehip(), blossom());
    }
}
