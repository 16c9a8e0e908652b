package org.calicograph.cutting.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.cutting.Figures;
import org.calicograph.geometry.Transform;
import org.junit.jupiter.api.Test;

class RotaryRulesTest {

    private static final CuttingRules RULES = CuttingRules.INCH;

    /** Charts for on-point settings; they round up to the next 1/8 in unless the row says otherwise. */
    @Test
    void setting_triangles_agree_with_published_charts() {
        SoftAssertions soft = new SoftAssertions();
        for (Map<String, String> row : Figures.of("onpoint_setting_triangles")) {
            Length block = Length.parse(row.get("finished_block_in"));
            check(soft, row.get("side_square_cut_in"), row.get("side_check"), RotaryRules.sideSetting(block, RULES), row);
            check(soft, row.get("corner_square_cut_in"), row.get("corner_check"), RotaryRules.cornerSetting(block, RULES), row);
        }
        soft.assertAll();
    }

    private static void check(SoftAssertions soft, String published, String rounding, Dimension ours, Map<String, String> row) {
        if (published.isBlank()) {
            return;
        }
        Length chart = Length.parse(published);
        // The trade's + 1 1/4 and + 7/8 are themselves rounded up, so a chart may stand one line higher than geometry asks.
        Length step = rounding.contains("1/4") ? Length.inches(1, 4) : Length.inches(1, 8);
        Length over = chart.minus(ours.exact());
        boolean roundedDown = rounding.startsWith("nearest");
        soft.assertThat(over.inInches()).as(row.toString())
                .isBetween(roundedDown ? -step.inInches() / 2 : -1e-9, step.inInches() + 0.05);
        if (!roundedDown && step.equals(Length.inches(1, 8))) {
            soft.assertThat(chart.minus(ours.ruler())).as(row.toString()).isIn(Length.ZERO, Length.inches(1, 8));
        }
    }

    @Test
    void triangles_squares_and_geese_agree_with_published_tables() {
        SoftAssertions soft = new SoftAssertions();
        for (Map<String, String> row : Figures.of("triangles_and_geese")) {
            Length finished = Length.parse(row.get("finished_in"));
            Dimension ours = switch (row.get("shape")) {
                case "HST", "GEESE_SMALL" -> RotaryRules.halfSquare(finished, RULES);
                case "QST", "GEESE_LARGE" -> RotaryRules.quarterSquare(finished, RULES);
                default -> RotaryRules.side("square", finished, RULES);
            };
            soft.assertThat(ours.ruler()).as(row.toString()).isEqualTo(Length.parse(row.get("cut_in")));
        }
        soft.assertAll();
    }

    /** A known wrong habit: 7/8 in and 1 1/4 in are roundings, not the allowances themselves. */
    @Test
    void seven_eighths_is_a_rounding_and_the_exact_value_stands_beside_it() {
        Dimension half = RotaryRules.halfSquare(Length.inches(3), RULES);
        assertThat(half.exact().inInches()).isCloseTo(3.853553, within(1e-6));
        assertThat(half.ruler()).isEqualTo(Length.inches("3 7/8"));
        assertThat(half.rounding().inInches()).isCloseTo(0.021447, within(1e-6));
        assertThat(RotaryRules.quarterSquare(Length.inches(4), RULES).exact().inInches()).isCloseTo(5.207107, within(1e-6));
    }

    /** A chart's own rule, side x root 2 + 1 1/4 in rounded up, gives 24 in for a 16 in block; it prints 23 7/8 in. */
    @Test
    void the_chart_that_cuts_root_two_short_contradicts_its_own_rule() {
        Length rule = Length.inches(16 * Math.sqrt(2) + 1.25);
        assertThat(rule.roundedUpTo(Length.inches(1, 8))).isEqualTo(Length.inches(24));
        Dimension side = RotaryRules.sideSetting(Length.inches(16), RULES);
        assertThat(side.exact().inInches()).isCloseTo(23.834524, within(1e-5));
        assertThat(side.ruler()).isEqualTo(Length.inches("23 7/8"));
    }

    @Test
    void log_cabin_logs_are_cut_as_published() {
        SoftAssertions soft = new SoftAssertions();
        for (Map<String, String> row : Figures.of("log_cabin_cutting")) {
            Length width = Length.parse(row.get("cut_width_in")).minus(Length.inches(1, 2));
            Length length = Length.parse(row.get("cut_length_in")).minus(Length.inches(1, 2));
            CutMethod cut = RotaryRules.of(Region.rectangle(width, length), RULES);
            soft.assertThat(cut).isInstanceOf(CutMethod.Blanks.class);
            soft.assertThat(cut.dimensions().get(0).ruler()).as(row.toString()).isEqualTo(Length.parse(row.get("cut_width_in")));
            soft.assertThat(cut.dimensions().get(cut.dimensions().size() - 1).ruler()).isEqualTo(Length.parse(row.get("cut_length_in")));
        }
        soft.assertAll();
    }

