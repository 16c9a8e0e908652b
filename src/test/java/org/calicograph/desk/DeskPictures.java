package org.calicograph.desk;

import java.nio.file.Path;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.calicograph.desk.opened.Trust;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Writes the pictures in {@code docs/pictures}, each a main state of the desk:
 * {@code mvn -q test -Dtest=DeskPictures}. Look at each before you commit it.
 */
class DeskPictures {

    private static final String STAR = "int points = dial(\"points\", 10, 20, 12);\nLength across = dial(\"across\", inches(6), inches(24), inches(12), inches(1, 4));\n"
            + "var light = Star.of(points).skipping(4).across(across);\nlight";

    private final Path to = Path.of("docs/pictures");

    @TempDir
    Path own;

    @TempDir
    Path other;

    @Test
    void every_main_state_has_its_picture() throws Exception {
        firstEvening();
        bookAndWall();
        quilt();
        variations();
        elsewhere();
        lesson();
    }

    private void lesson() throws Exception {
        try (Evening evening = Evening.with(own, Path.of("notebooks/first-lesson.json").toAbsolutePath())) {
            evening.untilDrawn("c13");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.G);
            evening.until("it begins", () -> evening.words("lesson-where").startsWith("1 of "));
            for (int i = 0; i < 5; i++) {
                evening.keys(KeyCode.RIGHT);
            }
            shoot(evening, "lesson");
        }
    }

    private Path file(Notebook notebook, boolean trusted) throws Exception {
        Path file = own.resolve("harbour-light.json");
        NotebookFile.save(notebook, file);
        if (trusted) {
            new Trust(own, own.resolve("none")).grant(notebook);
        }
        return file;
    }

    private static void settle(Evening evening) {
        long at = System.nanoTime();
        evening.until("pictures are smoothed", () -> System.nanoTime() - at > 700_000_000L);
    }

    private void shoot(Evening evening, String name) {
        settle(evening);
        evening.shoot(to.resolve("desk-" + name + ".png"));
    }

    private void firstEvening() throws Exception {
        try (Evening evening = Evening.first(own)) {
            evening.until("all is drawn", () -> evening.window.column().codes().stream().allMatch(c -> c.state() instanceof CellState.Done));
            shoot(evening, "first-evening");
            Evening.onFx(() -> {
                evening.window.dressing().turnLight();
                evening.window.column().setVvalue(0.45);
                return null;
            });
            shoot(evening, "night");
            Evening.onFx(() -> {
                evening.window.dressing().turnLight();
                return null;
            });
        }
    }

    private void bookAndWall() throws Exception {
        Notebook notebook = Notebook.titled("Harbour Light", Cell.prose("p1", "# Harbour Light\n\nA lamp at the harbour mouth: "
                + "twelve points, joined *four* on. The **size** is the finished one."), Cell.code("c1", STAR),
                Cell.code("c2", "Table.of(\"What the star is\", \"part\", \"size\", \"count\")\n    .row(\"across\", across, 1)\n    .row(\"half\", across.half(), 2)\n"
                        + "    .row(\"points\", \"\", points)"),
                Cell.code("c3", "int teeth = pointz * 2;\nteeth"));
        try (Evening evening = Evening.with(own, file(notebook, true))) {
            evening.untilFailed("c3");
            evening.until("it is painted", () -> evening.picture("c1").map(p -> p.paintings() > 0).orElse(false));
            evening.robot.moveTo(evening.picture("c1").orElseThrow());
            shoot(evening, "book-and-wall");
            evening.write("c3");
            shoot(evening, "error");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("var waves = OceanWaves.");
            evening.keys(KeyCode.CONTROL, KeyCode.SPACE);
            evening.until("ways to go on", () -> javafx.stage.Window.getWindows().stream().anyMatch(w -> w.getScene().getRoot().lookup("#suggestions") instanceof ListView));
            shoot(evening, "writing");
            evening.keys(KeyCode.ESCAPE);
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("while (points > 0) { }");
            evening.drawNow();
            evening.until("it is drawn", () -> evening.state("c3") instanceof CellState.Drawing);
            evening.write("c1");
            evening.robot.write(" ");
            shoot(evening, "drawing");
            evening.keys(KeyCode.ESCAPE);
            evening.until("it is stopped", () -> !evening.state("c3").pending());
            Evening.onFx(() -> {
                evening.window.killKernel();
                return null;
            });
            evening.until("it is said", () -> evening.window.notices().says("kernel"));
            shoot(evening, "drawing-ended");
        }
    }

    /** A whole quilt, wide. */
    private void quilt() throws Exception {
        try (Evening evening = Evening.with(own, Path.of("notebooks/harbour-light.json").toAbsolutePath())) {
            Evening.onFx(() -> {
                evening.stage.setWidth(1920);
                evening.stage.setHeight(1080);
                return null;
            });
            evening.until("all is drawn", () -> evening.window.worktable().states().values().stream().noneMatch(CellState::pending)
                    && evening.window.worktable().states().values().stream().allMatch(s -> s instanceof CellState.Done));
            shoot(evening, "quilt");
            evening.keys(KeyCode.F11);
            shoot(evening, "wall-alone");
        }
    }

    private void variations() throws Exception {
        Notebook notebook = Notebook.titled("Harbour Light", Cell.code("c1", STAR));
        try (Evening evening = Evening.with(own, file(notebook, true))) {
            evening.untilDrawn("c1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
            evening.until("the page is there", () -> evening.scene().lookup("#draw-sheet") != null);
            evening.robot.clickOn("#draw-sheet", MouseButton.PRIMARY);
            evening.until("five are drawn", () -> evening.scene().getRoot().lookupAll(".tile .picture").size() == 5);
            shoot(evening, "sheet");
            evening.robot.clickOn("#back");
            evening.keys(KeyCode.CONTROL, KeyCode.L);
            evening.until("the library is there with its pictures", () -> evening.scene().getRoot().lookupAll(".shelf-look .image-view").stream()
                    .filter(n -> ((javafx.scene.image.ImageView) n).getImage() != null).count() > 3);
            shoot(evening, "shelf");
        }
    }

    private void elsewhere() throws Exception {
        Notebook notebook = Notebook.titled("Oyster Beds", Cell.prose("p1", "# Oyster Beds\n\nFrom a friend across the estuary."),
                Cell.code("c1", "Setting.straight(4, 3).of(DrunkardsPath.block(inches(6)))"));
        Path file = file(notebook, true);
        try (Evening evening = Evening.with(own, file)) {
            evening.untilDrawn("c1");
            evening.keys(KeyCode.CONTROL, KeyCode.S);
        }
        try (Evening evening = Evening.with(other, file)) {
            evening.until("it is painted", () -> evening.picture("c1").map(p -> p.paintings() > 0).orElse(false));
            shoot(evening, "from-elsewhere");
        }
    }
}
