package org.calicograph.piecing.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import java.util.Random;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.calicograph.stdlib.CompiledStdlib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;

class BatchUnitTest {

    private static Batch way(BatchUnit unit, String name) {
        return unit.ways(CuttingRules.INCH).stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
    }

    private static Length ruler(Batch batch, int cut) {
        return batch.cuts().get(cut).sides().get(0).ruler();
    }

    private static double exact(Batch batch, int cut) {
        return batch.cuts().get(cut).sides().get(0).exact().inInches();
    }

    /** Published charts of geese sewn four at a time (a personal quilting page and a shop's reference page). */
    @ParameterizedTest
    @CsvSource({"8,9 1/4,4 7/8", "7,8 1/4,4 3/8", "6,7 1/4,3 7/8", "5,6 1/4,3 3/8", "4,5 1/4,2 7/8", "3,4 1/4,2 3/8", "2,3 1/4,1 7/8"})
    void four_geese_come_from_the_published_squares(int width, String large, String small) {
        Batch four = way(Geese.of(inches(width)), "four at a time");
        assertThat(ruler(four, 0)).isEqualTo(Length.parse(large));
        assertThat(ruler(four, 1)).isEqualTo(Length.parse(small));
        assertThat(four.cuts().get(1).count()).isEqualTo(4);
        assertThat(four.yield()).isEqualTo(4);
    }

    /** A magazine's block page: geese of 2 x 4 in from a large square of 5 1/4 in, the small ones cut 3 in and trimmed. */
    @Test
    void small_squares_cut_large_are_those_of_a_published_page() {
        assertThat(ruler(way(Geese.of(inches(4)), "four at a time, trimmed"), 1)).isEqualTo(inches(3));
    }

    /** Published: twice the finished size and 7/8 in (an article: 3 in from 7 3/4 in); twice the finished size and an inch where they are trimmed (two pages: 3 in from 8, 2 in from 6). */
    @Test
    void eight_half_squares_come_from_the_published_squares() {
        assertThat(ruler(way(HalfSquares.of(inches(3)), "eight at a time"), 0)).isEqualTo(Length.parse("7 3/4"));
        assertThat(ruler(way(HalfSquares.of(inches(3)), "eight at a time, trimmed"), 0)).isEqualTo(inches(8));
        assertThat(ruler(way(HalfSquares.of(inches(2)), "eight at a time, trimmed"), 0)).isEqualTo(inches(6));
    }

    /** Handouts and block pages: half squares of 3, 4 and 6 in from 3 7/8, 4 7/8, 6 7/8 in; quarter squares of 3 and 4 in from 4 1/4, 5 1/4 in, larger by 1/4 in to trim (common practice). */
    @Test
    void squares_in_pairs_are_those_of_the_published_rules() {
        for (int side : List.of(3, 4, 6)) {
            assertThat(ruler(way(HalfSquares.of(inches(side)), "two at a time"), 0)).isEqualTo(inches(side).plus(inches(7, 8)));
            assertThat(ruler(way(HalfSquares.of(inches(side)), "two at a time, trimmed"), 0)).isEqualTo(inches(side + 1));
            assertThat(ruler(way(QuarterSquares.of(inches(side)), "two at a time"), 0)).isEqualTo(inches(side).plus(inches(5, 4)));
            assertThat(ruler(way(QuarterSquares.of(inches(side)), "two at a time, trimmed"), 0)).isEqualTo(inches(side).plus(inches(3, 2)));
        }
    }

    /** A pattern site's chart: a centre of 4 1/2 in finished takes corner squares of 4 1/4 in or, by eighths, 4 1/8 in. */
    @Test
    void a_square_in_a_square_has_the_published_corners() {
        Batch singly = way(SquareInSquare.of(inches(4.5 * Math.sqrt(2))), "singly");
        assertThat(ruler(singly, 0)).isEqualTo(inches(5));
        assertThat(ruler(singly, 1)).isEqualTo(Length.parse("4 1/8"));
    }

    /** What is left of a triangle when a seam allowance is taken off each side, by a polygon library's inward offset; it knows no rule of the trade. */
    private static double legOf(double seam, Point... triangle) {
        Envelope left = Polygons.of(Region.polygon(triangle), 1e-6).buffer(-seam).getEnvelopeInternal();
        return left.getWidth();
    }

    private static double half(double square, double seam) {
        return legOf(seam, new Point(0, 0), new Point(square, 0), new Point(0, square));
    }

    /** The long side of a quarter of a square, once sewn. */
    private static double quarter(double square, double seam) {
        return legOf(seam, new Point(0, 0), new Point(square, 0), new Point(square / 2, square / 2));
    }

