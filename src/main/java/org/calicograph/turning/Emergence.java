package org.calicograph.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The figures that patches of one fabric make together across the edges of blocks.
 *
 * @param figures the best first
 */
public record Emergence(List<Figure> figures) implements Drawable {

    /**
     * One figure.
     *
     * @param patches   how many patches make it
     * @param roundness 4 pi times the area over the square of the length around, of its outline: 1 for a circle
     * @param turns     how many even turns about its middle bring it onto itself, up to 8
     * @param ring      true if it goes round something else
     */
    public record Figure(Region shape, Fabric fabric, int patches, double roundness, int turns, boolean ring) { }

    private static final double SNUG = 1e-4;

    public Emergence {
        figures = List.copyOf(figures);
    }

    /** The figures of a top that do not run into its edge and are made of at least two patches. */
    public static Emergence in(Patchwork top) {
        Box edge = top.outline().bounds();
        Map<Fabric, List<Polygon>> byFabric = new LinkedHashMap<>();
        for (Patch patch : top.patches()) {
            byFabric.computeIfAbsent(patch.fabric(), f -> new ArrayList<>()).add(Polygons.of(patch.shape(), Region.ACCURACY));
        }
        List<Figure> figures = new ArrayList<>();
        byFabric.forEach((fabric, polygons) -> {
            // Patches that share a seam run together; those that only touch at a point stay apart.
            List<Geometry> grown = new ArrayList<>();
            polygons.forEach(p -> grown.add(p.buffer(SNUG, 2)));
            Geometry union = Polygons.union(grown).buffer(-3 * SNUG, 2).buffer(2 * SNUG, 2);
            List<Geometry> insides = new ArrayList<>();
            polygons.forEach(p -> insides.add(p.getInteriorPoint()));
            for (Region region : Polygons.regions(union)) {
                Box box = region.bounds();
                boolean inside = box.left() > edge.left() + 0.01 && box.top() > edge.top() + 0.01
                        && box.right() < edge.right() - 0.01 && box.bottom() < edge.bottom() - 0.01;
                if (!inside) {
                    continue;
                }
                Polygon shape = Polygons.of(region, Region.ACCURACY);
                int count = (int) insides.stream().filter(shape::contains).count();
                if (count > 1) {
                    figures.add(figure(region, shape, fabric, count));
                }
            }
        });
        figures.sort(Comparator.comparingDouble((Figure f) -> -score(f)).thenComparingDouble(f -> f.shape().bounds().top())
                .thenComparingDouble(f -> f.shape().bounds().left()));
        return new Emergence(figures);
    }

    /** Rings before full figures, rounder and more even before others. */
    private static double score(Figure f) {
        return (f.ring() ? 1 : 0) + f.roundness() + f.turns() / 8.0;
    }

    private static Figure figure(Region region, Polygon shape, Fabric fabric, int patches) {
        Polygon outline = Polygons.FACTORY.createPolygon(shape.getExteriorRing());
        double round = 4 * Math.PI * outline.getArea() / Math.pow(outline.getLength(), 2);
        return new Figure(region, fabric, patches, Math.min(1, round), turns(shape), shape.getNumInteriorRing() > 0);
    }

    private static int turns(Polygon shape) {
        Point middle = new Point(shape.getCentroid().getX(), shape.getCentroid().getY());
        for (int n : new int[] {8, 6, 5, 4, 3, 2}) {
            Geometry turned = org.locationtech.jts.geom.util.AffineTransformation.rotationInstance(2 * Math.PI / n, middle.x(), middle.y()).transform(shape);
            if (shape.symDifference(turned).getArea() < 0.002 * shape.getArea() + SNUG * 8 * shape.getLength()) {
                return n;
            }
        }
        return 1;
    }

    /** The figures alone, in their places: what the eye picks out. */
    @Override
    public Exhibit show() {
        List<Picture> parts = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Figure f = figures.get(i);
            Colour colour = f.fabric().colour();
            parts.add(Picture.of(f.shape()).filled(colour).labelled("figure" + (i + 1), (f.ring() ? "ring" : "figure") + " of " + f.patches()
                    + " patches, " + f.fabric().name()));
        }
        long rings = figures.stream().filter(Figure::ring).count();
        return parts.isEmpty() ? Exhibit.words("No figure crosses the edges of the blocks.")
                : Exhibit.of(Picture.group(parts), figures.size() + " figures, " + rings + " of them rings");
    }
}
