package org.calicograph.quilting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;

class MeanderTest {

    /** 40 generated regions with holes (QuiltingBench runs 200): one round, nothing crosses, nothing leaves, no gap above the limit. */
    @Test
    void a_meander_is_one_line_that_never_crosses_itself_and_leaves_no_gap_above_the_limit() {
        Random random = new Random(5);
        for (int i = 0; i < 40; i++) {
            Region region = holed(random);
            Length widest = Length.inches(0.5 + random.nextDouble());
            Meander.Fill fill = Meander.fill(region, widest, i);
            List<LineString> lines = fill.lines().stream()
                    .map(p -> Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-3)))).toList();
            assertThat(fill.lines()).as("region %d, limit %s", i, widest).hasSize(1);
            Geometry all = Polygons.FACTORY.createMultiLineString(lines.toArray(LineString[]::new));
            assertThat(all.isSimple()).as("region %d crosses itself", i).isTrue();
            assertThat(Polygons.of(region, 1e-3).buffer(1e-3).covers(all)).as("region %d is left", i).isTrue();
            Gap gap = Gap.largest(region, fill.lines(), Length.inches(0.004));
            assertThat(gap.diameter()).as("region %d, limit %s", i, widest).isLessThanOrEqualTo(widest.inInches());
        }
    }

    /** Stars with points down to ten degrees, and thin triangles: where there is hardly room to turn, the line turns earlier and never leaves. */
    @Test
    void a_meander_stays_in_regions_that_run_out_into_points() {
        Random random = new Random(12);
        for (int i = 0; i < Integer.getInteger("points", 24); i++) {
            int points = 3 + random.nextInt(6);
            double inner = 1 + 2.5 * random.nextDouble();
            List<Point> corners = new ArrayList<>();
            for (int k = 0; k < 2 * points; k++) {
                double angle = Math.PI * k / points;
                double r = k % 2 == 0 ? 8 : inner;
                corners.add(new Point(8 + r * Math.cos(angle), 8 + r * Math.sin(angle)));
            }
            Region region = i % 4 == 3 ? Region.polygon(new Point(0, 0), new Point(16, 1 + random.nextDouble()), new Point(0, 2 + random.nextDouble()))
                    : Region.polygon(corners.toArray(Point[]::new));
            Meander.Fill fill = Meander.fill(region, Length.inches(0.5 + random.nextDouble()), i);
            List<LineString> lines = fill.lines().stream()
                    .map(p -> Polygons.FACTORY.createLineString(Polygons.coordinates(p.flattened(1e-3)))).toList();
            Geometry all = Polygons.FACTORY.createMultiLineString(lines.toArray(LineString[]::new));
            assertThat(all.isSimple()).as("region %d crosses itself", i).isTrue();
            assertThat(Polygons.of(region, 1e-3).buffer(1e-3).covers(all)).as("region %d is left", i).isTrue();
        }
    }

    @Test
    void a_square_is_filled_in_one_go_and_the_same_seed_gives_the_same_line() {
        Region square = Region.rectangle(new Box(0, 0, 12, 12));
        Meander.Fill fill = Meander.fill(square, Length.inches(1), 3);
        assertThat(fill.lines().size()).isEqualTo(1);
        assertThat(fill.lines().get(0).isClosed()).isTrue();
        assertThat(Meander.fill(square, Length.inches(1), 3).equals(fill)).isTrue();
        assertThat(Meander.fill(square, Length.inches(1), 4).equals(fill)).isFalse();
    }

    @Test
    void the_gap_finder_agrees_with_a_search_over_a_fine_grid() {
        Random random = new Random(9);
        for (int i = 0; i < 12; i++) {
            Region region = holed(random);
            List<Path> lines = new ArrayList<>();
            for (int k = 0; k < 5; k++) {
                lines.add(Path.through(point(random), point(random), point(random)));
            }
            Gap gap = Gap.largest(region, lines, Length.inches(0.001));
            double brute = brute(region, lines, 0.04);
            // A grid of 1/25 in misses the true centre by at most 1/25 in / sqrt 2, on either side.
            assertThat(gap.diameter()).as("case %d", i).isBetween(brute - 0.003, brute + 2 * 0.04 / Math.sqrt(2) + 0.003);
        }
    }

    /** Against a distance transform over a grid of 1/50 in, which knows nothing of circles or branches. */
    @Test
    void no_circle_is_wider_than_the_gap_that_is_told() {
        Random random = new Random(27);
        for (int i = 0; i < 25; i++) {
            Region region = holed(random);
            List<Path> lines = new ArrayList<>();
            for (int k = 0; k < 9; k++) {
                lines.add(k % 2 == 0 ? Path.circle(point(random), 0.4 + random.nextDouble()) : Path.through(point(random), point(random), point(random)));
            }
            Gap gap = Gap.largest(region, lines);
            double brute = brute(region, lines, 0.02);
            assertThat(brute).as("case %d", i).isLessThanOrEqualTo(gap.told().inInches() + 0.01).isLessThanOrEqualTo(gap.atMost());
            assertThat(gap.told().inInches()).as("case %d", i).isLessThanOrEqualTo(brute + 2 * 0.02 / Math.sqrt(2) + 1.0 / 16 + 0.01);
        }
    }

    @Test
    void known_gaps_are_found() {
        Region square = Region.rectangle(new Box(0, 0, 4, 4));
        assertThat(Gap.largest(square, List.of()).diameter()).isCloseTo(4, within(0.04));
        Gap half = Gap.largest(square, List.of(Path.through(Point.of(1, 0), Point.of(1, 4))));
        assertThat(half.diameter()).isCloseTo(3, within(0.04));
        assertThat(half.centre().x()).isCloseTo(2.5, within(0.05));
    }

    private static double brute(Region region, List<Path> lines, double step) {
        Geometry area = Polygons.of(region, 1e-3);
        List<Coordinate[]> chords = new ArrayList<>();
        lines.forEach(p -> chords.add(Polygons.coordinates(p.flattened(1e-3))));
        region.paths().forEach(p -> chords.add(Polygons.coordinates(p.flattened(1e-3))));
        IndexedPointInAreaLocator in = new IndexedPointInAreaLocator(area);
        Box b = region.bounds();
        double best = 0;
        for (double x = b.left(); x <= b.right(); x += step) {
            for (double y = b.top(); y <= b.bottom(); y += step) {
                Coordinate c = new Coordinate(x, y);
                if (in.locate(c) != Location.EXTERIOR) {
                    double near = Double.POSITIVE_INFINITY;
                    for (Coordinate[] line : chords) {
                        near = Math.min(near, org.locationtech.jts.algorithm.Distance.pointToSegmentString(c, line));
                        if (near <= best) {
                            break;
                        }
                    }
                    best = Math.max(best, near);
                }
            }
        }
        return 2 * best;
    }

    private static Point point(Random random) {
        return Point.of(random.nextDouble() * 10 - 5, random.nextDouble() * 10 - 5);
    }

    /** A star, sometimes with curved edges, and one to three holes. */
    static Region holed(Random random) {
        Region outer = random.nextBoolean() ? OffsetTest.star(random, false, 0.6) : OffsetTest.petals(random);
        List<Path> holes = new ArrayList<>();
        double turn = random.nextDouble() * 6.28;
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            Point c = Point.of(1.1 * Math.cos(turn + k * 2.1), 1.1 * Math.sin(turn + k * 2.1));
            holes.add(Path.circle(c, 0.15 + 0.4 * random.nextDouble()));
        }
        return new Region(outer.outer(), holes);
    }
}
