package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.opened.Variations;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the desk keeps at hand beside the cells, worked by keys and by the mouse, with a real kernel behind. */
class DeskAtHandTest {

    private static final String WIDTH = "Length width = dial(\"width\", inches(2), inches(12), inches(\"3 1/8\"), inches(1, 8));\n"
            + "Table.of(\"Strips\", \"what\", \"cut\").row(\"navy\", width)";

    @TempDir
    Path folder;

    private Evening trusted(Notebook notebook) throws Exception {
        Path file = folder.resolve("study.json");
        NotebookFile.save(notebook, file);
        new org.calicograph.desk.opened.Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        return Evening.with(folder.resolve("own"), file);
    }

    private static String entry(Evening evening, String cell) {
        return evening.state(cell) instanceof CellState.Done done && done.exhibit() instanceof Exhibit.Tabled t ? t.table().rows().get(0).get(1).text() : "";
    }

    private static String typed(Evening evening, String id) {
        return Evening.onFx(() -> evening.scene().lookup("#" + id) instanceof javafx.scene.control.TextField f ? f.getText() : "");
    }

    @Test
    void lengths_turn_metric_with_one_key_in_dials_and_tables_and_no_value_changes() throws Exception {
        try (Evening evening = trusted(Notebook.titled("Tide Table", Cell.code("a1", WIDTH)))) {
            evening.until("it is in inches", () -> entry(evening, "a1").equals("3 1/8 in") && typed(evening, "dial-width").equals("3 1/8 in"));
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.U);
            evening.until("the table is metric, the exact value beside", () -> entry(evening, "a1").equals("7.94 cm (3 1/8 in)"));
            assertThat(typed(evening, "dial-width")).isEqualTo("7.94 cm");
            assertThat(evening.words("tray")).contains("exactly 3 1/8 in");
            assertThat(evening.window.opened().notebook().dials()).isEmpty();

            evening.robot.clickOn("#dial-width");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("20");
            evening.keys(KeyCode.ENTER);
            evening.until("a bare number is in the unit that stood there", () -> entry(evening, "a1").equals("20 cm"));
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("50");
            evening.keys(KeyCode.ENTER);
            evening.until("the range is metric too", () -> evening.words("tray").contains("from 5.08 cm to 30.48 cm"));
            assertThat(new org.calicograph.desk.opened.Preferences(folder.resolve("own")).lengths()).isEqualTo(org.calicograph.measure.Length.System.METRIC);
        }
    }

    @Test
    void two_kept_variations_are_shown_side_by_side_with_what_differs() throws Exception {
        Notebook star = Notebook.titled("Harbour Light", Cell.code("a1", "int points = dial(\"points\", 5, 16, 8);\nint skip = dial(\"skip\", 2, 4, 2);\n"
                + "Star.of(points).skipping(skip).across(inches(12))"));
        Notebook kept = Variations.keep(Variations.keep(star, "calm", Map.of("points", "9", "skip", "2")), "bold", Map.of("points", "14", "skip", "2"));
        try (Evening evening = trusted(kept)) {
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
            evening.until("the page is there", () -> evening.scene().lookup("#compare") != null);
            evening.robot.clickOn("#compare");
            evening.until("two pictures are there", () -> evening.scene().getRoot().lookupAll(".tile .picture").size() == 2);
            assertThat(evening.words("differences")).contains("calm\nbold").contains("points\n9\n14").doesNotContain("skip");
        }
    }

    @Test
    void words_are_found_across_cells_marked_and_gone_through_by_keys() throws Exception {
        try (Evening evening = trusted(Notebook.titled("Slack Water", Cell.prose("p1", "The tide turns."), Cell.code("a1", "int tide = 6;\ntide * 2"),
                Cell.code("a2", "\"Tide\"")))) {
            evening.untilDrawn("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.F);
            evening.until("the line is there", () -> evening.focused("find"));
            evening.robot.write("tide");
            evening.until("all are counted", () -> evening.words("found").strip().equals("in 4 places"));
            evening.until("prose is marked", () -> evening.scene().getRoot().lookupAll("#cell-p1 .found").size() == 1);
            evening.keys(KeyCode.ENTER);
            evening.keys(KeyCode.ENTER);
            evening.until("the second is in code", () -> evening.words("found").startsWith("2 of 4, at \u201cint tide = 6;\u201d"));
            evening.until("and selected", () -> evening.window.code("a1").orElseThrow().selected().equals("tide"));
            evening.keys(KeyCode.SHIFT, KeyCode.ENTER);
            evening.until("back to the first", () -> evening.words("found").startsWith("1 of 4, at \u201cThe tide turns.\u201d"));
            evening.keys(KeyCode.SHIFT, KeyCode.ENTER);
            evening.until("before the first comes the last", () -> evening.words("found").startsWith("4 of 4, at \u201c\"Tide\"\u201d"));
            evening.keys(KeyCode.ESCAPE);
            evening.until("the keyboard is in its cell, nothing is marked", () -> evening.focused("code-a2")
                    && evening.scene().getRoot().lookupAll("#cell-p1 .found").isEmpty());
        }
    }

    @Test
    void a_method_becomes_a_routine_of_ones_own_and_undo_puts_it_back() throws Exception {
        String text = "int further = 3;\nBlock light(Length side) { return NinePatch.block(side.half().plus(inches(1))); }\nlight(inches(6))";
        try (Evening evening = trusted(Notebook.titled("Harbour Light", Cell.code("a1", text), Cell.code("a2", "light(inches(4)).name()")))) {
            evening.untilDrawn("a2");
            evening.write("a1");
            select(evening, "a1", text.indexOf("Block"), text.indexOf("}") + 1);
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
            evening.until("its class is asked for", () -> evening.focused("answer-routine"));
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("HarbourLamp");
            evening.keys(KeyCode.ENTER);
            evening.until("it is said where it stands", () -> evening.words("notice-routine").contains("HarbourLamp.java"));
            assertThat(folder.resolve("stdlib/HarbourLamp.java")).content().contains("import org.calicograph.patchwork.Block;").contains("public static Block light(Length side)");
            assertThat(evening.window.opened().notebook().cell("a1").orElseThrow().text()).isEqualTo("int further = 3;\nHarbourLamp.light(inches(6))");
            evening.until("the other cell calls it too", () -> evening.state("a2") instanceof CellState.Done
                    && evening.window.opened().notebook().cell("a2").orElseThrow().text().equals("HarbourLamp.light(inches(4)).name()"));
            evening.write("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("it is back", () -> evening.window.opened().notebook().cell("a1").orElseThrow().text().equals(text));
        }
    }

    @Test
    void a_method_that_needs_other_cells_is_refused_with_their_names() throws Exception {
        String text = "int twice() { return tide * 2; }";
        try (Evening evening = trusted(Notebook.titled("Slack Water", Cell.code("a1", "int tide = 6;"), Cell.code("a2", text)))) {
            evening.untilDrawn("a2");
            evening.write("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
            evening.until("it is said", () -> evening.words("notice-routine").contains("'tide' of passage a1"));
            assertThat(evening.words("notice-routine")).contains("as a parameter");
            assertThat(folder.resolve("stdlib")).doesNotExist();
        }
    }

    private static void select(Evening evening, String cell, int from, int to) {
        Evening.onFx(() -> {
            evening.window.code(cell).orElseThrow().select(from, to);
            return null;
        });
    }

    @Test
    void the_library_shows_a_picture_beside_each_routine_in_sight() throws Exception {
        try (Evening evening = trusted(Notebook.titled("Oyster Beds", Cell.code("a1", "1 + 1")))) {
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.L);
            evening.until("the library is there", () -> evening.scene().lookup("#shelf-list") != null);
            evening.until("those in sight get pictures", () -> pictures(evening) > 1);
            evening.until("the chosen one is shown large", () -> evening.scene().lookup(".shelf-entry .picture") != null);
        }
    }

    private static long pictures(Evening evening) {
        return evening.scene().getRoot().lookupAll(".shelf-look .image-view").stream().filter(n -> ((javafx.scene.image.ImageView) n).getImage() != null).count();
    }

    @Test
    void a_lesson_is_gone_through_by_keys_and_its_question_answered() throws Exception {
        Notebook compass = Notebook.titled("Compass evening", Cell.prose("p1", "A star begins as a circle."),
                Cell.code("c2", "var sheet = Draft.blank(\"Star\", inches(8), inches(8)).middle(\"O\").point(\"A\", inches(4), inches(1)).circle(\"rim\", \"O\", \"A\")"
                        + ".divide(\"P\", \"rim\", 5, \"A\");\nsheet"),
                Cell.code("c3", "int answer = dial(\"answer\", 0, 90, 0);\nQuestion.of(\"What is the angle at a tip?\", sheet.angle(\"P3\", \"P1\", \"P4\"),"
                        + " \"An angle on the rim is half of one at the middle.\").answered(answer)"));
        try (Evening evening = trusted(compass)) {
            evening.untilDrawn("c3");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.G);
            evening.until("it begins", () -> evening.words("lesson-where").startsWith("1 of "));
            evening.keys(KeyCode.RIGHT);
            evening.until("the first step", () -> lesson(evening).contains("Mark the middle of the sheet, O.") && evening.words("lesson-where").strip().equals("2 of 6, step 1 of 4 of its draft"));
            evening.shot("lesson");
            evening.keys(KeyCode.RIGHT);
            evening.until("the second", () -> evening.words("lesson-where").contains(", step 2 of 4 of"));
            evening.keys(KeyCode.LEFT);
            evening.keys(KeyCode.HOME);
            evening.until("the beginning again", () -> evening.words("lesson-where").startsWith("1 of "));
            evening.keys(KeyCode.END);
            evening.until("the question is the last", () -> evening.scene().lookup("#dial-answer") != null);
            assertThat(evening.words("lesson-verdict").strip()).isEmpty();
            answer(evening, "70");
            evening.until("a wrong answer gets the hint", () -> evening.words("lesson-verdict").contains("70\u00b0 is not it yet. An angle on the rim"));
            answer(evening, "36");
            // Euclid III.20: an angle on the rim is half of the one at the middle; a fifth of a turn is 72 degrees, half of it 36.
            evening.until("the right one is told", () -> evening.words("lesson-verdict").contains("36\u00b0 is right."));
            evening.keys(KeyCode.ESCAPE);
            evening.until("the study is back", () -> evening.scene().lookup("#cell-p1") != null);
        }
    }

    private static String lesson(Evening evening) {
        return evening.scene().getRoot().lookupAll(".lesson-words").stream().map(n -> ((javafx.scene.control.Label) n).getText()).findFirst().orElse("");
    }

    private static void answer(Evening evening, String words) {
        evening.until("the answer has the keyboard", () -> evening.focused("dial-answer"));
        evening.keys(KeyCode.CONTROL, KeyCode.A);
        evening.robot.write(words);
        evening.keys(KeyCode.ENTER);
    }
}
