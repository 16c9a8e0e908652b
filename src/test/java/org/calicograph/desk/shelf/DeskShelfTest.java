package org.calicograph.desk.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.CellScan;
import org.junit.jupiter.api.Test;

class DeskShelfTest {

    private static final Catalogue.Entry WAVES = new Catalogue.Entry("OceanWaves", "Rows of small triangles that roll.", "OceanWaves.java",
            List.of(new Catalogue.Routine("static Block block(Length side, int waves)", "The block.", 12)));
    private static final Catalogue.Entry STAR = new Catalogue.Entry("Star", "A star of any number of points.", "Star.java",
            List.of(new Catalogue.Routine("static Star of(int points)", "", 9), new Catalogue.Routine("Block across(Length diameter)", "", 20)));
    private static final Catalogue SHELF = new Catalogue(List.of(WAVES, STAR), List.of());

    @Test
    void every_word_of_a_search_must_occur_somewhere() {
        assertThat(Routines.found(SHELF, "triangles BLOCK")).containsExactly(WAVES);
        assertThat(Routines.found(SHELF, "points")).containsExactly(STAR);
        assertThat(Routines.found(SHELF, "")).containsExactly(WAVES, STAR);
        assertThat(Routines.found(SHELF, "lantern")).isEmpty();
    }

    @Test
    void a_static_routine_is_offered_as_a_call_with_plain_values() {
        assertThat(Routines.calls(WAVES)).containsExactly("OceanWaves.block(inches(8), 4)");
        assertThat(Routines.calls(STAR)).containsExactly("Star.of(8)");
        assertThat(Routines.looks(STAR)).containsExactly("Star.of(8)", "Star.of(8).across(inches(8))", "Medallion.around(EconomyPatch.block(inches(32))).with(Star.of(8))");
    }

    private static CellScan scan(String name, String key, String... reads) {
        return new CellScan("selection", List.of(new CellScan.Declared(name, key)), List.of(reads), List.of());
    }

    @Test
    void a_method_gets_a_class_a_file_and_the_imports_that_it_needs() {
        String text = "/** A lamp. */\nprivate static Block lamp(Length side) {\n    return NinePatch.block(side.plus(inches(1)));\n}";
        OwnRoutine lamp = OwnRoutine.of(text, scan("lamp", "lamp(Length)", "Block", "Length", "NinePatch", "inches"), Map.of("navy", "a2"));
        assertThat(lamp.suggested()).isEqualTo("Lamp");
        assertThat(lamp.source("Lamps")).isEqualTo("package org.calicograph.stdlib;\n\nimport static org.calicograph.measure.Length.inches;\n"
                + "import org.calicograph.measure.Length;\nimport org.calicograph.patchwork.Block;\n\n/** A routine made in a notebook. */\n"
                + "public final class Lamps {\n\n    private Lamps() { }\n\n    /** A lamp. */\n    public static Block lamp(Length side) {\n"
                + "        return NinePatch.block(side.plus(inches(1)));\n    }\n}\n");
    }

    @Test
    void a_record_goes_as_it_is_and_what_is_not_a_whole_thing_is_refused_in_words() {
        assertThat(OwnRoutine.of("record Tide(int hour) { }", scan("Tide", "Tide"), Map.of()).source("Tide")).endsWith("\n\npublic record Tide(int hour) { }\n");
        assertThatThrownBy(() -> OwnRoutine.of("int six = 6;", scan("six", "six"), Map.of())).hasMessageContaining("'six' is a value");
        assertThatThrownBy(() -> OwnRoutine.of("int six() { return dial(\"a\", 1, 9, 3); }", scan("six", "six()", "dial"), Map.of()))
                .hasMessageContaining("pass its value as a parameter");
        assertThatThrownBy(() -> OwnRoutine.of("}", new CellScan("selection", List.of(), List.of(), List.of()), Map.of())).hasMessageContaining("one whole method or class");
        assertThatThrownBy(() -> OwnRoutine.requireName("Block")).hasMessageContaining("already");
        assertThatThrownBy(() -> OwnRoutine.requireName("lamp post")).hasMessageContaining("capital");
    }
}
