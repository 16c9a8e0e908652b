package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.NotebookWriter;
import org.calicograph.wire.ExhibitFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drafting lessons, gone through from the first step to the last. */
class DraftingLessonsTest {

    @TempDir
    static Path cache;
    private static Cells cells;
    private List<String> gone = List.of();

    @BeforeAll
    static void start() throws Exception {
        cells = new Cells(new Running(), Stdlib.of(List.of(Path.of("stdlib")), cache), 256);
    }

    @AfterEach
    void forget() {
        gone.forEach(cells::forget);
        cells.forget("probe");
    }

    /** Draws every cell in order, each question's answer as given in place of its dial. */
    private void walk(String file, Map<String, String> answers) throws Exception {
        Path path = Path.of("notebooks/lessons", file);
        Notebook notebook = NotebookFile.read(path);
        assertThat(NotebookWriter.write(notebook)).isEqualTo(Files.readString(path));
        gone = notebook.cells().stream().map(Cell::id).toList();
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Code) {
                String text = cell.text();
                for (Map.Entry<String, String> answer : answers.entrySet()) {
                    text = text.replace(".answered(" + answer.getKey() + ")", ".answered(" + answer.getValue() + ")");
                }
                Cells.Result result = cells.evaluate(cell.id(), text, Map.of(), List.of());
                assertThat(result.failure()).as(file + " " + cell.id()).isEmpty();
                Exhibit shown = ExhibitFormat.exhibit(result.exhibit().orElseThrow());
                if (text.contains("Question.of")) {
                    assertThat(shown.toString()).as(text).contains(answers.values().stream().anyMatch(v -> v.contains("WRONG")) ? "is not it yet" : "is right.");
                } else {
                    assertThat(shown).as(text).isNotInstanceOf(Exhibit.Words.class);
                }
            }
        }
    }

    private String told(String expression) throws Exception {
        Cells.Result result = cells.evaluate("probe", expression, Map.of(), List.of());
        assertThat(result.failure()).as(expression).isEmpty();
        return ((Exhibit.Words) ExhibitFormat.exhibit(result.exhibit().orElseThrow())).text();
    }

    private double distance(String draft, String one, String other) throws Exception {
        return Double.parseDouble(told("\"\" + " + draft + ".at(\"" + one + "\").distance(" + draft + ".at(\"" + other + "\"))"));
    }

    /** Euclid I.46: four sides alike; by I.47 a right angle at each corner, since both diagonals' squares are twice the side's. */
    @Test
    void the_square_is_true_and_its_grid_even() throws Exception {
        walk("the-square-and-its-grid.json", Map.of("corner", "inches(\"5 5/8\")", "unit", "inches(1)"));
        for (String side : List.of("AB", "BC", "CD", "DA")) {
            assertThat(distance("square", side.substring(0, 1), side.substring(1))).as(side).isCloseTo(4, within(1e-9));
        }
        assertThat(distance("square", "A", "C")).isCloseTo(Math.sqrt(32), within(1e-9));
        assertThat(distance("square", "B", "D")).isCloseTo(Math.sqrt(32), within(1e-9));
        // D carried up 3 7/8 in, not 4: the mistake is D's, and C only inherits it.
        assertThat(told("""
                String.join("\\n", DraftReview.of(square, sheet.perpendicular("left", "base", "A").perpendicular("right", "base", "B").circle("swing", "A", inches("3 7/8"))
                    .crossing("D", "swing", "left", "O").parallel("top", "base", "D").crossing("C", "top", "right").ink("square", "A", "B", "C", "D", "A"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere() + d.matters()).toList())""")).contains("swingtruetrue", "Dfalsetrue", "Cfalsetrue").doesNotContain("left");
    }

    /** Common practice: half the diagonal, swung from each corner. Its corners lie on one circle, with eight sides alike. */
    @Test
    void the_octagon_is_regular() throws Exception {
        walk("the-octagon-in-a-square.json", Map.of("corner", "135"));
        for (int i = 1; i <= 8; i++) {
            assertThat(distance("octagon", "P" + i, "P" + (i % 8 + 1))).as("side " + i).isCloseTo(4 * (Math.sqrt(2) - 1), within(1e-9));
            assertThat(distance("octagon", "O", "P" + i)).as("corner " + i).isCloseTo(Math.hypot(2, 2 * (Math.sqrt(2) - 1)), within(1e-9));
        }
        // One swing opened to 2 3/4 in: the swing is named, its two marks inherit it, all other marks are right.
        assertThat(told("""
                String.join("\\n", DraftReview.of(swings, middle.circle("a", "A", inches("2 3/4")).circle("b", "B", "O").circle("c", "C", "O").circle("d", "D", "O")
                    .crossing("P1", "b", "AB", "A").crossing("P2", "a", "AB", "B").crossing("P3", "c", "BC", "B").crossing("P4", "b", "BC", "C")
                    .crossing("P5", "d", "CD", "C").crossing("P6", "c", "CD", "D").crossing("P7", "a", "DA", "D").crossing("P8", "d", "DA", "A"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("atrue", "P2false", "P7false");
    }

    /** Euclid IV.15: the side of the hexagon is the radius of its circle. */
    @Test
    void the_hexagon_is_regular() throws Exception {
        walk("the-hexagon.json", Map.of("corner", "120"));
        List<String> corners = List.of("R", "P2", "P3", "L", "P5", "P6", "R");
        for (int i = 0; i < 6; i++) {
            assertThat(distance("hexagon", corners.get(i), corners.get(i + 1))).as(corners.get(i)).isCloseTo(2, within(1e-9));
            assertThat(distance("hexagon", "O", corners.get(i))).as(corners.get(i)).isCloseTo(2, within(1e-9));
        }
        // The right swing opened to 1 7/8 in: its two marks inherit it, the left swing's are right.
        assertThat(told("""
                String.join("\\n", DraftReview.of(swings, sheet.circle("right", "R", inches("1 7/8")).circle("left", "L", "O")
                    .crossing("P2", "right", "rim", "T").crossing("P3", "left", "rim", "T").crossing("P5", "left", "rim", "U").crossing("P6", "right", "rim", "U"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("righttrue", "P2false", "P6false");
    }

    /** Common practice: each line joins marks three eighths of a turn apart; the chord is twice the radius times the sine of 67 1/2 degrees. */
    @Test
    void the_star_has_eight_lines_alike() throws Exception {
        walk("the-eight-pointed-star.json", Map.of("tip", "45"));
        double radius = Math.hypot(2, 2 * (Math.sqrt(2) - 1));
        for (int i = 0; i < 8; i++) {
            assertThat(distance("star", "P" + (i + 1), "P" + ((i + 3) % 8 + 1))).as("line " + i).isCloseTo(2 * radius * Math.sin(Math.toRadians(67.5)), within(1e-9));
        }
        // Joined to the second mark on instead of the third: the ink itself is at fault.
        assertThat(told("""
                String.join("\\n", DraftReview.of(star, swings.ink("star", "P1", "P3", "P5", "P7", "P1"))
                    .differences().stream().map(d -> d.figure() + d.isMadeHere()).toList())""").lines()).containsExactly("startrue");
    }

    @Test
    void wrong_answers_are_told_with_the_hint() throws Exception {
        walk("the-square-and-its-grid.json", Map.of("corner", "inches(5 /* WRONG */)", "unit", "inches(2 /* WRONG */)"));
        gone.forEach(cells::forget);
        walk("the-octagon-in-a-square.json", Map.of("corner", "45 /* WRONG */"));
        gone.forEach(cells::forget);
        walk("the-hexagon.json", Map.of("corner", "60 /* WRONG */"));
        gone.forEach(cells::forget);
        walk("the-eight-pointed-star.json", Map.of("tip", "60 /* WRONG */"));
    }
}