    @Test
    void grain_decides_between_half_and_quarter_squares() {
        Region half = Region.polygon(new Point(0, 0), new Point(3, 0), new Point(0, 3));
        Region quarter = Region.polygon(new Point(0, 0), new Point(6, 0), new Point(3, 3));
        assertThat(RotaryRules.of(half, RULES).shape()).isEqualTo("half-square triangle");
        assertThat(RotaryRules.of(quarter, RULES).shape()).isEqualTo("quarter-square triangle");
        assertThat(RotaryRules.of(quarter, RULES).runs(9, org.calicograph.fabric.Fabric.USABLE_WIDTH)).hasSize(3);
    }

    @Test
    void diamonds_hexagons_and_equilateral_triangles_are_cut_from_strips() {
        double r = Math.sqrt(0.5) * 2;
        Region diamond = Region.polygon(new Point(0, 0), new Point(2, 0), new Point(2 + r, r), new Point(r, r));
        // A diamond of side 2 in is sqrt 2 high: its strip of 1.914 in lies 1/64 in from a line of 1/16.
        assertThat(RotaryRules.of(diamond, RULES).shape()).isEqualTo("diamond");
        Region threes = Region.of(Path.regular(6, Point.ORIGIN, 3 / Math.sqrt(3), Angle.ZERO));
        CutMethod hexagon = RotaryRules.of(threes, RULES);
        assertThat(hexagon.shape()).isEqualTo("hexagon");
        assertThat(hexagon.dimensions().get(0).exact().inInches()).isCloseTo(3.5, within(1e-6));
        Region triangle = Region.of(Path.regular(3, Point.ORIGIN, 2, Angle.degrees(-90)));
        CutMethod even = RotaryRules.of(triangle, RULES);
        assertThat(even.shape()).isEqualTo("equilateral triangle");
        // height + 3 seams: computed from geometry.
        assertThat(even.dimensions().get(0).exact().inInches()).isCloseTo(3.75, within(1e-6));
    }

    @Test
    void a_size_that_no_ruler_shows_goes_to_a_template_and_says_so() {
        CutMethod cut = RotaryRules.of(Region.rectangle(Length.inches(4).dividedBy(3), Length.inches(2)), RULES);
        assertThat(cut).isInstanceOf(CutMethod.Template.class);
        assertThat(cut.instruction()).startsWith("Cut by template: no ruler line is near the width of ");
    }

    /** The allowances for a 1/4 in seam, from geometry: square 0.5, diamond's strip 0.5, hexagon flat to flat 0.5. */
    @Test
    void the_cutting_line_lies_one_seam_outside() {
        Region square = Region.rectangle(Length.inches(3), Length.inches(3));
        assertThat(CutOutline.of(square, RULES.seam()).area().squareInches()).isCloseTo(12.25, within(1e-9));
        Region kite = Region.polygon(new Point(0, 0), new Point(4, 0), new Point(4, 1));
        Region cut = CutOutline.of(kite, RULES.seam());
        assertThat(cut.area().squareInches()).isGreaterThan(kite.area().squareInches());
        // The 14 degree point would reach 2 in beyond the seam's; trimmed two seams out, its ends lie within
        // the hypotenuse of two seams and one.
        assertThat(cut.bounds().left()).isGreaterThan(-0.25 * Math.sqrt(5));
    }

    @Test
    void inch_and_metric_rules_give_the_same_exact_size() {
        for (Length leg : List.of(Length.inches(3), Length.mm(80))) {
            assertThat(RotaryRules.halfSquare(leg, RULES).exact())
                    .isEqualTo(RotaryRules.halfSquare(leg, CuttingRules.METRIC.seam(RULES.seam())).exact());
        }
    }

    /** The charts round 0.854 in to 7/8 and 1.207 in to 1 1/4, and their sums to a hundredth: never smaller than the exact square. */
    @Test
    void triangles_from_their_other_side_agree_with_charts() {
        for (Map<String, String> row : Figures.of("triangle_from_side")) {
            Length side = Length.parse(row.get("side_in"));
            boolean half = row.get("given").startsWith("long side of half-square");
            Dimension square = half ? RotaryRules.halfSquare(side.times(Math.sqrt(0.5)), CuttingRules.INCH)
                    : RotaryRules.quarterSquare(side.times(Math.sqrt(2)), CuttingRules.INCH);
            double rounding = half ? 0.875 - 0.25 * (2 + Math.sqrt(2)) : 1.25 - 0.25 * (2 + 2 * Math.sqrt(2));
            double over = Double.parseDouble(row.get("published_square_in")) - square.exact().inInches();
            assertThat(over).as(row.toString()).isBetween(rounding - 0.005, rounding + 0.005);
        }
    }

