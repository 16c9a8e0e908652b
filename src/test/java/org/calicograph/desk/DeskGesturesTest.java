package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.calicograph.desk.opened.Trust;
import org.calicograph.desk.results.PictureView;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a hand carries across the desk: blocks, dials and swatches onto the wall, and quilts off it at the start. */
class DeskGesturesTest {

    private static final String CLOTHS = "// navy for the dark\nvar navy = Fabric.of(\"navy\", \"#1f3a5f\");\nvar sand = Fabric.of(\"sand\", \"#f1e7d2\");\nvar rust = Fabric.of(\"rust\", \"#b5553c\");";
    private static final String NINE = "var nine = NinePatch.block(inches(9)).with(Map.of(Role.DARK, navy, Role.LIGHT, sand));\nnine";
    private static final String QUILT = "var quilt = Setting.sashed(2, 2, inches(2), navy, sand).of(nine);\nquilt";

    @TempDir
    Path folder;

    private Path save(String name, Notebook notebook) throws Exception {
        Path file = folder.resolve(name);
        NotebookFile.save(notebook, file);
        new Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
        return file;
    }

    private Evening at(Cell... cells) throws Exception {
        return Evening.with(folder.resolve("own"), save("tide-table.json", Notebook.titled("Tide Table", cells)));
    }

    /** Where it lies once it has come to rest: a tray is laid out anew as pictures come in. */
    private static Point2D middle(Evening evening, String selector) {
        evening.until(selector + " is there", () -> evening.scene().getRoot().lookup(selector) != null);
        Point2D[] last = {Point2D.ZERO};
        long[] since = {System.nanoTime()};
        evening.until(selector + " lies still", () -> {
            Point2D now = place(evening, selector);
            if (!now.equals(last[0])) {
                last[0] = now;
                since[0] = System.nanoTime();
            }
            return System.nanoTime() - since[0] > 200_000_000L;
        });
        return last[0];
    }

    private static Point2D place(Evening evening, String selector) {
        return Evening.onFx(() -> {
            Node node = evening.scene().getRoot().lookup(selector);
            Bounds b = node.localToScreen(node.getBoundsInLocal());
            return new Point2D(b.getCenterX(), b.getCenterY());
        });
    }

    private static void carry(Evening evening, Point2D from, Point2D to, Runnable above) {
        evening.robot.moveTo(from).press(MouseButton.PRIMARY).moveBy(6, 4).moveBy(10, 8);
        evening.robot.moveTo(to).moveBy(2, 2);
        above.run();
        evening.robot.release(MouseButton.PRIMARY);
    }

    private static String text(Evening evening, String cell) {
        return Evening.onFx(() -> evening.window.opened().notebook().cell(cell).orElseThrow().text());
    }

    private static PictureView hanging(Evening evening, String cell) {
        evening.until("it hangs and is painted", () -> evening.window.wall().hung().equals(java.util.Optional.of(cell))
                && evening.window.wall().meant().map(v -> v.paintings() > 0 && v.getWidth() > 50).orElse(false));
        return Evening.onFx(() -> evening.window.wall().meant().orElseThrow());
    }

    /** Where a point of the picture lies on the screen. */
    private static Point2D on(PictureView picture, double x, double y) {
        return Evening.onFx(() -> picture.localToScreen(PictureView.EDGE + picture.view().x() + picture.view().scale() * x,
                PictureView.EDGE + picture.view().y() + picture.view().scale() * y));
    }

    @Test
    void a_block_carried_from_the_shelf_to_the_wall_writes_its_call_and_hangs() throws Exception {
        try (Evening evening = at(Cell.prose("p1", "High water."))) {
            evening.keys(KeyCode.CONTROL, KeyCode.L);
            evening.until("the shelf is there", () -> evening.focused("shelf-search"));
            evening.robot.write("churn");
            evening.until("it is found", () -> evening.words("shelf-list").contains("ChurnDash"));
            evening.until("it is seen", () -> evening.scene().getRoot().lookup("#shelf-list .shelf-look .image-view") instanceof javafx.scene.image.ImageView small && small.getImage() != null);
            carry(evening, middle(evening, "#shelf-list .list-cell"), middle(evening, ".board"), () -> {
                evening.until("it is said what it does", () -> evening.words("pointed").contains("Hang ChurnDash.block("));
                assertThat(Evening.onFx(() -> evening.scene().lookup("#carried") instanceof javafx.scene.image.ImageView seen && seen.getImage().getWidth() > 40
                        && seen.localToScene(0, 0).getX() > evening.scene().lookup(".board").localToScene(0, 0).getX())).as("it is seen in the hand, over the wall").isTrue();
                evening.shot("carry-block");
            });
            evening.until("its call is written", () -> evening.window.opened().notebook().cells().stream().anyMatch(c -> c instanceof Cell.Code && c.text().startsWith("ChurnDash.block(inches(8))")));
            evening.until("and hangs", () -> evening.window.wall().meant().map(v -> v.paintings() > 0).orElse(false));
            assertThat(evening.words("sentence").strip()).isEqualTo("8 x 8 in");
        }
    }

