package org.calicograph.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.calicograph.cutting.Cutting;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

class EstimateTest {

    private static Quilt quilt() {
        var draft = Block.onGrid("Nine Patch", 3, Length.inches(12));
        for (int i = 0; i < 9; i++) {
            draft = draft.square(i % 2 == 0 ? Role.DARK : Role.LIGHT, i % 3, i / 3, 1);
        }
        return Quilt.of("Tide Table", Setting.straight(2, 2).of(draft.block()));
    }

    /** Counted by hand: 36 squares; eight seams and 48 in a block, then three seams and 48 in; 576 square inches quilted every 2 in. */
    @Test
    void hours_are_the_amounts_times_the_rates() {
        Estimate e = Estimate.of(quilt());
        assertThat(e.work()).extracting(Estimate.Work::amount).startsWith("36 pieces", "35 seams, 7 yd", "35 seams", "8 yd of line");
        assertThat(e.work().get(0).hours()).isCloseTo(36 * 20 / 3600.0, within(1e-9));
        assertThat(e.work().get(1).hours()).isCloseTo(35 * 20 / 3600.0 + 240 / 60.0 / 60, within(1e-6));
        assertThat(e.work().get(3).hours()).isCloseTo(288 / 40.0 / 60, within(1e-6));
        assertThat(e.hours()).isCloseTo(e.work().stream().mapToDouble(Estimate.Work::hours).sum(), within(1e-12));
    }

    @Test
    void money_is_what_is_bought_times_its_price() {
        Rates free = Rates.USUAL.clothPrice(0);
        double others = Estimate.of(quilt(), free).cost();
        Cutting cutting = Cutting.of(quilt());
        double yards = cutting.fabrics().get(0).yardage().toBuy().inInches() / 36;
        String name = cutting.fabrics().get(0).fabric().name();
        assertThat(Estimate.of(quilt(), free.price(name, 16)).cost()).isCloseTo(others + 16 * yards, within(1e-9));
        // A batting of the quilt and 4 in all round: 32 x 32 in.
        assertThat(others).isCloseTo(32 * 32 / 1296.0 * 8 + 5, within(1e-9));
        Estimate paid = Estimate.of(quilt(), free.hour(10));
        assertThat(paid.cost()).isCloseTo(others + 10 * paid.hours(), within(1e-9));
    }

    /** An industry table on a needlework page: 550 cm of thread for 220 cm of lockstitch seam; the published formula gives up to 2.96. */
    @Test
    void thread_for_a_seam_lies_between_published_ratios() {
        assertThat(Rates.THREAD_PER_INCH).isBetween(550 / 220.0, 2.96);
    }

    @Test
    void a_rate_that_makes_no_sense_is_named() {
        assertThatThrownBy(() -> Rates.USUAL.lineSpacing(0)).hasMessage("the spacing of quilting lines is 0.0; use a number above 0");
        assertThatThrownBy(() -> Rates.USUAL.price("navy", -3)).hasMessage("the price of navy is -3.0; use a number of 0 or more");
    }

    @Test
    void an_estimate_draws_itself_with_its_assumptions() {
        assertThat(Estimate.of(quilt()).show().toString()).contains("Time for Tide Table", "Cost of Tide Table", "common practice");
    }
}
