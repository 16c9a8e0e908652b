package org.calicograph.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class SpiralTest {

    private static double off(Path path, java.util.function.ToDoubleFunction<Point> miss) {
        return path.flattened(1e-5).stream().mapToDouble(miss).map(Math::abs).max().orElseThrow();
    }

    /** Points, arc lengths and radii of the unit circle's involute, computed from its formula; arc length a t squared / 2. */
    @Test
    void the_involute_passes_the_tabled_points_and_has_the_tabled_length() throws Exception {
        for (String[] row : PolygonsTest.rows("involute_points.csv")) {
            double t = Double.parseDouble(row[0]);
            if (t == 0) {
                continue;
            }
            Path path = Spiral.involute(inches(1), Angle.radians(t));
            assertThat(path.start().distance(new Point(1, 0))).isLessThan(1e-12);
            assertThat(path.end().distance(new Point(Double.parseDouble(row[1]), Double.parseDouble(row[2])))).as("t " + t).isLessThan(1e-9);
            assertThat(path.length()).as("t " + t).isCloseTo(Double.parseDouble(row[3]), within(1e-3 * Math.max(1, Double.parseDouble(row[3]))));
            assertThat(path.end().norm()).isCloseTo(Double.parseDouble(row[4]), within(1e-9));
        }
    }

    @Test
    void the_involute_function_agrees_with_the_table() throws Exception {
        for (String[] row : PolygonsTest.rows("involute_function.csv")) {
            assertThat(Spiral.involuteFunction(Angle.degrees(Double.parseDouble(row[0])))).as(row[0]).isCloseTo(Double.parseDouble(row[1]), within(6e-10));
        }
    }

    /**
     * inv 25 = 0.0299753 (machinery handbooks, from memory) and inv 24 deg 44 min = 0.028976 (a forum of gear cutters, 2016). A table on
     * the web that gives 0.0054 for 14.5 and 0.0293 for 25 degrees is wrong: tan x - x rounds to 0.0055 and 0.0300.
     */
    @Test
    void published_values_agree_except_those_known_to_be_wrong() {
        assertThat(Spiral.involuteFunction(Angle.degrees(25))).isCloseTo(0.0299753, within(5e-8));
        assertThat(Spiral.involuteFunction(Angle.degrees(24 + 44 / 60.0))).isCloseTo(0.028976, within(5e-7));
        assertThat(Spiral.involuteFunction(Angle.degrees(14.5))).isCloseTo(0.0055, within(5e-5)).isNotCloseTo(0.0054, within(5e-5));
        // A published point (1.0591, 0.0140) takes t = 20 degrees in radians (an online calculator).
        Point end = Spiral.involute(inches(1), Angle.degrees(20)).end();
        assertThat(end.x()).isCloseTo(1.0591, within(1e-4));
        assertThat(end.y()).isCloseTo(0.0140, within(1e-4));
    }

    /** The taut thread touches the circle: distance squared less the radius squared is the thread's length squared. */
    @Property(tries = 20)
    void every_spiral_keeps_to_its_formula_within_the_accuracy(@ForAll @DoubleRange(min = 0.3, max = 12) double turning, @ForAll @DoubleRange(min = 0.1, max = 3) double size) {
        double a = size;
        Path thread = Spiral.involute(inches(a), Angle.radians(turning));
        double most = off(thread, p -> {
            double t = Math.sqrt(Math.max(0, p.dot(p) / (a * a) - 1));
            return p.distance(new Point(a * (Math.cos(t) + t * Math.sin(t)), a * (Math.sin(t) - t * Math.cos(t))));
        });
        assertThat(most).isLessThan(40 * Spiral.ACCURACY);  // near t = 0 the formula's own root loses places
        Path whorl = Spiral.logarithmic(inches(a), 2, Angle.radians(turning));
        assertThat(whorl.end().norm()).isCloseTo(inches(a).inInches() * Math.pow(2, turning / (2 * Math.PI)), within(1e-9));
        assertThat(off(whorl, p -> p.norm() - a * Math.pow(2, turned(p, p.norm() / a) / (2 * Math.PI)))).isLessThan(2 * Spiral.ACCURACY + 1e-4);
    }

    /** The angle of a point of a whorl that doubles every turn, the turn told by its distance. */
    private static double turned(Point p, double grown) {
        double near = Math.log(grown) / Math.log(2) * 2 * Math.PI;
        double angle = Math.atan2(p.y(), p.x());
        return angle + 2 * Math.PI * Math.rint((near - angle) / (2 * Math.PI));
    }

    /** Archimedes: turns lie evenly apart, and the radius grows with the angle (On Spirals, from memory). */
    @Test
    void the_turns_of_a_coil_lie_evenly_apart() {
        Path coil = Spiral.archimedean(Length.ZERO, inches(1, 2), Angle.FULL.times(5));
        List<Double> reach = coil.meetings(Path.through(new Point(0.01, 0), new Point(3, 0))).stream().map(Point::x).sorted().toList();
        assertThat(reach).hasSize(5);
        for (int i = 0; i < 5; i++) {
            assertThat(reach.get(i)).isCloseTo(0.5 * (i + 1), within(Spiral.ACCURACY));
        }
        assertThat(coil.segments()).hasSizeLessThanOrEqualTo(130);
    }

    /** Arcs whose radii are 1, 2, 3 ... sides meet without a bend: their centres lie on one line with the joint (Euclid, Elements III.12). */
    @Test
    void arcs_about_the_corners_of_a_polygon_join_smoothly() {
        for (int corners = 2; corners <= 6; corners++) {
            Path path = Spiral.ofArcs(corners, inches(1), 12);
            for (int i = 0; i < 12; i++) {
                Segment s = path.segments().get(i);
                assertThat(s.length()).isCloseTo((i + 1) * 2 * Math.PI / corners, within(1e-9));
                if (i > 0) {
                    assertThat(path.segments().get(i - 1).heading(1).unit().distance(s.heading(0).unit())).as(corners + " corners").isLessThan(1e-9);
                }
            }
        }
    }

    @Test
    void a_spiral_that_cannot_be_drawn_is_refused_with_the_repair() {
        assertThatThrownBy(() -> Spiral.involute(inches(0), Angle.FULL)).hasMessageContaining("use a length above 0");
        assertThatThrownBy(() -> Spiral.logarithmic(inches(1), 0.5, Angle.FULL)).hasMessageContaining("use a factor above 1");
        assertThatThrownBy(() -> Spiral.ofArcs(1, inches(1), 4)).hasMessageContaining("use 2 corners or more");
    }
}
