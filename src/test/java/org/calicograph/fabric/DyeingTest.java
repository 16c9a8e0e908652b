package org.calicograph.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class DyeingTest {

    @Test
    void dye_is_a_part_of_the_cloth_s_weight_and_halves_from_piece_to_piece() {
        // A square metre at 150 g and 2 % takes 3 g; then 1.5 g and 0.75 g (common practice: % on weight of fabric).
        Dyeing dyeing = new Dyeing(new Area(1 / (0.0254 * 0.0254)), 150, 0.02, 3);
        assertThat(dyeing.clothGrams()).isCloseTo(150, within(1e-9));
        assertThat(dyeing.dyeGrams()).usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1).containsExactly(3.0, 1.5, 0.75);
    }

    @Test
    void notes_begin_with_the_cautions() {
        assertThat(Dyeing.of(new Area(500), 0.02, 4).notes()).startsWith("! Wear gloves").contains("dust mask", "air moves", "maker's instructions", "Piece 4");
        assertThat(new Scraps(Length.inches(9), Length.inches(6)).notes()).startsWith("! Press").contains("rotary cutter", "maker's instructions");
    }

    @Test
    void impossible_amounts_are_refused() {
        assertThatThrownBy(() -> Dyeing.of(new Area(500), 2, 4))
                .hasMessage("a depth of shade of 2.0 can't be dyed; use a part of the cloth's weight up to 0.1, such as 0.02");
        assertThatThrownBy(() -> Dyeing.of(Area.ZERO, 0.02, 4)).hasMessage("the cloth to be dyed is 0 sq in; use an area above 0");
        assertThatThrownBy(() -> new Scraps(Length.ZERO, Length.inches(1))).hasMessageStartingWith("a scrap of 0 in x 1 in gives nothing");
    }

    @Test
    void a_scrap_gives_whole_squares_only() {
        Scraps scrap = new Scraps(Length.inches(9), Length.parse("6 1/4"));
        assertThat(scrap.squares(Length.parse("2 1/2"))).isEqualTo(6);
        assertThat(scrap.squares(Length.inches(3))).isEqualTo(6);
        assertThat(scrap.largestFor(6, Length.inches(1, 8))).isEqualTo(Length.inches(3));
        assertThat(scrap.largestFor(1, Length.inches(1, 8))).isEqualTo(Length.parse("6 1/4"));
    }
}
