package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.opened.Variations;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody needs a mouse or eyes: everything has keys, and everything that keys can reach has a name. */
class DeskReachTest {

    @TempDir
    Path folder;

    @Test
    void every_action_has_keys_of_its_own_and_every_control_on_every_page_a_name() throws Exception {
        Notebook notebook = Variations.keep(Notebook.titled("Tide Table", Cell.prose("p1", "High water."),
                Cell.code("a1", "int points = dial(\"points\", 5, 16, 8);\nLength across = dial(\"across\", inches(2), inches(12), inches(6), inches(1));\n"
                        + "boolean on = dial(\"on\", true);\nStar.of(points).across(across)"),
                Cell.code("a2", "Table.of(\"Tides\", \"day\", \"height\").row(\"Monday\", 3)")), "calm", java.util.Map.of("points", "9"));
        Path file = folder.resolve("study.json");
        NotebookFile.save(notebook, file);
        new org.calicograph.desk.opened.Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        try (Evening evening = Evening.with(folder.resolve("own"), file)) {
            evening.untilDrawn("a2");
            List<Action> actions = evening.window.actions();
            assertThat(actions).allMatch(a -> a.keys().isPresent());
            assertThat(actions.stream().map(a -> a.keys().orElseThrow().getDisplayText())).doesNotHaveDuplicates();
            evening.keys(KeyCode.CONTROL, KeyCode.F);
            named(evening, "the study");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
            evening.until("variations", () -> evening.scene().lookup("#compare") != null);
            named(evening, "variations");
            evening.keys(KeyCode.ESCAPE);
            evening.keys(KeyCode.CONTROL, KeyCode.L);
            evening.until("the library", () -> evening.scene().lookup("#shelf-list") != null);
            named(evening, "the library");
            evening.keys(KeyCode.ESCAPE);
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.G);
            evening.until("the lesson", () -> evening.words("lesson-where").startsWith("1 of"));
            named(evening, "the lesson");
            evening.keys(KeyCode.F1);
            evening.until("all keys", () -> evening.scene().lookup("#keys") != null);
            named(evening, "the keys");
            assertThat(evening.words("keys")).contains(actions.stream().map(a -> a.name().replace("\u2026", "")).toList());
            evening.keys(KeyCode.ESCAPE);
            evening.until("the book is back", () -> evening.scene().lookup("#cell-a1") != null);
        }
    }

    private static void named(Evening evening, String page) {
        List<String> nameless = Evening.onFx(() -> {
            List<String> found = new ArrayList<>();
            walk(evening.scene().getRoot(), found);
            return found;
        });
        assertThat(nameless).as(page).isEmpty();
    }

    private static void walk(Node node, List<String> nameless) {
        if (!node.isVisible()) {
            return;
        }
        boolean named = node.getAccessibleText() != null && !node.getAccessibleText().isBlank()
                || node instanceof Labeled l && l.getText() != null && !l.getText().isBlank();
        if (node.isFocusTraversable() && !named) {
            nameless.add(node.getClass().getSimpleName() + " " + node.getStyleClass() + " #" + node.getId());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> walk(n, nameless));
        }
    }
}
