package org.calicograph.finishing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.calicograph.cutting.Figures;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.finishing.Finishing.Assumptions;
import org.calicograph.cutting.pieces.CuttingRules;
import org.junit.jupiter.api.Test;

class FinishingTest {

    private static Finishing of(String width, String height, CuttingRules rules, Assumptions how) {
        return Finishing.of(Length.parse(width), Length.parse(height), rules).with(how);
    }

    private static Assumptions binding(String strip, String extra, String join) {
        return new Assumptions(Length.inches(4), Length.parse(strip), Length.parse(extra), Length.parse(join), Length.inches(9));
    }

    @Test
    void binding_strips_agree_with_published_examples() {
        SoftAssertions soft = new SoftAssertions();
        for (Map<String, String> row : Figures.of("binding_examples")) {
            Length usable = row.get("usable_width").isBlank() ? Length.inches(40) : Length.parse(row.get("usable_width"));
            Finishing f = of(row.get("quilt_w"), row.get("quilt_l"), CuttingRules.INCH, binding(row.get("strip_width"), row.get("extra_in"), "0"))
                    .bound(Fabric.of("navy", "#24425c").wide(usable));
            soft.assertThat(f.bindingLength()).as(row.toString()).isEqualTo(Length.parse(row.get("total_length_computed")));
            if (!row.get("published_strips").isBlank()) {
                soft.assertThat(f.bindingStrips()).as(row.toString()).isEqualTo(Integer.parseInt(row.get("published_strips")));
            }
        }
        soft.assertAll();
    }

    /** A forum answer gives 26 1/2 in for 11 strips of 2 1/2 in, and says that 3/4 yd (27 in) will do. */
    @Test
    void eleven_strips_do_not_come_from_three_quarters_of_a_yard() {
        Finishing f = of("96", "110", CuttingRules.INCH, binding("2 1/2", "12", "0"));
        assertThat(f.bindingStrips()).isEqualTo(11);
        assertThat(f.bindingLaid()).isEqualTo(Length.inches("27 1/2")).isGreaterThan(Length.yards(0.75));
    }

    /**
     * Published squares for bias binding follow the area; only whole rounds count, so that a square is never smaller than
     * the area asks, and may be up to a strip's width and two inches larger.
     */
    @Test
    void bias_squares_are_never_smaller_than_their_area_and_little_larger_than_published() {
        SoftAssertions soft = new SoftAssertions();
        for (Map<String, String> row : Figures.of("bias_square_needed")) {
            double length = Double.parseDouble(row.get("length_in"));
            double strip = Double.parseDouble(row.get("bias_width_in"));
            Finishing f = Finishing.of(Length.inches(length / 4), Length.inches(length / 4), CuttingRules.INCH)
                    .with(binding(row.get("bias_width_in"), "0", "0"));
            double published = Double.parseDouble(row.get("published_square_in"));
            soft.assertThat(f.biasSquare().inInches()).as(row.toString()).isBetween(Math.sqrt(length * strip), published + strip + 2);
        }
        soft.assertAll();
    }

    /** Laid out by hand: the square's inner side as a parallelogram, cut round after round. In the trade's 40 sizes the area rule was short in 26. */
    @Test
    void the_bias_square_gives_the_whole_binding_in_whole_rounds() {
        int area = 0;
        int sizes = 0;
        for (int w = 36; w <= 108; w += 8) {
            for (int h : new int[] {w, w + 12, w + 20, w + 24}) {
                Finishing f = Finishing.of(Length.inches(w), Length.inches(h), CuttingRules.INCH);
                double needed = 2.0 * (w + h) + 12;
                assertThat(rounds(f.biasSquare().inInches() - 0.5, 2.5)).as(w + " x " + h).isGreaterThanOrEqualTo(needed - 1e-6);
                assertThat(rounds(f.biasSquareLeast().inInches() - 0.5 - 0.01, 2.5)).as("nothing smaller").isLessThan(needed);
                assertThat(f.biasFrom(f.biasSquare()).inInches()).isCloseTo(rounds(f.biasSquare().inInches() - 0.5, 2.5), within(1e-6));
                sizes++;
                area += rounds(Math.ceil(Math.sqrt(needed * 2.5)) - 0.5, 2.5) < needed ? 1 : 0;
            }
        }
        assertThat(sizes).isEqualTo(40);
        assertThat(area).as("sizes in which the area alone is too small").isGreaterThan(15);
    }

    /** Rounds counted one by one: each needs a strip's width of the parallelogram's height, and gives its long side. */
    private static double rounds(double inner, double strip) {
        double height = inner / Math.sqrt(2);
        double got = 0;
        while (height >= strip - 1e-9) {
            height -= strip;
            got += inner * Math.sqrt(2);
        }
        return got;
    }

    @Test
    void shrinkage_and_reserve_reach_backing_binding_and_sleeve() {
        Table plain = Finishing.of(Length.inches(60), Length.inches(80), CuttingRules.INCH.reserve(Length.ZERO)).table();
        Table shrinking = Finishing.of(Length.inches(60), Length.inches(80), CuttingRules.INCH.reserve(Length.inches(18)).shrinking(0.05)).table();
        for (int row : new int[] {0, 2, 4}) {
            assertThat(yards(shrinking, row)).as(shrinking.rows().get(row).get(0).text()).isGreaterThanOrEqualTo(yards(plain, row) + 0.5);
        }
    }

    private static double yards(Table table, int row) {
        return Length.parse(table.rows().get(row).get(1).text().replace(" yd", " in")).inInches();
    }

