package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.calicograph.desk.study.Variations;
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
        new org.calicograph.desk.study.Trust(folder.resolve("own"), folder.resolve("product")).grant(notebook);
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
            assertThat(evening.words("cell-a1")).contains("exactly 3 1/8 in");
            assertThat(evening.window.study().notebook().dials()).isEmpty();

            evening.robot.clickOn("#dial-width");
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("20");
            evening.keys(KeyCode.ENTER);
            evening.until("a bare number is in the unit that stood there", () -> entry(evening, "a1").equals("20 cm"));
            evening.keys(KeyCode.CONTROL, KeyCode.A);
            evening.robot.write("50");
            evening.keys(KeyCode.ENTER);
            evening.until("the range is metric too", () -> evening.words("cell-a1").contains("from 5.08 cm to 30.48 cm"));
            assertThat(new org.calicograph.desk.study.Preferences(folder.resolve("own")).lengths()).isEqualTo(org.calicograph.measure.Length.System.METRIC);
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
}
