package org.calicograph.desk.opened;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.junit.jupiter.api.Test;

class OpenNotebookTest {

    private final OpenNotebook opened = new OpenNotebook(Notebook.titled("Tide Table", Cell.prose("a1", "Ebb"), Cell.code("a2", "int a = 1;")));

    private static void type(OpenNotebook opened, String id, String letters) {
        for (char c : letters.toCharArray()) {
            opened.setText(id, opened.notebook().cell(id).orElseThrow().text() + c);
        }
    }

    private String text(String id) {
        return opened.notebook().cell(id).orElseThrow().text();
    }

    @Test
    void letters_typed_one_after_another_undo_together() {
        type(opened, "a1", " and flow");
        opened.undo();
        assertThat(text("a1")).isEqualTo("Ebb");
        opened.redo();
        assertThat(text("a1")).isEqualTo("Ebb and flow");
    }

    @Test
    void a_new_line_begins_another_step() {
        type(opened, "a1", "ing\nsoon");
        opened.undo();
        assertThat(text("a1")).isEqualTo("Ebbing\n");
        opened.undo();
        assertThat(text("a1")).isEqualTo("Ebbing");
    }

    @Test
    void undo_goes_back_across_cells_and_kinds_of_edit() {
        type(opened, "a1", "s");
        String added = opened.addCode(2);
        opened.setText(added, "a + 1");
        opened.setDial("points", "12");
        opened.setDial("points", "13");
        opened.move(added, -2);
        opened.remove("a2");
        List<Notebook> seen = new ArrayList<>();
        while (opened.canUndo()) {
            opened.undo();
            seen.add(opened.notebook());
        }
        assertThat(seen).hasSize(6);
        assertThat(seen.get(5)).isEqualTo(Notebook.titled("Tide Table", Cell.prose("a1", "Ebb"), Cell.code("a2", "int a = 1;")));
        while (opened.canRedo()) {
            opened.redo();
        }
        assertThat(opened.notebook().ids()).containsExactly(added, "a1");
        assertThat(opened.notebook().dialTexts()).containsEntry("points", "13");
    }

    @Test
    void a_notebook_is_unsaved_until_it_is_as_saved_again() {
        assertThat(opened.isUnsaved()).isFalse();
        opened.setTitle("Tide Tables");
        assertThat(opened.isUnsaved()).isTrue();
        opened.undo();
        assertThat(opened.isUnsaved()).isFalse();
    }

    @Test
    void the_chosen_cell_is_always_one_that_is_there() {
        opened.choose("a2");
        opened.remove("a2");
        assertThat(opened.chosen()).contains("a1");
        opened.remove("a1");
        assertThat(opened.chosen()).isEmpty();
        opened.undo();
        assertThat(opened.chosen()).contains("a1");
        opened.chooseFrom(-5);
        assertThat(opened.chosen()).contains("a1");
    }

    @Test
    void watchers_hear_of_what_was_and_what_is() {
        List<String> heard = new ArrayList<>();
        opened.watch((before, after) -> heard.add(before.title() + " > " + after.title()));
        opened.setTitle("Slack Water");
        opened.setTitle("Slack Water");
        assertThat(heard).containsExactly("Tide Table > Slack Water");
    }

    @Test
    void variations_are_kept_in_the_notebook_and_taken_again() {
        opened.setDial("points", "12");
        opened.change(Variations.keep(opened.notebook(), "calm", opened.notebook().dialTexts()));
        opened.setDial("points", "16");
        opened.change(Variations.take(opened.notebook(), "calm"));
        assertThat(opened.notebook().dialTexts()).containsEntry("points", "12");
        assertThat(Variations.of(opened.notebook())).containsOnlyKeys("calm");
        assertThat(Variations.of(Variations.forget(opened.notebook(), "calm"))).isEmpty();
        assertThat(Variations.differences(Map.of("points", "12", "width", "6 in"), Map.of("points", "16", "width", "6 in")))
                .containsExactly(new Variations.Difference("points", "12", "16"));
    }
}
