package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.wire.PixelFrame;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SketchesTest {

    private static final String OYSTERS = "int wide = dial(\"wide\", 1, 9, 2);\nPicture oyster(int n) {\n"
            + "    return Picture.of(Region.rectangle(inches(n), inches(2))).filled(Colour.hex(\"#24425c\"));\n}\noyster(wide)";
    private static final PixelFrame EASEL = new PixelFrame("a1", 0, 60, 40, 1, Optional.empty(), Colour.WHITE, Colour.WHITE);

    @TempDir
    static Path cache;
    private static Studio studio;

    @BeforeAll
    static void open() {
        studio = Studio.open(cache);
    }

    @AfterAll
    static void close() {
        studio.close();
    }

    private static void put(String text) {
        studio.session.setDial("wide", 2);
        studio.put(text).drawAll();
    }

    private static Sketch sketch(String value, PixelFrame... easels) {
        studio.sketches.clear();
        studio.session.setDial("wide", value, List.of(easels));
        studio.await("a sketch", () -> studio.sketches.containsKey("a1"));
        return studio.sketches.get("a1");
    }

    private static void turn(String value, PixelFrame... easels) {
        studio.sketches.clear();
        studio.session.setDial("wide", value, List.of(easels));
        Studio.get(studio.session.drawStale());
    }

    private static Picture picture() {
        return ((Exhibit.Drawn) studio.done("a1").exhibit()).picture();
    }

    @Test
    void a_cell_with_an_easel_comes_as_pixels_and_its_exhibit_follows_when_the_dial_rests() {
        put(OYSTERS);
        Sketch sketch = sketch("6", EASEL);
        Sketch.Painting painted = sketch.pictures().get(0);
        assertThat(studio.session.state("a1")).isInstanceOf(CellState.Drawing.class);
        assertThat(sketch.rest()).isEqualTo(Exhibit.of(Picture.EMPTY));
        assertThat(painted.bounds()).isEqualTo(new Box(0, 0, 6, 2));
        Studio.get(studio.session.drawStale());
        assertThat(painted.pixels())
                .isEqualTo(EASEL.paint(picture(), picture().bounds(), false));
    }

    @Test
    void the_newest_value_wins_and_no_other_exhibit_is_told() {
        put(OYSTERS);
        studio.await("the first drawing to be told", () -> studio.events.contains("a1 Done"));
        studio.events.clear();
        for (int n = 3; n <= 8; n++) {
            studio.session.setDial("wide", Integer.toString(n), List.of(EASEL));
        }
        Studio.get(studio.session.drawStale());
        assertThat(picture().bounds()).isEqualTo(new Box(0, 0, 8, 2));
        studio.await("the last to be told", () -> studio.events.contains("a1 Done"));
        assertThat(studio.events).containsOnlyOnce("a1 Done");
    }

    @Test
    void words_beside_the_pictures_come_with_the_sketch() {
        put(OYSTERS.replace("oyster(wide)", "Exhibit.several(Exhibit.words(wide + \" in\"), Exhibit.of(oyster(wide), \"oyster\"))"));
        assertThat(sketch("7", EASEL).rest()).isEqualTo(Exhibit.several(Exhibit.words("7 in"), Exhibit.of(Picture.EMPTY, "oyster")));
        Studio.get(studio.session.drawStale());
        assertThat(studio.words("a1")).contains("7 in");
    }

    @Test
    void a_cell_comes_as_a_value_if_a_picture_has_no_easel_or_an_easel_no_picture_or_something_is_printed() {
        PixelFrame second = new PixelFrame("a1", 1, 60, 40, 1, Optional.empty(), Colour.WHITE, Colour.WHITE);
        put(OYSTERS.replace("oyster(wide)", "List.of(oyster(wide), oyster(1))"));
        turn("5", EASEL);
        assertThat(studio.sketches).isEmpty();
        assertThat(sketch("6", EASEL, second).pictures()).hasSize(2);
        put(OYSTERS);
        turn("5", EASEL, second);
        assertThat(studio.sketches).isEmpty();
        put(OYSTERS.replace("oyster(wide)", "System.out.println(wide);\noyster(wide)"));
        turn("6", EASEL);
        assertThat(studio.sketches).isEmpty();
        assertThat(studio.done("a1").output()).isEqualTo("6\n");
    }

    @Test
    void a_cell_edited_before_its_exhibit_came_is_stale() {
        put(OYSTERS);
        sketch("6", EASEL);
        studio.session.edit("a1", OYSTERS + ".outlined(Pen.NONE)");
        studio.await("it is stale", () -> studio.session.state("a1") instanceof CellState.Stale);
    }

    @Test
    void a_cell_whose_kernel_is_lost_before_its_exhibit_came_is_drawn_by_the_next() {
        put(OYSTERS);
        sketch("6", EASEL);
        Studio.get(studio.session.browse()); // The turn has ended by now.
        studio.session.restart();
        Studio.get(studio.session.drawStale());
        assertThat(picture().bounds()).isEqualTo(new Box(0, 0, 6, 2));
    }
}
