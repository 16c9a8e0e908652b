package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;
import org.calicograph.notebook.NotebookWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that begin, list and compare, and what goes to standard output. */
class SmallCommandsTest {

    @TempDir
    Path folder;

    private record Ran(int code, String out, String err) { }

    private static Ran run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Ran(code, out.toString(), err.toString());
    }

    @Test
    void every_beginning_draws_whatever_its_title_and_none_replaces_a_file() throws IOException, NotebookException {
        for (String from : List.of("empty", "quilt", "lesson", "student")) {
            Path file = folder.resolve(from);
            String title = "Gulls \"over\" the roof \\ tide";
            assertThat(run("new", file.toString(), "--from", from, "--title", title)).isEqualTo(new Ran(0, file + ".json: a new notebook, '" + title + "'\n", ""));
            Path written = folder.resolve(from + ".json");
            Notebook notebook = NotebookFile.read(written);
            assertThat(notebook.title()).isEqualTo(title);
            assertThat(NotebookWriter.write(notebook)).isEqualTo(Files.readString(written));
            Ran again = run("new", file.toString());
            assertThat(again.code()).isEqualTo(2);
            assertThat(again.err()).contains("there is a file by this name");
        }
        Ran drawn = run("check", folder.resolve("quilt.json").toString(), folder.resolve("lesson.json").toString(), folder.resolve("student.json").toString());
        assertThat(drawn.code()).as(drawn.err()).isZero();
        assertThat(run("new", folder.resolve("x").toString(), "--from", "quit").err()).contains("no beginning 'quit'; did you mean 'quilt'");
    }

    @Test
    void routines_are_listed_with_what_they_are_and_a_broken_one_is_named() throws IOException {
        Ran all = run("routines", "--like", "pinwheel");
        assertThat(all.code()).isZero();
        assertThat(all.out()).contains("Block block(Length side)", "Pinwheel").doesNotContain("Ocean Waves");
        Path own = Files.createDirectories(folder.resolve("stdlib"));
        Files.writeString(own.resolve("Gull.java"), "public final class Gull { public static int wings() { return 2; } }");
        Files.writeString(own.resolve("Torn.java"), "public final class Torn { int x = ; }");
        Path notebook = folder.resolve("mine.json");
        NotebookFile.save(Notebook.titled("Mine", Cell.prose("p", "x")), notebook);
        Ran mine = run("routines", notebook.toString());
        assertThat(mine.code()).isEqualTo(1);
        assertThat(mine.out()).contains("static int wings()");
        assertThat(mine.err()).contains("Torn.java");
    }

    private Path quilt(String name, int rows) throws IOException {
        Path file = folder.resolve(name + ".json");
        NotebookFile.save(Notebook.titled(name, Cell.code("a", "var quilt = Quilt.of(\"Gulls\", Setting.straight(3, " + rows + ").of(Block.plain(Fabric.of(\"navy\", \"#24425c\"), inches(6), inches(6))));")), file);
        return file;
    }

    @Test
    void two_quilts_are_compared_by_their_numbers() throws IOException {
        Path a = quilt("a", 3);
        Path b = quilt("b", 4);
        Path page = folder.resolve("page.html");
        Ran ran = run("compare", a.toString(), b.toString(), "--out", page.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        String html = Files.readString(page);
        assertThat(html).contains("<tr class=\"changed\"><td class=\"mark\"><strong>differs</strong></td><td>height</td><td>18 in</td><td>24 in</td></tr>",
                "<tr class=\"same\"><td class=\"mark\">the same</td><td>width</td><td>18 in</td><td>18 in</td></tr>");
        assertThat(run("compare", a.toString(), b.toString(), "--out", a.toString()).code()).isEqualTo(2);
        assertThat(run("compare", b.toString(), b.toString(), "--out", page.toString(), "--quilt", "quilt").out()).startsWith("nothing differs");
    }

    @Test
    void a_page_goes_to_standard_output_alone_and_words_to_standard_error() throws IOException {
        Path a = quilt("a", 3);
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Ran ran;
        try (PrintStream caught = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(caught);
            ran = run("page", a.toString(), "--out", "-");
        } finally {
            System.setOut(before);
        }
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("1 cells on standard output");
        assertThat(bytes.toString(StandardCharsets.UTF_8)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    }

    @Test
    void the_report_of_a_drawing_is_printed_for_those_who_script_it() throws IOException {
        Path out = folder.resolve("drawn");
        Ran ran = run("draw", quilt("a", 3).toString(), "--out", out.toString(), "--json");
        assertThat(ran.out()).isEqualTo(Files.readString(out.resolve("report.json")));
        assertThat(ran.err()).contains("1 of 1 cells drawn");
    }

    @Test
    void a_shell_learns_every_command() {
        String script = run("completion").out();
        for (String command : Arrays.asList("draw", "check", "sheet", "page", "book", "class", "compare", "new", "routines", "open")) {
            assertThat(script).contains(command);
        }
    }
}
