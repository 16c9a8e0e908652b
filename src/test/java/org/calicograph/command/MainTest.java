package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {

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
    void without_a_command_the_help_is_shown() {
        Ran ran = run();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("draw", "check", "sheet", "page", "open", "Exit codes");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void every_command_teaches_by_example_and_names_its_exit_codes() {
        for (String command : List.of("draw", "check", "sheet", "page")) {
            Ran ran = run(command, "--help");
            assertThat(ran.code()).as(command).isZero();
            assertThat(ran.out()).as(command).contains("calicograph " + command + " notebooks/", "Exit codes:", "--time-limit", "--heap");
        }
    }

    @Test
    void what_is_not_understood_is_answered_with_what_may_have_been_meant() {
        assertThat(run("drwa", "x")).isEqualTo(new Ran(2, "",
                "calicograph: there is no command 'drwa'. Did you mean 'draw'? ('calicograph --help' explains)\n"));
        assertThat(run("zzzzzz").err()).startsWith("calicograph: there is no command 'zzzzzz'; there are draw, check, sheet, page, book, class, compare, new, routines, words, open, completion (");
        assertThat(run("draw", "--oot", "x").err())
                .startsWith("calicograph: draw has no option '--oot'; did you mean '--out'").endsWith("('calicograph draw --help' explains)\n");
        assertThat(run("draw", "n.json").err()).isEqualTo("calicograph: draw needs --out DIR; add it ('calicograph draw --help' explains)\n");
        assertThat(run("draw").err()).isEqualTo("calicograph: draw needs --out DIR and NOTEBOOK; add them ('calicograph draw --help' explains)\n");
        assertThat(run("draw", "a.json", "b.json", "--out", "d").err()).startsWith("calicograph: draw can't use 'b.json'; leave it out");
        for (String[] line : new String[][] {{"drwa"}, {"draw", "--oot"}, {"draw"}, {"draw", "a", "b", "--out", "d"}, {"draw", "a", "--out", "d", "--heap", "much"},
                {"draw", "a", "--out", "d", "--set", "points"}, {"draw", "a", "--out", "d", "--set", "points=8", "--set", "points=9"}, {"draw", "a", "--out", "d", "--heap", "3"}, {"sheet", "a", "--over", "p", "--out", "s.gif"}}) {
            Ran ran = run(line);
            assertThat(ran.code()).as(String.join(" ", line)).isEqualTo(2);
            assertThat(ran.err().strip()).as(String.join(" ", line)).doesNotContain("\n", "Exception").startsWith("calicograph: ");
        }
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        Path none = folder.resolve("none.json");
        assertThat(run("check", none.toString())).isEqualTo(new Ran(2, "", "calicograph: " + none + ": there is no such file; check the name\n"));
        assertThat(run("page", none.toString(), "--out", folder.resolve("p.html").toString()).code()).isEqualTo(2);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void every_file_is_checked_though_one_can_not_be_read() throws Exception {
        Path bad = Files.writeString(folder.resolve("bad.json"), "{");
        Ran ran = run("check", bad.toString(), folder.resolve("none.json").toString());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(2);
    }

    @Test
    void the_command_runs_as_a_process_of_its_own() throws Exception {
        Path bad = Files.write(folder.resolve("bad.json"), new byte[] {'{', 0});
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), "org.calicograph.command.Main", "check", bad.toString()).start();
        String err = new String(process.getErrorStream().readAllBytes());
        assertThat(process.waitFor()).isEqualTo(2);
        assertThat(err.strip()).startsWith("calicograph: " + bad + ", line 1, column 2: ").doesNotContain("\n");
        assertThat(Files.readAllBytes(bad)).containsExactly('{', 0);
    }
}
