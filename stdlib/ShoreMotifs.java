package org.calicograph.stdlib;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Angle;
import org.calicograph.quilting.Motif;

/** Quilting motifs from the tideline, each about 4 in across; scale them with {@code scaledTo}. */
public final class ShoreMotifs {

    /** A cockle: seven ribs from the hinge to a scalloped edge. */
    public static Motif cockle() {
        List<Path> paths = new ArrayList<>();
        Point hinge = Point.of(0, 2);
        var edge = Path.from(hinge);
        for (int i = 0; i <= 7; i++) {
            Point rim = hinge.plus(Point.polar(3.4, Angle.degrees(-150 + i * 120.0 / 7)));
            edge = i == 0 ? edge.lineTo(rim) : edge.arcTo(rim, 0.45);
            if (i > 0 && i < 7) {
                paths.add(Path.through(hinge, rim));
            }
        }
        paths.add(edge.close());
        return new Motif("cockle", paths);
    }

    /** A limpet from above: a wavy rim, and rays to a small ring. */
    public static Motif limpet() {
        List<Path> paths = new ArrayList<>();
        var rim = Path.from(Point.polar(2, Angle.ZERO));
        for (int i = 1; i <= 12; i++) {
            rim = rim.arcTo(i == 12 ? Point.polar(2, Angle.ZERO) : Point.polar(2, Angle.turn(i, 12)), 0.35);
            paths.add(Path.through(Point.polar(0.5, Angle.turn(i, 12)), Point.polar(2, Angle.turn(i, 12))));
        }
        paths.add(rim.close());
        paths.add(Path.circle(Point.ORIGIN, 0.5));
        return new Motif("limpet", paths);
    }

    /** A gull: two wings in one line. */
    public static Motif gull() {
        return Motif.of("gull", Path.from(-2, 0.2).curveTo(Point.of(-1.5, -0.8), Point.of(-0.6, -0.8), Point.of(0, 0.4))
                .curveTo(Point.of(0.6, -0.8), Point.of(1.5, -0.8), Point.of(2, 0.2))
                .curveTo(Point.of(1.4, -0.3), Point.of(0.7, -0.2), Point.of(0, 0.8))
                .curveTo(Point.of(-0.7, -0.2), Point.of(-1.4, -0.3), Point.of(-2, 0.2)).open());
    }

    /** One ripple, to be repeated along a border: it begins and ends at the same height. */
    public static Motif ripple() {
        return Motif.of("ripple", Path.from(-2, 0).curveTo(Point.of(-1.2, -1.2), Point.of(-0.8, -1.2), Point.of(0, 0))
                .curveTo(Point.of(0.8, 1.2), Point.of(1.2, 1.2), Point.of(2, 0)).open());
    }

    /** A breaking wave with a curl, to be repeated. */
    public static Motif breaker() {
        return Motif.of("breaker", Path.from(-2, 1).curveTo(Point.of(-0.8, 1), Point.of(-0.4, -1.2), Point.of(0.8, -1))
                .curveTo(Point.of(1.5, -0.8), Point.of(1.4, 0.2), Point.of(0.7, 0.1))
                .curveTo(Point.of(0.3, 0), Point.of(0.4, -0.5), Point.of(0.8, -0.4)).open(),
                Path.from(0.6, 0.12).curveTo(Point.of(0.5, 0.7), Point.of(1.2, 1), Point.of(2, 1)).open());
    }

    /** A starfish: five rounded arms, and a rib down each. */
    public static Motif starfish() {
        List<Path> paths = new ArrayList<>();
        var edge = Path.from(Point.polar(0.8, Angle.degrees(-126)));
        for (int i = 0; i < 5; i++) {
            Angle arm = Angle.degrees(-90 + 72 * i);
            Point left = Point.polar(2, arm.minus(Angle.degrees(6)));
            Point right = Point.polar(2, arm.plus(Angle.degrees(6)));
            Point dip = i == 4 ? Point.polar(0.8, Angle.degrees(-126)) : Point.polar(0.8, arm.plus(Angle.degrees(36)));
            edge = edge.arcTo(left, -0.12).arcTo(right, 1).arcTo(dip, -0.12);
            paths.add(Path.through(Point.ORIGIN, Point.polar(1.7, arm)));
        }
        paths.add(edge.close());
        return new Motif("starfish", paths);
    }

    /** A sand dollar: a ring about five slender petals. */
    public static Motif sandDollar() {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            Point foot = Point.polar(0.3, Angle.degrees(-90 + 72 * i));
            Point tip = Point.polar(1.6, Angle.degrees(-90 + 72 * i));
            paths.add(Path.from(foot).arcTo(tip, 0.35).arcTo(foot, 0.35).open());
        }
        paths.add(Path.circle(Point.ORIGIN, 2));
        return new Motif("sand dollar", paths);
    }

    /** Kelp: a waving stem with blades on alternate sides. */
    public static Motif kelp() {
        List<Path> paths = new ArrayList<>();
        var stem = Path.from(0, 2);
        for (int i = 0; i < 4; i++) {
            int side = i % 2 == 0 ? 1 : -1;
            Point next = Point.of(0, 1 - i);
            paths.add(Path.from(next).curveTo(next.plus(side * 0.7, 0.2), next.plus(side * 1.3, -0.2), next.plus(side * 1.4, -0.9))
                    .curveTo(next.plus(side * 0.7, -0.8), next.plus(side * 0.2, -0.5), next).open());
            stem = stem.arcTo(next, side * 0.35);
        }
        paths.add(stem.open());
        return new Motif("kelp", paths);
    }

    /** A boat: hull, mast and two sails. */
    public static Motif dinghy() {
        return Motif.of("dinghy", Path.from(-1.6, 1).lineTo(1.6, 1).arcTo(Point.of(-1.6, 1), 0.5).open(),
                Path.from(0, 1).lineTo(0, -2).arcTo(Point.of(1.4, 0.7), -0.2).lineTo(0, 0.7).open(),
                Path.from(0, -1.6).arcTo(Point.of(-1.2, 0.7), 0.2).lineTo(0, 0.7).open());
    }

    /** All of them. */
    public static List<Motif> all() {
        return List.of(cockle(), limpet(), gull(), ripple(), breaker(), starfish(), sandDollar(), kelp(), dinghy());
    }
}
