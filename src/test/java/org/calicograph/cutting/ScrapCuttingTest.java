package org.calicograph.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.calicograph.measure.Length;
import org.calicograph.cutting.ScrapCutting.Scrap;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.LegalCut;
import org.junit.jupiter.api.Test;

class ScrapCuttingTest {

    @Property(tries = 40)
    void every_blank_is_cut_once_or_named_missing_and_every_cut_is_legal(@ForAll Random random) {
        List<Blank> blanks = new ArrayList<>();
        List<Scrap> scraps = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            blanks.add(new Blank("P" + i % 6, Length.inches(2 + i % 3), Length.inches(2 + i % 6), i % 6 > 0));
        }
        for (int i = 0; i < 6; i++) {
            scraps.add(new Scrap("scrap " + i, Length.inches(2 + random.nextInt(12)), Length.inches(2 + random.nextInt(12))));
        }
        ScrapCutting found = ScrapCutting.of(scraps, blanks);
        List<Blank> all = new ArrayList<>(found.missing());
        for (ScrapCutting.Used u : found.used()) {
            List<Blank> here = u.layout().spots().stream().map(s -> s.taken().blank()).toList();
            LegalCut.check(u.layout(), here);
            assertThat(u.layout().width()).isEqualTo(u.scrap().width());
            assertThat(u.layout().length()).isEqualTo(u.scrap().length());
            all.addAll(here);
        }
        assertThat(all).containsExactlyInAnyOrderElementsOf(blanks);
    }

    @Test
    void the_table_says_what_comes_from_which_scrap_and_what_is_missing() {
        Blank a = Blank.of("A", Length.inches(3), Length.inches(3));
        ScrapCutting found = ScrapCutting.of(List.of(new Scrap("blue check", Length.inches(7), Length.inches(4)),
                new Scrap("sail stripe", Length.inches(3), Length.inches(4))), Collections.nCopies(4, a));
        assertThat(found.table().rows()).hasSize(3);
        assertThat(found.table().toString()).contains("sail stripe", "1 of A (3 in x 3 in)", "blue check", "2 of A (3 in x 3 in)", "missing");
        assertThat(found.missing()).hasSize(1);
    }

    @Test
    void a_scrap_without_size_is_refused() {
        assertThatThrownBy(() -> new Scrap("thread", Length.ZERO, Length.inches(4))).hasMessageContaining("'thread'");
    }
}
