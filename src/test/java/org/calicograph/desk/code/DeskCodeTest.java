package org.calicograph.desk.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;
import org.junit.jupiter.api.Test;

class DeskCodeTest {

    private static List<String> parts(String text, Token.Kind kind) {
        return JavaLexer.tokens(text).stream().filter(t -> t.kind() == kind).map(t -> text.substring(t.start(), t.end())).toList();
    }

    @Test
    void java_is_coloured_by_its_tokens() {
        String text = "@Deprecated int n = 0x1F + 2.5e3; // count\nvar s = Star.of(n, \"a \\\" b\", 'c'); /* done */";
        assertThat(parts(text, Token.Kind.KEYWORD)).containsExactly("int", "var");
        assertThat(parts(text, Token.Kind.ANNOTATION)).containsExactly("@Deprecated");
        assertThat(parts(text, Token.Kind.NUMBER)).containsExactly("0x1F", "2.5e3");
        assertThat(parts(text, Token.Kind.TEXT)).containsExactly("\"a \\\" b\"", "'c'");
        assertThat(parts(text, Token.Kind.REMARK)).containsExactly("// count", "/* done */");
        assertThat(parts(text, Token.Kind.TYPE)).containsExactly("Star");
        assertThat(parts(text, Token.Kind.CALL)).containsExactly("of");
    }

    @Test
    void a_text_block_runs_over_lines_and_an_unfinished_string_does_not() {
        assertThat(parts("\"\"\"\n two \"words\"\n\"\"\" + 1", Token.Kind.TEXT)).containsExactly("\"\"\"\n two \"words\"\n\"\"\"");
        assertThat(parts("\"open\nint a", Token.Kind.TEXT)).containsExactly("\"open");
        assertThat(parts("/* open\nint a", Token.Kind.REMARK)).containsExactly("/* open\nint a");
    }

    @Property(tries = 500)
    void tokens_of_any_text_lie_in_order_within_it(@ForAll @StringLength(max = 60) @Chars({'"', '\'', '\\', '/', '*', '\n', '(', '}', '@', '.', ' '})
            @CharRange(from = '0', to = 'z') String text) {
        int at = 0;
        for (Token token : JavaLexer.tokens(text)) {
            assertThat(token.start()).isGreaterThanOrEqualTo(at);
            assertThat(token.end()).isGreaterThan(token.start());
            at = token.end();
        }
        assertThat(at).isLessThanOrEqualTo(text.length());
        assertThat(Colouring.of(text, List.of(), 0, "").length()).isEqualTo(text.length());
    }

    @Test
    void brackets_find_their_partners_past_those_in_strings() {
        String text = "f(g[\")\"], { 1 })";
        Brackets brackets = Brackets.in(text);
        assertThat(brackets.partner(1)).hasValue(15);
        assertThat(brackets.partner(15)).hasValue(1);
        assertThat(brackets.partner(3)).hasValue(7);
        assertThat(brackets.partner(10)).hasValue(14);
        assertThat(brackets.partner(5)).isEmpty();
        assertThat(Brackets.in("(]").partner(0)).isEmpty();
    }

    @Test
    void a_new_line_begins_below_the_last_and_further_in_behind_a_brace() {
        assertThat(Indent.breakAt("    a();", 8)).isEqualTo("\n    ");
        assertThat(Indent.breakAt("  if (a) {", 10)).isEqualTo("\n      ");
        assertThat(Indent.breakAt("", 0)).isEqualTo("\n");
    }

    @Test
    void a_problem_is_marked_at_its_characters() {
        String text = "int a = 1;\nint b = c;";
        Failure wrong = new Failure.DoesNotCompile(List.of(new Problem(new Place(2, 9), new Place(2, 10), "no c")));
        assertThat(Marks.of(text, wrong)).containsExactly(new Marks.Mark(19, 20, "no c"));
    }

    @Test
    void a_problem_at_the_end_of_a_line_marks_the_character_before() {
        Failure wrong = new Failure.DoesNotCompile(List.of(new Problem(new Place(1, 6), new Place(1, 6), "';' expected")));
        assertThat(Marks.of("int a\nint b;", wrong)).containsExactly(new Marks.Mark(4, 5, "';' expected"));
        assertThat(Marks.of("int a", wrong)).containsExactly(new Marks.Mark(4, 5, "';' expected"));
        assertThat(Marks.of("", wrong)).isEmpty();
    }

    @Test
    void calls_of_a_moved_method_go_to_its_class_and_nothing_else_does() {
        assertThat(Calls.qualified("light(2) + other.light(3) + \"light(4)\" // light(5)\n    .light(6); lights(7)", "light", "Lamps"))
                .isEqualTo("Lamps.light(2) + other.light(3) + \"light(4)\" // light(5)\n    .light(6); lights(7)");
    }
}
