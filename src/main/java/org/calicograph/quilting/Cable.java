package org.calicograph.quilting;

import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/**
 * A cable: strands plaited over and under along a band. Two make the twist of most old borders, more a braid. Along an open
 * curve its ends are closed: every strand turns back there, so that nothing ends loose. Round a border a whole number of
 * crossings stands on every half side and in every half corner, so that all four corners are alike and each side is
 * mirrored at its middle.
 *
 * @param strands cut by a line across the band, 2 to 8; at the ends of an open curve only an even number can turn back in pairs
 * @param height  from the outermost line on one side of the band to that on the other
 * @param pitch   from one crossing of two strands to the next along the band, about: stretched until a whole number fits
 * @param rope    between the two lines of a strand; 0 for strands of one line that cross each other
 */
public record Cable(int strands, Length height, Length pitch, Length rope) implements Drawable {

    private static final int MOST = 8;
    /** How near to the centre of a bend the inner edge of the cable may come, of its height. */
    private static final double TIGHTEST = 0.25;
    /** What a corner turned more tightly than it need be weighs, against crossings that stand nearer or wider than asked. */
    private static final double TIGHT = 0.8;
    /** From the line down the middle of a border to its inner corner, less a little, of the border's width. */
    private static final double CLEAR = 0.98 / Math.sqrt(2);
    private static final int TRIES = 24;

    /** @throws IllegalArgumentException if the strands can't be counted, have no length, or fill what lies between them */
    public Cable {
        if (strands < 2 || strands > MOST) {
            throw new IllegalArgumentException("a cable of " + strands + " strands can't be plaited; use 2 to " + MOST);
        }
        if (!height.isPositive() || !pitch.isPositive() || rope.units() < 0) {
            throw new IllegalArgumentException("a cable " + height + " high with " + pitch + " from crossing to crossing and strands " + rope
                    + " wide has no shape; use lengths above 0");
        }
        Length most = widest(strands, height, pitch);
        if (rope.compareTo(most) > 0) {
            throw new IllegalArgumentException("strands " + rope + " wide leave nothing between them in a cable of " + strands + ", " + height
                    + " high, with " + pitch + " from crossing to crossing; make them at most " + below(most.inInches()) + " wide");
        }
    }

    /** The sixteenth of an inch at or below. */
    private static Length below(double inches) {
        return Length.inches(Math.floor(16 * inches + 1e-9) / 16);
    }

    private static Length widest(int strands, Length height, Length pitch) {
        // The strands run in the diagonals of cells half a pitch long; a strand takes at most two fifths of what lies between two of them.
        double cell = height.inInches() / strands;
        double half = pitch.inInches() / 2;
        return Length.inches(0.8 * cell * half / Math.hypot(cell, half));
    }

    /** A cable whose strands cross at right angles, each of one line. */
    public static Cable of(int strands, Length height) {
        return new Cable(strands, height, height.times(2).dividedBy(Math.max(1, strands)), Length.ZERO);
    }

    /** The same, drawn out or pushed together along its band. */
    public Cable pitch(Length fromCrossingToCrossing) {
        return new Cable(strands, height, fromCrossingToCrossing, rope);
    }

    /** The same with strands of two lines, which pass over and under each other by turns. */
    public Cable roped(Length width) {
        return new Cable(strands, height, pitch, width);
    }

    /**
     * Along any smooth curve. A closed one is plaited all the way round; at the ends of an open one the strands turn back.
     *
     * @throws IllegalArgumentException if an odd number of strands should turn back, or the curve bends too tightly
     */
    public List<Path> along(Spine spine) {
        if (!spine.isClosed() && strands % 2 == 1) {
            throw new IllegalArgumentException("a cable of " + strands + " strands along an open line would leave one of them loose at its end; use "
                    + (strands - 1) + " or " + Math.min(MOST, strands + 1) + " strands, or a closed line");
        }
        requireReach(spine);
        int cells = 2 * Math.max(1, (int) Math.round(spine.length() / pitch.inInches()));
        double[] steps = new double[cells];
        java.util.Arrays.fill(steps, spine.length() / cells);
        double[] depths = new double[cells + 1];
        java.util.Arrays.fill(depths, 1);
        return new Plait(this, spine, steps, depths).lines();
    }

