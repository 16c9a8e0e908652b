package org.calicograph.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LegalCut;
import org.junit.jupiter.api.Test;

class FatQuartersTest {

    /** The widely copied list of squares from an 18 x 22 in fat quarter; every row of it fits exactly one. */
    @Test
    void the_published_squares_come_from_one_fat_quarter() {
        int rows = 0;
        for (Map<String, String> row : Figures.of("squares_per_fabric")) {
            if (row.get("piece").startsWith("fat quarter")) {
                rows++;
                Length side = Length.parse(row.get("cut_square_in"));
                int published = Integer.parseInt(row.get("published_count"));
                Length w = Length.parse(row.get("usable_width_in"));
                Length l = Length.parse(row.get("length_in"));
                List<Blank> blanks = Collections.nCopies(published, Blank.of("A", side, side));
                assertThat(FatQuarters.of(w, l, blanks).count()).as(row.toString()).isEqualTo(1);
            }
        }
        assertThat(rows).isEqualTo(10);
    }

    @Test
    void every_sheet_is_legal_and_all_blanks_are_there() {
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            blanks.add(Blank.of("P" + i, Length.inches(2 + i % 7), Length.inches(3 + i % 4)));
        }
        FatQuarters quarters = FatQuarters.of(blanks);
        int cut = 0;
        for (Layout sheet : quarters.sheets()) {
            LegalCut.check(sheet, sheet.spots().stream().map(s -> s.taken().blank()).toList());
            assertThat(sheet.length()).isLessThanOrEqualTo(quarters.length());
            cut += sheet.spots().size();
        }
        assertThat(cut).isEqualTo(40);
    }

    @Test
    void a_blank_too_large_for_the_piece_is_refused() {
        assertThatThrownBy(() -> FatQuarters.of(List.of(Blank.of("border", Length.inches(3), Length.inches(40)))))
                .hasMessage("'border' is 3 in x 40 in but the pieces of cloth are 21 1/2 in x 17 1/2 in; cut it from yardage");
    }
}
