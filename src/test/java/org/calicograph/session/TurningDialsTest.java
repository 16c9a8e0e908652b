package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Failure;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TurningDialsTest {

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

    private static void turn(String name, String value, String cell, String words) {
        studio.session.setDial(name, value);
        studio.await(cell + " showing " + words, () -> studio.session.state(cell) instanceof CellState.Done
                && studio.words(cell).equals(words));
    }

    @Test
    void every_kind_of_dial_is_told_with_its_range() {
        studio.put("""
                int points = dial("points", 5, 16, 12);
                double share = dial("share", 0, 1, 0.5);
                Length width = dial("width", inches(2), inches(9), inches(6));
                Angle lean = dial("lean", degrees(0), degrees(90), degrees(22.5));
                String set = dial("set", List.of("straight", "on point"));
                boolean bound = dial("bound", true);
                enum Wind { LEE, WEATHER }
                Wind wind = dial("wind", Wind.WEATHER);
                """).drawAll();
        studio.done("a1");
        assertThat(studio.session.dials()).containsExactly(
                new Dial.Whole("points", "a1", 5, 16, 1, 12),
                new Dial.Real("share", "a1", 0, 1, 0, 0.5),
                new Dial.OfLength("width", "a1", Length.inches(2), Length.inches(9), Length.inches(1, 8), Length.inches(6)),
                new Dial.OfAngle("lean", "a1", angle(0), angle(90), angle(0), angle(22.5)),
                new Dial.Choice("set", "a1", List.of("straight", "on point"), 0),
                new Dial.Switch("bound", "a1", true),
                new Dial.Choice("wind", "a1", List.of("LEE", "WEATHER"), 1));
    }

    private static org.calicograph.measure.Angle angle(double degrees) {
        return org.calicograph.measure.Angle.degrees(degrees);
    }

    @Test
    void a_turned_dial_draws_what_depends_on_it_again() {
        studio.put("int n1 = dial(\"n1\", 1, 9, 2);", "int sq = n1 * n1;", "sq + 1", "\"apart\"").drawAll();
        turn("n1", "5", "a3", "26");
        assertThat(studio.dials().get("n1").text()).isEqualTo("5");
        studio.events.clear();
        turn("n1", "6", "a3", "37");
        assertThat(studio.events).noneMatch(e -> e.startsWith("a4"));
    }

    @Test
    void a_dial_buried_in_an_expression_turns_too() {
        studio.put("int twice = 2 * dial(\"n3\", 1, 9, 2) + 1;", "twice * 10").drawAll();
        turn("n3", "4", "a2", "90");
    }

    @Test
    void a_dial_within_a_method_turns_with_the_cell_that_calls_it() {
        studio.put("int notch() { return dial(\"n4\", 1, 9, 2); }", "notch() * 10").drawAll();
        turn("n4", "4", "a2", "40");
    }

    @Test
    void a_list_that_is_filled_by_a_statement_is_made_anew_before_it_is_filled_again() {
        studio.put("int n5 = dial(\"n5\", 1, 9, 2);", "var list = new ArrayList<Integer>();\nfor (int i = 0; i < n5; i++) {\n    list.add(i);\n}\nlist + \"\"").drawAll();
        assertThat(studio.words("a2")).isEqualTo("[0, 1]");
        turn("n5", "1", "a2", "[0]");
        turn("n5", "3", "a2", "[0, 1, 2]");
    }

    @Test
    void a_type_that_computes_once_is_evaluated_again() {
        studio.put("int n6 = dial(\"n6\", 1, 9, 2);", "class Once { static int value = n6 * 100; }", "Once.value").drawAll();
        turn("n6", "3", "a3", "300");
    }

    @Test
    void saved_values_count_from_the_first_draw() {
        try (Studio saved = Studio.open(Studio.options(cache), Map.of("points", "7", "width", "6 1/2 in", "set", "on point"),
                "int points = dial(\"points\", 5, 16, 12);\npoints + 0", "dial(\"width\", inches(2), inches(9), inches(6))",
                "dial(\"set\", \"straight\", \"on point\")")) {
            saved.drawAll();
            assertThat(saved.words("a1")).isEqualTo("7");
            assertThat(saved.words("a2")).isEqualTo("6 1/2 in");
            assertThat(saved.words("a3")).isEqualTo("on point");
        }
    }

    @Test
    void a_saved_value_out_of_range_is_refused_with_the_range_and_another_repairs_it() {
        studio.session.setDial("n7", "40");
        studio.put("int n7 = dial(\"n7\", 5, 16, 12);\nn7 + 0", "n7 * 2", "1").drawAll();
        assertThat(studio.failure("a1", Failure.DialRefused.class).message())
                .isEqualTo("The dial 'n7' can't be set to 40; it takes values from 5 to 16.");
        assertThat(studio.words("a3")).isEqualTo("1");
        turn("n7", "8", "a1", "8");
    }

    @Test
    void a_value_out_of_range_is_refused_at_once_and_the_old_one_stays() {
        studio.put("int n8 = dial(\"n8\", 5, 16, 12);\nn8 + 0").drawAll();
        assertThatThrownBy(() -> studio.session.setDial("n8", 40)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The dial 'n8' can't be set to 40; it takes values from 5 to 16.");
        assertThatThrownBy(() -> studio.session.setDial("n8", "many")).hasMessageContaining("'many'").hasMessageContaining("from 5 to 16");
        assertThat(studio.words("a1")).isEqualTo("12");
    }

    @Test
    void of_many_values_the_newest_wins() {
        studio.put("int n9 = dial(\"n9\", 0, 1000, 2);", "Thread.sleep(3);\nn9 + 0").drawAll();
        studio.events.clear();
        for (int i = 0; i <= 500; i++) {
            studio.session.setDial("n9", i);
        }
        studio.await("the newest value", () -> studio.session.state("a2") instanceof CellState.Done && studio.words("a2").equals("500"));
        assertThat(studio.events.stream().filter(e -> e.equals("a2 Done")).count()).isLessThan(400);
    }

    @Test
    void a_value_that_makes_a_cell_fail_fails_what_needs_it_and_a_better_one_brings_all_back() {
        studio.put("int m1 = dial(\"m1\", 0, 9, 2);", "int part = 12 / m1;", "part + 1").drawAll();
        studio.session.setDial("m1", 0);
        studio.await("a failure", () -> studio.session.state("a3") instanceof CellState.Failed);
        assertThat(studio.failure("a2", Failure.Threw.class).at()).isPresent();
        assertThat(studio.failure("a3", Failure.Depends.class).cells()).containsExactly("a2");
        turn("m1", "3", "a3", "5");
    }

    @Test
    void an_edit_keeps_the_turned_value() {
        studio.put("int m2 = dial(\"m2\", 1, 9, 2);", "m2 * 10").drawAll();
        turn("m2", "5", "a2", "50");
        studio.session.edit("a2", "m2 * 100");
        studio.drawAll();
        assertThat(studio.words("a2")).isEqualTo("500");
        turn("m2", "6", "a2", "600");
    }

    @Test
    void a_dial_turned_after_the_kernel_was_lost_brings_the_values_back() {
        studio.put("int m3 = dial(\"m3\", 1, 9, 2);", "m3 * 10").drawAll();
        studio.session.restart();
        turn("m3", "5", "a2", "50");
    }

    @Test
    void one_name_for_two_dials_is_refused() {
        studio.put("int p = dial(\"twin\", 1, 9, 2);", "int q = dial(\"twin\", 1, 9, 3);").drawAll();
        assertThat(studio.failure("a2", Failure.Threw.class).message()).isEqualTo("The dial 'twin' is declared twice, also in cell a1. Give one of the two another name.");
    }

    @Test
    void a_dial_goes_when_its_declaration_goes() {
        studio.put("int m4 = dial(\"m4\", 1, 9, 2);").drawAll();
        assertThat(studio.dials()).containsKey("m4");
        studio.session.edit("a1", "int m4 = 2;");
        studio.drawAll();
        assertThat(studio.dials()).isEmpty();
    }
}
