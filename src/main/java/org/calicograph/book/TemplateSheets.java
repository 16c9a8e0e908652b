package org.calicograph.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.fabric.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.workshop.pieces.Piece;

/** Templates at full size: the cutting line, the seam line within it, the grain. */
public final class TemplateSheets {

    private static final Pen CUT = Pen.of(Colour.BLACK, 0.014);
    private static final Pen SEAM = Pen.of(Colour.hex("#55524d"), 0.009).dashed(0.08, 0.05);
    private static final double GAP = 0.25;

    private TemplateSheets() { }

    /** One template, its cutting line's top left corner at the origin. */
    public static Picture template(Piece piece, Length seam) {
        Region cut = piece.cutOutline(seam);
        Box box = cut.bounds();
        Point middle = piece.finished().inside();
        double side = Math.min(piece.finished().bounds().width(), piece.finished().bounds().height());
        double size = Math.max(0.06, Math.min(0.22, side / 6));
        List<Picture> parts = new ArrayList<>();
        parts.add(new Picture.Shape(cut.paths(), Paint.NONE, CUT));
        parts.add(new Picture.Shape(piece.finished().paths(), Paint.NONE, SEAM));
        parts.add(Picture.text(piece.letter(), middle, size));
        parts.add(Picture.text("cut " + piece.count(), middle.plus(0, size * 0.9), size * 0.55));
        parts.add(Picture.text(piece.fabric().name(), middle.plus(0, size * 1.6), size * 0.55));
        double arrow = Math.min(0.5, side / 5);
        Point at = middle.plus(0, -size * 1.2);
        parts.add(new Picture.Shape(List.of(Path.through(at.plus(-arrow, 0), at.plus(arrow, 0)),
                Path.through(at.plus(-arrow * 0.7, -arrow * 0.15), at.plus(-arrow, 0), at.plus(-arrow * 0.7, arrow * 0.15)),
                Path.through(at.plus(arrow * 0.7, -arrow * 0.15), at.plus(arrow, 0), at.plus(arrow * 0.7, arrow * 0.15))),
                Paint.NONE, Pen.of(Colour.BLACK, 0.008)));
        return Picture.group(parts).moved(-box.left(), -box.top());
    }

    /**
     * Pages at full size, the first with a test square. Templates that fit a page stand whole on one.
     *
     * @param mirrored for freezer paper ironed to the wrong side
     */
    public static List<Picture> pages(List<Piece> pieces, Length seam, Paper paper, boolean mirrored) {
        Tiling tiling = Tiling.on(paper).mirrored(mirrored);
        double stepX = paper.width().minus(tiling.margin().times(2)).minus(tiling.overlap()).inInches();
        double stepY = paper.height().minus(tiling.margin().times(2)).minus(tiling.overlap()).inInches();
        List<Picture> small = new ArrayList<>();
        List<Picture> pages = new ArrayList<>();
        for (Piece p : pieces) {
            Picture t = template(p, seam);
            if (t.bounds().width() <= stepX - GAP && t.bounds().height() <= stepY - GAP) {
                small.add(t);
            } else {
                pages.addAll(tiling.pages("Template " + p.letter(), t));
            }
        }
        if (!small.isEmpty()) {
            pages.addAll(0, tiling.pages("Templates", celled(small, stepX, stepY)));
        }
        return List.copyOf(pages);
    }

    /** Small templates in rows, the cells of the tiling side by side, so that no join runs through one. */
    private static Picture celled(List<Picture> small, double stepX, double stepY) {
        List<Picture> placed = new ArrayList<>();
        small = new ArrayList<>(small);
        small.sort(Comparator.comparingDouble((Picture p) -> -p.bounds().height()));
        int cell = 0;
        double x = 0;
        double y = 0;
        double row = 0;
        for (Picture p : small) {
            Box b = p.bounds();
            if (x + b.width() > stepX - GAP) {
                x = 0;
                y += row + GAP;
                row = 0;
            }
            if (y + b.height() > stepY - GAP) {
                cell++;
                x = 0;
                y = 0;
                row = 0;
            }
            placed.add(p.moved(cell * stepX + x - b.left(), y - b.top()));
            x += b.width() + GAP;
            row = Math.max(row, b.height());
        }
        return Picture.group(placed);
    }
}
