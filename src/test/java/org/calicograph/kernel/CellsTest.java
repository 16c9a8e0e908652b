package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.wire.CellScan;
import org.calicograph.wire.ExhibitFormat;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Suggestion;
import org.calicograph.wire.ToKernel;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CellsTest {

    @TempDir
    static Path cache;
    private static Cells cells;

    @BeforeAll
    static void start() throws Exception {
        cells = new Cells(new Running(), Stdlib.of(List.of(), cache), 256);
    }

    private static String words(Cells.Result result) throws Exception {
        assertThat(result.failure()).isEmpty();
        return ((Exhibit.Words) ExhibitFormat.exhibit(result.exhibit().orElseThrow())).text();
    }

    private static Cells.Result evaluate(String cell, String text) {
        return cells.evaluate(cell, text, Map.of(), List.of());
    }

    @Test
    void a_turned_dial_compiles_nothing_and_runs_only_what_depends_on_it() throws Exception {
        evaluate("t1", "int knots = dial(\"knots\", 1, 9, 2);");
        evaluate("t2", "int other = 5;");
        assertThat(words(evaluate("t3", "int rope = knots * 10;\nrope + other"))).isEqualTo("25");
        long before = cells.evaluations();
        List<String> again = new ArrayList<>();
        List<Cells.Result> results = new ArrayList<>();
        Turning.End end = cells.turn(Map.of("knots", "7"), List.of("t1", "t2", "t3"), new Turning() {
            @Override
            public void begins(String cell) {
                again.add(cell);
            }

            @Override
            public boolean sketched(String cell, org.calicograph.drawing.Exhibit exhibit, long began, long ran) {
                return false;
            }

            @Override
            public void ends(String cell, Cells.Result result) {
                results.add(result);
            }
        });
        assertThat(end.anew()).isEmpty();
        assertThat(end.owed()).isEmpty();
        assertThat(again).containsExactly("t1", "t3");
        assertThat(words(results.get(1))).isEqualTo("75");
        assertThat(cells.evaluations()).isEqualTo(before);
    }

    private static CellScan scan(String text) {
        return cells.scan(java.util.List.of("s"), java.util.List.of(text)).get(0);
    }

    private static List<String> declares(String text) {
        return scan(text).declares().stream().map(CellScan.Declared::key).toList();
    }

    @Test
    void a_scan_finds_what_a_cell_declares() {
        assertThat(declares("int a = 1, b = 2;\nvar c = a;\nString d")).containsExactly("a", "b", "c", "d");
        assertThat(declares("int f(int n, String s) { return n; }\nint f() { return 1; }")).containsExactly("f(int,String,)", "f()");
        assertThat(declares("record P(int x) { }\nenum E { A }\nclass C { int inner; void m() { int local; } }")).containsExactly("P", "E", "C");
        assertThat(declares("for (int i = 0; i < 3; i++) { int j = i; }\nimport java.io.File;")).isEmpty();
    }

    @Test
    void a_scan_finds_what_a_cell_reads_and_leaves_its_own_names_out() {
        assertThat(scan("int a = b + c.d;\na * e").reads()).containsExactlyInAnyOrder("b", "c", "e");
        assertThat(scan("list.stream().map(x -> x + y).toList()").reads()).containsExactlyInAnyOrder("list", "y");
        assertThat(scan("for (var p : points) { draw(p); }").reads()).containsExactlyInAnyOrder("points", "draw");
        assertThat(scan("int f(int n) { int m = n; return m + g; }").reads()).containsExactly("g");
        assertThat(scan("class K { int x; int y() { return x + z; } }").reads()).containsExactly("z");
        assertThat(scan("fit").reads()).containsExactly("fit");
    }

    @Test
    void a_scan_finds_what_a_cell_writes() {
        assertThat(scan("a = 1;\nb += 2;\nc++;\nd[0] = 3;\ne.f = 4;").writes()).containsExactlyInAnyOrder("a", "b", "c", "d", "e");
        assertThat(scan("int a = 1;\na = 2;\n{ int b = 1; b = 2; }").writes()).isEmpty();
    }

    @Test
    void a_scan_of_half_written_text_says_what_it_can() {
        assertThat(scan("int a = 1;\nint b = (").declares()).extracting(CellScan.Declared::name).contains("a");
        assertThat(scan("}{").reads()).isEmpty();
    }

    private static List<String> complete(List<String> before, String text) {
        Completer completer = new Completer(cells, new Sources("", stdlib()));
        FromKernel.Suggested said = completer.complete(new ToKernel.Complete(1, "c", before, text, text.length()));
        assertThat(said.anchor()).isBetween(0, text.length());
        return said.suggestions().stream().map(Suggestion::insert).toList();
    }

    private static Stdlib stdlib() {
        try {
            return Stdlib.of(List.of(), cache);
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void completion_knows_the_house() {
        assertThat(complete(List.of(), "Length.inc")).contains("inches(");
        assertThat(complete(List.of(), "inches(3).ti")).contains("times(");
    }

    @Test
    void completion_knows_what_stands_earlier_in_the_same_cell() {
        assertThat(complete(List.of(), "var harbour = inches(3);\nhar")).contains("harbour");
        assertThat(complete(List.of(), "var harbour = inches(3);\nvar twice = harbour.pl")).contains("plus(");
        assertThat(complete(List.of(), "Length reach(int n) { return inches(n); }\nreach(2).mi")).contains("minus(");
        assertThat(complete(List.of(), "record Tide(int height) { }\nvar t = new Tide(2);\nt.hei")).contains("height()");
    }

    @Test
    void completion_knows_what_a_block_or_a_method_that_is_still_open_declares() {
        assertThat(complete(List.of(), "for (int strand = 0; strand < 3; strand++) {\n    str")).contains("strand");
        assertThat(complete(List.of(), "int f(int knots) {\n    return kno")).contains("knots");
        assertThat(complete(List.of(), "class Hull {\n    int keel;\n    int twice() {\n        return ke")).contains("keel");
        assertThat(complete(List.of(), "for (Length reach : List.of(inches(2))) {\n    reach.pl")).contains("plus(");
    }

    @Test
    void completion_knows_names_behind_a_piece_that_does_not_parse() {
        assertThat(complete(List.of(), "int a = ;\nint shore = 3;\nsho")).contains("shore");
        assertThat(complete(List.of(), "var sho")).doesNotContain("sho");
    }

    @Test
    void completion_knows_cells_that_have_not_been_evaluated() {
        assertThat(complete(List.of("var quay = List.of(\"a\");"), "quay.siz")).contains("size()");
    }

    @Test
    void the_anchor_is_where_the_word_begins() {
        String text = "int a = 1;\ninches(3).ti";
        Completer completer = new Completer(cells, new Sources("", stdlib()));
        assertThat(completer.complete(new ToKernel.Complete(1, "c", List.of(), text, text.length())).anchor()).isEqualTo(text.length() - 2);
    }

    @Test
    void a_call_is_explained_with_its_signatures() {
        Completer completer = new Completer(cells, new Sources("src/main/java", stdlib()));
        String text = "var a = inches(2);\na.times(";
        var signatures = completer.explain(new ToKernel.Explain(1, "c", List.of(), text, text.length())).signatures();
        assertThat(signatures).extracting(s -> s.declaration()).contains("Length Length.times(long factor)");
        assertThat(signatures.stream().filter(s -> s.declaration().contains("long")).findFirst().orElseThrow().about()).isEqualTo("A whole multiple, exact.");
    }

    private static List<String> explained(String text) {
        Completer completer = new Completer(cells, new Sources("src/main/java", stdlib()));
        return completer.explain(new ToKernel.Explain(1, "c", List.of(), text, text.length())).signatures().stream()
                .map(s -> s.declaration() + " " + s.about()).toList();
    }

    @Test
    void every_overload_is_explained_with_its_own_words_and_none_with_another_s() {
        assertThat(explained("dial(\"a\", ")).anyMatch(s -> s.startsWith("int Dials.dial(String name, int least, int most, int initial) A whole number"))
                .anyMatch(s -> s.startsWith("double Dials.dial(String name, double least, double most, double initial) Any number"));
    }

    @Test
    void a_call_is_explained_even_where_nothing_takes_what_it_is_given_so_far() {
        assertThat(explained("Border.plain(Colour.hex(\"#123456\"), ")).anyMatch(s -> s.contains("plain(Fabric fabric, Length width)"));
    }

    @Test
    void a_method_of_the_same_cell_is_explained_by_its_own_name() {
        assertThat(explained("int knots(int n) {\n    return n;\n}\nknots(")).contains("int knots(int n) ");
    }
}
