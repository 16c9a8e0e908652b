package org.calicograph.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Angle;
import org.junit.jupiter.api.Test;

class GeometryTest {

    /** Areas of regular polygons: n/2 sin(360/n) on a unit circle, any handbook of geometry. */
    @Property
    void a_regular_polygon_has_the_handbook_area(@ForAll @IntRange(min = 3, max = 64) int n) {
        double area = Region.of(Path.regular(n, new Point(3, 4), 1, Angle.degrees(7))).area().squareInches();
        assertThat(area).isCloseTo(n / 2.0 * Math.sin(2 * Math.PI / n), within(1e-12));
    }

    @Property
    void exact_areas_agree_with_the_polygon_library(@ForAll @DoubleRange(min = 0.5, max = 20) double r,
                                                    @ForAll @DoubleRange(min = -340, max = 340) double sweep,
                                                    @ForAll @DoubleRange(min = -3, max = 3) double bend) {
        if (Math.abs(sweep) < 5) {
            return;
        }
        Point start = new Point(r, 0);
        PathPen pen = Path.from(start).arcAbout(Point.ORIGIN, Angle.degrees(sweep));
        Point end = pen.here();
        Path path = pen.curveTo(end.plus(bend, 1), new Point(bend, r), new Point(0, 0)).close();
        double polygon = path.flattened(1e-5).size() < 4 ? 0 : shoelace(path.flattened(1e-5));
        assertThat(path.signedArea()).isCloseTo(polygon, within(1e-4 * path.length()));
    }

    private static double shoelace(List<Point> points) {
        org.locationtech.jts.geom.Coordinate[] ring = Polygons.coordinates(points);
        return -org.locationtech.jts.algorithm.Area.ofRingSigned(ring);
    }

    @Test
    void a_circle_has_its_area_and_its_length() {
        Path circle = Path.circle(new Point(1, 2), 3);
        assertThat(Region.of(circle).area().squareInches()).isCloseTo(9 * Math.PI, within(1e-12));
        assertThat(circle.length()).isCloseTo(6 * Math.PI, within(1e-12));
        assertThat(circle.bounds()).isEqualTo(new Box(-2, -1, 4, 5));
    }

    @Property
    void turning_and_scaling_multiply_areas_by_the_square_of_the_scale(@ForAll @DoubleRange(min = -360, max = 360) double turn,
                                                                       @ForAll @DoubleRange(min = 0.1, max = 9) double scale) {
        Region shape = Region.of(Path.from(0, 0).lineTo(4, 0).arcTo(new Point(0, 3), 0.4).close());
        Transform t = Transform.turn(Angle.degrees(turn), new Point(1, 1)).then(Transform.scale(scale)).then(Transform.mirrorAcross(2));
        Region moved = shape.transformed(t);
        assertThat(moved.area().squareInches()).isCloseTo(shape.area().squareInches() * scale * scale, within(1e-9 * scale * scale));
        assertThat(moved.outer().segments()).anyMatch(Arc.class::isInstance);
        assertThat(t.then(t.inverse()).of(new Point(5, 6)).near(new Point(5, 6), 1e-9)).isTrue();
    }

    @Test
    void a_stretched_arc_becomes_cubics_with_the_stretched_area() {
        Region circle = Region.of(Path.circle(Point.ORIGIN, 1));
        Region ellipse = circle.transformed(Transform.scale(2, 1));
        assertThat(ellipse.area().squareInches()).isCloseTo(2 * Math.PI, within(1e-4));
    }

    @Test
    void an_arc_through_three_points_passes_through_them() {
        Segment arc = Arc.through(new Point(0, 0), new Point(1, -1), new Point(2, 0));
        assertThat(((Arc) arc).radius()).isCloseTo(1, within(1e-12));
        assertThat(arc.middle().near(new Point(1, -1), 1e-12)).isTrue();
        assertThat(Arc.through(new Point(0, 0), new Point(1, 0), new Point(2, 0))).isInstanceOf(Line.class);
    }

    /** Two blades of a fan share a straight edge; in floating point the library's intersection of them was once a whole blade. */
    @Test
    void neighbours_that_share_an_edge_do_not_overlap() {
        for (double side : new double[] {3, 12, 25.3333, 31.7}) {
            Region[] blades = new Region[6];
            for (int i = 0; i < 6; i++) {
                Angle from = Angle.degrees(15 * i - 90);
                Point in = new Point(0, 1).plus(Point.polar(0.25, from));
                blades[i] = Region.of(Path.from(in).lineTo(new Point(0, 1).plus(Point.polar(0.875, from))).arcAbout(new Point(0, 1), Angle.degrees(15))
                        .lineTo(new Point(0, 1).plus(Point.polar(0.25, from.plus(Angle.degrees(15))))).arcTo(in, -Math.tan(Math.toRadians(15) / 4)).close()
                        .transformed(Transform.scale(side)));
            }
            for (int i = 1; i < 6; i++) {
                assertThat(Polygons.intersection(Polygons.of(blades[i - 1], 1e-4), Polygons.of(blades[i], 1e-4)).getArea()).isLessThan(1e-6);
            }
        }
    }

