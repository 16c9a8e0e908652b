package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * Graph paper at full size: squares, triangles of 60 degrees, or rings and rays. It is a picture like any
 * other: print it, or lay it under a drawing.
 *
 * @param step   the side of a square or triangle, or the distance from ring to ring
 * @param heavy  every so many lines is a heavy one, counted from the middle; 0 for none
 * @param rays   of polar paper; 0 for the others
 * @param width  of the ruled part
 * @param height of the ruled part
 */
public record GraphPaper(Kind kind, Length step, int heavy, int rays, Length width, Length height) implements Drawable {

    /** How the paper is ruled. */
    public enum Kind { SQUARES, TRIANGLES, POLAR }

    private static final Colour INK = Colour.hex("#7f9fa3");
    private static final Pen FINE = Pen.of(INK, 0.006);
    private static final Pen BOLD = Pen.of(INK, 0.014);
    private static final int MOST_LINES = 4000;
    /** Clear of the edge of a sheet, where printers can't print. */
    private static final Length MARGIN = Length.inches(1, 2);

    public GraphPaper {
        if (!step.isPositive() || !width.isPositive() || !height.isPositive() || heavy < 0 || rays < 0) {
            throw new IllegalArgumentException("graph paper of " + width + " x " + height + " with a step of " + step
                    + " can't be ruled; use sizes above 0");
        }
        if (kind == Kind.POLAR && rays < 2) {
            throw new IllegalArgumentException("polar paper of " + rays + " rays has no angles; use 2 or more");
        }
        double lines = 3 * Math.max(width.ratioTo(step), height.ratioTo(step)) + rays;
        if (lines > MOST_LINES) {
            throw new IllegalArgumentException("graph paper of " + width + " x " + height + " with a step of " + step + " has more than "
                    + MOST_LINES + " lines; use a larger step");
        }
    }

    /** Squares, ten inches each way, with every fourth line heavy: four to the inch where the step is 1/4 in. */
    public static GraphPaper squares(Length step) {
        return new GraphPaper(Kind.SQUARES, step, 4, 0, Length.inches(10), Length.inches(10));
    }

    /** Isometric paper: triangles with angles of 60 degrees, one family of lines level. */
    public static GraphPaper triangles(Length side) {
        return new GraphPaper(Kind.TRIANGLES, side, 4, 0, Length.inches(10), Length.inches(10));
    }

    /** Rings about the middle and so many rays, the first upwards. */
    public static GraphPaper polar(int rays, Length ring) {
        return new GraphPaper(Kind.POLAR, ring, 4, rays, Length.inches(10), Length.inches(10));
    }

    /** Every so many lines a heavy one. */
    public GraphPaper heavyEvery(int lines) {
        return new GraphPaper(kind, step, lines, rays, width, height);
    }

    /** A sheet so wide and so high. */
    public GraphPaper sized(Length across, Length down) {
        return new GraphPaper(kind, step, heavy, rays, across, down);
    }

    /** As large as a sheet allows, with 1/2 in clear around. */
    public GraphPaper on(Paper sheet) {
        return sized(sheet.width().minus(MARGIN.times(2)), sheet.height().minus(MARGIN.times(2)));
    }

    /** The ruling at full size, its top left corner at the origin. */
    public Picture picture() {
        Box box = Box.of(width, height);
        List<Path> fine = new ArrayList<>();
        List<Path> bold = new ArrayList<>();
        if (kind == Kind.POLAR) {
            polar(box, fine, bold);
        } else {
            double s = step.inInches();
            boolean square = kind == Kind.SQUARES;
            double apart = square ? s : s * Math.sqrt(3) / 2;
            for (double degrees : square ? new double[] {0, 90} : new double[] {0, 60, 120}) {
                family(box, Angle.degrees(degrees), apart, fine, bold);
            }
        }
        List<Picture> parts = new ArrayList<>();
        parts.add(Picture.of(Path.rectangle(box)).outlined(FINE));
        add(Trim.within(box, fine), FINE, parts);
        add(Trim.within(box, bold), BOLD, parts);
        return Picture.group(parts);
    }

    private static void add(List<Path> lines, Pen pen, List<Picture> into) {
        if (!lines.isEmpty()) {
            into.add(new Picture.Shape(lines, Paint.NONE, pen));
        }
    }

    /** Parallel lines; one runs through the middle, but squares are counted from the corner, as a ruler is. */
    private void family(Box box, Angle direction, double apart, List<Path> fine, List<Path> bold) {
        Point origin = kind == Kind.SQUARES ? box.topLeft() : box.centre();
        Point along = Point.polar(box.width() + box.height(), direction);
        Point across = Point.polar(apart, direction.plus(Angle.QUARTER));
        int reach = (int) Math.ceil((box.width() + box.height()) / apart);
        for (int i = -reach; i <= reach; i++) {
            Point at = origin.plus(across.times(i));
            Path line = Path.through(at.minus(along), at.plus(along));
            if (line.bounds().touches(box)) {
                (isHeavy(i) ? bold : fine).add(line);
            }
        }
    }

    private void polar(Box box, List<Path> fine, List<Path> bold) {
        Point middle = box.centre();
        double far = Math.hypot(box.width(), box.height()) / 2;
        for (int i = 1; i * step.inInches() <= far; i++) {
            (isHeavy(i) ? bold : fine).add(Path.circle(middle, i * step.inInches()));
        }
        for (int i = 0; i < rays; i++) {
            Point end = Transform.turn(Angle.turn(i, rays), middle).of(middle.plus(0, -far));
            (rays % 4 == 0 && i % (rays / 4) == 0 ? bold : fine).add(Path.through(middle, end));
        }
    }

    private boolean isHeavy(int line) {
        return heavy > 0 && Math.floorMod(line, heavy) == 0;
    }

    @Override
    public Exhibit show() {
        String what = switch (kind) {
            case SQUARES -> "squares of " + step;
            case TRIANGLES -> "triangles of " + step;
            case POLAR -> rays + " rays " + Angle.turn(1, rays) + " apart, rings every " + step;
        };
        return Exhibit.of(picture(), "graph paper, " + what + "; print at full size and measure it first");
    }
}