    @Test
    void a_swatch_set_down_on_a_patch_writes_just_the_word_that_laid_it() throws Exception {
        try (Evening evening = at(Cell.code("a1", CLOTHS), Cell.code("a2", NINE), Cell.code("a3", QUILT))) {
            evening.untilDrawn("a3");
            PictureView picture = hanging(evening, "a3");
            assertThat(evening.words("bolts")).contains("rust\nnot hung");
            Point2D rust = bolt(evening, "rust");
            // The first patch of the first block is navy, and so are the sashes: only the block's word is to change.
            carry(evening, rust, on(picture, 1.5 + first(picture), 1.5 + first(picture)), () -> {
                evening.until("it is said what it does", () -> evening.words("pointed").contains("rust in place of navy"));
                evening.shot("carry-swatch");
            });
            evening.until("the block's word is another", () -> text(evening, "a2").equals(NINE.replace("navy", "rust")));
            assertThat(text(evening, "a3")).isEqualTo(QUILT);
            assertThat(text(evening, "a1")).isEqualTo(CLOTHS);
            // Four nine patches with five navy squares each.
            evening.until("it is said of how many", () -> evening.words("pointed").contains("rust in place of navy on 20 patches; undo takes it back"));
            evening.until("the quilt follows", () -> evening.words("bolts").contains("rust\n") && !evening.words("bolts").contains("rust\nnot hung"));
            evening.shot("swatch-set-down");
            evening.keys(KeyCode.CONTROL, KeyCode.Z);
            evening.until("undo takes it back", () -> text(evening, "a2").equals(NINE));
        }
    }

    /** Where the first block begins: behind a sash, if the setting has them round its edge. */
    private static double first(PictureView picture) {
        return Evening.onFx(() -> picture.box().width() > 21 ? 2.0 : 0.0);
    }

    @Test
    void by_keys_a_bolt_gives_its_place_to_another_and_what_cannot_be_written_is_said() throws Exception {
        try (Evening evening = at(Cell.code("a1", CLOTHS), Cell.code("a2", NINE))) {
            evening.untilDrawn("a2");
            evening.robot.clickOn("#rail-a2");
            hanging(evening, "a2");
            Evening.onFx(() -> {
                node(evening, "navy").requestFocus();
                return null;
            });
            evening.keys(KeyCode.ENTER);
            evening.until("the others are listed", () -> javafx.stage.Window.getWindows().stream().anyMatch(w -> w instanceof javafx.scene.control.ContextMenu && w.isShowing()));
            evening.robot.clickOn("rust in place of navy");
            evening.until("it is written", () -> text(evening, "a2").equals(NINE.replace("navy", "rust")));
        }
        try (Evening evening = at(Cell.code("a1", "var sand = Fabric.of(\"sand\", \"#f1e7d2\");\nNinePatch.block(inches(9)).with(Map.of(Role.LIGHT, sand))"))) {
            evening.untilDrawn("a1");
            PictureView picture = hanging(evening, "a1");
            carry(evening, bolt(evening, "sand"), on(picture, 1.5, 1.5), () -> { });
            evening.until("what is missing is said", () -> evening.words("notice-swatch").contains("No working line gives 'dark' a name"));
        }
    }

    private static Node node(Evening evening, String cloth) {
        return evening.scene().getRoot().lookupAll(".bolt").stream().filter(n -> cloth.equals(n.getUserData())).findFirst().orElseThrow();
    }

    private static Point2D bolt(Evening evening, String cloth) {
        evening.until("the bolt is there", () -> evening.scene().getRoot().lookupAll(".bolt").stream().anyMatch(n -> cloth.equals(n.getUserData())));
        return Evening.onFx(() -> {
            Node node = node(evening, cloth);
            return node.localToScreen(20, node.getBoundsInLocal().getHeight() / 2);
        });
    }

