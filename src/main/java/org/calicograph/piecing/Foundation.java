package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.cutting.pieces.CutOutline;
import org.calicograph.seams.AssemblyOrder;
import org.calicograph.seams.FewestSections;
import org.calicograph.seams.Sections;
import org.calicograph.seams.Unit;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Foundation patterns of a block: sections lettered, patches numbered in the order of sewing, all
 * mirrored, since cloth is sewn to the back of the pattern.
 *
 * @param sections A first
 * @param joins    how they are joined by their letters, in order; empty where the sewing plan alone tells
 * @param atLeast  fewer sections than this won't do, whatever the order of sewing
 */
public record Foundation(Block block, Length seam, List<Sections.Section> sections, List<String> joins, int atLeast) implements Drawable {

    private static final double ROW = 7;
    private static final double GAP = 0.25;

    public Foundation {
        sections = List.copyOf(sections);
        joins = List.copyOf(joins);
    }

    /** @throws IllegalArgumentException naming the seam, if the block has other than straight seams */
    public static Foundation of(Block block) {
        return of(block, Length.inches(1, 4));
    }

    /**
     * The fewest foundations that sew the block, with a seam allowance of one's own: over every order of sewing, or, where a block is too large to try
     * all, the fewest that were found, with a bound; see {@link FewestSections}.
     *
     * @throws IllegalArgumentException naming the seam, if the block has other than straight seams from edge to edge
     */
    public static Foundation of(Block block, Length seam) {
        List<Unit.Single> patches = block.patches().stream().map(p -> new Unit.Single(p.id(), p.shape())).toList();
        return FewestSections.of(patches).map(f -> new Foundation(block, seam, f.sections(), f.joins(), f.atLeast()))
                .orElseGet(() -> new Foundation(block, seam, Sections.of(AssemblyOrder.of(block)), List.of(), 1));
    }

    /** One sentence: how many sections, whether that is proved, and how they are joined. */
    public String words() {
        int n = sections.size();
        String many = block.name() + " in " + n + (n == 1 ? " section" : " sections") + (n == 1 || atLeast < n && joins.isEmpty() ? "" : atLeast == n ? ", the fewest there can be"
                : ", which is not proved to be the fewest; at least " + atLeast + " are needed");
        return many + "; mirrored, since cloth is sewn to the back. Sew in the order of the numbers" + (n == 1 ? "."
                : joins.isEmpty() ? ", then join the sections as the sewing plan shows." : ", then join " + String.join("; ", joins) + ".");
    }

    /** The outline of a section: the hull of its patches, which is what they cover; where they cover less, what they cover together. */
    static Region outline(Sections.Section section) {
        List<Geometry> shapes = section.patches().stream().map(s -> (Geometry) Polygons.of(s.shape(), Region.ACCURACY)).toList();
        double area = shapes.stream().mapToDouble(Geometry::getArea).sum();
        Geometry hull = Polygons.FACTORY.createGeometryCollection(shapes.toArray(Geometry[]::new)).convexHull();
        if (hull.getArea() - area < 1e-4 * area) {
            return Polygons.regions(hull).get(0);
        }
        Geometry all = shapes.get(0);
        for (Geometry shape : shapes.subList(1, shapes.size())) {
            all = OverlayNGRobust.overlay(all, shape, OverlayNG.UNION);
        }
        return Polygons.regions(all).stream().max(Comparator.comparingDouble(r -> r.area().squareInches())).orElseThrow();
    }

    /** One section at full size, mirrored, with its seam allowance around. */
    public Picture pattern(int index) {
        Sections.Section section = sections.get(index);
        Pen line = Pen.of(Colour.BLACK, 0.012);
        List<Picture> parts = new ArrayList<>();
        parts.add(new Picture.Shape(CutOutline.of(outline(section), seam).paths(), Paint.NONE, line.dashed(0.08, 0.05)));
        int number = 1;
        for (Unit.Single s : section.patches()) {
            parts.add(new Picture.Shape(mirrored(s.shape()).paths(), Paint.NONE, line));
            double room = Math.min(s.shape().bounds().width(), s.shape().bounds().height());
            double size = Math.max(0.07, Math.min(0.2, room / 4));
            parts.add(Picture.text(FewestSections.letter(index) + number++, mirrored(s.shape()).inside().plus(0, size * 0.35), size));
        }
        parts.set(0, parts.get(0).transformed(Transform.mirrorAcross(0)));
        Picture all = Picture.group(parts);
        Box box = all.bounds();
        return all.moved(-box.left(), -box.top());
    }

    private static Region mirrored(Region shape) {
        return shape.transformed(Transform.mirrorAcross(0));
    }

    /** Every section beside the next, in rows as wide as the widest or 7 in. */
    public Picture picture() {
        double widest = ROW;
        for (int i = 0; i < sections.size(); i++) {
            widest = Math.max(widest, pattern(i).bounds().width());
        }
        List<Picture> placed = new ArrayList<>();
        double x = 0;
        double y = 0;
        double row = 0;
        for (int i = 0; i < sections.size(); i++) {
            Picture p = pattern(i);
            if (x > 0 && x + p.bounds().width() > widest + 1e-9) {
                x = 0;
                y += row + GAP;
                row = 0;
            }
            placed.add(p.moved(x, y));
            x += p.bounds().width() + GAP;
            row = Math.max(row, p.bounds().height());
        }
        return Picture.group(placed);
    }

    /** At full size on paper, tiled. */
    public List<Picture> pages(Paper paper) {
        return Tiling.on(paper).pages("Foundation: " + block.name(), picture());
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(picture(), words());
    }
}
