package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Placed;

/**
 * Feathered Star: the points of a sawtooth star edged with small half-square triangles, which come out
 * whole along the straight sides and along the slanting ones.
 *
 * <p>Drafting: a star point is a triangle with a right angle; its slanting side is the root of two times
 * its straight one, so no whole number of equal feathers goes along both. Two ways out are exact. With a
 * <i>square centre</i> there are two sizes of feather, all of them true half-square triangles, and the
 * slanting side is simply divided into equal parts: slant feather / straight feather =
 * root 2 x straight / slant. With <i>equal feathers</i> all are of one size, and the sides of the centre
 * bend a little in the middle instead. The diamond at a tip has an angle of 45 degrees, and its sides are
 * the long sides of the feathers (textbooks of drafting); the rest is worked out here from these.
 *
 * @param straight     feathers along a straight side, counted in the ground cloth
 * @param slant        feathers along a slanting side
 * @param squareCentre true for a square centre and two sizes of feather, false for equal feathers
 */
public record FeatheredStar(int straight, int slant, boolean squareCentre) {

    private static final double ROOT = Math.sqrt(2);

    public FeatheredStar {
        if (straight < 2 || straight > 40) {
            throw new IllegalArgumentException("a star point with " + straight + " feathers along its straight side can't be drafted; use 2 to 40");
        }
        if (slant < straight || slant > 2 * straight) {
            throw new IllegalArgumentException("with " + straight + " feathers along the straight side, " + slant
                    + " along the slanting one would be out of all proportion; use about " + Math.round(straight * ROOT));
        }
    }

    /** A star with so many feathers along its straight sides and the nearest number along the slanting ones; the centre is square. */
    public static FeatheredStar of(int straight) {
        return new FeatheredStar(straight, (int) Math.round(straight * ROOT), true);
    }

    /** The usual star: five feathers along the straight sides and seven along the slanting ones. */
    public static Block block(Length side) {
        return of(5).across(side);
    }

    /** The same with another number of feathers along the slanting sides. */
    public FeatheredStar slanting(int feathers) {
        return new FeatheredStar(straight, feathers, squareCentre);
    }

    /** The same with all feathers of one size and a centre whose sides bend. */
    public FeatheredStar equalFeathers() {
        return new FeatheredStar(straight, slant, false);
    }

    /** The slant feather's side for a straight feather of 1; 1 if they are equal. */
    public double slantShare() {
        return squareCentre ? straight * ROOT / slant : 1;
    }

    /** Half of the block's side for a straight feather of 1: (2 straight + 1) + 2 straight / slant with a square centre, a rational number. */
    private double halfSide() {
        double g = slantShare();
        return straight + g * ROOT + 1 + slant * g / ROOT;
    }

    /** The side of a straight feather in a block of the given side. */
    public Length feather(Length side) {
        return side.times(1 / (2 * halfSide()));
    }

    /** The side of a slant feather in a block of the given side. */
    public Length slantFeather(Length side) {
        return side.times(slantShare() / (2 * halfSide()));
    }

    /** The side of the block whose straight feathers have the given side, such as one that a ruler shows. */
    public Length sideFor(Length feather) {
        return feather.times(2 * halfSide());
    }

    /** How far the middle of a centre's side lies from the line between its corners, for a straight feather of 1; inwards if above 0. */
    private double bend() {
        return squareCentre ? 0 : slant / ROOT - straight;
    }

    /** The angle by which each side of the centre turns in its middle: 0 for a square centre. */
    public Angle centreBend() {
        double half = slant * slantShare() / ROOT;
        return Angle.radians(2 * Math.atan(bend() / half));
    }

    /** By how much the slant feathers miss the slanting side of a square centre's star, all together, if they are cut like the straight ones. */
    public Length missIfCutAlike(Length side) {
        FeatheredStar square = new FeatheredStar(straight, slant, true);
        return square.feather(side).times(straight * ROOT - slant);
    }