    private void requireReach(Spine spine) {
        double reach = Math.min(spine.reach(true), spine.reach(false));
        if (reach < (0.5 + TIGHTEST) * height.inInches() - 1e-9) {
            throw new IllegalArgumentException("the line bends with a radius of " + Length.inches(reach).roundedTo(Length.inches(1, 16)) + ", too tightly for a cable "
                    + height + " high; make it at most " + below(reach / (0.5 + TIGHTEST)) + " high or the bend wider");
        }
    }

    /** How sides and corners share the way round: cells to half a side and half a corner, and how far that is from what is wanted. */
    private record Shares(double radius, int across, int down, int corner, double worst) { }

    /**
     * In a border that runs round a box, down its middle and round its corners.
     *
     * @throws IllegalArgumentException if the border is too narrow for the cable to turn its corners, or the box too small
     */
    public List<Path> inBorder(Box outer, Length borderWidth) {
        double w = borderWidth.inInches();
        double h = height.inInches();
        double least = (0.5 + TIGHTEST) * h;
        // Where the cable turns, its inner edge must not come out over the border's inner corner.
        double widest = Math.min((CLEAR * w - h / 2) / (Math.sqrt(2) - 1), 1.5 * w);
        if (widest < least) {
            double share = CLEAR / (0.5 + (Math.sqrt(2) - 1) * (0.5 + TIGHTEST));
            throw new IllegalArgumentException("a cable " + height + " high can't turn the corner of a border " + borderWidth + " wide; make it at most "
                    + below(share * w) + " high");
        }
        double room = Math.min(outer.width(), outer.height()) / 2 - w / 2 - pitch.inInches() / 2;
        if (room < least) {
            throw new IllegalArgumentException("a cable " + height + " high in a border " + borderWidth + " wide leaves no side on a box of "
                    + Length.inches(outer.width()) + " x " + Length.inches(outer.height()) + "; make the cable lower or the box larger");
        }
        double most = Math.min(widest, room);
        Shares best = shares(outer, w, most, most);
        for (int i = 0; i < TRIES; i++) {
            Shares next = shares(outer, w, least + (most - least) * i / TRIES, most);
            best = next.worst() < best.worst() ? next : best;
        }
        Spine spine = Spine.around(outer.grownBy(-w / 2), best.radius());
        double bend = Math.PI / 2 * best.radius();
        double across = outer.width() - w - 2 * best.radius();
        double down = outer.height() - w - 2 * best.radius();
        double[] steps = new double[4 * (best.across() + best.down() + 2 * best.corner())];
        double[] depths = new double[steps.length + 1];
        java.util.Arrays.fill(depths, 1);
        int at = 0;
        for (int side = 0; side < 4; side++) {
            int cells = 2 * (side % 2 == 0 ? best.across() : best.down());
            java.util.Arrays.fill(steps, at, at + cells, (side % 2 == 0 ? across : down) / cells);
            java.util.Arrays.fill(steps, at + cells, at + cells + 2 * best.corner(), bend / (2 * best.corner()));
            java.util.Arrays.fill(depths, at + cells + 1, at + cells + 2 * best.corner(), Math.pow(1 - h / 2 / best.radius(), 2.0 / strands));
            at += cells + 2 * best.corner();
        }
        return new Plait(this, spine, steps, depths).lines();
    }

    private Shares shares(Box outer, double w, double radius, double most) {
        double wanted = pitch.inInches() / 2;
        double[] lengths = {(outer.width() - w) / 2 - radius, (outer.height() - w) / 2 - radius, Math.PI / 4 * radius};
        int[] cells = new int[3];
        double worst = 0;
        for (int i = 0; i < 3; i++) {
            cells[i] = Math.max(1, (int) Math.round(lengths[i] / wanted));
            worst = Math.max(worst, Math.abs(Math.log(lengths[i] / cells[i] / wanted)));
        }
        return new Shares(radius, cells[0], cells[1], cells[2], worst + TIGHT * (1 - radius / most));
    }

    /** Four pitches of it, closed at its ends where its strands can be. */
    @Override
    public Exhibit show() {
        double length = 4 * pitch.inInches();
        List<Path> lines = strands % 2 == 0 ? along(Spine.along(Path.through(Point.ORIGIN, Point.of(length, 0))))
                : along(Spine.along(Path.circle(Point.ORIGIN, Math.max(length / 3, height.inInches()))));
        return Exhibit.of(new Picture.Shape(lines, Paint.NONE, Pen.of(Colour.hex("#24425c"), length / 240)), "cable of " + strands + " strands");
    }
}
