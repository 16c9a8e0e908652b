package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.calicograph.desk.results.PictureView;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The wall, the tray and the bolts, and what joins them to the book, worked by hand. */
class DeskWallTest {

    private static final String CLOTHS = "var navy = Fabric.of(\"navy\", \"#1f3a5f\");\nvar sand = Fabric.of(\"sand\", \"#f1e7d2\");";
    private static final String NINE = "var nine = NinePatch.block(inches(9)).with(Map.of(Role.DARK, navy, Role.LIGHT, sand));\nnine";

    @TempDir
    Path folder;

    private Evening at(Cell... cells) throws Exception {
        Notebook notebook = Notebook.titled("Tide Table", cells);
        Path file = folder.resolve("tide-table.json");
        NotebookFile.save(notebook, file);
        new org.calicograph.desk.opened.Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        return Evening.with(folder.resolve("own"), file);
    }

    private static PictureView hanging(Evening evening) {
        evening.until("it hangs and is painted", () -> evening.window.wall().meant().map(v -> v.paintings() > 0 && v.getWidth() > 50).orElse(false));
        return Evening.onFx(() -> evening.window.wall().meant().orElseThrow());
    }

    private static Optional<String> hung(Evening evening) {
        return Evening.onFx(() -> evening.window.wall().hung());
    }