    /**
     * Between one slanted cut and the next lies a piece: all of a strip as large as each other but for the ruler's
     * rounding of one edge, larger than the finished shape, none off the strip.
     */
    @Test
    void pieces_nested_along_a_strip_are_alike_and_lie_within_it() {
        double side = 7 / Math.sqrt(3);
        double lopsided = 9.875 - 0.25 * (2 + Math.sqrt(2));
        List<Region> shapes = List.of(
                Region.polygon(new Point(0, 3.5), new Point(side, 3.5), new Point(side / 2, 0)),
                Region.polygon(new Point(0, 3), new Point(9, 3), new Point(6, 0), new Point(3, 0)),
                Region.polygon(new Point(0, 3), new Point(lopsided, 3), new Point(lopsided - 3, 0), new Point(0, 0)),
                Region.polygon(new Point(0, 3), new Point(3 * Math.sqrt(2), 3), new Point(3 + 3 * Math.sqrt(2), 0), new Point(3, 0)));
        for (Region shape : shapes) {
            CutMethod method = RotaryRules.of(shape, CuttingRules.INCH);
            assertThat(method).isInstanceOf(CutMethod.Strips.class);
            for (CutMethod.Run run : method.runs(20, Length.inches(40))) {
                List<Line> cuts = method.cutsWithin(run);
                assertThat(cuts).hasSize(run.pieces() + 1);
                double first = area(cuts.get(0), cuts.get(1));
                assertThat(first).isGreaterThan(shape.area().squareInches());
                for (int k = 0; k < run.pieces(); k++) {
                    assertThat(area(cuts.get(k), cuts.get(k + 1))).as(method.shape()).isCloseTo(first, within(0.1));
                }
                for (Line cut : cuts) {
                    assertThat(cut.from().x()).isBetween(-1e-3, run.across().inInches() + 0.04);
                    assertThat(cut.to().x()).isBetween(-1e-3, run.across().inInches() + 0.04);
                }
            }
        }
    }

    private static double area(Line one, Line next) {
        double foot = next.from().x() - one.from().x();
        double head = next.to().x() - one.to().x();
        return (foot + head) / 2 * Math.abs(one.from().y() - one.to().y());
    }

    /** Common practice: long diamonds of two leanings are cut from strips laid the same side up, and told apart. */
    @Test
    void a_parallelogram_says_which_way_it_leans_and_its_mirror_image_says_the_other() {
        // Slanted sides 3 in apart: 3 1/2 in between cuts.
        double side = 3 * Math.sqrt(2);
        Region right = Region.of(Path.polygon(List.of(new Point(0, 2), new Point(side, 2), new Point(side + 2, 0), new Point(2, 0))));
        assertThat(RotaryRules.of(right, RULES).shape()).isEqualTo("parallelogram leaning right");
        assertThat(RotaryRules.of(right, RULES).instruction()).contains("45°, leaning right");
        Region left = right.transformed(Transform.mirrorAcross(side));
        assertThat(RotaryRules.of(left, RULES).shape()).isEqualTo("parallelogram leaning left");
        for (Region each : List.of(right, left)) {
            Region about = each.transformed(Transform.turn(Angle.degrees(180), new Point(3, 1)));
            assertThat(RotaryRules.of(about, RULES).shape()).isEqualTo(RotaryRules.of(each, RULES).shape());
        }
    }

    /** Common practice: a border that no ruler line gives is cut a little wide, sewn on and trimmed; nobody draws a template of three yards. */
    @Test
    void what_is_longer_than_a_ruler_is_cut_large_and_trimmed_where_no_line_is_near() {
        Region strip = Region.rectangle(Length.inches(103), Length.inches(0.402));
        CutMethod cut = RotaryRules.of(strip, CuttingRules.INCH);
        assertThat(cut).isInstanceOf(CutMethod.Blanks.class);
        assertThat(cut.dimensions()).extracting(Dimension::ruler).containsExactly(Length.inches("103 1/2"), Length.inches(1));
        assertThat(cut.instruction()).isEqualTo("Cut rectangles. No ruler line is near its width: cut it large, sew it on, then trim it to 29/32 in.");
        assertThat(RotaryRules.of(Region.rectangle(Length.inches(20), Length.inches(0.402)), CuttingRules.INCH)).isInstanceOf(CutMethod.Template.class);
        assertThat(RotaryRules.of(Region.rectangle(Length.inches(103), Length.inches(2)), CuttingRules.INCH).instruction()).isEqualTo("Cut rectangles.");
    }
}
