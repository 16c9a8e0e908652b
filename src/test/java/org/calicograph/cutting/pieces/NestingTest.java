package org.calicograph.cutting.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.fabric.Print;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class NestingTest {

    private static final Length CLOTH = Length.inches(40);

    /** By a second road: overlays of the outlines as drawn, which know nothing of rows and slabs. */
    @Test
    void pieces_on_a_strip_lie_apart_and_inside_it_and_are_turned_but_never_mirrored() {
        Random random = new Random(41);
        List<Region> shapes = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            shapes.add(star(random));
        }
        for (double bulge : new double[] {-0.4, -0.2, 0.2, 0.4}) {
            shapes.add(CutOutline.of(Region.of(Path.from(0, 0).arcTo(new Point(0, 9), bulge).arcTo(new Point(0, 0), bulge > 0 ? bulge : -bulge / 2).close()), CuttingRules.INCH.seam()));
            shapes.add(CutOutline.of(Region.of(Path.from(0, 0).lineTo(6, 0).lineTo(6, 6).arcTo(new Point(0, 0), bulge).close()), CuttingRules.INCH.seam()));
            shapes.add(CutOutline.of(Region.of(Path.from(0, 0).arcTo(new Point(8, 0), bulge).arcTo(new Point(8, 8), bulge).arcTo(new Point(0, 8), bulge).arcTo(new Point(0, 0), bulge).close()), CuttingRules.INCH.seam()));
        }
        int strips = 0;
        for (Region shape : shapes) {
            for (Print.Direction way : Print.Direction.values()) {
                for (Nesting.Ends ends : Nesting.Ends.values()) {
                    int wanted = 1 + random.nextInt(60);
                    strips += check(shape, Nesting.of(shape, CuttingRules.INCH).running(way).ending(ends), way, wanted);
                }
            }
        }
        assertThat(strips).as("strips with more than one piece").isGreaterThan(200);
    }

    private static int check(Region shape, Nesting nesting, Print.Direction way, int wanted) {
        List<CutMethod.Run> runs = nesting.runs(wanted, CLOTH);
        assertThat(runs.stream().mapToInt(CutMethod.Run::pieces).sum()).isEqualTo(wanted);
        int strips = 0;
        for (CutMethod.Run run : runs.stream().distinct().toList()) {
            List<Path> drawn = nesting.outlines(run, wanted, CLOTH);
            if (run.pieces() == 1 && drawn.isEmpty()) {
                continue;
            }
            strips++;
            assertThat(drawn).hasSize(run.pieces());
            assertThat(run.across()).isLessThanOrEqualTo(CLOTH);
            List<Geometry> lying = drawn.stream().map(p -> (Geometry) Polygons.of(Region.of(p), 1e-3)).toList();
            Box all = new Box(-1e-6, -1e-6, run.across().inInches() + 0.01, run.along().inInches() + 0.01);
            for (int i = 0; i < drawn.size(); i++) {
                assertThat(contains(all, drawn.get(i).bounds())).as("%s in %s", drawn.get(i).bounds(), run).isTrue();
                for (int j = i + 1; j < drawn.size(); j++) {
                    if (lying.get(i).getEnvelopeInternal().intersects(lying.get(j).getEnvelopeInternal())) {
                        assertThat(lying.get(i).distance(lying.get(j))).as("room for the pencil").isGreaterThan(0.045);
                    }
                }
            }
            for (int i = 0; i < Math.min(3, drawn.size()); i++) {
                assertThat(isTurned(shape, Region.of(drawn.get(i)), way)).as(way + " " + run).isTrue();
            }
        }
        return strips;
    }

    private static boolean contains(Box all, Box one) {
        return all.left() <= one.left() && all.top() <= one.top() && all.right() >= one.right() && all.bottom() >= one.bottom();
    }

    /** True if one of the turns that the print allows lays the shape on the other. */
    private static boolean isTurned(Region shape, Region lying, Print.Direction way) {
        for (int quarter = 0; quarter < 4; quarter++) {
            boolean allowed = quarter == 0 || way == Print.Direction.ANY || way == Print.Direction.TWO_WAY && quarter == 2;
            Region turned = shape.transformed(Transform.turn(Angle.degrees(90 * quarter)));
            Box from = turned.bounds();
            Box to = lying.bounds();
            Region there = turned.transformed(Transform.move(to.left() - from.left(), to.top() - from.top()));
            if (allowed && Polygons.of(there, 1e-3).symDifference(Polygons.of(lying, 1e-3)).getArea() < 0.01 * shape.perimeter()) {
                return true;
            }
        }
        return false;
    }

    private static Region star(Random random) {
        int corners = 3 + random.nextInt(7);
        List<Point> points = new ArrayList<>();
        double flat = 0.3 + random.nextDouble();
        for (int i = 0; i < corners; i++) {
            double r = 1 + 4 * random.nextDouble();
            double a = 2 * Math.PI * (i + 0.4 * random.nextDouble()) / corners;
            points.add(new Point(r * Math.cos(a), flat * r * Math.sin(a)));
        }
        return Region.of(Path.polygon(points));
    }

    /** Thue 1910, Fejes Tóth 1940: circles fill at most pi over the root of 12 of the plane, 90.69 %, in rows that stand in each other's gaps. */
    @Test
    void circles_come_near_the_densest_packing_that_there_is_and_never_beyond_it() {
        Region circle = Region.of(Path.circle(Point.ORIGIN, 2));
        List<CutMethod.Run> runs = Nesting.of(circle, CuttingRules.INCH).runs(10_000, Length.inches(200));
        double cloth = runs.stream().mapToDouble(r -> r.across().inInches() * r.along().inInches()).sum();
        double share = 10_000 * circle.area().squareInches() / cloth;
        assertThat(share).isBetween(0.82, Math.PI / Math.sqrt(12));
    }

    /** Euclid I.34: a wedge and the same turned about make a parallelogram, so that n of them take n times their middle width and one slanted end. */
    @Test
    void wedges_lie_head_to_tail_in_their_middle_width() {
        Region wedge = Region.polygon(new Point(0, 0), new Point(3, 0), new Point(2, 6), new Point(1, 6));
        CutMethod.Run run = Nesting.of(wedge, CuttingRules.INCH).running(Print.Direction.TWO_WAY).runs(15, CLOTH).get(0);
        double gap = CuttingRules.INCH.rulerStep().inInches() / 2;
        assertThat(run.pieces()).isEqualTo(15);
        assertThat(run.along()).isEqualTo(Length.inches(6));
        assertThat(run.across().inInches()).isCloseTo(14 * (2 + gap) + 3, within(0.13));
    }

    @Test
    void a_print_that_runs_one_way_is_never_turned() {
        Region wedge = Region.polygon(new Point(0, 0), new Point(3, 0), new Point(2, 6), new Point(1, 6));
        Nesting upright = Nesting.of(wedge, CuttingRules.INCH).running(Print.Direction.ONE_WAY);
        double free = cloth(Nesting.of(wedge, CuttingRules.INCH).runs(120, CLOTH));
        assertThat(cloth(upright.runs(120, CLOTH))).isGreaterThan(1.15 * free);
    }

    private static double cloth(List<CutMethod.Run> runs) {
        return runs.stream().mapToDouble(r -> r.across().inInches() * r.along().inInches()).sum();
    }
}
