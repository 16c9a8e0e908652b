package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.PathPen;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;

/**
 * Double Wedding Ring: one melon between two pieced arcs, with a square at both ends of each; four meet at their ends, and rings appear.
 *
 * <p>Drafting: the rings' middles lie one width apart and their outer circles pass through the points where four rings meet, so the
 * radius is the width / root 2; the arcs are a fifth of it wide (common practice; the share from memory).
 */
public final class DoubleWeddingRing {

    /** A melon with arcs of six wedges. */
    public static Block block(Length width) {
        return block(width, 6);
    }

    /** A melon of the given finished width, from end to end, with so many wedges in each arc. */
    public static Block block(Length width, int wedges) {
        if (wedges < 3 || wedges > 16) {
            throw new IllegalArgumentException("an arc of " + wedges + " wedges can't be sewn; use 3 to 16");
        }
        double d = width.inInches();
        double outer = d / Math.sqrt(2);
        double inner = 0.8 * outer;
        Point below = new Point(0, d / 2);   // the upper edge of the melon belongs to the ring whose middle lies below
        double reach = Math.sqrt(inner * inner - d * d / 4);
        Point right = new Point(reach, 0);
        double rise = (outer * outer - inner * inner) / (2 * d);
        Point shoulder = new Point(Math.sqrt(outer * outer - (d / 2 + rise) * (d / 2 + rise)), -rise);
        Point end = new Point(d / 2, 0);
        List<Patch> patches = new ArrayList<>();
        Role[] cloth = {LIGHT, DARK, MEDIUM};
        double innerHalf = Math.toDegrees(Math.asin(reach / inner));
        double outerHalf = Math.toDegrees(Math.asin(shoulder.x() / outer));
        PathPen melon = Path.from(-reach, 0);
        double inBit = Math.tan(Math.toRadians(innerHalf / wedges) / 2);
        for (int i = 1; i <= 2 * wedges; i++) {
            Point to = on(below, inner, innerHalf, i <= wedges ? i : 2 * wedges - i, wedges);
            melon = melon.arcTo(i == 2 * wedges ? new Point(-reach, 0) : i == wedges ? right : i < wedges ? to : FLIP.of(to), inBit);
        }
        patches.add(Patch.of("melon", BACKGROUND, Region.of(melon.close())));
        for (int side = 0; side < 2; side++) {
            boolean up = side == 0;
            for (int i = 0; i < wedges; i++) {
                Point a = on(below, inner, innerHalf, i, wedges);
                Point b = on(below, outer, outerHalf, i, wedges);
                Point c = on(below, outer, outerHalf, i + 1, wedges);
                Point e = on(below, inner, innerHalf, i + 1, wedges);
                Path wedge = Path.from(a).lineTo(b).arcTo(c, Math.tan(Math.toRadians(outerHalf / wedges) / 2))
                        .lineTo(e).arcTo(a, -inBit).close();
                patches.add(Patch.of((up ? "top" : "bottom") + (i + 1), cloth[i % 3], Region.of(up ? wedge : wedge.transformed(FLIP))));
            }
        }
        double bit = Math.tan(Math.toRadians(45 - outerHalf) / 4);
        Point low = FLIP.of(shoulder);
        Path square = Path.from(right).lineTo(shoulder).arcTo(end, bit).arcTo(low, bit).close();
        patches.add(Patch.of("right", ACCENT, Region.of(square)));
        patches.add(Patch.of("left", DARK, Region.of(square.transformed(Transform.mirrorAcross(0)))));
        double whole = Math.tan(Math.PI / 8);
        return Block.of("Double Wedding Ring", Region.of(Path.from(-d / 2, 0).arcTo(end, whole).arcTo(new Point(-d / 2, 0), whole).close()), patches);
    }

    private static final Transform FLIP = Transform.mirrorDown(0);

    /** A mark on an arc about the ring's middle, counted from the left. */
    private static Point on(Point middle, double radius, double half, int mark, int marks) {
        return middle.plus(Point.polar(radius, Angle.degrees(-90 - half + 2 * half * mark / marks)));
    }
}