    /** The star in a block of the given finished side. */
    public Block across(Length side) {
        double f = 1 / (2 * halfSide());
        double g = f * slantShare();
        double c = g * ROOT + straight * f;
        BlockDraft draft = Block.onGrid("Feathered Star", 1, side).square(BACKGROUND, 0, 0, c);
        double deep = f + slant * g / ROOT;
        Point apex = new Point(0.5, deep);
        draft = draft.patch(BACKGROUND, Path.polygon(new Point(c, 0), new Point(1 - c, 0), apex)).square(ACCENT, c, c, f);
        double h = g / ROOT;
        Point low = apex.plus(0, g * ROOT);
        draft = draft.patch(ACCENT, Path.polygon(apex, apex.plus(h, h), low, apex.plus(-h, h)));
        draft = point(draft, f, g, c, p -> p);
        draft = point(draft, f, g, c, p -> new Point(1 - p.x(), p.y()));
        draft = draft.turnedFourTimes();
        List<Point> centre = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Transform turn = Transform.turn(Angle.QUARTER.times(i), new Point(0.5, 0.5));
            centre.add(turn.of(new Point(c + f, c + f)));
            if (!squareCentre) {
                centre.add(turn.of(low));
            }
        }
        return draft.patch(LIGHT, Path.polygon(centre)).block();
    }

    /** One star point with its tip at (c, 0): the diamond, the body and the feathers down both sides. */
    private BlockDraft point(BlockDraft before, double f, double g, double c, UnaryOperator<Point> lie) {
        Point tip = new Point(c, 0);
        Point along = new Point(1 / ROOT, 1 / ROOT);
        Point inwards = new Point(-g / ROOT, g / ROOT);
        Point inner = tip.plus(f, f + g * ROOT);
        BlockDraft draft = add(before, ACCENT, lie, tip, tip.plus(along.times(f * ROOT)), inner, tip.plus(0, g * ROOT));
        draft = add(draft, MEDIUM, lie, inner, tip.plus(along.times(f * ROOT + slant * g)).plus(along.times(g)).plus(inwards), new Point(c + f, c + f));
        for (int k = 0; k < straight; k++) {
            Point from = tip.plus(0, g * ROOT + k * f);
            draft = add(draft, BACKGROUND, lie, from, from.plus(f, f), from.plus(0, f));
            if (k > 0) {
                draft = add(draft, DARK, lie, from, from.plus(f, 0), from.plus(f, f));
            }
        }
        for (int k = 0; k < slant; k++) {
            Point from = tip.plus(along.times(f * ROOT + k * g));
            Point to = from.plus(along.times(g));
            draft = add(draft, BACKGROUND, lie, from, to, to.plus(inwards));
            if (k > 0) {
                draft = add(draft, DARK, lie, from, to.plus(inwards), from.plus(inwards));
            }
        }
        return draft;
    }

    private static BlockDraft add(BlockDraft draft, Role role, UnaryOperator<Point> lie, Point... corners) {
        return draft.patch(role, Path.polygon(List.of(corners).stream().map(lie).toList()));
    }

    /**
     * The star with a block of its own in the square centre.
     *
     * @throws IllegalArgumentException if the centre's sides bend, or the block isn't square
     */
    public Block across(Length side, Block centre) {
        if (!squareCentre || !centre.isRectangular() || !centre.width().equals(centre.height())) {
            throw new IllegalArgumentException("'" + centre.name() + "' can't stand in the centre: "
                    + (squareCentre ? "it is " + centre.width() + " x " + centre.height() + "; use a square block"
                            : "with equal feathers the centre is no square; use the star without equalFeathers"));
        }
        Block star = across(side);
        Patch whole = star.patches().get(star.patchCount() - 1);
        List<Patch> patches = new ArrayList<>(star.patches().subList(0, star.patchCount() - 1));
        Transform place = Transform.scale(whole.shape().bounds().width() / centre.outline().bounds().width())
                .then(Transform.move(whole.shape().bounds().topLeft()));
        for (Patch p : centre.patches()) {
            patches.add(p.transformed(place).named("centre-" + p.id()));
        }
        return Block.of("Feathered Star with " + centre.name(), star.outline(), patches);
    }

    /**
     * The star in the units that it is sewn from: four corners, four sides and the centre. The seams between
     * them turn at the diamonds: sew them in part and finish them last (common practice).
     */
    public Assembly inUnits(Length side) {
        Block star = across(side);
        double s = side.inInches();
        double f = s / (2 * halfSide());
        double g = f * slantShare();
        double c = g * ROOT + straight * f;
        Point middle = new Point(s / 2, s / 2);
        List<Point> edge = List.of(new Point(c, 0), new Point(c + f, f), new Point(c + f, f + g * ROOT), new Point(c + f, c + f));
        List<Point> corner = new ArrayList<>(edge);
        List<Point> top = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            top.add(new Point(s - edge.get(i).x(), edge.get(i).y()));
            if (i > 0) {
                corner.add(new Point(edge.get(3 - i).y(), edge.get(3 - i).x()));
            }
        }
        corner.add(Point.ORIGIN);
        if (!squareCentre) {
            top.add(new Point(s / 2, f + slant * g / ROOT + g * ROOT));
        }
        for (int i = 3; i >= 0; i--) {
            top.add(edge.get(i));
        }
        Block cornerUnit = unit("corner", corner, star);
        Block sideUnit = unit("side", top, star);
        List<Placed> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Transform turn = Transform.turn(Angle.QUARTER.times(i), middle);
            parts.add(new Placed("corner" + (i + 1), cornerUnit, turn));
            parts.add(new Placed("side" + (i + 1), sideUnit, Transform.move(c, 0).then(turn)));
        }
        Patch whole = star.patches().get(star.patchCount() - 1);
        Point at = whole.shape().bounds().topLeft();
        parts.add(Placed.at("centre", Block.of("centre", whole.shape(), List.of(whole)), at.x(), at.y()));
        return Assembly.of("Feathered Star", star.outline(), parts);
    }

    private static Block unit(String name, List<Point> around, Block star) {
        Region outline = Region.of(Path.polygon(around));
        return Block.of(name, outline, star.patches().stream().filter(p -> outline.contains(p.shape().inside())).toList());
    }

    /** Every measure of the star in a block of the given side: what is exact, and how large the compromise is. */
    public Table report(Length side) {
        double f = side.inInches() / (2 * halfSide());
        double g = f * slantShare();
        Length miss = missIfCutAlike(side);
        Table table = Table.of("Feathered star of " + straight + " and " + slant + " feathers, " + side, "what", "exactly", "nearest 1/16 in");
        table = measure(table, "straight feather, short side", f);
        table = measure(table, "slant feather, short side", g);
        table = measure(table, "straight side of a star point", straight * f);
        table = measure(table, "slanting side of a star point", slant * g);
        table = measure(table, "diamond, side beside the straight feathers", g * ROOT);
        table = measure(table, "diamond, side beside the slant feathers", f * ROOT);
        table = measure(table, "corner square", g * ROOT + straight * f);
        table = measure(table, "side triangle, long side", 2 * (f + slant * g / ROOT));
        table = measure(table, squareCentre ? "centre square" : "centre, from corner to corner", 2 * slant * g / ROOT);
        table = table.row("angle of the diamond at a tip", "45°", "");
        table = table.row("each side of the centre bends by", centreBend(), squareCentre ? "straight" : bend() > 0 ? "inwards" : "outwards");
        table = table.row("slant feather less straight feather", decimal(g - f), percent(slantShare() - 1));
        return table.row("a slanting side's miss if all feathers of a square centre are cut alike", decimal(miss.inInches()),
                decimal(miss.inInches() / slant) + " a feather");
    }

    /** The numbers of feathers from 2 on, and how nearly each comes out if all feathers are cut alike: the fewer per cent the better. */
    public static Table choices(int most) {
        Table table = Table.of("Feathers that nearly come out", "straight", "slanting", "slant feather larger by", "centre bends, equal feathers");
        for (int n = 2; n <= most; n++) {
            FeatheredStar star = of(n);
            table = table.row(n, star.slant(), percent(star.slantShare() - 1), star.equalFeathers().centreBend());
        }
        return table;
    }

    private static Table measure(Table table, String what, double inches) {
        return table.row(what, decimal(inches), Length.inches(inches).roundedTo(Length.inches(1, 16)));
    }

    private static String decimal(double inches) {
        return String.format(Locale.ROOT, "%.4f in", inches);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%+.2f %%", 100 * share);
    }
}
