package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.locationtech.jts.geom.Geometry;

/** What of a picture shows through an upright window. */
final class Clip {

    private final Box window;
    private final Trim trim;
    private final Geometry pane;

    private Clip(Box window) {
        this.window = window;
        Region region = Region.rectangle(window.grownBy(1e-6)); // an edge along the window's own edge stays
        this.trim = Trim.within(region);
        this.pane = Polygons.of(region, 1);
    }

    static Clip to(Box window) {
        return new Clip(window);
    }

    /**
     * The parts that show, flattened. Lines are cut exactly; a fill that is cut becomes a polygon within
     * {@link Region#ACCURACY}; lettering stays whole and shows where its middle does.
     */
    List<Picture> of(List<Picture> flattened) {
        List<Picture> shown = new ArrayList<>();
        for (Picture part : flattened) {
            if (part instanceof Picture.Shape shape) {
                shape(shape, shown);
            } else if (window.contains(part.bounds().centre())) {
                shown.add(part);
            }
        }
        return shown;
    }

    private void shape(Picture.Shape shape, List<Picture> shown) {
        Optional<Box> bounds = shape.paths().stream().map(Path::bounds).reduce(Box::union);
        if (!bounds.get().touches(window)) {
            return;
        }
        Box b = bounds.get();
        if (window.contains(b.topLeft()) && window.contains(new org.calicograph.geometry.Point(b.right(), b.bottom()))) {
            shown.add(shape);
            return;
        }
        if (!(shape.fill() instanceof Paint.None)) {
            List<Path> cut = new ArrayList<>();
            filled(shape).forEach(r -> cut.addAll(r.paths()));
            if (!cut.isEmpty()) {
                shown.add(new Picture.Shape(cut, shape.fill(), Pen.NONE));
            }
        }
        if (shape.pen().draws()) {
            List<Path> lines = trim.of(shape.paths());
            if (!lines.isEmpty()) {
                shown.add(new Picture.Shape(lines, Paint.NONE, shape.pen()));
            }
        }
    }

    /** Even-odd: each closed path in turn flips what it encloses. */
    private List<Region> filled(Picture.Shape shape) {
        Geometry all = Polygons.FACTORY.createPolygon();
        for (Path path : shape.paths()) {
            if (path.isClosed() && Math.abs(path.signedArea()) > 1e-12) {
                all = all.symDifference(Polygons.of(Region.of(path), Region.ACCURACY).buffer(0));
            }
        }
        return Polygons.regions(all.intersection(pane));
    }
}
