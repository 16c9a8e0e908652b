package org.calicograph.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.calicograph.measure.Length;
import org.calicograph.workshop.BorderCloth.Way;
import org.calicograph.workshop.pieces.CuttingRules;
import org.junit.jupiter.api.Test;

class BorderClothTest {

    private static final CuttingRules RULES = CuttingRules.INCH;

    private static BorderCloth butted() {
        return BorderCloth.butted(Length.inches(70), Length.inches(86), Length.inches(6), RULES);
    }

    /** Education slide deck on amounts of yardage: 70 x 86 in, border cut 6 1/2 in: 2w + 2l + 4b = 338 in. */
    @Test
    void a_butted_border_is_as_long_as_published() {
        assertThat(butted().total()).isEqualTo(Length.inches(338));
    }

    /** Published strip lengths: 40 + 2 x 5 + 6 = 56 in (American Patchwork and Quilting); 22.5 + 7 + 6 = 35.5 in (quiltinghub.com). */
    @Test
    void mitred_pieces_are_as_long_as_published() {
        assertThat(BorderCloth.mitred(Length.inches(40), Length.inches(40), Length.inches(5), Length.inches(6), RULES).pieces())
                .containsOnly(Length.inches(56));
        assertThat(BorderCloth.mitred(Length.inches("22 1/2"), Length.inches("22 1/2"), Length.inches("3 1/2"), Length.inches(6), RULES).pieces())
                .containsOnly(Length.inches("35 1/2"));
    }

    /** By hand: 9 x 40 - 8 x 1/2 = 356 in covers 338, 8 strips give 316 1/2; 10 x 40 - 9 x 6 1/2 = 341 1/2 in covers it too. */
    @Test
    void joins_cost_their_allowance() {
        assertThat(butted().amount(Way.STRAIGHT_JOINS)).isEqualTo(new BorderCloth.Amount(Way.STRAIGHT_JOINS, 9, 8, Length.inches("58 1/2")));
        assertThat(butted().amount(Way.DIAGONAL_JOINS)).isEqualTo(new BorderCloth.Amount(Way.DIAGONAL_JOINS, 10, 9, Length.inches(65)));
    }

    @Test
    void along_the_selvage_all_four_lie_side_by_side() {
        assertThat(butted().amount(Way.LENGTHWISE)).isEqualTo(new BorderCloth.Amount(Way.LENGTHWISE, 4, 0, Length.inches("86 1/2")));
    }

    @Test
    void a_border_too_wide_to_join_is_refused() {
        assertThatThrownBy(() -> BorderCloth.butted(Length.inches(70), Length.inches(86), Length.inches(30), RULES))
                .hasMessageContaining("at most half as wide as the cloth");
    }
}
