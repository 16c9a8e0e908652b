package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * A compass star in a circle: four long points, four more between them, then eight, then sixteen, each
 * split into a light and a dark half.
 *
 * <p>Drafting: every point has its tip on the circle, the later ones halfway round between their neighbours'
 * tips; 32 points stand 11.25 degrees apart. All sides are drawn from the tips past one small circle about the
 * middle, which they touch (common practice), so that every point stands straight: its two halves are mirror
 * images, and all points of a rank are alike.
 */
public final class CompassStar {

    /** How far from the middle the four long points meet, as a share of the radius. */
    private static final double WAIST = 0.22;
    /** Half the angle at every tip, in radians: a side leads from the tip to the waist, an eighth of a turn on. */
    private static final double LEAN = lean();

    /** The space between two tips: the corner where their sides meet is the bottom, midway round. */
    private record Notch(Angle from, Point corner, Angle to) {

        Angle middle() {
            return from.plus(to).dividedBy(2);
        }

        static Notch between(Angle from, Angle to, double r) {
            double half = to.minus(from).inRadians() / 2;
            double depth = r * Math.sin(LEAN) / Math.sin(LEAN + half);
            return new Notch(from, Point.polar(depth, from.plus(to).dividedBy(2)), to);
        }
    }

    /** A compass star of 8, 16 or 32 points in a circle of the given finished width. */
    public static Block of(int points, Length diameter) {
        if (points != 8 && points != 16 && points != 32) {
            throw new IllegalArgumentException("a compass star of " + points + " points can't be halved evenly; use 8, 16 or 32");
        }
        double r = diameter.inInches() / 2;
        List<Patch> patches = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            notches.add(Notch.between(Angle.degrees(90 * i - 90), Angle.degrees(90 * i), r));
        }
        for (int i = 0; i < 4; i++) {
            Point tip = Point.polar(r, notches.get(i).from());
            add(patches, LIGHT, Point.ORIGIN, notches.get((i + 3) % 4).corner(), tip);
            add(patches, DARK, Point.ORIGIN, tip, notches.get(i).corner());
        }
        Role[] shades = {ACCENT, MEDIUM, DARK};
        for (int count = 4, level = 0; count < points; count *= 2, level++) {
            List<Notch> narrower = new ArrayList<>();
            for (Notch n : notches) {
                Point tip = Point.polar(r, n.middle());
                Notch left = Notch.between(n.from(), n.middle(), r);
                Notch right = Notch.between(n.middle(), n.to(), r);
                add(patches, LIGHT, n.corner(), left.corner(), tip);
                add(patches, shades[level], n.corner(), tip, right.corner());
                narrower.add(left);
                narrower.add(right);
            }
            notches = narrower;
        }
        List<Segment> rim = new ArrayList<>();
        for (Notch n : notches) {
            Point from = Point.polar(r, n.from());
            Point to = Point.polar(r, n.to());
            Arc arc = new Arc(from, to, Math.tan(n.to().minus(n.from()).inRadians() / 4));
            Region ground = Region.of(Path.from(from).arcTo(to, arc.bulge()).lineTo(n.corner()).close());
            patches.add(Patch.of(Integer.toString(patches.size() + 1), BACKGROUND, ground));
            rim.add(arc);
        }
        return Block.of("Compass Star", Region.of(new Path(rim)), patches);
    }

    private static double lean() {
        double along = WAIST * Math.sqrt(0.5);
        return Math.atan(along / (1 - along));
    }

    private static void add(List<Patch> patches, Role role, Point a, Point b, Point c) {
        patches.add(Patch.of(Integer.toString(patches.size() + 1), role, Region.polygon(a, b, c)));
    }
}
