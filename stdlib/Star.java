package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * A star of any number of points, each point split along its middle into a light and a dark half.
 *
 * <p>Drafting: divide a circle into so many points and join each to the one so many further on. The
 * angle at a tip is 180 - 360 x skip / points degrees, and the inner corners lie at
 * cos(180 skip / points) / cos(180 (skip - 1) / points) of the radius (star polygons in any textbook of
 * geometry).
 */
public record Star(int points, int skip) {

    public Star {
        if (points < 5 || points > 64) {
            throw new IllegalArgumentException("a star of " + points + " points can't be drafted here; use 5 to 64");
        }
        if (skip < 2 || 2 * skip >= points) {
            throw new IllegalArgumentException("a star of " + points + " points can't join every point to the one " + skip
                    + " further on; use 2 to " + (points - 1) / 2);
        }
    }

    /** A star of so many points, each joined to the next but one. */
    public static Star of(int points) {
        return new Star(points, 2);
    }

    /** The same with each point joined to the one so many further on: more makes it sharper. */
    public Star skipping(int further) {
        return new Star(points, further);
    }

    /** The angle at each tip. */
    public Angle tip() {
        return Angle.degrees(180 - 360.0 * skip / points);
    }

    /** The inner corners' distance from the middle, as a share of the tips'. */
    public double innerShare() {
        return Math.cos(Math.PI * skip / points) / Math.cos(Math.PI * (skip - 1) / points);
    }

    /** The angle in the ground at each inner corner, from one point's edge to the next one's: 180 - 360 (skip - 1) / points. */
    public Angle notch() {
        return Angle.degrees(180 - 360.0 * (skip - 1) / points);
    }

    /** In how many separate lines the star is drawn: the greatest number that goes into points and skip. */
    public int figures() {
        int a = points;
        int b = skip;
        while (b > 0) {
            int rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }

    /** A whole line from tip to tip, as a share of the radius. */
    public double lineShare() {
        return 2 * Math.sin(Math.PI * skip / points);
    }

    /** An edge from a tip to an inner corner, as a share of the radius. */
    public double edgeShare() {
        double r = innerShare();
        return Math.sqrt(1 + r * r - 2 * r * Math.cos(Math.PI / points));
    }

    /** What the star covers, as a share of the radius squared. */
    public double areaShare() {
        return points * innerShare() * Math.sin(Math.PI / points);
    }

    /** Every angle and measure of the star, its tips on a circle of the given finished width. */
    public Table report(Length diameter) {
        double r = diameter.inInches() / 2;
        Angle part = Angle.turn(1, points);
        Table table = Table.of("Star of " + points + " points, each joined to the one " + skip + " further on, " + diameter + " across", "what", "value")
                .row("angle at a tip", tip())
                .row("half of a tip: a patch's sharp angle", tip().dividedBy(2))
                .row("a patch's angle in the middle", part.dividedBy(2))
                .row("a patch's third angle", Angle.HALF.minus(tip().dividedBy(2)).minus(part.dividedBy(2)))
                .row("turn from one tip to the next", part)
                .row("angle of the star at an inner corner", Angle.FULL.minus(notch()))
                .row("angle of the ground at an inner corner", notch())
                .row("lines drawn without lifting the pencil", figures());
        return table.row("tips from the middle", decimal(r)).row("inner corners from the middle", decimal(r * innerShare()))
                .row("edge from tip to inner corner", decimal(r * edgeShare())).row("whole line from tip to tip", decimal(r * lineShare()))
                .row("area, square inches", Math.rint(1e4 * r * r * areaShare()) / 1e4);
    }

    private static String decimal(double inches) {
        return String.format(Locale.ROOT, "%.4f in", inches);
    }

    /** The star with its tips on a circle of the given finished width, the first tip upwards. */
    public Block across(Length diameter) {
        double tips = diameter.inInches() / 2;
        double inners = tips * innerShare();
        Angle half = Angle.turn(1, 2L * points);
        List<Patch> patches = new ArrayList<>();
        List<Point> outline = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            Angle up = Angle.turn(i, points).minus(Angle.QUARTER);
            Point before = Point.polar(inners, up.minus(half));
            Point tip = Point.polar(tips, up);
            Point after = Point.polar(inners, up.plus(half));
            patches.add(half(2 * i + 1, LIGHT, before, tip));
            patches.add(half(2 * i + 2, DARK, tip, after));
            outline.add(tip);
            outline.add(after);
        }
        return Block.of(points + "-Point Star", Region.of(Path.polygon(outline)), patches);
    }

    private static Patch half(int number, Role role, Point from, Point to) {
        return Patch.of(Integer.toString(number), role, Region.polygon(Point.ORIGIN, from, to));
    }
}
