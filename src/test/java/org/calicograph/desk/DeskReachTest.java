package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.code.CodeEditor;
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
        if (node.isFocusTraversable()) {
            Told told = Told.of(node);
            boolean content = told.role() == AccessibleRole.TEXT_FIELD || told.role() == AccessibleRole.TEXT_AREA || told.role() == AccessibleRole.COMBO_BOX
                    || told.role() == AccessibleRole.SPINNER;
            String shown = node instanceof TextInputControl field ? (field.getText().isEmpty() && field.getPromptText() != null ? field.getPromptText() : field.getText()) : node instanceof CodeEditor editor ? editor.getText() : told.text();
            if (told.name().isBlank() || told.role() == AccessibleRole.PARENT && !node.getStyleClass().contains("lesson-page") || told.role() == AccessibleRole.NODE || content && !told.text().equals(shown)) {
                nameless.add(node.getClass().getSimpleName() + " " + node.getStyleClass() + " #" + node.getId() + " " + told);
            }
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(n -> walk(n, nameless));
        }
    }

    /** What a screen reader is told when it asks the toolkit. */
    private record Told(AccessibleRole role, String name, String text, Object value, String help) {

        static Told of(Node node) {
            AccessibleRole role = (AccessibleRole) node.queryAccessibleAttribute(AccessibleAttribute.ROLE);
            String text = words(node, AccessibleAttribute.TEXT);
            Node label = (Node) node.queryAccessibleAttribute(AccessibleAttribute.LABELED_BY);
            boolean apart = role == AccessibleRole.TEXT_FIELD || role == AccessibleRole.TEXT_AREA || role == AccessibleRole.COMBO_BOX || role == AccessibleRole.SPINNER;
            return new Told(role, label != null ? words(label, AccessibleAttribute.TEXT) : apart ? "" : text, text,
                    node.queryAccessibleAttribute(AccessibleAttribute.VALUE), words(node, AccessibleAttribute.HELP));
        }

        private static String words(Node node, AccessibleAttribute attribute) {
            Object said = node.queryAccessibleAttribute(attribute);
            return said == null ? "" : said.toString();
        }
    }

    private static Told told(Evening evening, String id) {
        return Evening.onFx(() -> Told.of(evening.scene().lookup("#" + id)));
    }

    @Test
    void a_listener_is_told_what_a_dial_stands_at_what_the_lines_are_and_what_is_wrong_with_them() throws Exception {
        Notebook notebook = Notebook.titled("Tide Table", Cell.prose("p1", "# High water\n\nThe *tide* turns."),
                Cell.code("a1", "int points = dial(\"points\", 5, 16, 8);\nLength across = dial(\"across\", inches(2), inches(12), inches(6), inches(1));\n"
                        + "int rays = dial(\"rays\", List.of(8, 16, 32), 16);\nStar.of(points).across(across)"),
                Cell.code("a2", "Sta.of(4)"));
        Path file = folder.resolve("study.json");
        NotebookFile.save(notebook, file);
        new org.calicograph.desk.opened.Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        try (Evening evening = Evening.with(folder.resolve("own"), file)) {
            evening.untilDrawn("a1");
            evening.until("the fault", () -> told(evening, "code-a2").help().contains("Star"));
            assertThat(told(evening, "dial-points")).isEqualTo(new Told(AccessibleRole.TEXT_FIELD, "points", "8", null, "from 5 to 16"));
            assertThat(told(evening, "slider-points")).isEqualTo(new Told(AccessibleRole.SLIDER, "points, 8", "points, 8", 8.0, "from 5 to 16"));
            assertThat(told(evening, "slider-across")).isEqualTo(new Told(AccessibleRole.SLIDER, "across, 6 in", "across, 6 in", 6.0, "from 2 in to 12 in"));
            assertThat(told(evening, "dial-rays").text()).isEqualTo("16");
            assertThat(told(evening, "dial-rays").name()).isEqualTo("rays");
            Told lines = told(evening, "code-a1");
            assertThat(lines.role()).isEqualTo(AccessibleRole.TEXT_AREA);
            assertThat(lines.name()).isEqualTo("Working lines");
            assertThat(lines.text()).isEqualTo(notebook.cell("a1").orElseThrow().text());
            assertThat(lines.help()).startsWith("pin 1, current");
            assertThat(told(evening, "code-a2").help()).startsWith("pin \u00d7, needs mending. There is no variable Sta here");
            Evening.onFx(() -> {
                evening.scene().lookup("#dial-points").requestFocus();
                return true;
            });
            evening.keys(KeyCode.UP);
            evening.until("the dial turned", () -> told(evening, "slider-points").text().equals("points, 9"));
            assertThat(told(evening, "slider-points").value()).isEqualTo(9.0);
            Told words = Evening.onFx(() -> Told.of(evening.scene().lookup(".prose-page")));
            assertThat(words).isEqualTo(new Told(AccessibleRole.TEXT, "High water\nThe tide turns.", "High water\nThe tide turns.", null, "Press Enter to write"));
        }
    }
}
