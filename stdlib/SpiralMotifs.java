package org.calicograph.stdlib;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drafting.Spiral;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.quilting.Motif;

/** Quilting motifs from spirals and involutes; scale them with {@code scaledTo}. */
public final class SpiralMotifs {

    private static final Length UNIT = Length.inches(1, 4);

    /** A hawser coiled on the quay: every turn as far outside the last. */
    public static Motif hawser() {
        return Motif.of("hawser", Spiral.archimedean(Length.ZERO, Length.inches(1, 2), Angle.FULL.times(4)));
    }

    /** A winkle: a whorl that doubles every turn. */
    public static Motif winkle() {
        return Motif.of("winkle", Spiral.logarithmic(Length.inches(1, 8), 2, Angle.FULL.times(4)));
    }

    /** A capstan: a circle, and six threads half unwound from it. */
    public static Motif capstan() {
        List<Path> paths = new ArrayList<>();
        paths.add(Path.circle(Point.ORIGIN, 0.5));
        Path thread = Spiral.involute(Length.inches(1, 2), Angle.HALF);
        for (int i = 0; i < 6; i++) {
            paths.add(thread.transformed(Transform.turn(Angle.turn(i, 6))));
        }
        return new Motif("capstan", paths);
    }

    /** A ship's carver's scroll: quarter circles about the corners of a square. */
    public static Motif scroll() {
        return Motif.of("scroll", Spiral.ofArcs(4, UNIT, 11));
    }

    /** A bollard hitch: thirds of circles about the corners of a triangle. */
    public static Motif hitch() {
        return Motif.of("hitch", Spiral.ofArcs(3, UNIT, 9));
    }

    /** Two currents that meet: a coil of half circles and the same turned about. */
    public static Motif currents() {
        Path coil = Spiral.ofArcs(2, UNIT, 6);
        return Motif.of("currents", coil, coil.transformed(Transform.turn(Angle.HALF)));
    }

    /** All of them. */
    public static List<Motif> all() {
        return List.of(hawser(), winkle(), capstan(), scroll(), hitch(), currents());
    }
}
