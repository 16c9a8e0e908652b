package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.opened.Trust;
import org.calicograph.desk.press.Press;
import org.calicograph.desk.results.PictureView;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages on their way to a printer, seen before they go. */
class DeskPressTest {

    @TempDir
    Path folder;

    private Evening at(Cell... cells) throws Exception {
        Notebook notebook = Notebook.titled("Tide Table", cells);
        Path file = folder.resolve("tide-table.json");
        NotebookFile.save(notebook, file);
        new Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        return Evening.with(folder.resolve("own"), file);
    }

    /** A press that keeps what it is to print. */
    private static final class Kept implements Press {
        private final List<Picture> pages = new ArrayList<>();
        private String printer = "";

        @Override
        public List<String> printers() {
            return List.of("Sail loft", "Harbour office");
        }

        @Override
        public CompletableFuture<String> print(String to, List<Picture> all, Paper paper) {
            printer = to;
            pages.addAll(all);
            return CompletableFuture.completedFuture("On the way to " + to + ", " + all.size() + " of " + paper.name());
        }
    }

    @Test
    void a_picture_and_a_booklet_are_seen_page_by_page_and_printed_at_full_size() throws Exception {
        try (Evening evening = at(Cell.code("a1", "var nine = NinePatch.block(inches(6));\nnine"), Cell.code("a2", "var quilt = Quilt.of(\"Slack Water\", Setting.straight(4, 4).of(nine));\nquilt"))) {
            evening.untilDrawn("a2");
            Kept press = new Kept();
            Evening.onFx(() -> {
                evening.window.printing().press(press);
                evening.window.wall().choose("a1");
                return null;
            });
            evening.keys(KeyCode.CONTROL, KeyCode.ALT, KeyCode.P);
            evening.until("the page is seen", () -> evening.scene().getRoot().lookupAll("#preview .preview-page").size() == 1 && evening.words("printed").contains("At full size"));
            PictureView seen = Evening.onFx(() -> (PictureView) evening.scene().getRoot().lookup("#preview .preview-page"));
            // The paper of ISO 216: 210 x 297 mm.
            assertThat(seen.box().width() * 25.4).isCloseTo(210, within(0.01));
            assertThat(seen.box().height() * 25.4).isCloseTo(297, within(0.01));
            evening.until("the keyboard is on Print", () -> evening.focused("print"));
            evening.keys(KeyCode.ENTER);
            evening.until("it is on the way", () -> evening.words("printed").contains("On the way to Sail loft, 1 of A4"));
            assertThat(press.pages.get(0).bounds().width()).isCloseTo(6, within(0.05));
            assertThat(press.pages.get(0).bounds().centre().x() * 25.4).isCloseTo(105, within(0.01));
            evening.keys(KeyCode.ESCAPE);
            evening.robot.clickOn("#rail-a2");
            evening.keys(KeyCode.CONTROL, KeyCode.ALT, KeyCode.P);
            // 24 in into 210 mm less 1 in: 7.268 / 24 is 30 %.
            evening.until("it is said that it is smaller", () -> evening.words("printed").contains("at 30 % of its size"));
            evening.keys(KeyCode.ESCAPE);
            press.pages.clear();
            evening.keys(KeyCode.CONTROL, KeyCode.ALT, KeyCode.B);
            evening.until("the booklet is seen", () -> evening.scene().getRoot().lookupAll("#preview .preview-page").size() > 3);
            evening.shot("preview");
            double small = Evening.onFx(() -> ((PictureView) evening.scene().getRoot().lookup("#preview .preview-page")).getWidth());
            evening.robot.clickOn("#preview-larger").clickOn("#preview-larger");
            evening.until("the pages are larger", () -> Math.abs(((PictureView) evening.scene().getRoot().lookup("#preview .preview-page")).getWidth() - small * 2.25) < 2);
            evening.shot("preview-larger");
            evening.robot.clickOn("#preview-smaller").clickOn("#preview-smaller");
            evening.until("and as before", () -> Math.abs(((PictureView) evening.scene().getRoot().lookup("#preview .preview-page")).getWidth() - small) < 2);
            int pages = Evening.onFx(() -> evening.scene().getRoot().lookupAll("#preview .preview-page").size());
            evening.robot.clickOn("#print");
            evening.until("it is printed whole", () -> press.pages.size() == pages);
        }
    }

    @Test
    void without_a_printer_it_is_said_and_the_file_is_pointed_to() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(6))"))) {
            evening.untilDrawn("a1");
            Evening.onFx(() -> {
                evening.window.printing().press(new Press() {
                    @Override
                    public List<String> printers() {
                        return List.of();
                    }

                    @Override
                    public CompletableFuture<String> print(String printer, List<Picture> pages, Paper paper) {
                        throw new AssertionError("there is nothing to print on");
                    }
                });
                return null;
            });
            evening.keys(KeyCode.CONTROL, KeyCode.ALT, KeyCode.P);
            evening.until("it is said", () -> evening.words("printed").contains("no printer") && evening.scene().lookup("#print").isDisabled());
        }
    }

    @Test
    void the_toolkit_s_own_press_can_be_asked_without_a_screen_or_a_printer() throws Exception {
        try (Evening evening = at(Cell.code("a1", "NinePatch.block(inches(6))"))) {
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.ALT, KeyCode.P);
            evening.until("its page is seen", () -> evening.scene().getRoot().lookupAll("#preview .preview-page").size() == 1);
            CompletableFuture<String> told = Evening.onFx(() -> new org.calicograph.desk.press.ToolkitPress().print("no such printer", List.of(), Paper.A4));
            assertThat(told.get()).contains("'no such printer' can't be reached");
        }
    }
}