    @Test
    void the_largest_picture_hangs_until_one_is_chosen_by_its_pin_on_the_rail_or_by_writing() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(6))"), Cell.code("a2", "Setting.straight(4, 4).of(NinePatch.block(inches(6)))"),
                Cell.code("a3", "2 * 21"))) {
            evening.untilDrawn("a3");
            evening.until("the quilt hangs", () -> evening.window.wall().hung().equals(Optional.of("a2")));
            assertThat(evening.words("sentence").strip()).isEqualTo("24 x 24 in");
            assertThat(evening.pin("a1")).startsWith("Pin 1, current");
            assertThat(evening.pin("a2")).startsWith("Pin 2, current");
            assertThat(evening.pin("a3")).startsWith("Pin, current");
            assertThat(evening.words("note-a3").strip()).isEqualTo("42");
            evening.robot.clickOn("#rail-a1");
            evening.until("the one pressed hangs", () -> evening.window.wall().hung().equals(Optional.of("a1")));
            assertThat(evening.words("hung-number").strip()).isEqualTo("1");
            evening.robot.clickOn("#pin-a2");
            evening.until("its pin hangs the other", () -> evening.window.wall().hung().equals(Optional.of("a2")));
            evening.write("a1");
            evening.robot.clickOn("#code-a1");
            assertThat(hung(evening)).contains("a1");
        }
    }

    @Test
    void what_is_written_is_drawn_once_the_hand_rests_and_what_depends_on_it_follows() throws Exception {
        try (Evening evening = at(Cell.code("a1", "int n = 3;"), Cell.code("a2", "\"has \" + n"), Cell.code("a3", "\"alone\""))) {
            evening.untilDrawn("a3");
            evening.write("a1");
            evening.keys(KeyCode.LEFT);
            evening.robot.write("5");
            assertThat(evening.state("a2")).isNotInstanceOf(CellState.Failed.class);
            evening.until("the other follows", () -> evening.words("note-a2").strip().equals("has 35"));
        }
    }

    @Test
    void a_failing_line_keeps_what_hung_paler_and_a_hollow_pin() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(6))"))) {
            evening.untilDrawn("a1");
            hanging(evening);
            evening.write("a1");
            evening.robot.write(".scaledTo(inches(0 - 1))");
            evening.until("it needs mending", () -> evening.pin("a1").contains("needs mending"));
            assertThat(hung(evening)).contains("a1");
            assertThat(Evening.onFx(() -> evening.scene().lookup(".hanging").getPseudoClassStates().stream().map(Object::toString).toList())).contains("older");
        }
    }

    @Test
    void pressing_a_patch_takes_the_caret_to_its_words_and_rings_its_bolt() throws Exception {
        try (Evening evening = at(Cell.code("a1", CLOTHS), Cell.code("a2", NINE))) {
            evening.untilDrawn("a2");
            evening.until("it hangs", () -> evening.picture("a2").map(p -> p.paintings() > 0).orElse(false));
            PictureView picture = hanging(evening);
            assertThat(evening.words("bolts")).contains("navy").contains("sand").contains("5 patches").contains("4 patches");
            evening.robot.clickOn(picture);
            evening.until("the word is selected", () -> evening.window.code("a2").orElseThrow().selected().matches("navy|sand"));
            String cloth = Evening.onFx(() -> evening.window.code("a2").orElseThrow().selected());
            assertThat(evening.words("pointed")).startsWith(cloth + ", 3 x 3 in finished");
            assertThat(Evening.onFx(() -> evening.scene().getRoot().lookupAll(".bolt").stream()
                    .filter(n -> n.getPseudoClassStates().stream().anyMatch(c -> c.getPseudoClassName().equals("ringed"))).map(Node::getUserData).toList()))
                    .containsExactly(cloth);
        }
    }

    @Test
    void a_tape_measures_by_dragging_and_says_the_nearest_eighth() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(9))"))) {
            evening.untilDrawn("a1");
            PictureView picture = hanging(evening);
            evening.keys(KeyCode.F7);
            evening.until("the tape is out", () -> evening.words("pointed").contains("Tape measure"));
            double scale = Evening.onFx(picture::pixelsPerInch);
            Point2D middle = Evening.onFx(() -> picture.localToScreen(picture.getWidth() / 2, picture.getHeight() / 2));
            evening.robot.moveTo(middle).press(MouseButton.PRIMARY).moveBy(scale, 0).moveBy(2 * scale, 0).release(MouseButton.PRIMARY);
            // Whole pixels: 3 in within one pixel of each move.
            evening.until("it reads about 3 in", () -> evening.words("pointed").matches("(?s)tape: (3 in|(2\\.9\\d|3\\.0\\d) in, nearest 3 in)\\s*"));
            assertThat(Evening.onFx(picture::pixelsPerInch)).isEqualTo(scale);
        }
    }

    @Test
    void what_is_wanted_all_the_time_has_words_to_press_and_the_keyboard_stays() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(9))"))) {
            evening.untilDrawn("a1");
            PictureView picture = hanging(evening);
            evening.write("a1");
            assertThat(evening.scene().lookup("#handle-undo").isDisabled()).isTrue();
            evening.robot.write("/");
            evening.until("it can be taken back", () -> !evening.scene().lookup("#handle-undo").isDisabled());
            evening.robot.clickOn("#handle-undo");
            evening.until("it is", () -> evening.window.opened().notebook().cell("a1").orElseThrow().text().equals("NinePatch.block(inches(9))"));
            evening.robot.clickOn("#handle-redo");
            evening.until("and again", () -> evening.window.opened().notebook().cell("a1").orElseThrow().text().endsWith("/"));
            assertThat(Evening.onFx(() -> evening.focused("code-a1"))).isTrue();
            evening.robot.clickOn("#handle-undo").clickOn("#handle-squint");
            evening.until("colours are gone", () -> picture.lookup(".image-view").getEffect() != null);
            evening.shot("handles");
            evening.keys(KeyCode.F6);
            evening.until("they are back, and the word tells it", () -> picture.lookup(".image-view").getEffect() == null
                    && !((javafx.scene.control.ToggleButton) evening.scene().lookup("#handle-squint")).isSelected());
            evening.robot.clickOn("#handle-tape");
            evening.until("the tape is out", () -> evening.words("pointed").contains("Tape measure"));
            evening.robot.clickOn("#handle-metric");
            evening.until("lengths are metric", () -> evening.words("sentence").contains("cm"));
        }
    }

    @Test
    void squinting_and_stepping_and_the_wall_alone_have_their_keys() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(9))"))) {
            evening.untilDrawn("a1");
            PictureView picture = hanging(evening);
            double before = Evening.onFx(picture::pixelsPerInch);
            evening.keys(KeyCode.F6);
            evening.until("colours are gone", () -> picture.lookup(".image-view").getEffect() != null);
            evening.keys(KeyCode.F6);
            evening.until("they are back", () -> picture.lookup(".image-view").getEffect() == null);
            evening.keys(KeyCode.CONTROL, KeyCode.EQUALS);
            evening.until("a step nearer", () -> picture.pixelsPerInch() > before);
            evening.keys(KeyCode.CONTROL, KeyCode.DIGIT0);
            evening.until("the whole", () -> picture.pixelsPerInch() == before);
            evening.keys(KeyCode.F11);
            evening.until("the book is away", () -> evening.window.open().isAlone() && picture.pixelsPerInch() > before);
            evening.keys(KeyCode.ESCAPE);
            evening.until("and back", () -> !evening.window.open().isAlone());
        }
    }

    @Test
    void the_needle_is_pressed_to_hold_and_what_was_held_is_not_drawn_again() throws Exception {
        try (Evening evening = at(Cell.code("a1", "int n = 3;"), Cell.code("a2", "n + 1"))) {
            evening.untilDrawn("a2");
            evening.write("a2");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("while (n > 0) { }");
            evening.until("it is at work", () -> evening.state("a2") instanceof CellState.Drawing);
            evening.robot.clickOn("#needle");
            evening.untilFailed("a2");
            assertThat(evening.words("trouble-a2")).contains("Held");
            evening.until("nothing moves", () -> evening.window.worktable().states().values().stream().noneMatch(CellState::pending));
        }
    }

    @Test
    void two_empty_lines_begin_a_passage_and_java_among_words_is_offered_as_working_lines() throws Exception {
        try (Evening evening = at(Cell.code("a1", "1 + 1"))) {
            evening.untilDrawn("a1");
            evening.write("a1");
            evening.keys(KeyCode.ENTER);
            evening.keys(KeyCode.ENTER);
            evening.keys(KeyCode.ENTER);
            evening.until("a new passage has the keyboard", () -> evening.focused("code-a2"));
            assertThat(evening.window.opened().notebook().cell("a1").orElseThrow().text()).isEqualTo("1 + 1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
            evening.until("words are written", () -> evening.focused("prose-a3"));
            evening.robot.write("int six = 6;");
            evening.keys(KeyCode.ESCAPE);
            evening.until("it is offered", () -> evening.window.notices().says("working"));
            evening.robot.clickOn("Make them so");
            evening.until("it is working lines", () -> evening.window.opened().notebook().cell("a3").orElseThrow() instanceof Cell.Code);
        }
    }

    @Test
    void completion_opens_behind_a_dot_and_never_offers_what_every_object_has() throws Exception {
        try (Evening evening = at(Cell.code("a1", "var nine = NinePatch.block(inches(9));"), Cell.code("a2", "nine"))) {
            evening.untilDrawn("a2");
            evening.write("a2");
            evening.robot.write(".");
            evening.until("ways to go on are offered", () -> !offered().isEmpty());
            assertThat(offered()).anyMatch(o -> o.startsWith("scaledTo(")).noneMatch(o -> o.matches("(equals|hashCode|getClass|wait|notify|notifyAll)\\(.*"));
        }
    }

    private static List<String> offered() {
        return javafx.stage.Window.getWindows().stream().filter(javafx.stage.Window::isShowing).map(w -> w.getScene().getRoot().lookup("#suggestions"))
                .filter(n -> n instanceof javafx.scene.control.ListView).flatMap(n -> ((javafx.scene.control.ListView<?>) n).getItems().stream())
                .map(s -> ((org.calicograph.wire.Suggestion) s).insert()).toList();
    }

    @Test
    void a_picture_leaves_as_drawing_pixels_and_paper_and_a_booklet_is_made() throws Exception {
        try (Evening evening = at(Cell.code("a1", CLOTHS), Cell.code("a2", NINE), Cell.code("a3", "var quilt = Quilt.of(\"Slack Water\", Setting.straight(2, 2).of(nine)).bound(navy);\nquilt"))) {
            evening.untilDrawn("a3");
            evening.until("it hangs", () -> evening.picture("a2").map(p -> p.paintings() > 0).orElse(false));
            for (String name : List.of("nine.svg", "nine.png", "nine.pdf")) {
                Path file = folder.resolve(name);
                Evening.onFx(() -> {
                    evening.window.printing().save(evening.window.wall().meant().orElseThrow().picture(), file);
                    return null;
                });
                evening.until(name + " is there", () -> Files.exists(file) && evening.words("notice-paper").contains(name));
            }
            assertThat(Files.readString(folder.resolve("nine.svg"))).contains("<svg");
            try (PDDocument page = Loader.loadPDF(folder.resolve("nine.pdf").toFile())) {
                // At full size: 9 in of 72 points, and no less.
                assertThat((double) page.getPage(0).getMediaBox().getWidth()).isBetween(9 * 72.0, 10 * 72.0);
            }
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.C);
            evening.until("it is on the clipboard", () -> Clipboard.getSystemClipboard().hasImage());
            Path booklet = folder.resolve("booklet.pdf");
            Evening.onFx(() -> {
                evening.window.printing().booklet(booklet);
                return null;
            });
            evening.until("the booklet is there", () -> Files.exists(booklet));
            try (PDDocument pages = Loader.loadPDF(booklet.toFile())) {
                assertThat(pages.getNumberOfPages()).isGreaterThan(3);
            }
        }
    }
}
