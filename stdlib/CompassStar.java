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
 * <p>Drafting: every new point has its tip on the circle, halfway round between its neighbours' tips, and
 * its base on their sides; 32 points stand 11.25 degrees apart (common practice).
 */
public final class CompassStar {

    /** How far from the middle the four long points meet, as a share of the radius. */
    private static final double WAIST = 0.22;
    /** How far up its neighbours' sides a later point begins. */
    private static final double STEP = 0.30;

    /** The space between two tips: the corner where their sides meet is the bottom. */
    private record Notch(Angle from, Point corner, Angle to) { }

    /** A compass star of 8, 16 or 32 points in a circle of the given finished width. */
    public static Block of(int points, Length diameter) {
        if (points != 8 && points != 16 && points != 32) {
            throw new IllegalArgumentException("a compass star of " + points + " points can't be halved evenly; use 8, 16 or 32");
        }
        double r = diameter.inInches() / 2;
        List<Patch> patches = new ArrayList<>();
        List<Notch> notches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Angle up = Angle.degrees(90 * i - 90);
            Point tip = Point.polar(r, up);
            Point before = Point.polar(WAIST * r, up.minus(Angle.degrees(45)));
            Point after = Point.polar(WAIST * r, up.plus(Angle.degrees(45)));
            add(patches, LIGHT, Point.ORIGIN, before, tip);
            add(patches, DARK, Point.ORIGIN, tip, after);
            notches.add(new Notch(up, after, up.plus(Angle.QUARTER)));
        }
        Role[] shades = {ACCENT, MEDIUM, DARK};
        for (int count = 4, level = 0; count < points; count *= 2, level++) {
            List<Notch> narrower = new ArrayList<>();
            for (Notch n : notches) {
                Angle up = n.from().plus(n.to()).dividedBy(2);
                Point tip = Point.polar(r, up);
                Point left = n.corner().towards(Point.polar(r, n.from()), STEP);
                Point right = n.corner().towards(Point.polar(r, n.to()), STEP);
                add(patches, LIGHT, n.corner(), left, tip);
                add(patches, shades[level], n.corner(), tip, right);
                narrower.add(new Notch(n.from(), left, up));
                narrower.add(new Notch(up, right, n.to()));
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
        return Block.of("Compass Star", Region.of(closed(rim)), patches);
    }

    /** The rim's last arc may miss the first one's start by a rounding; it is drawn to that very point. */
    private static Path closed(List<Segment> rim) {
        var pen = Path.from(rim.get(0).from());
        for (int i = 0; i < rim.size(); i++) {
            Point to = i == rim.size() - 1 ? rim.get(0).from() : rim.get(i).to();
            pen = pen.arcTo(to, ((Arc) rim.get(i)).bulge());
        }
        return pen.close();
    }

    private static void add(List<Patch> patches, Role role, Point a, Point b, Point c) {
        patches.add(Patch.of(Integer.toString(patches.size() + 1), role, Region.polygon(a, b, c)));
    }
}
