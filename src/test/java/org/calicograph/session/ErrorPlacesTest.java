package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.calicograph.wire.Failure;
import org.calicograph.wire.Frame;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Errors name the line and column of the cell, wherever in it they are. */
class ErrorPlacesTest {

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

    /** In the texts, / stands for the end of a line. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        foo                                      | 1 | 1 | There is no variable foo here
        int a = 1;/int b = a + nothing;          | 2 | 13 | There is no variable nothing here
        // a note/  /   int c = "words";         | 3 | 12 | incompatible types
        int d = 1; int e = oops(d);              | 1 | 20 | There is no method oops(int) here
        record R(int n) {/  int m() {/    return k;/  }/}  | 3 | 12 | There is no variable k here
        int f(int n) {/  return n +;/}           | 2 | 13 | Something is missing before this
        "abc".size()                             | 1 | 6 | There is no method size()
        var g = List.of(1)/g.get(0)              | 1 | 19 | Java expects ';' here
        int h = (3;                              | 1 | 11 | Java expects ')' here
        Strang s = null;                         | 1 | 1 | There is no class Strang here
        """)
    void a_compile_error_has_its_place(String text, int line, int column, String message) {
        studio.put(text.strip().replace('/', '\n').replace("\n\n a note", "// a note")).drawAll();
        Problem problem = studio.failure("a1", Failure.DoesNotCompile.class).problems().get(0);
        assertThat(problem.message()).contains(message);
        assertThat(problem.from().line()).as("line of %s", problem).isEqualTo(line);
        if (!message.equals("expected")) {
            assertThat(problem.from()).isEqualTo(new Place(line, column));
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        int z = 0;/int y = 1 / z;                                                 | 2 | 1
        int z = 0;//for (int i = 0; i < 3; i++) {/    z += 1 % (i - 1);/}         | 4 | 5
        int f(int n) {/    int m = n;/    return 1 % m;/}//f(0)                   | 3 | 5
        List.of(1, 0).stream()/    .map(n -> 1 % n)/    .toList()                 | 2 | 5
        class T {/    int x;/    int div() { return 1 % x; }/}/new T().div()      | 3 | 5
        """)
    void an_exception_has_the_line_of_the_cell(String text, int line, int column) {
        studio.put(text.strip().replace('/', '\n').replace("1 \n z", "1 / z")).drawAll();
        Failure.Threw threw = studio.failure("a1", Failure.Threw.class);
        assertThat(threw.kind()).isEqualTo("ArithmeticException");
        assertThat(threw.at()).contains(new Place(line, column));
    }

    /** Mistakes that a newcomer makes, and none of the compiler's own words in what is said of them. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        int a = 1; int f() { int b = 2; int b = 3; return b; }      | There is a 'b' already
        int f(int n) { }                                            | Add a return
        inches(3) + inches(4)                                       | added with .plus
        inches(3) * 2                                               | multiplied with .times
        inches(8) < inches(9)                                       | compared with .compareTo
        int n = 3; n.half()                                         | A plain number has nothing behind a dot
        var list = List.of(1, 2); list[0]                           | take it with .get
        int k = 0; for (int i = 0; i < 3; i++) { int j = i; Runnable r = () -> System.out.println(j + i); } | names whose value never changes
        var x;                                                      | Java can't tell what 'x' is to be
        f(int n) { return n; }                                      | say before its name what it gives
        int big = 99999999999;                                      | too large for a whole one
        void g() { Thread.sleep(5); }                               | Put it into try
        int h() { return 3; int m = 4; }                            | never comes to this line
        String s = 'words';                                         | Put words between
        char c = ''                                                 | Put words between
        void v() { break; }                                         | stands in no loop
        Block.name()                                                | Put the thing before the dot
        """)
    void what_a_newcomer_writes_wrong_is_said_in_plain_words(String text, String message) {
        studio.put(text.strip()).drawAll();
        List<Problem> problems = studio.failure("a1", Failure.DoesNotCompile.class).problems();
        assertThat(problems).anySatisfy(p -> assertThat(p.message()).contains(message));
        assertThat(problems).allSatisfy(p -> assertThat(p.message()).doesNotContain("statement", "dereference", "operand", "static context", "lambda", "literal", "initializer"));
    }

    @Test
    void several_problems_of_one_cell_are_told_together_and_those_that_follow_from_others_are_not() {
        studio.put("int a = foo();\nint b = a + 1;\nint c = bar();\nString s = 3;").drawAll();
        List<Problem> problems = studio.failure("a1", Failure.DoesNotCompile.class).problems();
        assertThat(problems).extracting(p -> p.from().line()).containsExactly(1, 3, 4);
    }

    @Test
    void the_way_to_an_exception_names_cells_and_lines_and_nothing_else() {
        studio.put("int share(int whole, int parts) {\n    return whole / parts;\n}", "int n = 0;\n\nshare(4, n)").drawAll();
        Failure.Threw threw = studio.failure("a2", Failure.Threw.class);
        assertThat(threw.at()).contains(new Place(3, 1));
        assertThat(threw.frames()).containsExactly(new Frame("a1", true, 2, "share"), new Frame("a2", true, 3, ""));
    }

    @Test
    void causes_are_told_in_order() {
        studio.put("throw new IllegalStateException(\"outer\", new RuntimeException(\"middle\", new java.io.IOException(\"inner\")));").drawAll();
        Failure.Threw threw = studio.failure("a1", Failure.Threw.class);
        assertThat(threw.message()).isEqualTo("IllegalStateException: outer");
        assertThat(threw.causes()).containsExactly("RuntimeException: middle", "IOException: inner");
    }

    @Test
    void a_refusal_of_the_house_is_told_in_its_own_words() {
        studio.put("Length.parse(\"three\")").drawAll();
        assertThat(studio.failure("a1", Failure.Threw.class).message()).startsWith("'three'");
    }

    @Test
    void an_exception_that_cannot_say_its_message_is_told_all_the_same() {
        studio.put("class Mute extends RuntimeException {\n    public String getMessage() { throw new Error(\"no\"); }\n}\nthrow new Mute();").drawAll();
        assertThat(studio.failure("a1", Failure.Threw.class).kind()).isEqualTo("Mute");
    }

    @Test
    void a_method_that_uses_an_undeclared_name_is_named_at_the_name() {
        studio.put("int area() {\n    return side * side;\n}").drawAll();
        Problem problem = studio.failure("a1", Failure.DoesNotCompile.class).problems().get(0);
        assertThat(problem.from()).isEqualTo(new Place(2, 12));
        assertThat(problem.message()).contains("variable side");
    }
}
