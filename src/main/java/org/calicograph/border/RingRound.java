package org.calicograph.border;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.PathPen;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * A circular round of wedges in a square ground. Round a square the ring begins at its corners, and four
 * segments of the ground make the square a circle; round a circle it begins at once. The first wedge
 * begins at the top and they follow clockwise.
 *
 * @param wedges  how many; a whole number of times the fabrics, so that no two alike meet
 * @param width   the ring's finished width
 * @param fabrics in turn
 * @param ground  the cloth of the segments inside and of the corners outside
 * @param margin  the finished distance from the ring to the edge of the square, so that no seam touches the curve
 * @param pointed true if every wedge comes to a point on the outer circle, with ground between the points
 */
public record RingRound(int wedges, Length width, List<Fabric> fabrics, Fabric ground, Length margin, boolean pointed) implements Round {

    /** 1/2 in: twice the usual seam allowance. */
    public static final Length USUAL_MARGIN = Length.inches(1, 2);

    public RingRound {
        fabrics = List.copyOf(fabrics);
        if (wedges < 3 || fabrics.isEmpty() || wedges % fabrics.size() != 0) {
            throw new DesignException("a ring of " + wedges + " wedges in " + fabrics.size()
                    + " fabrics doesn't come out even; use 3 wedges or more, a whole number of times the fabrics");
        }
        if (!width.isPositive() || !margin.isPositive()) {
            throw new DesignException("a ring " + width + " wide with a margin of " + margin + " can't be sewn; use widths above 0");
        }
    }

    /** The ring laid on a ground of this cloth. */
    public RingRound on(Fabric cloth) {
        return new RingRound(wedges, width, fabrics, cloth, margin, pointed);
    }

    /** So much ground between the ring and the edge. */
    public RingRound margin(Length distance) {
        return new RingRound(wedges, width, fabrics, ground, distance, pointed);
    }

    /** Points instead of wedges, like rays. */
    public RingRound inPoints() {
        return new RingRound(wedges, width, fabrics, ground, margin, true);
    }

    @Override
    public Assembly around(Patchwork inside, String id, int number) {
        boolean round = isRound(inside);
        if (!round) {
            Frame.requireSquare(inside, "ring " + number);
        }
        double size = inside.outline().bounds().width();
        double r = round ? size / 2 : size * Math.sqrt(0.5);
        double outer = r + width.inInches();
        double half = outer + margin.inInches();
        Point m = new Point(half, half);
        List<Placed> parts = new ArrayList<>();
        parts.add(new Placed("centre", inside, Transform.move(half - size / 2, half - size / 2)));
        parts.add(new Placed(id + "-ring", ring(r, outer, number), Transform.move(margin.inInches(), margin.inInches())));
        Point corner = m.plus(-size / 2, -size / 2);
        Point top = m.plus(0, -outer);
        Region segment = Region.of(Path.from(corner).arcAbout(m, Angle.QUARTER).close());
        Region ground4 = Region.of(Path.from(top).lineTo(half, 0).lineTo(2 * half, 0).lineTo(2 * half, half).lineTo(half + outer, half)
                .arcAbout(m, Angle.QUARTER.times(-1)).close());
        for (int side = 0; side < 4; side++) {
            Transform turn = Transform.turn(Angle.QUARTER.times(side), m);
            if (!round) {
                parts.add(Placed.plain(id + "-segment" + (side + 1), "ring segment", ground, segment).moved(turn));
            }
            parts.add(Placed.plain(id + "-corner" + (side + 1), "ring corner", ground, ground4).moved(turn));
        }
        return Assembly.of(inside.name() + " with " + id, Region.rectangle(new Box(0, 0, 2 * half, 2 * half)), parts);
    }

    private static boolean isRound(Patchwork inside) {
        Box box = inside.outline().bounds();
        double r = box.width() / 2;
        return inside.outline().holes().isEmpty() && inside.outline().outer().flattened(Region.ACCURACY).stream()
                .allMatch(p -> Math.abs(p.distance(box.centre()) - r) < Cover.TOLERANCE / 2)
                && Math.abs(inside.outline().area().squareInches() - Math.PI * r * r) < Cover.TOLERANCE * r;
    }

    private Block ring(double inner, double outer, int number) {
        Angle step = Angle.turn(1, wedges);
        if (pointed && outer * step.times(0.5).cos() <= inner + Cover.TOLERANCE) {
            throw new DesignException("ring " + number + " of " + wedges + " points is " + width + " wide and its points would cut into the circle of radius "
                    + Length.inches(inner).roundedTo(Length.inches(1, 8)) + " inside; make it wider or use more points");
        }
        Point m = new Point(outer, outer);
        List<Patch> patches = new ArrayList<>();
        for (int i = 0; i < wedges; i++) {
            Fabric cloth = fabrics.get(i % fabrics.size());
            Angle at = step.times(i).minus(Angle.QUARTER);
            Point low = m.plus(Point.polar(inner, at));
            Point high = m.plus(Point.polar(outer, at));
            Point nextLow = m.plus(Point.polar(inner, at.plus(step)));
            if (!pointed) {
                PathPen out = Path.from(low).lineTo(high).arcAbout(m, step).lineTo(nextLow);
                patches.add(patch("" + (i + 1), cloth, out.arcTo(low, -bulge(step))));
            } else {
                Point tip = m.plus(Point.polar(outer, at.plus(step.times(0.5))));
                Point nextTip = m.plus(Point.polar(outer, at.plus(step.times(1.5))));
                patches.add(patch("" + (i + 1), cloth, Path.from(low).lineTo(tip).lineTo(nextLow).arcTo(low, -bulge(step))));
                patches.add(patch("ground" + (i + 1), ground, Path.from(tip).arcTo(nextTip, bulge(step)).lineTo(nextLow)));
            }
        }
        Region outline = new Region(Path.circle(m, outer), List.of(Path.circle(m, inner)));
        return Block.of("ring of " + wedges, outline, patches);
    }

    private static double bulge(Angle sweep) {
        return Math.tan(sweep.inRadians() / 4);
    }

    private static Patch patch(String id, Fabric cloth, PathPen pen) {
        return new Patch(id, Role.BACKGROUND, cloth, Region.of(pen.close()));
    }
}
