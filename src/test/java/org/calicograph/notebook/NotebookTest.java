package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.junit.jupiter.api.Test;

class NotebookTest {

    private static final Notebook ROPEWALK = Notebook.titled("Ropewalk", Cell.prose("a1", "Twists."), Cell.code("a2", "int n = 3;\nn + 1"),
            Cell.code("b", "n * n")).withResult("a2", Saved.shown("k", Exhibit.words("4"), ""));

    @Test
    void a_removed_cell_takes_its_result_along() {
        assertThat(ROPEWALK.remove("a2").ids()).containsExactly("a1", "b");
        assertThat(ROPEWALK.remove("a2").results()).isEmpty();
    }

    @Test
    void a_renamed_cell_keeps_its_place_and_its_result() {
        Notebook renamed = ROPEWALK.rename("a2", "twist");
        assertThat(renamed.ids()).containsExactly("a1", "twist", "b");
        assertThat(renamed.results()).containsOnlyKeys("twist");
    }

    @Test
    void a_fresh_id_is_past_the_highest() {
        assertThat(ROPEWALK.freshId()).isEqualTo("a3");
        assertThat(ROPEWALK.remove("a1").freshId()).isEqualTo("a3");
    }

    @Test
    void a_split_cell_keeps_its_first_lines() {
        Notebook split = ROPEWALK.split("a2", 2);
        assertThat(split.cells()).extracting(Cell::text).containsExactly("Twists.", "int n = 3;", "n + 1", "n * n");
        assertThat(split.ids()).containsExactly("a1", "a2", "a3", "b");
    }

    @Test
    void what_can_not_be_edited_says_why() {
        assertThatThrownBy(() -> ROPEWALK.remove("a7")).hasMessage("there is no cell 'a7'; the cells are a1, a2, b");
        assertThatThrownBy(() -> ROPEWALK.join("a1")).hasMessage("cell 'a1' is prose and cell 'a2' is code; join cells of one kind");
        assertThatThrownBy(() -> ROPEWALK.join("b")).hasMessage("cell 'b' is the last; there is none to join it with");
        assertThatThrownBy(() -> ROPEWALK.split("b", 1)).hasMessage("cell 'b' has 1 lines and can't be split before line 1; it needs at least 2");
        assertThatThrownBy(() -> ROPEWALK.rename("b", "a1")).hasMessage("two cells have the id 'a1'; give one of them another");
        assertThatThrownBy(() -> ROPEWALK.move("b", 3)).hasMessage("cell 'b' can't move to place 3; use 0 to 2");
    }

    @Test
    void a_result_belongs_to_the_texts_and_dials_it_was_drawn_from() {
        Saved saved = Saved.shown(Saved.key(List.of("n + 1", "int n = 3;"), Map.of("points", "12")), Exhibit.NOTHING, "");
        assertThat(saved.belongsTo(List.of("n + 1", "int n = 3;"), Map.of("points", "12"))).isTrue();
        assertThat(saved.belongsTo(List.of("n + 1", "int n = 3;"), Map.of("points", "13"))).isFalse();
        assertThat(saved.belongsTo(List.of("n + 1int n = 3;"), Map.of("points", "12"))).isFalse();
        assertThat(saved.belongsTo(List.of("n + 2", "int n = 3;"), Map.of("points", "12"))).isFalse();
    }

    @Test
    void the_first_line_of_sha_256_is_the_key() {
        // FIPS 180-4: the SHA-256 of no bytes.
        assertThat(Saved.key(List.of(), Map.of())).isEqualTo("e3b0c44298fc1c149afbf4c8996fb924");
    }
}
