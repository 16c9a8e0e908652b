package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.cutting.pieces.CutOutline;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.seams.Notch;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;

/**
 * One template at full size: the cutting line, the finished line within it dashed, notches from one to the
 * other, a letter, what is cut by it, and an arrow along the straight grain.
 *
 * @param letters  of the pieces that it serves
 * @param finished the seam line, or the line along which an edge is turned under
 * @param cut      the cutting line round it
 * @param uses     what is cut by it, a line each
 * @param upright  true if the lengthwise grain runs up the page
 */
public record Template(List<String> letters, Region finished, Region cut, List<Notch> notches, List<String> uses, boolean upright)
        implements Drawable {

    private static final Pen CUT = Pen.of(Colour.BLACK, 0.014);
    private static final Pen SEAM = Pen.of(Colour.hex("#55524d"), 0.009).dashed(0.08, 0.05);
    private static final Pen FINE = Pen.of(Colour.BLACK, 0.009);
    private static final Colour INK = Colour.hex("#2b2b2b");
    /** Lettering smaller than this can't be read on paper. */
    private static final double LEAST = 7.05 / 72;

    public Template {
        letters = List.copyOf(letters);
        notches = List.copyOf(notches);
        uses = List.copyOf(uses);
    }

    /** For piecing: the seam allowance all round, points trimmed for matching. */
    public static Template of(Piece piece, Length seam) {
        return new Template(List.of(piece.letter()), piece.finished(), piece.cutOutline(seam), piece.notches(), List.of(use(piece, false)),
                isTall(piece.finished()));
    }

    /** For appliqué: the finished line and, round it, the line to cut along, so far out that the edge can be turned under. */
    public static Template turned(Piece piece, Length allowance) {
        return new Template(List.of(piece.letter()), piece.finished(), CutOutline.turned(piece.finished(), allowance), List.of(),
                List.of(use(piece, false), "turn under"), isTall(piece.finished()));
    }

    private static boolean isTall(Region shape) {
        return shape.bounds().height() >= shape.bounds().width();
    }

    private static String use(Piece piece, boolean reversed) {
        return piece.letter() + ": cut " + piece.count() + " " + piece.fabric().name() + (reversed ? ", reversed" : "");
    }

    /** The same template used for another piece too, turned over if need be. */
    Template alsoFor(Piece piece, boolean reversed) {
        List<String> all = new ArrayList<>(letters);
        all.add(piece.letter() + (reversed ? "r" : ""));
        List<String> lines = new ArrayList<>(uses);
        lines.add(use(piece, reversed));
        return new Template(all, finished, cut, notches, lines, upright);
    }

    /** A quarter turned, its lettering upright all the same. */
    public Template quarterTurned() {
        Transform t = Transform.turn(Angle.QUARTER);
        return new Template(letters, finished.transformed(t), cut.transformed(t), notches.stream().map(n -> n.transformed(t)).toList(), uses, !upright);
    }

    /** The template, its top left corner at the origin. */
    public Picture picture() {
        List<Picture> parts = new ArrayList<>();
        parts.add(new Picture.Shape(cut.paths(), Paint.NONE, CUT));
        parts.add(new Picture.Shape(finished.paths(), Paint.NONE, SEAM));
        for (Notch n : notches) {
            parts.add(new Picture.Shape(List.of(Path.through(n.at(), n.at().plus(n.outward().times(allowance())))), Paint.NONE, CUT));
        }
        words(parts);
        Picture all = Picture.group(parts);
        Box box = all.bounds();
        return all.moved(-box.left(), -box.top());
    }

    /** How far the cutting line lies outside the finished line. */
    private double allowance() {
        return (cut.bounds().width() - finished.bounds().width()) / 2;
    }

    /** The lettering stands in the largest circle within; what has no room there stands beneath. */
    private void words(List<Picture> parts) {
        MaximumInscribedCircle circle = new MaximumInscribedCircle(Polygons.of(finished, 1e-3), 0.01);
        Point middle = new Point(circle.getCenter().getX(), circle.getCenter().getY());
        double r = circle.getRadiusLine().getLength();
        double big = Math.max(LEAST, fitted(String.join(" ", letters), Math.min(0.3, r * 0.6), r * 1.1));
        double small = uses.stream().mapToDouble(u -> fitted(u, Math.min(0.14, r * 0.3), r * 1.25)).min().orElse(LEAST);
        boolean within = small >= LEAST && uses.size() * small * 1.3 < r * 0.75;
        Point base = middle.plus(0, within ? 0 : big * 0.35);
        parts.add(new Picture.Lettering(String.join(" ", letters), base, big, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, INK));
        for (int i = 0; i < uses.size(); i++) {
            parts.add(within ? Picture.text(uses.get(i), middle.plus(0, small * 1.3 * (i + 1)), small)
                    : Picture.text(uses.get(i), new Point(cut.bounds().centre().x(), cut.bounds().bottom() + 0.15 * (i + 1)), 0.11));
        }
        Point along = upright ? new Point(0, 1) : new Point(1, 0);
        Point at = middle.plus(upright ? new Point(-0.74 * r, 0) : new Point(0, -0.74 * r));
        double arm = Math.min(0.6, r * 0.55);
        parts.add(arrow(at.plus(along.times(-arm)), at.plus(along.times(arm)), Math.min(0.1, arm * 0.3)));
    }

    private static double fitted(String text, double size, double width) {
        double has = Picture.text(text, Point.ORIGIN, size).bounds().width();
        return has <= width ? size : size * width / has;
    }

    /** A line with a head at both ends. */
    private static Picture arrow(Point from, Point to, double head) {
        Point u = to.minus(from).unit().times(head);
        Point side = u.quarterTurned().times(0.45);
        return new Picture.Shape(List.of(Path.through(from, to), Path.through(to.minus(u).plus(side), to, to.minus(u).minus(side)),
                Path.through(from.plus(u).plus(side), from, from.plus(u).minus(side))), Paint.NONE, FINE);
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(picture(), String.join("; ", uses));
    }
}
