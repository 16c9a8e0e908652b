package org.calicograph.workshop.piecing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Sews a tree in simulation: lays each part to what is there, checks the seam, and returns the whole. */
public final class SewingTable {

    private SewingTable() { }

    public static Geometry sew(Unit unit) {
        if (unit instanceof Unit.Single single) {
            return Polygons.of(single.shape(), Region.ACCURACY);
        }
        Unit.Sewn sewn = (Unit.Sewn) unit;
        Geometry done = sew(sewn.parts().get(0));
        for (int i = 1; i < sewn.parts().size(); i++) {
            Geometry next = sew(sewn.parts().get(i));
            List<Segment> seam = sewn.seams().get(i - 1);
            assertThat(Polygons.intersection(done, next).getArea()).as("overlap at the seam").isLessThan(0.01);
            assertThat(seam).as("a seam between " + sewn.parts()).isNotEmpty();
            for (Segment s : seam) {
                for (Point p : new Path(List.of(s)).flattened(1e-3)) {
                    assertThat(done.getBoundary().distance(Polygons.point(p))).as("seam on the edge").isLessThan(5e-3);
                    assertThat(next.getBoundary().distance(Polygons.point(p))).as("seam on the edge").isLessThan(5e-3);
                }
            }
            double meeting = OverlayNGRobust.overlay(done.getBoundary(), next.getBoundary().buffer(4e-3), OverlayNG.INTERSECTION).getLength();
            double length = seam.stream().mapToDouble(Segment::length).sum();
            assertThat(meeting).as("the seam is all that the two share").isBetween(length - 0.05, length + 0.05 * (1 + seam.size()));
            switch (sewn.kind()) {
                case STRAIGHT, BEGUN -> assertThat(isOneLine(seam)).as("one straight line: " + seam).isTrue();
                case CURVED -> assertThat(seam).anyMatch(s -> !(s instanceof Line));
                default -> assertThat(seam.size()).as("turns a corner").isGreaterThan(1);
            }
            done = Polygons.union(done, next);
        }
        return done;
    }

    private static boolean isOneLine(List<Segment> seam) {
        Point from = seam.get(0).from();
        Point u = seam.get(0).heading(0).unit();
        return seam.stream().allMatch(s -> s instanceof Line && Math.abs(s.from().minus(from).cross(u)) < 5e-3
                && Math.abs(s.to().minus(from).cross(u)) < 5e-3);
    }
}
