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
 * @param diameter in inches, of the circle found
 * @param within   no circle is wider than this one by more
 */
public record Gap(Point centre, double diameter, double within) {

    private static final double CHORD = 5e-4;
    /** A gap is told in sixteenths, up, but a hundredth of an inch is not worth another. */
    private static final double SLACK = 0.01;

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
        return new Gap(new Point(circle.getCenter().getX(), circle.getCenter().getY()), 2 * circle.getRadiusLine().getLength(),
                2 * accuracy.inInches() + 2 * CHORD);
    }

    /** The largest circle without a line in it; none is wider by more than 1/200 in. */
    public static Gap largest(Region region, Collection<Path> lines) {
        return largest(region, lines, Length.inches(1, 500));
    }

    /**
     * Every place that is quilted too openly, the widest first: circles without a line in them that are wider than a limit, each found
     * after those before it were {@link #filled}. With lines there nothing wider than the limit is left.
     *
     * @param limit the widest gap allowed
     * @param most  at most so many
     */
    public static List<Gap> wider(Region region, Collection<Path> lines, Length limit, int most) {
        List<Path> all = new ArrayList<>(lines);
        List<Gap> found = new ArrayList<>();
        while (found.size() < most) {
            Gap gap = largest(region, all, Length.inches(1, 32));
            if (gap.diameter() <= limit.inInches() + SLACK) {
                break;
            }
            found.add(gap);
            all.addAll(gap.filled(limit));
        }
        return List.copyOf(found);
    }

    /** Rings about its centre that leave nothing in the circle wider than a limit, the widest first; its rim meets lines already. */
    public List<Path> filled(Length limit) {
        double step = 0.9 * limit.inInches();
        List<Path> rings = new ArrayList<>();
        double inmost = Math.min(step / 2, diameter / 4);
        int count = (int) Math.ceil((diameter / 2 - inmost) / step);
        for (int k = count - 1; k >= 0; k--) {
            rings.add(Path.circle(centre, inmost + k * (diameter / 2 - inmost) / count));
        }
        return rings;
    }

    /** No circle without a line in it is wider. */
    public double atMost() {
        return diameter + within;
    }

    /** The width to be told: in sixteenths, up; no circle is wider by more than 1/100 in. */
    public Length told() {
        return Length.inches(Math.max(0, atMost() - SLACK)).roundedUpTo(Length.inches(1, 16));
    }

    /** True if no circle is wider than a limit, by more than 1/100 in. */
    public boolean isWithin(Length limit) {
        return atMost() <= limit.inInches() + SLACK;
    }

    /** The circle itself, for drawing. */
    public Path circle() {
        return Path.circle(centre, Math.max(1e-6, diameter / 2));
    }
}
