package org.calicograph.desk.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.calicograph.wire.Catalogue;
import org.junit.jupiter.api.Test;

class DeskShelfTest {

    private static final Catalogue.Entry WAVES = new Catalogue.Entry("OceanWaves", "Rows of small triangles that roll.", "OceanWaves.java",
            List.of(new Catalogue.Routine("static Block block(Length side, int waves)", "The block.", 12)));
    private static final Catalogue.Entry STAR = new Catalogue.Entry("Star", "A star of any number of points.", "Star.java",
            List.of(new Catalogue.Routine("static Star of(int points)", "", 9), new Catalogue.Routine("Block across(Length diameter)", "", 20)));
    private static final Catalogue SHELF = new Catalogue(List.of(WAVES, STAR), List.of());

    @Test
    void every_word_of_a_search_must_occur_somewhere() {
        assertThat(Routines.found(SHELF, "triangles BLOCK")).containsExactly(WAVES);
        assertThat(Routines.found(SHELF, "points")).containsExactly(STAR);
        assertThat(Routines.found(SHELF, "")).containsExactly(WAVES, STAR);
        assertThat(Routines.found(SHELF, "lantern")).isEmpty();
    }

    @Test
    void a_static_routine_is_offered_as_a_call_with_plain_values() {
        assertThat(Routines.calls(WAVES)).containsExactly("OceanWaves.block(inches(8), 4)");
        assertThat(Routines.calls(STAR)).containsExactly("Star.of(8)");
        assertThat(Routines.looks(STAR)).containsExactly("Star.of(8)", "Star.of(8).across(inches(8))", "Medallion.around(EconomyPatch.block(inches(32))).with(Star.of(8))");
    }
}