    @Test
    void a_path_with_a_break_is_refused_with_the_place() {
        assertThatThrownBy(() -> new Path(List.of(new Line(new Point(0, 0), new Point(1, 0)), new Line(new Point(2, 0), new Point(3, 0)))))
                .hasMessageContaining("segment 2").hasMessageContaining("begin it there");
        assertThatThrownBy(() -> Region.of(Path.through(new Point(0, 0), new Point(1, 0)))).hasMessageContaining("close it");
    }

    @Test
    void crossing_lines_part_a_square_into_four_faces() {
        Arrangement a = Arrangement.of(List.of(Path.rectangle(new Box(0, 0, 4, 4)), Path.through(new Point(0, 0), new Point(4, 4)),
                Path.through(new Point(4, 0), new Point(0, 4))));
        assertThat(a.faces()).hasSize(4).allSatisfy(f -> assertThat(f.area().squareInches()).isCloseTo(4, within(1e-9)));
        assertThat(a.loose()).isEmpty();
    }

    @Test
    void arcs_stay_arcs_in_the_faces_of_an_arrangement() {
        Arrangement a = Arrangement.of(List.of(Path.circle(new Point(0, 0), 2), Path.circle(new Point(2, 0), 2)));
        // Two circles through each other's centres: the lens has an area of r^2 (2 pi / 3 - root 3 / 2), a textbook figure.
        double lens = 4 * (2 * Math.PI / 3 - Math.sqrt(3) / 2);
        assertThat(a.faces()).hasSize(3);
        assertThat(a.faces()).anySatisfy(f -> assertThat(f.area().squareInches()).isCloseTo(lens, within(1e-9)));
        assertThat(a.faces()).allSatisfy(f -> assertThat(f.outer().segments()).allMatch(Arc.class::isInstance));
    }

    @Test
    void a_circle_within_a_square_leaves_a_face_with_a_hole() {
        Arrangement a = Arrangement.of(List.of(Path.rectangle(new Box(0, 0, 4, 4)), Path.circle(new Point(2, 2), 1)));
        assertThat(a.faces()).hasSize(2);
        assertThat(a.faces()).anySatisfy(f -> {
            assertThat(f.holes()).hasSize(1);
            assertThat(f.area().squareInches()).isCloseTo(16 - Math.PI, within(1e-9));
        });
    }

    @Test
    void a_line_that_ends_in_the_open_is_reported_and_a_line_drawn_twice_counts_once() {
        Arrangement a = Arrangement.of(List.of(Path.rectangle(new Box(0, 0, 4, 4)), Path.through(new Point(1, 1), new Point(2, 2)),
                Path.through(new Point(2, 0), new Point(2, 4)), Path.through(new Point(2, 4), new Point(2, 1)),
                Path.through(new Point(2, -1), new Point(2, 3))));
        assertThat(a.faces()).hasSize(2);
        assertThat(a.loose()).hasSize(2);
    }

    @Property(tries = 60)
    void the_faces_of_random_lines_cover_the_sheet(@ForAll @IntRange(min = 1, max = 9) int lines, @ForAll long seed) {
        java.util.Random random = new java.util.Random(seed);
        java.util.ArrayList<Path> paths = new java.util.ArrayList<>(List.of(Path.rectangle(new Box(0, 0, 10, 10))));
        for (int i = 0; i < lines; i++) {
            if (i % 3 == 2) {
                paths.add(Path.circle(new Point(3 + 4 * random.nextDouble(), 3 + 4 * random.nextDouble()), 0.5 + 2 * random.nextDouble()));
            } else {
                paths.add(Path.through(new Point(0, 10 * random.nextDouble()), new Point(10, 10 * random.nextDouble())));
            }
        }
        double area = Arrangement.of(paths).faces().stream().mapToDouble(f -> f.area().squareInches()).sum();
        assertThat(area).isCloseTo(100, within(1e-6));
    }

    @Test
    void a_circle_that_grazes_the_edge_from_within_is_kept_whole() {
        Path circle = Path.circle(new Point(2.5, 2), 2);
        for (double room : new double[] {0, 1e-9, 1e-7, 1e-6, 2e-6, 1e-3}) {
            Trim trim = Trim.within(Region.rectangle(new Box(0, 0, 5, 4).grownBy(room)));
            double kept = trim.of(circle).stream().mapToDouble(Path::length).sum();
            assertThat(kept).as("room " + room).isCloseTo(circle.length(), within(1e-6));
        }
    }
}
