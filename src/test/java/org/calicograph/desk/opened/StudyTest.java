package org.calicograph.desk.opened;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.junit.jupiter.api.Test;

class StudyTest {

    private final OpenNotebook study = new OpenNotebook(Notebook.titled("Tide Table", Cell.prose("a1", "Ebb"), Cell.code("a2", "int a = 1;")));

    private static void type(OpenNotebook study, String id, String letters) {
        for (char c : letters.toCharArray()) {
            study.setText(id, study.notebook().cell(id).orElseThrow().text() + c);
        }
    }

    private String text(String id) {
        return study.notebook().cell(id).orElseThrow().text();
    }

    @Test
    void letters_typed_one_after_another_undo_together() {
        type(study, "a1", " and flow");
        study.undo();
        assertThat(text("a1")).isEqualTo("Ebb");
        study.redo();
        assertThat(text("a1")).isEqualTo("Ebb and flow");
    }

    @Test
    void a_new_line_begins_another_step() {
        type(study, "a1", "ing\nsoon");
        study.undo();
        assertThat(text("a1")).isEqualTo("Ebbing\n");
        study.undo();
        assertThat(text("a1")).isEqualTo("Ebbing");
    }

    @Test
    void undo_goes_back_across_cells_and_kinds_of_edit() {
        type(study, "a1", "s");
        String added = study.addCode(2);
        study.setText(added, "a + 1");
        study.setDial("points", "12");
        study.setDial("points", "13");
        study.move(added, -2);
        study.remove("a2");
        List<Notebook> seen = new ArrayList<>();
        while (study.canUndo()) {
            study.undo();
            seen.add(study.notebook());
        }
        assertThat(seen).hasSize(6);
        assertThat(seen.get(5)).isEqualTo(Notebook.titled("Tide Table", Cell.prose("a1", "Ebb"), Cell.code("a2", "int a = 1;")));
        while (study.canRedo()) {
            study.redo();
        }
        assertThat(study.notebook().ids()).containsExactly(added, "a1");
        assertThat(study.notebook().dialTexts()).containsEntry("points", "13");
    }

    @Test
    void a_study_is_unsaved_until_it_is_as_saved_again() {
        assertThat(study.isUnsaved()).isFalse();
        study.setTitle("Tide Tables");
        assertThat(study.isUnsaved()).isTrue();
        study.undo();
        assertThat(study.isUnsaved()).isFalse();
    }

    @Test
    void the_chosen_cell_is_always_one_that_is_there() {
        study.choose("a2");
        study.remove("a2");
        assertThat(study.chosen()).contains("a1");
        study.remove("a1");
        assertThat(study.chosen()).isEmpty();
        study.undo();
        assertThat(study.chosen()).contains("a1");
        study.chooseFrom(-5);
        assertThat(study.chosen()).contains("a1");
    }

    @Test
    void watchers_hear_of_what_was_and_what_is() {
        List<String> heard = new ArrayList<>();
        study.watch((before, after) -> heard.add(before.title() + " > " + after.title()));
        study.setTitle("Slack Water");
        study.setTitle("Slack Water");
        assertThat(heard).containsExactly("Tide Table > Slack Water");
    }

    @Test
    void variations_are_kept_in_the_notebook_and_taken_again() {
        study.setDial("points", "12");
        study.change(Variations.keep(study.notebook(), "calm", study.notebook().dialTexts()));
        study.setDial("points", "16");
        study.change(Variations.take(study.notebook(), "calm"));
        assertThat(study.notebook().dialTexts()).containsEntry("points", "12");
        assertThat(Variations.of(study.notebook())).containsOnlyKeys("calm");
        assertThat(Variations.of(Variations.forget(study.notebook(), "calm"))).isEmpty();
        assertThat(Variations.differences(Map.of("points", "12", "width", "6 in"), Map.of("points", "16", "width", "6 in")))
                .containsExactly(new Variations.Difference("points", "12", "16"));
    }
}
