package org.calicograph.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Angle;
import org.junit.jupiter.api.Test;

class OnePointTest {

    /** A polygon walked by sides and turns comes back to its beginning only within rounding. */
    @Property
    void a_polygon_walked_round_closes_with_as_many_sides_as_were_walked(@ForAll @IntRange(min = 3, max = 40) int sides,
                                                                         @ForAll @DoubleRange(min = 0.1, max = 40) double side,
                                                                         @ForAll @DoubleRange(min = 0, max = 360) double first) {
        PathPen pen = Path.from(1, 2);
        for (int i = 0; i < sides; i++) {
            Point step = Point.polar(side, Angle.degrees(first).plus(Angle.turn(i, sides)));
            pen = pen.lineTo(pen.here().plus(step));
        }
        Path path = pen.close();
        assertThat(path.segments()).hasSize(sides);
        assertThat(path.start()).isEqualTo(path.end());
        assertThat(path.isClosed()).isTrue();
        assertThat(Region.of(path).transformed(Transform.turn(Angle.degrees(first))).outer().segments()).hasSize(sides);
    }

    @Test
    void a_closing_line_of_a_hair_is_no_side() {
        Path exact = Path.polygon(new Point(0, 0), new Point(3, 0), new Point(0, 3));
        Path hair = Path.through(new Point(0, 0), new Point(3, 0), new Point(0, 3), new Point(1e-16, 0), new Point(0, 0));
        assertThat(hair).isEqualTo(exact);
        assertThat(Path.through(new Point(0, 0), new Point(3, 0), new Point(0, 3), new Point(1e-7, -1e-7))).isEqualTo(exact);
    }

    @Test
    void many_steps_that_are_each_too_short_are_not_lost_together() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 1000; i++) {
            points.add(new Point(i * 5e-7, 0));
        }
        Path path = Path.through(points);
        assertThat(path.length()).isCloseTo(5e-4, within(2e-6));
    }

    @Test
    void a_loop_from_a_point_to_itself_keeps_its_length() {
        Cubic loop = new Cubic(new Point(0, 0), new Point(4, 3), new Point(-4, 3), new Point(0, 0));
        Path path = new Path(List.of(loop));
        assertThat(path.isClosed()).isTrue();
        assertThat(path.length()).isCloseTo(loop.length(), within(1e-6));
    }

    /** Two circles that touch: known areas, from any handbook of geometry. */
    @Property
    void curves_that_meet_in_a_point_have_a_union(@ForAll @DoubleRange(min = 0.2, max = 20) double r,
                                                  @ForAll @DoubleRange(min = 0.2, max = 20) double s,
                                                  @ForAll @DoubleRange(min = 0, max = 360) double direction) {
        Point far = Point.polar(r + s, Angle.degrees(direction));
        Region one = Region.of(Path.circle(Point.ORIGIN, r));
        Region other = Region.of(Path.circle(far, s));
        double both = Math.PI * (r * r + s * s);
        assertThat(one.union(other).stream().mapToDouble(x -> x.area().squareInches()).sum()).isCloseTo(both, within(1e-3 * (r + s) * 7));
        // Both drawn as one figure of eight, whose halves touch in a point.
        Point touch = Point.polar(r, Angle.degrees(direction));
        Path eight = Path.from(touch).arcAbout(Point.ORIGIN, Angle.HALF).arcTo(touch, 1)
                .arcAbout(far, Angle.HALF).arcTo(touch, 1).close();
        Region figure = Region.of(eight);
        assertThat(figure.area().squareInches()).isCloseTo(both, within(1e-9 * both));
        List<Region> together = figure.union(Region.rectangle(new Box(-50, -50, 50, 50)));
        assertThat(together).hasSize(1);
        assertThat(figure.union(one).stream().mapToDouble(x -> x.area().squareInches()).sum()).isCloseTo(both, within(1e-3 * (r + s) * 7));
        assertThat(figure.minus(one).stream().mapToDouble(x -> x.area().squareInches()).sum())
                .isCloseTo(Math.PI * s * s, within(1e-3 * (r + s) * 7));
    }

    /** A crescent ends in two cusps, at which its arcs lie closer than any polygon follows them. */
    @Property
    void crescents_have_a_union_an_intersection_and_a_rest(@ForAll @DoubleRange(min = 0.05, max = 0.99) double inner,
                                                           @ForAll @DoubleRange(min = 0.5, max = 1) double outer,
                                                           @ForAll @DoubleRange(min = 0.1, max = 30) double size) {
        if (outer - inner < 1e-3) {
            return;
        }
        Point a = new Point(-size, 0.3);
        Point b = new Point(size, -0.2);
        Region crescent = Region.of(new Path(List.of(new Arc(a, b, outer), new Arc(b, a, -inner))));
        Region square = Region.rectangle(new Box(-size, -size, size / 3, size / 2));
        double in = crescent.intersection(square).stream().mapToDouble(x -> x.area().squareInches()).sum();
        double out = crescent.minus(square).stream().mapToDouble(x -> x.area().squareInches()).sum();
        double all = crescent.union(square).stream().mapToDouble(x -> x.area().squareInches()).sum();
        double slack = 1e-3 * size * 8;
        assertThat(in + out).isCloseTo(crescent.area().squareInches(), within(slack));
        assertThat(all).isCloseTo(square.area().squareInches() + out, within(slack));
    }
}