    @Test
    void a_dial_pulled_onto_the_wall_lays_five_across_and_a_second_lays_them_down() throws Exception {
        try (Evening evening = at(Cell.code("a1", "int points = dial(\"points\", 5, 16, 8);\nint skip = dial(\"skip\", 2, 4, 2);\nLength across = dial(\"across\", inches(4), inches(12), inches(12), inches(1));\n"
                + "Star.of(points).skipping(2).across(across)"))) {
            evening.untilDrawn("a1");
            hanging(evening, "a1");
            carry(evening, middle(evening, "#handle-points"), middle(evening, ".board"), () -> evening.until("it is said what it does", () -> evening.words("pointed").contains("across the wall over points")));
            evening.until("five hang across", () -> tiles(evening).size() == 5 && tiles(evening).stream().map(Node::getLayoutY).distinct().count() == 1);
            carry(evening, middle(evening, "#pull-across"), middle(evening, ".spread"), () -> { });
            evening.until("three rows of five", () -> tiles(evening).size() == 15 && tiles(evening).stream().map(Node::getLayoutY).distinct().count() == 3);
            evening.until("all are drawn", () -> evening.scene().getRoot().lookupAll(".tile .picture").size() == 15);
            // A star of 4 in beside one of 12 in, to one scale: 9 times less cloth.
            evening.until("a larger star looks larger", () -> {
                double share = (double) inked(evening, 4) / inked(evening, 14);
                return share > 0.08 && share < 0.16;
            });
            evening.shot("spread");
            Node last = Evening.onFx(() -> tiles(evening).get(4));
            evening.robot.clickOn(last);
            evening.until("its values are in the book", () -> evening.window.opened().notebook().dialTexts().getOrDefault("points", "").equals("16"));
        }
    }

    /** How many pixels of a tile's picture are not those of its corner. */
    private static long inked(Evening evening, int tile) {
        Image image = ((ImageView) tiles(evening).get(tile).lookup(".picture .image-view")).getImage();
        if (image == null) {
            return 1;
        }
        int paper = image.getPixelReader().getArgb(1, 1);
        long count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += image.getPixelReader().getArgb(x, y) != paper ? 1 : 0;
            }
        }
        return Math.max(1, count);
    }

    private static List<Node> tiles(Evening evening) {
        return evening.scene().getRoot().lookupAll(".tile").stream().sorted(java.util.Comparator.comparingDouble(Node::getLayoutY).thenComparingDouble(Node::getLayoutX)).toList();
    }

    @Test
    void at_the_start_what_was_opened_last_hangs_as_it_was_saved_beside_a_bare_nail() throws Exception {
        for (String name : List.of("oyster-beds", "ropewalk")) {
            Notebook notebook = Notebook.titled(name.equals("ropewalk") ? "Ropewalk" : "Oyster Beds", Cell.code("a1", name.equals("ropewalk")
                    ? "Setting.straight(3, 4).of(NinePatch.block(inches(9)))" : "DrunkardsPath.block(inches(6))"));
            try (Evening evening = Evening.with(folder.resolve("own"), save(name + ".json", notebook))) {
                evening.untilDrawn("a1");
                evening.keys(KeyCode.CONTROL, KeyCode.S);
                evening.until("it is saved with its picture", () -> saved(folder.resolve(name + ".json")));
            }
        }
        try (Evening evening = Evening.first(folder.resolve("own"))) {
            evening.until("both hang", () -> evening.scene().getRoot().lookupAll("#start .start-frame .image-view").stream().filter(n -> ((ImageView) n).getImage() != null).count() == 2);
            assertThat(evening.words("start")).containsSubsequence("Ropewalk", "Oyster Beds", "A bare nail");
            evening.shot("start");
            Evening.onFx(() -> {
                evening.window.dressing().turnLight();
                return null;
            });
            evening.shot("start-night");
            Evening.onFx(() -> {
                evening.window.dressing().turnLight();
                return null;
            });
            // The keyboard is on what hung last.
            evening.until("the keyboard is there", () -> evening.focused("start-ropewalk"));
            evening.keys(KeyCode.ENTER);
            evening.until("it is opened and drawn", () -> evening.window.papers().path().map(p -> p.endsWith("ropewalk.json")).orElse(false));
            evening.untilDrawn("a1");
            evening.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.O);
            evening.until("the wall of the start again", () -> evening.scene().lookup("#start-nail") != null);
            evening.robot.clickOn("#start-nail");
            evening.until("a new notebook", () -> evening.window.papers().path().isEmpty() && evening.scene().lookup("#start") == null);
            assertThat(evening.window.opened().notebook().cells()).allMatch(c -> c.text().isBlank());
        }
    }

    private static boolean saved(Path file) {
        try {
            return !NotebookFile.read(file).results().isEmpty();
        } catch (org.calicograph.notebook.NotebookException e) {
            return false;
        }
    }
}
