package org.calicograph.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.cutting.BorderCloth.Way;
import org.calicograph.cutting.pieces.CuttingRules;
import org.junit.jupiter.api.Test;

class BorderClothTest {

    private static final CuttingRules RULES = CuttingRules.INCH;

    private static BorderCloth butted() {
        return BorderCloth.butted(Length.inches(70), Length.inches(86), Length.inches(6), RULES);
    }

    @Test
    void butted_borders_are_as_long_as_published() {
        for (Map<String, String> row : Figures.of("butted_border_yardage")) {
            Length border = Length.parse(row.get("border_cut_in")).minus(RULES.seam().times(2));
            assertThat(BorderCloth.butted(Length.parse(row.get("quilt_w")), Length.parse(row.get("quilt_l")), border, RULES).total())
                    .as(row.toString()).isEqualTo(Length.parse(row.get("published_total_in")));
        }
    }

    /** One page tells its readers to cut strips 2 in shorter than its own sum: too short for the mitre that it allows for. */
    @Test
    void mitred_pieces_are_as_long_as_published_and_the_faulty_row_is_refused() {
        int refused = 0;
        for (Map<String, String> row : Figures.of("mitred_borders")) {
            Length side = Length.parse(row.get("quilt_side_in"));
            Length piece = BorderCloth.mitred(side, side, Length.parse(row.get("border_width_in")), Length.parse(row.get("extra_in")), RULES)
                    .pieces().get(0);
            Length published = Length.parse(row.get("published_strip_in"));
            if (row.get("check").equals("ok")) {
                assertThat(published).as(row.toString()).isEqualTo(piece);
            } else {
                refused++;
                assertThat(published).as(row.get("check")).isEqualTo(piece.minus(Length.inches(2)));
            }
        }
        assertThat(refused).isEqualTo(1);
    }

    /**
     * By hand: 9 x 40 - 8 x 1/2 = 356 in covers 338, 8 strips give 316 1/2; 10 x 40 - 9 x 6 1/2 = 341 1/2 in covers it too,
     * with a seam less than in one run, as one of the four pieces begins with a strip of its own.
     */
    @Test
    void joins_cost_their_allowance() {
        assertThat(butted().amount(Way.STRAIGHT_JOINS)).isEqualTo(new BorderCloth.Amount(Way.STRAIGHT_JOINS, 9, 8, Length.inches("58 1/2")));
        assertThat(butted().amount(Way.DIAGONAL_JOINS)).isEqualTo(new BorderCloth.Amount(Way.DIAGONAL_JOINS, 10, 8, Length.inches(65)));
    }

    @Test
    void along_the_selvedge_all_four_lie_side_by_side() {
        assertThat(butted().amount(Way.LENGTHWISE)).isEqualTo(new BorderCloth.Amount(Way.LENGTHWISE, 4, 0, Length.inches("86 1/2")));
    }

    @Test
    void a_border_too_wide_to_join_is_refused() {
        assertThatThrownBy(() -> BorderCloth.butted(Length.inches(70), Length.inches(86), Length.inches(30), RULES))
                .hasMessageContaining("at most half as wide as the cloth");
    }

    /** By hand: of 82 in from 40 in strips, a seam after 40 in would lie 1 in from the middle; after 38 1/4 in it lies 3 in off. */
    @Test
    void a_seam_keeps_clear_of_the_middle_where_no_strip_more_is_needed() {
        StripJoins joins = new BorderCloth(Length.inches("1 1/2"), List.of(Length.inches(78)), Fabric.USABLE_WIDTH, RULES).joined(Way.STRAIGHT_JOINS);
        assertThat(joins.strips()).hasSize(2);
        assertThat(joins.near()).isEqualTo(1);
        StripJoins spare = new BorderCloth(Length.inches("1 1/2"), List.of(Length.inches(82)), Fabric.USABLE_WIDTH, RULES).joined(Way.STRAIGHT_JOINS);
        assertThat(spare.near()).isZero();
        assertThat(spare.pieces().get(0).parts()).containsExactly(Length.inches("38 1/4"), Length.inches(40), Length.inches("4 3/4"));
    }

    @Property(tries = 200)
    void parts_make_up_their_piece_and_strips_are_the_fewest(@ForAll Random random) {
        List<Length> pieces = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(8); i++) {
            pieces.add(Length.inches(8L * (41 + random.nextInt(70)) + random.nextInt(8), 8));
        }
        BorderCloth cloth = new BorderCloth(Length.inches(3 + random.nextInt(16), 2), pieces, Fabric.USABLE_WIDTH, RULES);
        for (Way way : List.of(Way.STRAIGHT_JOINS, Way.DIAGONAL_JOINS)) {
            Length lost = way == Way.STRAIGHT_JOINS ? Length.inches(1, 2) : cloth.width();
            StripJoins joins = cloth.joined(way);
            Length used = Length.ZERO;
            Length parts = Length.ZERO;
            for (Length strip : joins.strips()) {
                assertThat(strip).isLessThanOrEqualTo(Fabric.USABLE_WIDTH);
                used = used.plus(strip);
            }
            for (StripJoins.Joined piece : joins.pieces()) {
                Length sum = piece.parts().stream().reduce(Length.ZERO, Length::plus);
                assertThat(sum.minus(lost.times((long) piece.joins()))).isEqualTo(piece.length());
                parts = parts.plus(sum);
            }
            assertThat(joins.pieces().stream().map(StripJoins.Joined::length)).isEqualTo(pieces);
            assertThat(used).isEqualTo(parts).isGreaterThanOrEqualTo(cloth.leastJoined(way));
            // One run joined and cut anywhere can't take more strips by more than what a seam at a piece's very end costs.
            int run = 1;
            for (Length at = Fabric.USABLE_WIDTH; at.compareTo(cloth.total()) < 0; at = at.plus(Fabric.USABLE_WIDTH).minus(lost)) {
                run++;
            }
            assertThat(joins.strips().size()).isBetween(run - 1, run + 1);
        }
    }
}
