package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.calicograph.desk.opened.Preferences;
import org.calicograph.desk.opened.Trust;
import org.calicograph.desk.results.PictureView;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What makes an evening at the desk easier: letters to one's liking, stillness, chalk, other words everywhere, the bed. */
class DeskComfortTest {

    private static final String CLOTHS = "var navy = Fabric.of(\"navy\", \"#1f3a5f\");\nvar sand = Fabric.of(\"sand\", \"#f1e7d2\");";

    @TempDir
    Path folder;

    private Evening at(Cell... cells) throws Exception {
        Notebook notebook = Notebook.titled("Tide Table", cells);
        Path file = folder.resolve("tide-table.json");
        NotebookFile.save(notebook, file);
        new Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        return Evening.with(folder.resolve("own"), file);
    }

    private static String text(Evening evening, String cell) {
        return Evening.onFx(() -> evening.window.opened().notebook().cell(cell).orElseThrow().text());
    }

    private static double letters(Evening evening, String id) {
        return Evening.onFx(() -> ((Label) evening.scene().lookup(id)).getFont().getSize());
    }

    @Test
    void found_words_give_way_to_others_one_by_one_or_everywhere_and_undo_takes_it_back() throws Exception {
        try (Evening evening = at(Cell.prose("p1", "The tide turns."), Cell.code("a1", "int tide = 6;\ntide * 2"), Cell.code("a2", "tide + 1"))) {
            evening.untilDrawn("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.H);
            evening.until("the line is there", () -> evening.focused("find"));
            evening.robot.write("tide");
            evening.robot.clickOn("#replace");
            evening.robot.write("ebbtide");
            evening.keys(KeyCode.ENTER);
            evening.until("it goes to a place first", () -> evening.words("found").contains(" of 4"));
            assertThat(text(evening, "p1")).isEqualTo("The tide turns.");
            evening.shot("replace");
            evening.keys(KeyCode.ENTER);
            evening.until("one is changed, and the next is behind it", () -> text(evening, "p1").equals("The ebbtide turns.") && evening.words("found").contains("2 of 4, at \u201cint tide = 6;\u201d"));
            evening.keys(KeyCode.SHIFT, KeyCode.ENTER);
            evening.until("all are changed", () -> evening.words("found").contains("changed in 4 places"));
            assertThat(text(evening, "a1")).isEqualTo("int ebbtide = 6;\nebbtide * 2");
            assertThat(text(evening, "p1")).isEqualTo("The ebbebbtide turns.");
            evening.keys(KeyCode.ESCAPE);
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("one step takes all back", () -> text(evening, "a1").equals("int tide = 6;\ntide * 2") && text(evening, "p1").equals("The ebbtide turns."));
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("and the one before", () -> text(evening, "p1").equals("The tide turns."));
        }
    }

    @Test
    void letters_grow_to_twice_their_size_and_nothing_that_is_written_is_cut() throws Exception {
        try (Evening evening = at(Cell.prose("p1", "# High water\n\nThe tide turns *twice* a day."), Cell.code("a1", "int points = dial(\"points\", 5, 16, 8);\nStar.of(points).across(inches(12))"),
                Cell.code("a2", "2 * 21"), Cell.code("a3", "Table.of(\"Tides\", \"day\", \"height\").row(\"Monday\", 3).row(\"the day after\", 4)"))) {
            evening.untilDrawn("a3");
            double foot = letters(evening, "#progress");
            double slot = Evening.onFx(() -> evening.scene().lookup("#cell-a1").getLayoutBounds().getHeight());
            for (int i = 0; i < 5; i++) {
                evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.EQUALS);
            }
            evening.until("letters are twice as large", () -> Math.abs(letters(evening, "#progress") - 2 * foot) < 0.01);
            evening.until("lines have room", () -> evening.scene().lookup("#cell-a1").getLayoutBounds().getHeight() > 1.6 * slot);
            evening.write("a1");
            assertThat(Evening.onFx(() -> ((javafx.scene.layout.Region) evening.scene().lookup("#bolts")).getWidth() / ((javafx.scene.layout.Region) evening.scene().lookup(".wall")).getWidth()))
                    .as("the bolts' share of the wall").isLessThan(0.27);
            evening.shot("letters-200");
            for (String cell : java.util.List.of("a1", "a2", "a3")) {
                evening.until("the lines' own room holds those of " + cell, () -> evening.scene().lookup("#code-" + cell) instanceof org.fxmisc.richtext.CodeArea area
                        && area.lookupAll(".paragraph-text").stream().mapToDouble(n -> n.getLayoutBounds().getHeight()).sum() + 14 <= area.getHeight() + 1
                        && area.lookupAll(".paragraph-text").size() == area.getParagraphs().size());
            }
            assertThat(evening.words("note-a2").strip()).isEqualTo("42");
            assertThat(new Preferences(folder.resolve("own")).letters()).isEqualTo("200");
            for (int i = 0; i < 9; i++) {
                evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.MINUS);
            }
            evening.until("and small", () -> Math.abs(letters(evening, "#progress") - 0.8 * foot) < 0.01);
            evening.shot("letters-80");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.DIGIT0);
            evening.until("and as they come", () -> letters(evening, "#progress") == foot);
        }
    }

    @Test
    void the_old_edge_stays_as_chalk_while_a_dial_moves_and_is_rubbed_out_at_rest() throws Exception {
        try (Evening evening = at(Cell.code("a1", CLOTHS), Cell.code("a2", "Length side = dial(\"side\", inches(6), inches(24), inches(9), inches(1));\n"
                + "NinePatch.block(side).with(Map.of(Role.DARK, navy, Role.LIGHT, sand))"), Cell.code("a3", "int other = dial(\"other\", 1, 9, 4);\nother"))) {
            evening.untilDrawn("a3");
            evening.until("it hangs", () -> evening.window.wall().meant().map(v -> v.paintings() > 0).orElse(false));
            PictureView picture = Evening.onFx(() -> evening.window.wall().meant().orElseThrow());
            evening.robot.clickOn("#dial-other");
            evening.keys(KeyCode.UP);
            evening.until("the other dial is turned", () -> evening.words("note-a3").strip().equals("5"));
            assertThat(Evening.onFx(picture::chalked)).as("a dial that moves nothing here").isZero();
            Point2D thumb = Evening.onFx(() -> {
                Node node = evening.scene().lookup("#slider-side").lookup(".thumb");
                Bounds b = node.localToScreen(node.getBoundsInLocal());
                return new Point2D(b.getCenterX(), b.getCenterY());
            });
            evening.robot.moveTo(thumb).press(MouseButton.PRIMARY).moveBy(20, 0).moveBy(20, 0);
            evening.until("another size hangs", () -> picture.box().width() > 9.5);
            // Nine squares of three by three have 24 edges, each once.
            assertThat(Evening.onFx(picture::chalked)).isEqualTo(24);
            evening.shot("chalk");
            evening.robot.release(MouseButton.PRIMARY);
            evening.until("it is rubbed out", () -> picture.chalked() == 0);
        }
    }

    @Test
    void the_foot_says_which_bed_a_quilt_covers_and_nothing_of_a_block() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(9))"),
                Cell.code("a2", "Quilt.of(\"Slack Water\", Setting.straight(8, 9).of(NinePatch.block(inches(\"10 7/8\"))))"))) {
            evening.untilDrawn("a2");
            // 87 x 97 7/8: at the foot 97.875 x 0.97 - 80 = 14.94.
            evening.until("the bed is named", () -> evening.words("pointed").strip()
                    .equals("Covers a queen bed (60 in x 80 in) once quilted: drop 12 1/4 in at the sides, 15 in at the foot"));
            evening.shot("bed");
            evening.robot.clickOn("#rail-a1");
            evening.until("a block covers none", () -> evening.words("pointed").isBlank());
        }
    }

    @Test
    void kept_still_the_needle_lies_on_its_thread_while_something_is_drawn() throws Exception {
        try (Evening evening = at(Cell.code("a1", "int n = 3;"), Cell.code("a2", "n + 1"))) {
            evening.untilDrawn("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Y);
            evening.until("it is said", () -> evening.words("pointed").contains("Nothing moves"));
            evening.write("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("while (n > 0) { }");
            evening.until("it is at work", () -> evening.state("a2") instanceof CellState.Drawing && !evening.scene().lookup("#needle").isDisable());
            double first = needle(evening);
            long at = System.nanoTime();
            evening.until("more than two steps of a walking needle", () -> System.nanoTime() - at > 500_000_000L);
            assertThat(needle(evening)).isEqualTo(first);
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Y);
            evening.until("and walks again", () -> needle(evening) != first);
            evening.keys(KeyCode.ESCAPE);
            evening.untilFailed("a2");
        }
    }

    private static double needle(Evening evening) {
        return Evening.onFx(() -> evening.scene().lookup(".needle-steel").getTranslateX());
    }
}
