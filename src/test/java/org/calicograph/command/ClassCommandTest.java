package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.calicograph.command.output.Refusal;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassCommandTest {

    @TempDir
    Path folder;

    private record Ran(int code, String out, String err) { }

    private static Ran run(Path folder, Path page, String... more) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] line = Stream.concat(Stream.of("class", folder.toString(), "--out", page.toString()), Stream.of(more)).toArray(String[]::new);
        return new Ran(Main.run(line, new PrintWriter(out, true), new PrintWriter(err, true)), out.toString(), err.toString());
    }

    /** A notebook that no run before this one can have kept. */
    private void notebook(String name, String... cells) throws IOException {
        Cell[] all = new Cell[cells.length];
        for (int i = 0; i < cells.length; i++) {
            all[i] = Cell.code("c" + i, cells[i]);
        }
        NotebookFile.save(Notebook.titled(name + " of " + folder, all), folder.resolve(name + ".json"));
    }

    private static final String TOP = "var quilt = Quilt.of(\"Gulls\", Setting.straight(3, 3).alternating(Block.plain(Fabric.of(\"navy\", \"#24425c\"), inches(6), inches(6)), "
            + "Block.plain(Fabric.of(\"sand\", \"#e8dcc0\"), inches(6), inches(6))));";

    @Test
    void every_mistake_that_was_planted_in_the_sail_loft_is_found_and_no_other() throws IOException {
        Path page = folder.resolve("class.html");
        Ran ran = run(Path.of("notebooks/sail-loft"), page);
        assertThat(ran.code()).as(ran.err()).isEqualTo(Refusal.CELL);
        String html = Files.readString(page);
        Map<String, String> planted = Map.of("brannoch", "come out whole along 70 in", "ivo", "The largest unquilted circle is 7 in across", "linnet", "ticked, though",
                "odile", "it misses the queen bed", "perrin", "has 0 below the line", "sunniva", "haze and dusk run together", "tamsin", "more, or ask what can stand in for it");
        String[] sheets = html.split("<section class=\"quilt\"");
        for (String sheet : List.of(sheets).subList(1, sheets.length)) {
            String name = sheet.replaceAll("(?s).*?(\\w+)\\.json.*", "$1");
            String mend = sheet.replaceAll("(?s)<details>.*", "");
            if (planted.containsKey(name)) {
                assertThat(mend).as(name).contains(planted.get(name)).containsOnlyOnce("<li>");
            } else {
                assertThat(mend).as(name).doesNotContain("<li>");
            }
        }
        assertThat(sheets).hasSize(13);
        assertThat(ran.out()).contains("12 notebooks", "7 have something to mend");
        assertThat(html).doesNotContain("http:").doesNotContain("https:");
    }

    @Test
    void only_what_has_changed_is_drawn_anew_and_says_the_same() throws IOException {
        notebook("ann", TOP, "Standing.of(quilt).by(\"Ann\").done(Milestone.CUT)");
        notebook("bea", TOP);
        Path page = folder.resolve("out").resolve("page.html");
        assertThat(run(folder, page).out()).contains("2 notebooks", "2 drawn anew; 0 have");
        String first = Files.readString(page);
        assertThat(run(folder, page).out()).contains("0 drawn anew");
        assertThat(Files.readString(page)).isEqualTo(first);
        notebook("bea", TOP, "Standing.of(quilt).by(\"Bea\")");
        assertThat(run(folder, page).out()).contains("1 drawn anew");
        assertThat(Files.readString(page)).contains("Ann", "Bea").isNotEqualTo(first);
    }

    @Test
    void nothing_of_one_notebook_reaches_another() throws IOException {
        for (String name : List.of("a", "b", "c", "d")) {
            notebook(name, "int of_" + name + " = dial(\"shared\", 1, 9, " + (name.charAt(0) - 'a' + 1) + ");", TOP, "Standing.of(quilt).by(\"" + name + "\" + of_" + name + ")");
        }
        notebook("x", "var only = 3;");
        notebook("y", "var mine = only + 1;");
        notebook("z", "var mine = only + 1;");
        Path page = folder.resolve("page.html");
        Ran ran = run(folder, page);
        assertThat(ran.code()).isEqualTo(Refusal.CELL);
        assertThat(ran.err()).contains("y.json: cell c0 failed", "z.json: cell c0 failed").doesNotContain("x.json");
        assertThat(Files.readString(page)).contains("a1", "b2", "c3", "d4");
        // What failed may have failed for the moment: it is looked at again.
        assertThat(run(folder, page).out()).contains("2 drawn anew");
    }

    @Test
    void a_file_that_cannot_be_read_stands_on_the_page_and_the_others_are_drawn() throws IOException {
        notebook("ann", TOP);
        Files.writeString(folder.resolve("torn.json"), "{\"calicograph\": 1, \"tit");
        Path page = folder.resolve("page.html");
        Ran ran = run(folder, page);
        assertThat(ran.code()).isEqualTo(Refusal.FILE);
        assertThat(ran.err()).contains("torn.json");
        assertThat(Files.readString(page)).contains("Gulls", "torn.json");
    }

    @Test
    void unrun_notebooks_show_what_they_have_saved_and_no_cell_is_run() throws IOException {
        Path mark = folder.resolve("was-run");
        notebook("ann", "java.nio.file.Files.createFile(java.nio.file.Path.of(\"" + mark.toString().replace("\\", "\\\\") + "\"));");
        Path page = folder.resolve("page.html");
        assertThat(run(folder, page, "--unrun").code()).isZero();
        assertThat(mark).doesNotExist();
        assertThat(Files.readString(page)).contains("No standing has been saved");
    }

    @Test
    void what_is_no_class_is_refused_with_the_repair() throws IOException {
        Path page = folder.resolve("page.html");
        assertThat(run(folder, page).err()).contains("there is no notebook in this folder");
        assertThat(run(folder.resolve("nowhere"), page).err()).contains("this is not a folder");
        notebook("ann", TOP);
        Ran ran = run(folder, folder.resolve("ann.json"));
        assertThat(ran.code()).isEqualTo(Refusal.FILE);
        assertThat(ran.err()).contains("give --out another name");
        assertThat(run(folder, page, "--set", "a=1").err()).contains("a class has many");
    }
}
