package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class OffsetTest {

    @Test
    void a_square_keeps_its_corners_and_vanishes() {
        Region square = Region.rectangle(new Box(0, 0, 6, 6));
        assertThat(Offset.inward(square, 1)).singleElement().satisfies(r -> {
            assertThat(r.area().squareInches()).isCloseTo(16, within(1e-9));
            assertThat(r.outer().segments()).hasSize(4);
        });
        assertThat(Offset.outward(square, 1).area().squareInches()).isCloseTo(64, within(1e-9));
        assertThat(Offset.inward(square, 2.999)).hasSize(1);
        assertThat(Offset.inward(square, 3)).isEmpty();
        assertThat(Offset.inward(square, 40)).isEmpty();
    }

    @Test
    void a_circle_stays_a_circle() {
        Region plate = Region.of(Path.circle(Point.of(3, 3), 3));
        Region in = Offset.inward(plate, 1).get(0);
        assertThat(in.outer().segments()).allMatch(Arc.class::isInstance);
        assertThat(in.area().squareInches()).isCloseTo(4 * Math.PI, within(1e-9));
        assertThat(Offset.outward(plate, 1).area().squareInches()).isCloseTo(16 * Math.PI, within(1e-9));
    }

    @Test
    void a_dumb_bell_falls_apart_where_it_is_narrow() {
        Region bell = Region.polygon(Point.of(0, 0), Point.of(4, 0), Point.of(4, 1.5), Point.of(6, 1.5), Point.of(6, 0), Point.of(10, 0),
                Point.of(10, 4), Point.of(6, 4), Point.of(6, 2.5), Point.of(4, 2.5), Point.of(4, 4), Point.of(0, 4));
        assertThat(Offset.inward(bell, 0.4)).hasSize(1);
        assertThat(Offset.inward(bell, 0.6)).hasSize(2).allSatisfy(r -> assertThat(r.area().squareInches()).isCloseTo(2.8 * 2.8, within(1e-9)));
    }

    @Test
    void echoes_of_a_ring_meet_half_way() {
        Region ring = new Region(Path.circle(Point.ORIGIN, 5), List.of(Path.circle(Point.ORIGIN, 1)));
        List<Path> rows = Echo.inside(ring, Length.inches(1, 2));
        assertThat(rows).hasSize(6); // three rows of two; at 2 in they meet and are gone
        assertThat(rows.stream().mapToDouble(Path::length).sum()).isCloseTo(2 * Math.PI * (4.5 + 1.5 + 4 + 2 + 3.5 + 2.5), within(1e-6));
    }

    /** Against the polygon buffer of JTS 1.20 with mitred joins. Beyond the mitre limit the two cut off differently, so such corners are left out. */
    @Test
    void straight_regions_agree_with_a_polygon_library() {
        Random random = new Random(11);
        int compared = 0;
        for (int i = 0; i < 300; i++) {
            Region r = star(random, i % 3 == 0, 0.55);
            double d = 0.05 + random.nextDouble() * 1.2;
            boolean in = i % 2 == 0;
            Geometry theirs = BufferOp.bufferOp(Polygons.of(r, 1e-4), in ? -d : d,
                    new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 50));
            Geometry ours = polygons(in ? Offset.inward(r, d) : List.of(Offset.outward(r, d)));
            if (sharpest(r) < 2.2 * Math.asin(1 / Offset.MITRE)) {
                continue;
            }
            compared++;
            assertThat(ours.symDifference(theirs).getArea()).as("region %d, %s by %s", i, in ? "in" : "out", d)
                    .isLessThan(2e-3 * Math.max(1, r.perimeter()));
        }
        assertThat(compared).isGreaterThan(150);
    }

    /** Against java.awt.geom (JDK 17): the region less, or with, a mitred stroke of twice the distance. */
    @Test
    void straight_regions_agree_with_the_strokes_of_the_jdk() {
        Random random = new Random(12);
        int compared = 0;
        for (int i = 0; i < 120; i++) {
            Region r = star(random, false, 0.55);
            if (sharpest(r) < 2.2 * Math.asin(1 / Offset.MITRE)) {
                continue;
            }
            compared++;
            double d = 0.05 + random.nextDouble() * 0.5;
            Path2D outline = new Path2D.Double();
            List<Point> c = r.outer().corners();
            outline.moveTo(c.get(0).x(), c.get(0).y());
            c.subList(1, c.size()).forEach(p -> outline.lineTo(p.x(), p.y()));
            outline.closePath();
            Area area = new Area(outline);
            Area stroke = new Area(new BasicStroke((float) (2 * d), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f).createStrokedShape(outline));
            boolean in = i % 2 == 0;
            if (in) {
                area.subtract(stroke);
            } else {
                area.add(stroke);
            }
            double ours = (in ? Offset.inward(r, d) : List.of(Offset.outward(r, d))).stream().mapToDouble(x -> x.area().squareInches()).sum();
            assertThat(ours).as("region %d by %s", i, d).isCloseTo(areaOf(area), within(4e-3 * r.perimeter()));
        }
        assertThat(compared).isGreaterThan(60);
    }

    /** Whatever the edges: every point of an inward offset's edge lies the distance from the region's edge. */
    @Test
    void every_row_keeps_its_distance() {
        Random random = new Random(13);
        for (int i = 0; i < 60; i++) {
            Region r = petals(random);
            double d = 0.1 + random.nextDouble() * 0.8;
            Geometry edge = Polygons.of(r, 1e-5).getBoundary();
            Geometry round = Polygons.of(r, 1e-5).buffer(-d, 64);
            double ours = Offset.inward(r, d).stream().mapToDouble(x -> x.area().squareInches()).sum();
            assertThat(ours).isLessThanOrEqualTo(round.getArea() + 1e-2);
            for (Region x : Offset.inward(r, d)) {
                for (Path p : x.paths()) {
                    for (var s : p.segments()) {
                        double off = edge.distance(Polygons.point(s.middle()));
                        assertThat(off).as("region %d", i).isBetween(d - 1e-3, Offset.MITRE * d + 1e-3);
                    }
                }
            }
        }
    }

    private static Geometry polygons(List<Region> regions) {
        Geometry all = Polygons.FACTORY.createPolygon();
        for (Region r : regions) {
            all = all.union(Polygons.of(r, 1e-5));
        }
        return all;
    }

    private static double areaOf(Area area) {
        double sum = 0;
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double sx = 0;
        double sy = 0;
        for (PathIterator it = new FlatteningPathIterator(area.getPathIterator(null), 1e-5); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    sx = c[0];
                    sy = c[1];
                }
                case PathIterator.SEG_LINETO -> sum += (x * c[1] - c[0] * y) / 2;
                default -> {
                    sum += (x * sy - sx * y) / 2;
                    c[0] = sx;
                    c[1] = sy;
                }
            }
            x = c[0];
            y = c[1];
        }
        return Math.abs(sum);
    }

    private static double sharpest(Region r) {
        double least = Math.PI;
        for (Path path : r.paths()) {
            List<Point> c = path.corners();
            for (int i = 0; i < c.size(); i++) {
                Point u = c.get((i + c.size() - 1) % c.size()).minus(c.get(i));
                Point v = c.get((i + 1) % c.size()).minus(c.get(i));
                least = Math.min(least, Math.abs(Math.atan2(u.cross(v), u.dot(v))));
            }
        }
        return least;
    }

    static Region star(Random random, boolean hole, double least) {
        int n = 5 + random.nextInt(8);
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            corners.add(Point.polar(5 * (least + (1 - least) * random.nextDouble()), Angle.turn(k, n).plus(Angle.degrees(random.nextDouble() * 15))));
        }
        List<Path> holes = hole ? List.of(Path.regular(4 + random.nextInt(3), Point.ORIGIN, 0.8, Angle.degrees(random.nextInt(90)))) : List.of();
        return new Region(Path.polygon(corners), holes);
    }

    /** Edges that are arcs bending in or out. */
    static Region petals(Random random) {
        int n = 4 + random.nextInt(5);
        var pen = Path.from(Point.polar(4, Angle.ZERO));
        for (int k = 1; k <= n; k++) {
            Point to = k == n ? Point.polar(4, Angle.ZERO) : Point.polar(3 + 2 * random.nextDouble(), Angle.turn(k, n));
            pen = pen.arcTo(to, (random.nextBoolean() ? 1 : -1) * (0.1 + 0.25 * random.nextDouble()));
        }
        return Region.of(pen.close());
    }
}