    /** Forum example: 59 x 72 in from 44 in cloth without overage: two lengths of 72 in; across, two of 59 in do. */
    @Test
    void the_better_way_round_is_chosen_for_the_backing() {
        Assumptions bare = new Assumptions(Length.ZERO, Length.inches("2 1/2"), Length.inches(12), Length.ZERO, Length.inches(9));
        Finishing f = of("59", "72", CuttingRules.INCH, bare).backed(Fabric.of("sand", "#e8dcc0").wide(Length.inches(44)));
        assertThat(f.backing(true).total()).isEqualTo(Length.inches(144));
        assertThat(f.backing()).isEqualTo(new Finishing.Backing(false, 2, Length.inches(59)));
    }

    /** Worked example: a 66 in quilt with 8 in overage takes two widths of 74 in, 148 in, 4 1/4 yd to the next quarter. */
    @Test
    void two_widths_of_a_quilt_and_its_overage() {
        Finishing f = of("70", "66", CuttingRules.INCH, Assumptions.USUAL);
        assertThat(f.backing(true).total()).isEqualTo(Length.inches(148));
        assertThat(f.backing(true).total().roundedUpTo(Length.inches(9))).isEqualTo(Length.yards(4.25));
    }

    @Test
    void the_batting_covers_the_quilt_and_its_overage() {
        assertThat(of("60", "72", CuttingRules.INCH, Assumptions.USUAL).batting().orElseThrow().name()).isEqualTo("twin");
        assertThat(of("118", "118", CuttingRules.INCH, Assumptions.USUAL).batting()).isEmpty();
    }

    /** Sizes as several shops and magazines print them: ours is never larger than a printed one, nor more than 6 x 8 in smaller. */
    @Test
    void packaged_battings_agree_with_shops_lists() {
        SoftAssertions soft = new SoftAssertions();
        int seen = 0;
        for (Map<String, String> row : Figures.of("batting_packaged_sizes")) {
            for (Finishing.Batting b : Finishing.PACKAGED) {
                if (b.name().equals(row.get("name"))) {
                    seen++;
                    soft.assertThat(Double.parseDouble(row.get("width_in")) - b.width().inInches()).as(row.toString()).isBetween(0.0, 6.0);
                    soft.assertThat(Double.parseDouble(row.get("length_in")) - b.height().inInches()).as(row.toString()).isBetween(0.0, 8.0);
                }
            }
        }
        soft.assertThat(seen).isEqualTo(15);
        soft.assertAll();
    }

    /** A tutorial's exact method: ceil(root of T / 2w) strips, D = n w root 2 + 1/2 in: 10.4 in for 98 in of 1 in. Ours is the same square. */
    @Test
    void the_bias_square_is_that_of_a_published_exact_method() {
        Finishing f = Finishing.of(Length.inches("24 1/2"), Length.inches("24 1/2"), CuttingRules.INCH).with(binding("1", "0", "0"));
        assertThat(f.bindingLength()).isEqualTo(Length.inches(98));
        double published = 7 * Math.sqrt(2) + 0.5;
        assertThat(f.biasSquareLeast().inInches()).isCloseTo(published, within(0.02));
        assertThat(f.biasSquare()).isEqualTo(Length.inches(11));
    }

    /** A shop's list gives ten yards for a king of 120 x 120 in: three lengths without any overage, which ours refuses. */
    @Test
    void ten_yards_do_not_back_a_king_with_overage() {
        Finishing f = of("120", "120", CuttingRules.INCH, Assumptions.USUAL);
        assertThat(f.backing().total()).isGreaterThan(Length.yards(10)).isEqualTo(Length.inches(4 * 128));
    }

    /**
     * Common practice for shows: a sleeve 4 in deep when it is folded and sewn, as wide as the quilt, joined from
     * strips across the cloth.
     */
    @Test
    void the_sleeve_takes_a_four_inch_rod_pocket_as_wide_as_the_quilt() {
        for (int width : new int[] {24, 40, 41, 84, 110}) {
            Finishing f = Finishing.of(Length.inches(width), Length.inches(60), CuttingRules.INCH);
            Length deep = f.how().sleeve().minus(CuttingRules.INCH.seam().times(2)).times(0.5);
            assertThat(deep).isBetween(Length.inches(4), Length.inches("4 1/2"));
            // Every join takes two seam allowances of 1/4 in.
            long strips = 1;
            for (double have = 40; have < width; have += 39.5) {
                strips++;
            }
            String row = f.table().rows().stream().map(r -> r.stream().map(Table.Entry::text).toList()).filter(r -> r.get(0).equals("Sleeve"))
                    .findFirst().orElseThrow().get(2);
            assertThat(row).isEqualTo(strips + (strips == 1 ? " strip of 9 in" : " strips of 9 in"));
        }
    }

    /** Strips of 2 1/2 in, double fold, finish at 3/8 in; single-fold strips of 1 1/8 in at 1/4 in (common practice). */
    @Test
    void a_binding_strip_follows_from_its_finished_width() {
        assertThat(Assumptions.USUAL.doubleFold(Length.inches(3, 8)).strip()).isEqualTo(Length.inches("2 1/2"));
        assertThat(Assumptions.USUAL.singleFold(Length.inches(1, 4)).strip()).isEqualTo(Length.inches("1 1/8"));
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> Assumptions.USUAL.doubleFold(Length.ZERO)).hasMessageContaining("such as 3/8 in");
    }

    /** The craft size, 36 x 46 in (a quilt shop's page, 2016), covers a table runner. */
    @Test
    void the_smallest_pack_of_batting_that_covers_is_named() {
        assertThat(of("24", "36", CuttingRules.INCH, Assumptions.USUAL).batting().orElseThrow().name()).isEqualTo("craft");
        assertThat(of("30", "40", CuttingRules.INCH, Assumptions.USUAL).batting().orElseThrow().name()).isEqualTo("crib");
    }
}
