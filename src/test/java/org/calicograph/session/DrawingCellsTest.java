package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.Failure;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawingCellsTest {

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

    @Test
    void a_cell_shows_the_value_of_its_last_expression_with_or_without_a_semicolon() {
        studio.put("int a = 20;\na + 1", "a + 2;").drawAll();
        assertThat(studio.words("a1")).isEqualTo("21");
        assertThat(studio.words("a2")).isEqualTo("22");
        assertThat(studio.done("a1").kind()).isEqualTo("Integer");
    }

    @Test
    void a_cell_that_ends_in_a_declaration_shows_the_variable() {
        studio.put("var name = \"Oyster Beds\";").drawAll();
        assertThat(studio.words("a1")).isEqualTo("Oyster Beds");
    }

    @Test
    void a_cell_that_ends_in_a_statement_shows_nothing() {
        studio.put("for (int i = 0; i < 3; i++) {\n    System.out.println(i);\n}").drawAll();
        assertThat(studio.done("a1").exhibit()).isEqualTo(Exhibit.NOTHING);
        assertThat(studio.done("a1").output()).isEqualTo("0\n1\n2\n");
    }

    @Test
    void a_picture_comes_back_as_the_same_value() {
        studio.put("Picture.of(Region.rectangle(inches(3), inches(2))).filled(Colour.hex(\"#24425c\"))").drawAll();
        Exhibit.Drawn drawn = (Exhibit.Drawn) studio.done("a1").exhibit();
        assertThat(drawn.picture().bounds().width()).isEqualTo(3);
    }

    @Test
    void a_cell_may_use_a_name_that_a_lower_cell_declares() {
        studio.put("width * 2", "int width = f(4);", "int f(int n) { return n + 1; }").drawAll();
        assertThat(studio.words("a1")).isEqualTo("10");
        assertThat(studio.events).containsSubsequence("a3 Done", "a2 Done", "a1 Done");
    }

    @Test
    void drawing_one_cell_draws_what_it_needs_and_no_more() {
        studio.put("int a = 1;", "int b = 2;", "a + 1").draw("a3");
        assertThat(studio.words("a3")).isEqualTo("2");
        assertThat(studio.session.state("a2")).isInstanceOf(CellState.Undrawn.class);
    }

    @Test
    void types_methods_and_records_are_shared_between_cells() {
        studio.put("record Tide(String name, int height) { int doubled() { return height * 2; } }",
                "enum Wind { LEE, WEATHER }", "interface Knot { int turns(); }",
                "Knot k = () -> 3;\nnew Tide(\"spring\", 4).doubled() + k.turns() + Wind.values().length").drawAll();
        assertThat(studio.words("a4")).isEqualTo("13");
    }

    @Test
    void methods_of_one_cell_may_call_one_another_in_any_order() {
        studio.put("boolean even(int n) { return n == 0 || odd(n - 1); }\nboolean odd(int n) { return n != 0 && even(n - 1); }\neven(10)").drawAll();
        assertThat(studio.words("a1")).isEqualTo("true");
    }

    @Test
    void an_edit_makes_the_cell_and_what_depends_on_it_stale_and_a_draw_brings_the_new_value() {
        studio.put("int a = 1;", "int b = a + 1;", "b * 10", "7").drawAll();
        studio.session.edit("a1", "int a = 5;");
        studio.await("stale cells", () -> studio.session.state("a3") instanceof CellState.Stale);
        assertThat(studio.session.state("a2")).isInstanceOf(CellState.Stale.class);
        assertThat(studio.session.state("a4")).isInstanceOf(CellState.Done.class);
        studio.draw("a3");
        assertThat(studio.words("a3")).isEqualTo("60");
    }

    @Test
    void a_declaration_that_changes_its_type_is_taken_over_by_what_depends_on_it() {
        studio.put("var a = 1;", "a + \"!\"").drawAll();
        studio.session.edit("a1", "var a = List.of(\"x\");");
        studio.drawAll();
        assertThat(studio.words("a2")).isEqualTo("[x]!");
    }

    @Test
    void a_name_that_is_no_longer_declared_fails_the_cells_that_use_it() {
        studio.put("int a = 1;", "a + 1").drawAll();
        studio.session.edit("a1", "int z = 1;");
        studio.drawAll();
        assertThat(studio.failure("a2", Failure.DoesNotCompile.class).message()).contains("variable a");
    }

    @Test
    void the_second_declaration_of_a_name_fails_and_names_both_cells() {
        studio.put("int a = 1;", "int a = 2;", "a + 1").drawAll();
        assertThat(studio.failure("a2", Failure.DeclaredTwice.class).message())
                .isEqualTo("'a' is declared in cells a1 and a2. Give it another name in one of them.");
        assertThat(studio.words("a3")).isEqualTo("2");
    }

    @Test
    void cells_in_a_circle_fail_and_name_the_way_round() {
        studio.put("int a = b;", "int b = c;", "int c = a;", "int d = a;", "9").drawAll();
        assertThat(studio.failure("a1", Failure.InCircle.class).cells()).containsExactly("a1", "a2", "a3");
        assertThat(studio.failure("a2", Failure.InCircle.class).names()).containsExactly("a", "b", "c");
        assertThat(studio.failure("a4", Failure.Depends.class).cells()).containsExactly("a1");
        assertThat(studio.words("a5")).isEqualTo("9");
    }

    @Test
    void a_cell_that_assigns_to_a_name_of_another_runs_between_that_one_and_later_readers() {
        studio.put("int a = 1;", "a = a + 10;", "a * 2").drawAll();
        assertThat(studio.words("a3")).isEqualTo("22");
        studio.draw("a2");
        studio.draw("a3");
        assertThat(studio.words("a3")).isEqualTo("22");
    }

    @Test
    void what_depends_on_a_failed_cell_says_so_and_the_rest_is_drawn() {
        studio.put("int a = 1 / 0;", "a + 1", "int c = 3;", "c + 1").drawAll();
        assertThat(studio.failure("a1", Failure.Threw.class).kind()).isEqualTo("ArithmeticException");
        assertThat(studio.failure("a2", Failure.Depends.class).message()).isEqualTo("This cell needs cell a1, which failed. Repair that one first.");
        assertThat(studio.words("a4")).isEqualTo("4");
    }

    @Test
    void states_are_told_in_order_on_one_thread() {
        studio.put("1").drawAll();
        studio.await("the events", () -> studio.events.contains("a1 Done"));
        assertThat(studio.events).containsSubsequence("a1 Waiting", "a1 Drawing", "a1 Done");
        assertThat(studio.threads).containsOnly("calicograph session events");
    }

    @Test
    void a_cell_that_is_not_there_is_named() {
        studio.put("1");
        assertThatThrownBy(() -> studio.session.draw("b9")).hasMessageContaining("there is no code cell 'b9'");
    }

    @Test
    void an_empty_cell_and_a_cell_of_comments_show_nothing() {
        studio.put("", "// only a note", "  \n\n").drawAll();
        for (String cell : new String[] {"a1", "a2", "a3"}) {
            assertThat(studio.done(cell).exhibit()).isEqualTo(Exhibit.NOTHING);
        }
    }

    @Test
    void a_cell_moved_away_takes_its_names_with_it() {
        studio.put("int gone = 1;", "gone + 1").drawAll();
        studio.session.arrange(java.util.List.of(new CellSource("a2", "gone + 1")));
        studio.drawAll();
        assertThat(studio.failure("a2", Failure.DoesNotCompile.class).message()).contains("variable gone");
    }

    @Test
    void imports_of_a_cell_count_for_it() {
        studio.put("import java.math.BigInteger;\nBigInteger.TWO.pow(70)").drawAll();
        assertThat(studio.words("a1")).isEqualTo("1180591620717411303424");
    }
}
