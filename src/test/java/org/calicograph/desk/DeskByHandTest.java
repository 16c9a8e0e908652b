package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import org.calicograph.desk.cells.CodePane;
import org.calicograph.desk.results.PictureView;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window worked as a person works it: by keys and by the mouse, with a real kernel behind. */
class DeskByHandTest {

    private static final String STAR = "int points = dial(\"points\", 5, 16, 8);\nStar.of(points).across(inches(12))";

    @TempDir
    Path folder;

    /** A notebook of our own hand: one that prose alone makes trusted, and to which code is then added by keys. */
    private Path file(Cell... cells) throws Exception {
        Path file = folder.resolve("study.json");
        NotebookFile.save(Notebook.titled("Slack Water", cells), file);
        return file;
    }

    private Path own() {
        return folder.resolve("own");
    }

    private Evening trusted(Cell... cells) throws Exception {
        Path file = file(cells);
        new org.calicograph.desk.opened.Trust(own(), folder.resolve("product")).grant(NotebookFile.read(file));
        return Evening.with(own(), file);
    }

    private static String shown(Evening evening, String cell) {
        return evening.state(cell) instanceof CellState.Done done && done.exhibit() instanceof Exhibit.Words words ? words.text() : "";
    }

    @Test
    void a_cell_is_added_typed_and_drawn_with_the_keyboard_alone() throws Exception {
        try (Evening evening = trusted(Cell.prose("p1", "Low water."))) {
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.J);
            String id = "a1";
            evening.until("the new cell has the keyboard", () -> evening.focused("code-" + id));
            evening.robot.write("int six = 6;");
            evening.keys(KeyCode.ENTER);
            evening.robot.write("six * 7");
            evening.until("it is drawn once the hand rests", () -> shown(evening, id).equals("42"));
            assertThat(evening.words("cell-" + id)).contains("42");
            assertThat(evening.words("saved")).contains("unsaved");
            Path file = folder.resolve("study.json");
            evening.until("it is kept safe beside the file", () -> !Evening.kept(file).isEmpty());

            evening.keys(KeyCode.CONTROL, KeyCode.S);
            evening.until("it is saved", () -> !evening.window.opened().isUnsaved());
            evening.until("what was kept is gone", () -> Evening.kept(file).isEmpty());
            Notebook saved = NotebookFile.read(folder.resolve("study.json"));
            assertThat(saved.cell(id).orElseThrow().text()).isEqualTo("int six = 6;\nsix * 7");
            assertThat(saved.results()).containsKey(id);

            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("the last step is undone", () -> !evening.window.opened().notebook().cell(id).orElseThrow().text().endsWith("7"));
        }
    }

    @Test
    void an_error_is_underlined_where_it_is_explained_beneath_and_gone_when_mended() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "int six = 6;\nint seven = sixx + 1;"))) {
            evening.untilFailed("a1");
            assertThat(evening.words("trouble-a1")).contains("sixx").contains("line 2, column 13");
            evening.write("a1");
            evening.until("four letters are underlined", () -> evening.underlined("a1").equals("sixx"));

            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("int six = 6; int seven = six + 1; seven");
            evening.untilDrawn("a1");
            assertThat(shown(evening, "a1")).isEqualTo("7");
            assertThat(evening.underlined("a1")).isEmpty();
            assertThat(evening.words("trouble-a1")).isEmpty();
        }
    }

    @Test
    void an_error_is_underlined_while_it_is_written_and_nothing_is_drawn_for_it() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "int tide = 5;"), Cell.code("a2", "tide + 1"))) {
            evening.untilDrawn("a2");
            evening.write("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("int ebb = tidde + 1;");
            evening.until("the misspelt name is underlined", () -> evening.underlined("a2").equals("tidde"));
            assertThat(evening.words("trouble-a2")).contains("Did you mean tide?").contains("line 1, column 11");
            assertThat(evening.state("a2")).isInstanceOf(CellState.Stale.class);
            assertThat(evening.pin("a2")).contains("from before the last change");
            evening.keys(KeyCode.LEFT);
            evening.robot.write(" ");
            assertThat(evening.underlined("a2")).isEqualTo("tidde");

            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("int ebb = tide + 1;");
            evening.until("it is mended", () -> evening.underlined("a2").isEmpty() && evening.words("trouble-a2").isEmpty());
            evening.untilDrawn("a2");
        }
    }

    @Test
    void a_dial_is_turned_by_keys_by_typing_and_by_dragging_and_what_it_cannot_take_is_refused() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", STAR), Cell.code("a2", "\"has \" + points"), Cell.code("a3", "\"alone\""))) {
            evening.untilDrawn("a3");
            evening.until("the dial is there", () -> evening.scene().lookup("#dial-points") != null);
            evening.robot.clickOn("#dial-points");
            evening.keys(KeyCode.UP);
            evening.until("what depends on it follows", () -> shown(evening, "a2").equals("has 9"));
            assertThat(evening.window.opened().notebook().dialTexts()).containsEntry("points", "9");

            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("99");
            evening.keys(KeyCode.ENTER);
            evening.until("a value out of range is refused in words", () -> evening.words("tray").contains("from 5 to 16"));
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("12");
            evening.keys(KeyCode.ENTER);
            evening.until("a value typed is taken", () -> shown(evening, "a2").equals("has 12"));

            Node slider = evening.scene().lookup("#slider-points");
            evening.robot.drag(slider).moveBy(200, 0).drop();
            evening.until("the slider is dragged to its end", () -> shown(evening, "a2").equals("has 16"));
        }
    }

    @Test
    void a_cell_that_never_ends_is_stopped_by_escape_and_the_others_stay() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "\"before\""), Cell.code("a2", "1 + 1"))) {
            evening.untilDrawn("a2");
            evening.write("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("while (true) { }");
            evening.drawNow();
            evening.until("it is being drawn", () -> evening.state("a2") instanceof CellState.Drawing);
            evening.until("it says so", () -> evening.pin("a2").contains("is being drawn"));
            evening.keys(KeyCode.ESCAPE);
            evening.untilFailed("a2");
            assertThat(evening.words("trouble-a2")).contains("Held").doesNotContain("\u2716");
            // Held is not wrong: neither its pin nor the foot says so.
            evening.until("its pin says so", () -> evening.pin("a2").startsWith("Pin, held"));
            assertThat(evening.words("progress")).contains("1 held").doesNotContain("mending");
            evening.shot("held");
            assertThat(shown(evening, "a1")).isEqualTo("before");
        }
    }

    @Test
    void a_killed_kernel_is_explained_and_another_draws_on_with_nothing_lost() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "int tide = 5;\ntide"), Cell.code("a2", "tide + 1"))) {
            evening.untilDrawn("a2");
            Evening.onFx(() -> {
                evening.window.killKernel();
                return null;
            });
            evening.until("it is said", () -> evening.window.notices().says("kernel"));
            assertThat(evening.words("notice-kernel")).contains("Drawing was ended, as it was asked to.").doesNotContain("by itself").contains("Nothing of what you wrote is lost").contains("Start again");
            assertThat(shown(evening, "a2")).isEqualTo("6");
            evening.robot.clickOn("Start again");
            evening.until("another kernel is ready", () -> evening.words("ready").strip().equals("ready"));
            evening.write("a2");
            evening.robot.write("0");
            evening.until("it draws what it needs too", () -> shown(evening, "a2").equals("15"));
        }
    }

    @Test
    void a_notebook_from_elsewhere_shows_what_was_saved_and_runs_nothing_until_it_is_trusted() throws Exception {
        Path trace = folder.resolve("trace");
        Cell code = Cell.code("a1", "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + trace + "\"), \"ran\");\n\"fresh\"");
        Path file = folder.resolve("from-a-friend.json");
        NotebookFile.save(Notebook.titled("A gift", code).withResult("a1",
                org.calicograph.notebook.Saved.shown("k", Exhibit.words("as it was"), "")), file);
        try (Evening evening = Evening.with(own(), file)) {
            assertThat(evening.words("cell-a1")).contains("as it was");
            assertThat(evening.pin("a1")).contains("as saved");
            assertThat(evening.words("notice-trust")).contains("none of its working lines were drawn here");
            evening.write("a1");
            evening.keys(KeyCode.SHIFT, KeyCode.F8);
            assertThat(evening.words("ready")).contains("nothing is drawn");
            assertThat(trace).doesNotExist();
            evening.robot.clickOn("I know it: draw");
            evening.untilDrawn("a1");
            assertThat(shown(evening, "a1")).isEqualTo("fresh");
            assertThat(trace).exists();
        }
        try (Evening again = Evening.with(own(), file)) {
            again.untilDrawn("a1");
        }
    }

    @Test
    void unsaved_work_outlives_a_killed_window_and_is_taken_up_again() throws Exception {
        Path file = file(Cell.prose("p1", "Flood."));
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC"));
        for (String name : List.of("java.awt.headless", "testfx.robot", "testfx.headless", "glass.platform", "monocle.platform", "prism.order")) {
            command.add("-D" + name + "=" + System.getProperty(name));
        }
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), DoomedDesk.class.getName(), own().toString(), file.toString()));
        Process doomed = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (BufferedReader said = doomed.inputReader()) {
            assertThat(said.lines().anyMatch(line -> line.equals("kept"))).isTrue();
        }
        doomed.destroyForcibly().waitFor();
        assertThat(NotebookFile.read(file).cell("p1").orElseThrow().text()).isEqualTo("Flood.");

        try (Evening evening = Evening.with(own(), file)) {
            evening.robot.clickOn("Take it up");
            evening.until("the words are back", () -> evening.window.opened().notebook().cell("p1").orElseThrow().text().equals(DoomedDesk.TYPED));
            assertThat(evening.words("saved")).contains("unsaved");
            evening.until("what was left is kept as one's own", () -> Evening.kept(file).size() == 1
                    && !Evening.kept(file).get(0).toString().contains("." + doomed.pid() + "-"));
        }
    }

    @Test
    void a_file_changed_by_somebody_else_is_noticed_and_loaded_on_request() throws Exception {
        Path file = file(Cell.prose("p1", "Flood."));
        try (Evening evening = Evening.with(own(), file)) {
            NotebookFile.save(Notebook.titled("Slack Water", Cell.prose("p1", "Theirs.")), file);
            evening.until("it is said", () -> evening.window.notices().says("changed"));
            evening.robot.clickOn("Take theirs");
            evening.until("theirs is shown", () -> evening.window.opened().notebook().cell("p1").orElseThrow().text().equals("Theirs."));
            assertThat(evening.window.opened().isUnsaved()).isFalse();
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("undo brings back one's own", () -> evening.window.opened().notebook().cell("p1").orElseThrow().text().equals("Flood."));
            assertThat(evening.window.opened().isUnsaved()).isTrue();
        }
    }

    @Test
    void keeping_ones_own_leaves_it_unsaved_and_a_file_taken_away_is_noticed() throws Exception {
        Path file = file(Cell.prose("p1", "Flood."));
        try (Evening evening = Evening.with(own(), file)) {
            NotebookFile.save(Notebook.titled("Slack Water", Cell.prose("p1", "Theirs.")), file);
            evening.until("it is said", () -> evening.window.notices().says("changed"));
            evening.robot.clickOn("Keep mine");
            evening.until("one's own is not what the file holds", () -> evening.window.opened().isUnsaved());
            evening.keys(KeyCode.CONTROL, KeyCode.S);
            evening.until("it is saved", () -> !evening.window.opened().isUnsaved());
            assertThat(NotebookFile.read(file).cell("p1").orElseThrow().text()).isEqualTo("Flood.");
            Files.move(folder.resolve("study.json"), folder.resolve("moved.json"));
            evening.until("its going is noticed", () -> evening.window.notices().says("gone"));
            assertThat(evening.window.opened().isUnsaved()).isTrue();
        }
    }

    @Test
    void saving_under_a_name_without_its_ending_never_replaces_another_file_unasked() throws Exception {
        Path file = file(Cell.prose("p1", "Flood."));
        Path other = folder.resolve("other.json");
        NotebookFile.save(Notebook.titled("Other", Cell.prose("p1", "Not mine.")), other);
        try (Evening evening = Evening.with(own(), file)) {
            Evening.onFx(() -> {
                evening.window.papers().saveAs(() -> java.util.Optional.of(folder.resolve("other")));
                return null;
            });
            evening.until("it is asked", () -> evening.window.notices().says("replace"));
            assertThat(NotebookFile.read(other).title()).isEqualTo("Other");
            evening.robot.clickOn("Replace it");
            evening.until("now it is replaced", () -> !evening.window.notices().says("replace") && evening.words("saved").contains("other.json"));
            assertThat(NotebookFile.read(other).title()).isEqualTo("Slack Water");
        }
    }

    @Test
    void a_picture_zooms_by_keys_and_names_the_patch_under_the_pointer() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "NinePatch.block(inches(9))"))) {
            evening.untilDrawn("a1");
            evening.until("it is painted", () -> evening.picture("a1").map(p -> p.paintings() > 0).orElse(false));
            PictureView picture = Evening.onFx(() -> evening.picture("a1").orElseThrow());
            evening.robot.moveTo(picture);
            evening.until("the patch is named", () -> !evening.words("pointed").isBlank());
            assertThat(evening.words("pointed")).contains("3 in");
            evening.robot.clickOn(picture);
            double before = Evening.onFx(picture::pixelsPerInch);
            evening.until("it has the keyboard: " + Evening.onFx(() -> String.valueOf(evening.scene().getFocusOwner())), picture::isFocused);
            evening.keys(KeyCode.EQUALS);
            evening.until("it is larger", () -> picture.pixelsPerInch() > before);
            evening.keys(KeyCode.DIGIT0);
            evening.until("it is whole again", () -> picture.pixelsPerInch() == before);
        }
    }

    @Test
    void ways_to_go_on_are_offered_and_taken_by_keys() throws Exception {
        try (Evening evening = trusted(Cell.prose("p1", "Words."), Cell.code("a1", "int anchorage = 3;\nanch"))) {
            evening.until("it can be asked", () -> evening.words("ready").strip().equals("ready"));
            evening.write("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.SPACE);
            evening.until("they are offered", () -> suggestions().contains("anchorage"));
            evening.keys(KeyCode.ENTER);
            evening.until("the word is whole", () -> evening.window.opened().notebook().cell("a1").orElseThrow().text().endsWith("\nanchorage"));
        }
    }

    @Test
    void what_is_offered_never_covers_the_line_that_is_written_high_or_low_on_the_screen() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "S"), Cell.prose("p1", "Words.\n\n".repeat(16)), Cell.code("a2", "S"))) {
            evening.until("it can be asked", () -> evening.words("ready").strip().equals("ready"));
            boolean above = false;
            for (String cell : List.of("a1", "a2")) {
                evening.write(cell);
                evening.keys(KeyCode.CONTROL, KeyCode.SPACE);
                evening.until("they are offered", () -> suggestions().contains("Setting"));
                double[] popup = Evening.onFx(() -> Window.getWindows().stream().filter(w -> w.isShowing() && w.getScene().getRoot().lookup("#suggestions") != null)
                        .map(w -> new double[] {w.getY(), w.getY() + w.getHeight()}).findFirst().orElseThrow());
                double[] caret = Evening.onFx(() -> ((org.calicograph.desk.code.CodeEditor) evening.scene().lookup("#code-" + cell)).caretOnScreen());
                assertThat(popup[0] >= caret[1] - 1 || popup[1] <= caret[2] + 1).as("from %s to %s beside a line from %s to %s", popup[0], popup[1], caret[2], caret[1]).isTrue();
                above |= popup[1] <= caret[2] + 1;
                evening.shot("offered-" + cell);
                evening.keys(KeyCode.ESCAPE);
            }
            assertThat(above).as("the low line has its list above it").isTrue();
        }
    }

    private static String suggestions() {
        return Window.getWindows().stream().filter(Window::isShowing).map(w -> w.getScene().getRoot().lookup("#suggestions"))
                .filter(n -> n instanceof ListView).map(n -> ((ListView<?>) n).getItems().toString()).collect(Collectors.joining());
    }

    @Test
    void cells_split_join_move_and_come_back_by_undo() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "int a = 1;\nint b = 2;"), Cell.code("a2", "a + b"))) {
            evening.untilDrawn("a2");
            Notebook before = evening.window.opened().notebook();
            evening.write("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.K);
            evening.until("it is split", () -> evening.window.opened().notebook().ids().equals(List.of("a1", "a3", "a2")));
            evening.keys(KeyCode.ALT, KeyCode.DOWN);
            evening.until("it has moved", () -> evening.window.opened().notebook().ids().equals(List.of("a3", "a1", "a2")));
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.keys(KeyCode.CONTROL, KeyCode.J);
            evening.until("it is joined", () -> evening.window.opened().notebook().equals(before));
            assertThat(Evening.onFx(() -> evening.window.column().codes().stream().map(CodePane::cellId).toList())).containsExactly("a1", "a2");
        }
    }

    @Test
    void a_sheet_is_drawn_over_a_dial_and_a_picture_on_it_taken() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", STAR))) {
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
            evening.until("the page is there", () -> evening.scene().lookup("#draw-sheet") != null);
            evening.robot.clickOn("#draw-sheet");
            evening.until("five pictures are there", () -> evening.scene().getRoot().lookupAll(".tile .picture").size() == 5);
            evening.robot.clickOn("points 13");
            evening.until("its values are the study's", () -> "13".equals(evening.window.opened().notebook().dialTexts().get("points")));
            evening.until("the wall is back", () -> evening.scene().lookup("#wall") != null);
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("undo takes it back", () -> evening.window.opened().notebook().dials().isEmpty());
        }
    }

    @Test
    void a_routine_is_found_in_the_library_and_put_into_the_book() throws Exception {
        try (Evening evening = trusted(Cell.code("a1", "1 + 1"))) {
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.L);
            evening.until("the library is there", () -> evening.scene().lookup("#shelf-search") != null);
            evening.robot.clickOn("#shelf-search").write("ninepatch");
            evening.until("its call is offered", () -> evening.scene().getRoot().lookupAll(".quiet-button").stream()
                    .anyMatch(n -> n instanceof javafx.scene.control.Button b && b.getText().equals("NinePatch.block(inches(8))")));
            evening.robot.clickOn("NinePatch.block(inches(8))");
            evening.until("it is drawn in a new cell", () -> evening.picture("a2").isPresent());
        }
    }

    @Test
    void the_first_evening_draws_every_cell() throws Exception {
        Files.createDirectories(own());
        try (Evening evening = Evening.first(own())) {
            evening.until("all is drawn", () -> evening.window.column().codes().stream().allMatch(c -> c.state() instanceof CellState.Done));
        }
    }
}
