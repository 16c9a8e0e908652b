package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Problem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What Java says of 25/2 in its Language Specification, 15.17.2: integer division rounds toward 0. */
class WholeDivisionTest {

    @TempDir
    static Path folder;
    private static Studio studio;

    @BeforeAll
    static void open() {
        studio = Studio.open(folder);
    }

    @AfterAll
    static void close() {
        studio.close();
    }

    private static List<Problem> check(String text) {
        studio.put("int points = 7;\nvar double1 = 2.5;\nint half(int n) { return n / 2; }", text);
        return Studio.get(studio.session.check("a2", text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "inches(25/2)|8|12",
        "var side = inches(1/2);|19|22",
        "cm(5/2)|4|7",
        "mm(points/2)|4|12",
        "yards(3/4)|7|10",
        "degrees(360/7)|9|14",
        "inches(5).times(3/4)|17|20",
        "inches(half(9)/2 + 1)|8|17",
        "inches(points % 3 == 0 ? 1 : points/2)|30|38",
        "double share = 1/2;|16|19",
        "double share = 1/2 + points;|16|19",
        "double1 * (points/2)|12|20",
        "Math.sqrt(points/2)|11|19",
        "var list = List.of(1, 2).stream().map(n -> inches(n/2)).toList();|51|54",
        "double each() { return points/2; }|24|32",
        "for (int i = 1; i < 3; i++) { System.out.println(inches(i/2)); }|57|60",
        "var at = Point.of(1/2, 3);|19|22",
        "inches((Integer) points/2)|8|26",
    })
    void a_division_of_whole_numbers_where_a_fraction_is_wanted_is_underlined(String text, int from, int to) {
        List<Problem> problems = check(text);
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).from().column()).isEqualTo(from);
        assertThat(problems.get(0).to().column()).isEqualTo(to);
        assertThat(problems.get(0).message()).contains("divides whole numbers");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "inches(24/2)", "inches(25/2.0)", "inches(25, 2)", "inches(\"25/2\")", "int half = points/2;", "inches((int) (points/2))",
        "inches(Math.floorDiv(points, 2))", "List.of(1, 2, 3).get(3/2)", "inches(5).dividedBy(7/2)", "double1/2", "inches(double1/2) // 25/2",
        "String.valueOf(points/2)", "\"half \" + points/2", "int[] rows = new int[points/2];", "points/2 > 3", "double share = 1.0 * points / 2;",
        "int each() { return points/2; }", "inches(1).dividedBy(points/2 + 1)", "var twice = inches(double1 / points / 2);",
    })
    void what_is_meant_is_left_alone(String text) {
        assertThat(check(text)).isEmpty();
    }

    @Test
    void the_repair_is_offered() {
        assertThat(check("inches(25/2)").get(0).message()).isEqualTo(
                "25/2 divides whole numbers and gives 12, without the rest. Write inches(25, 2) or 25/2.0; where the rest is to go, Math.floorDiv(25, 2).");
        assertThat(check("mm(points/2)").get(0).message()).isEqualTo(
                "points/2 divides whole numbers and drops the rest. Write points/2.0; where the rest is to go, Math.floorDiv(points, 2).");
        assertThat(check("mm(9/points)").get(0).message()).contains("Write 9/(double) points");
    }

    @Test
    void a_cell_that_divides_so_is_not_drawn_and_the_others_are() {
        studio.put("int points = 7;", "int more = points + 1;\nvar side = inches(1);\nside.times(points/2)", "points");
        studio.drawAll();
        Failure.DoesNotCompile failure = studio.failure("a2", Failure.DoesNotCompile.class);
        assertThat(failure.problems()).hasSize(1);
        assertThat(failure.problems().get(0).from()).hasToString("line 3, column 12");
        assertThat(studio.words("a3")).isEqualTo("7");
    }
}
