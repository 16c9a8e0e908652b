package org.calicograph.stitching;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.drawing.Tiling;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;

/** Lines at full size, to be carried over to the quilt or to a machine. */
public final class Marking {

    private static final Colour INK = Colour.hex("#1a1a1a");

    /** What is printed with every stencil. */
    public static final String CAUTION = "Knives and hot irons hurt: cut on a mat, away from your hand; let freezer paper cool. "
            + "Try every marker on a scrap and follow its maker's instructions.";

    private Marking() { }

    /** The lines as a stencil at full size on pages, the key first. A mirrored tiling is for freezer paper ironed to the wrong side. */
    public static List<Picture> stencil(String title, Collection<Path> lines, Tiling tiling) {
        return tiling.pages(title, stencil(lines));
    }

    /** The lines to mark, in ink as wide as a pencil's. */
    public static Picture stencil(Collection<Path> lines) {
        return new Picture.Shape(List.copyOf(some(lines)), Paint.NONE, Pen.of(INK, 0.02));
    }

    /** Holes to prick along the lines for pounce powder, evenly spaced with one at both ends of every segment. */
    public static List<Point> pricks(Path path, Length spacing) {
        if (!spacing.isPositive()) {
            throw new IllegalArgumentException("holes " + spacing + " apart can't be pricked; use a spacing above 0, such as 1/8 in");
        }
        List<Point> holes = new ArrayList<>();
        holes.add(path.start());
        for (var s : path.segments()) {
            int parts = Math.max(1, (int) Math.ceil(s.length() / spacing.inInches() - 1e-9));
            for (int i = 1; i <= parts; i++) {
                holes.add(s.at((double) i / parts));
            }
        }
        return holes;
    }

    /** The lines as holes to prick, at full size on pages. */
    public static List<Picture> pounce(String title, Collection<Path> lines, Length spacing, Tiling tiling) {
        List<Path> dots = new ArrayList<>();
        some(lines).forEach(p -> pricks(p, spacing).forEach(hole -> dots.add(Path.circle(hole, 0.02))));
        return tiling.pages(title, new Picture.Shape(dots, Paint.of(INK), Pen.NONE));
    }

    /** SVG for a machine: one path an element, in stitching order, true to scale; arcs stay arcs. */
    public static String machineSvg(Route route) {
        List<Picture> runs = new ArrayList<>();
        for (Path path : route.paths()) {
            runs.add(new Picture.Shape(List.of(path), Paint.NONE, Pen.of(INK, 0.01)));
        }
        return SvgWriter.write(Picture.group(runs));
    }

    private static Collection<Path> some(Collection<Path> lines) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("there are no lines to mark; give it at least one path");
        }
        return lines;
    }
}
