package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.locationtech.jts.algorithm.construct.LargestEmptyCircle;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The largest circle in a region that touches no line. The region's own edge counts as a line: it is
 * bound, or quilted from the other side.
 *
 * @param diameter in inches
 */
public record Gap(Point centre, double diameter) {

    private static final double CHORD = 2e-3;

    /**
     * Found by branch and bound over squares of the region (JTS), so that no circle is larger by more
     * than twice the accuracy.
     *
     * @param accuracy of the radius; above 0
     */
    public static Gap largest(Region region, Collection<Path> lines, Length accuracy) {
        if (!accuracy.isPositive()) {
            throw new IllegalArgumentException("a gap can't be found within " + accuracy + "; use an accuracy above 0, such as 1/64 in");
        }
        Polygon area = Polygons.of(region, CHORD);
        List<LineString> all = new ArrayList<>();
        for (Path path : lines) {
            all.add(Polygons.FACTORY.createLineString(Polygons.coordinates(path.flattened(CHORD))));
        }
        all.add(area.getExteriorRing());
        for (int i = 0; i < area.getNumInteriorRing(); i++) {
            all.add(area.getInteriorRingN(i));
        }
        MultiLineString obstacles = Polygons.FACTORY.createMultiLineString(all.toArray(LineString[]::new));
        LargestEmptyCircle circle = new LargestEmptyCircle(obstacles, area, accuracy.inInches());
        return new Gap(new Point(circle.getCenter().getX(), circle.getCenter().getY()), 2 * circle.getRadiusLine().getLength());
    }

    /** The largest circle without a line in it, within 1/64 in. */
    public static Gap largest(Region region, Collection<Path> lines) {
        return largest(region, lines, Length.inches(1, 64));
    }

    /** The circle itself, for drawing. */
    public Path circle() {
        return Path.circle(centre, Math.max(1e-6, diameter / 2));
    }
}