    @Test
    void what_is_left_of_each_cut_triangle_is_the_finished_one() {
        Random random = new Random(12);
        for (CuttingRules rules : List.of(CuttingRules.INCH, CuttingRules.METRIC, CuttingRules.INCH.seam(inches(3, 8)))) {
            double seam = rules.seam().inInches();
            for (int i = 0; i < 40; i++) {
                double side = 1 + 8 * random.nextDouble();
                for (Batch b : HalfSquares.of(inches(side)).ways(rules)) {
                    double cut = exact(b, 0);
                    double left = switch (b.name().replace(", trimmed", "")) {
                        case "eight at a time" -> half(cut / 2, seam);
                        case "four at a time, sewn round" -> quarter(cut, seam) / Math.sqrt(2);
                        default -> half(cut, seam);
                    };
                    assertThat(left).as(b.name()).isCloseTo(side + (b.name().endsWith("trimmed") ? seam / 2 : 0), within(1e-3));
                }
                for (Batch b : QuarterSquares.of(inches(side)).ways(rules)) {
                    assertThat(quarter(exact(b, 0), seam)).as(b.name()).isCloseTo(side + (b.name().endsWith("trimmed") ? seam : 0), within(1e-3));
                }
                for (Batch b : Geese.of(inches(side)).ways(rules).subList(0, 3)) {
                    assertThat(quarter(exact(b, 0), seam)).as(b.name()).isCloseTo(side + (b.name().endsWith("trimmed") ? seam : 0), within(1e-3));
                    assertThat(half(exact(b, 1), seam)).as(b.name()).isCloseTo(side / 2 + (b.name().endsWith("trimmed") ? seam / 2 : 0), within(1e-3));
                }
                // The corner that is cut off leaves a seam allowance beyond the finished corner's line.
                double corner = side / 3;
                double off = FlippedCorners.of(inches(side), inches(corner)).cutOff(rules).inInches();
                assertThat((off - 2 * seam - corner) / Math.sqrt(2)).as("from the seam to the edge").isCloseTo(-seam, within(rules.fineStep().inInches()));
            }
        }
    }

    @Test
    void every_batch_gives_enough_and_no_more_than_a_batch_over() {
        for (BatchUnit unit : List.of(HalfSquares.of(inches(3)), QuarterSquares.of(inches(4)), QuarterSquares.of(inches(4)).ofThree(), Geese.of(inches(5)),
                FlippedCorners.of(inches(6), inches(2)), new FlippedCorners(inches(6), inches(2), 3), SquareInSquare.of(inches(6)))) {
            for (Batch b : unit.ways(CuttingRules.INCH)) {
                for (int n = 1; n < 40; n++) {
                    assertThat(b.batches(n) * b.yield()).isBetween(n, n + b.yield() - 1);
                    double finished = n * unit.width().inInches() * unit.height().inInches();
                    assertThat(b.cloth(n).squareInches()).as(unit.name() + ", " + b.name()).isGreaterThan(finished);
                    assertThat(unit.leastCloth(n, CuttingRules.INCH).cloth(n).squareInches()).isLessThanOrEqualTo(b.cloth(n).squareInches() + 1e-3);
                    assertThat(unit.fewestPieces(n, CuttingRules.INCH).pieces(n)).isLessThanOrEqualTo(b.pieces(n));
                }
            }
        }
    }

    private static Patchwork block(String name, Length side) {
        return (Patchwork) CompiledStdlib.call(CompiledStdlib.named(name), "block", side);
    }

    /** Counted on the blocks as they are drawn in any pattern book. */
    @ParameterizedTest
    @CsvSource({"OhioStar,quarter-square unit of three cloths,4,4", "SawtoothStar,flying goose,4,6", "DutchmansPuzzle,flying goose,4,6", "Hourglass,quarter-square unit,1,12",
            "BrokenDishes,half-square unit,4,6", "Shoofly,half-square unit,4,4"})
    void units_of_the_old_blocks_are_found(String name, String unit, int count, double width) {
        List<BatchUnits.Found> found = BatchUnits.of(block(name, inches(12))).found();
        assertThat(found).as(found.toString()).anySatisfy(f -> {
            assertThat(f.unit().name()).isEqualTo(unit);
            assertThat(f.count()).isEqualTo(count);
            assertThat(f.unit().width().inInches()).isCloseTo(width, within(1e-6));
        });
        int once = found.stream().mapToInt(BatchUnits.Found::count).sum();
        assertThat(BatchUnits.of(Setting.straight(2, 3).of(block(name, inches(12)))).found().stream().mapToInt(BatchUnits.Found::count).sum()).isEqualTo(6 * once);
    }

    @Test
    void found_units_take_no_more_than_the_triangles_that_there_are() {
        for (String name : CompiledStdlib.names()) {
            Class<?> type = CompiledStdlib.named(name);
            boolean sized = java.util.Arrays.stream(type.getMethods()).anyMatch(m -> m.getName().equals("block") && m.getParameterCount() == 1 && m.getParameterTypes()[0] == Length.class);
            if (!sized) {
                continue;
            }
            Patchwork block = block(name, inches(12));
            double units = BatchUnits.of(block).found().stream().mapToDouble(f -> f.count() * f.unit().width().inInches() * f.unit().height().inInches()).sum();
            double triangles = block.patches().stream().map(Patch::shape).filter(s -> s.outer().joined().segments().size() == 3).mapToDouble(s -> s.area().squareInches()).sum();
            assertThat(units).as(name).isLessThanOrEqualTo(triangles + 1e-3);
        }
    }

    @Test
    void what_cannot_be_sewn_is_refused_with_the_repair() {
        assertThatThrownBy(() -> HalfSquares.of(Length.ZERO)).hasMessageContaining("half-square unit").hasMessageContaining("above 0");
        assertThatThrownBy(() -> FlippedCorners.of(inches(6), inches(4))).hasMessageContaining("4 in").hasMessageContaining("at most 3 in");
        assertThatThrownBy(() -> Geese.of(inches(4)).made(0)).hasMessageContaining("use 1 or more");
    }

    @Test
    void one_cloth_makes_no_unit() {
        Fabric sand = Fabric.of("sand", "#e8dcc0");
        assertThat(BatchUnits.of(block("Shoofly", inches(12)).recoloured(p -> sand)).found()).isEmpty();
    }
}
