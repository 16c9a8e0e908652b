package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.cuts.RulerWords;
import org.calicograph.desk.opened.Trust;
import org.calicograph.desk.results.PictureView;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How what hangs is cut: at the foot for a patch that is pressed, over the book for a bolt. */
class DeskCutsTest {

    @TempDir
    Path folder;

    /** By hand: 36 squares of 3 in finished are cut 3 1/2 in; 11 of them lie on a strip 40 in wide, so that 18 take two. */
    @Test
    void a_pressed_patch_tells_how_it_is_cut_and_a_pressed_bolt_the_list() throws Exception {
        Notebook book = Notebook.titled("Tide Table", Cell.code("a1", "var navy = Fabric.of(\"navy\", \"#1f3a5f\");\nvar sand = Fabric.of(\"sand\", \"#f1e7d2\");"),
                Cell.code("a2", "Setting.straight(2, 2).of(NinePatch.block(inches(9)).with(Map.of(Role.DARK, navy, Role.LIGHT, sand)))"));
        Path file = folder.resolve("tide-table.json");
        NotebookFile.save(book, file);
        new Trust(folder.resolve("own"), folder.resolve("product")).grant(book);
        try (Evening evening = Evening.with(folder.resolve("own"), file)) {
            evening.untilDrawn("a2");
            evening.until("it hangs", () -> evening.window.wall().hung().equals(Optional.of("a2"))
                    && evening.window.wall().meant().map(v -> v.paintings() > 0 && v.getWidth() > 50).orElse(false));
            PictureView picture = Evening.onFx(() -> evening.window.wall().meant().orElseThrow());
            Point2D corner = Evening.onFx(() -> picture.localToScreen(PictureView.EDGE + picture.view().x() + picture.view().scale() * 1.5,
                    PictureView.EDGE + picture.view().y() + picture.view().scale() * 1.5));
            evening.robot.clickOn(corner);
            evening.until("the foot tells it", () -> evening.words("pointed").contains("square, 3 x 3 in finished; cut 3 1/2 x 3 1/2 in; "));
            assertThat(evening.words("pointed")).containsAnyOf("20 of them from 2 strips", "16 of them from 2 strips");
            evening.shot("cut-patch");
            evening.robot.clickOn(".bolt");
            evening.until("the list is there", () -> evening.scene().lookup("#cut-slip .table-view") != null);
            evening.until("no column stands empty and none is out of sight", () -> evening.scene().getRoot().lookupAll("#cut-slip .table-view").stream()
                    .allMatch(DeskCutsTest::isFilled));
            evening.shot("cut-list");
            assertThat(evening.words("cut-slip")).contains("Cutting: ").contains("razor");
            evening.keys(KeyCode.ESCAPE);
            evening.until("the book is back", () -> evening.scene().lookup("#cut-list") == null);
            evening.keys(KeyCode.F9);
            evening.until("what to buy is there", () -> evening.words("cut-slip").contains("Fabric for "));
        }
    }

    /** Its columns take all the room within its edges, and neither bar is wanted. */
    private static boolean isFilled(Node node) {
        TableView<?> table = (TableView<?>) node;
        double room = table.getWidth() - table.getInsets().getLeft() - table.getInsets().getRight();
        double taken = table.getColumns().stream().mapToDouble(c -> c.getWidth()).sum();
        return Math.abs(room - taken) < 1.5 && table.lookupAll(".scroll-bar").stream().noneMatch(bar -> bar.isVisible() && bar.prefWidth(-1) > 0 && bar.prefHeight(-1) > 0);
    }

    @Test
    void decimals_are_told_in_eighths() {
        assertThat(RulerWords.of("navy, 1.098 x 2 in finished")).isEqualTo("navy, about 1 1/8 x 2 in finished");
        assertThat(RulerWords.of("navy, 3 1/2 x 2 in finished")).isEqualTo("navy, 3 1/2 x 2 in finished");
    }
}
