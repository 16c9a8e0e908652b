package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.calicograph.wire.Problem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckingTest {

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

    private static List<Problem> check(String cell, String text) {
        return Studio.get(studio.session.check(cell, text));
    }

    private static String words(String text) {
        return check("a1", text).stream().map(Problem::message).collect(Collectors.joining("\n"));
    }

    @Test
    void what_the_compiler_will_object_to_is_told_with_its_place_and_nothing_is_drawn_for_it() {
        Path trace = folder.resolve("trace");
        studio.put("int rope = 5;", "String run() throws Exception {\n    return java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + trace
                + "\"), \"\").toString();\n}\nString ran = run();");
        List<Problem> problems = check("a1", "int rope = 5;\nint knots = ropes * 2;\nint more = knots + 1;\nran.size()");
        assertThat(problems).hasSize(2);
        assertThat(problems.get(0).from()).hasToString("line 2, column 13");
        assertThat(problems.get(0).to()).hasToString("line 2, column 18");
        assertThat(problems.get(0).message()).contains("There is no variable ropes here").contains("Did you mean rope?");
        assertThat(problems.get(1).from().line()).isEqualTo(4);
        assertThat(trace).doesNotExist();
        assertThat(studio.session.states().values()).allMatch(state -> state instanceof CellState.Undrawn);
        assertThat(Files.exists(trace)).isFalse();
    }

    @Test
    void names_of_other_cells_are_known_wherever_they_stand_whether_drawn_or_not() {
        studio.put("1", "var shore = List.of(low);", "int low = 3;\nrecord Buoy(int depth) { }\nint fathoms(Buoy b) {\n    return b.depth() + low;\n}");
        assertThat(check("a1", "int sum = fathoms(new Buoy(low)) + shore.get(0);\nsum")).isEmpty();
        assertThat(check("a1", "int sum = fathoms(new Buoy(low)) + shore.get(0).size();")).hasSize(1);
        studio.session.edit("a3", "int high = 3;");
        assertThat(check("a1", "low + 1")).hasSize(1);
        assertThat(check("a1", "high + 1")).isEmpty();
    }

    @Test
    void a_text_that_is_mended_has_no_problem_and_a_whole_one_none() {
        studio.put("");
        assertThat(check("a1", "int n = 1;\nfor (int i = 0; i < n; i++ {\n}")).isNotEmpty();
        assertThat(check("a1", "int n = 1;\nfor (int i = 0; i < n; i++) {\n}")).isEmpty();
        assertThat(check("a1", "int n = 2;\nint twice() {\n    return 2 * n;\n}\nvar sail = Region.rectangle(inches(2), inches(3));\nsail")).isEmpty();
        assertThat(check("a1", "int twice() {\n    return 2 * m;\n}")).hasSize(1);
        assertThat(check("a1", "int m = 1;\nint twice() {\n    return 2 * m;\n}")).isEmpty();
        assertThat(check("a1", "int points = dial(\"points\", 5, 16, 12);\npoints")).isEmpty();
        assertThat(check("a1", "")).isEmpty();
    }

    @Test
    void objections_are_put_in_plain_words_with_a_repair() {
        studio.put("");
        assertThat(words("Length wide = 3;")).contains("This is an int where a Length is wanted.").contains("inches(…)");
        assertThat(words("int n = 2.5;")).contains("This is a double where an int is wanted.").contains("(int)");
        assertThat(words("Region.rectangle(inches(2), inches(3)).boundss()")).contains("Did you mean bounds?");
        assertThat(words("Regoin.rectangle(inches(2), inches(3))")).contains("Did you mean Region?");
        assertThat(words("int twice(int n) {\n    return 2 * n;\n}\ntwice(\"low\")")).contains("a String where an int is wanted");
        assertThat(words("Length.inches(2).times(\"two\", 3)")).isNotBlank();
        assertThat(words("inch(3)")).contains("There is no method inch(int) here");
        assertThat(words("String s = \"low;")).contains("Put \" behind the last");
        assertThat(words("int f(int n) {\n}")).contains("Add a return");
        assertThat(words("Border.plain(Fabric.of(\"navy\", \"#123456\"), inches(2)).cornered()")).contains("There is no method cornered in PlainBorder").contains("corners")
                .doesNotContain("Frame");
        assertThat(words("Block.plain(inches(2), Fabric.of(\"navy\", \"#123456\"))"))
                .isEqualTo("plain can't be given (Length, Fabric). It takes (String name, Fabric fabric, Region shape) or (Fabric fabric, Length width, Length height).");
        assertThat(words("inches(true)")).contains("inches can't be given (boolean). It takes (");
    }

    @Test
    void a_name_that_another_cell_declares_is_a_problem_before_anything_is_drawn() {
        studio.put("", "int sail = 1;");
        List<Problem> problems = check("a1", "int loft = 1;\nint sail = 2;");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).message()).contains("'sail' is declared in cell a2 too");
        assertThat(problems.get(0).from()).hasToString("line 2, column 5");
    }

    @Test
    void a_check_waits_for_no_cell_and_disturbs_none() {
        studio.put("int ebb = 1;\nwhile (ebb > 0) {\n}", "2 + 3");
        studio.session.draw("a1");
        studio.await("a1 at work", () -> studio.session.state("a1") instanceof CellState.Drawing);
        assertThat(check("a2", "2 + three")).hasSize(1);
        assertThat(studio.session.state("a1")).isInstanceOf(CellState.Drawing.class);
        studio.session.stop();
        studio.await("a1 stopped", () -> studio.session.state("a1") instanceof CellState.Failed);
        studio.draw("a2");
        assertThat(studio.words("a2")).isEqualTo("5");
    }
}
