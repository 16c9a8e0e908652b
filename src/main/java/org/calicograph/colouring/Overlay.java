package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** A shape laid over patches: what it covers gets another fabric. */
final class Overlay {

    /** Pieces that no circle of this diameter fits into stay with their neighbour, in inches. */
    static final double LEAST = 0.25;

    private Overlay() { }

    /**
     * Splits the patches along the shape's edge. The parts of a split patch are straight-sided within
     * {@link Region#ACCURACY}; their ids are the patch's with {@code -1}, {@code -2} and so on.
     */
    static Patchwork split(Patchwork work, Region over, UnaryOperator<Fabric> covered) {
        if (!over.bounds().touches(work.outline().bounds())) {
            return work;
        }
        if (work instanceof Assembly assembly) {
            List<Placed> parts = new ArrayList<>();
            for (Placed part : assembly.parts()) {
                Transform back = part.place().inverse();
                parts.add(new Placed(part.id(), split(part.work(), over.transformed(back), covered), part.place()));
            }
            return Assembly.of(assembly.name(), assembly.outline(), parts);
        }
        Polygon shape = Polygons.of(over, Region.ACCURACY);
        List<Patch> patches = new ArrayList<>();
        for (Patch patch : work.patches()) {
            patches.addAll(over.bounds().touches(patch.shape().bounds()) ? split(patch, shape, covered) : List.of(patch));
        }
        return Block.of(work.name(), work.outline(), patches);
    }

    private static List<Patch> split(Patch patch, Polygon shape, UnaryOperator<Fabric> covered) {
        Polygon whole = Polygons.of(patch.shape(), Region.ACCURACY);
        List<Polygon> in = thick(Polygons.intersection(whole, shape));
        if (in.isEmpty()) {
            return List.of(patch);
        }
        List<Polygon> out = thick(minus(whole, in));
        Fabric dark = covered.apply(patch.fabric());
        if (out.isEmpty()) {
            return List.of(patch.in(dark));
        }
        List<Patch> pieces = new ArrayList<>();
        for (Region region : Polygons.regions(minus(whole, out))) {
            pieces.add(new Patch(patch.id() + "-" + (pieces.size() + 1), patch.role(), dark, region));
        }
        for (Polygon polygon : out) {
            for (Region region : Polygons.regions(polygon)) {
                pieces.add(new Patch(patch.id() + "-" + (pieces.size() + 1), patch.role(), patch.fabric(), region));
            }
        }
        return pieces;
    }

    private static Geometry minus(Geometry whole, List<Polygon> parts) {
        Geometry left = whole;
        for (Polygon part : parts) {
            left = Polygons.difference(left, part);
        }
        return left;
    }

    private static List<Polygon> thick(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon p && !p.buffer(-LEAST / 2).isEmpty()) {
                polygons.add(p);
            }
        }
        return polygons;
    }

    /** The part of each patch that a shape covers, from 0 to 1. */
    static ToDoubleFunction<Patch> shareUnder(Region over) {
        Polygon shape = Polygons.of(over, Region.ACCURACY);
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(shape);
        return patch -> {
            if (!over.bounds().touches(patch.shape().bounds())) {
                return 0;
            }
            Polygon whole = Polygons.of(patch.shape(), Region.ACCURACY);
            if (prepared.covers(whole)) {
                return 1;
            }
            return prepared.intersects(whole)
                    ? Polygons.intersection(whole, shape).getArea() / whole.getArea() : 0;
        };
    }
}
