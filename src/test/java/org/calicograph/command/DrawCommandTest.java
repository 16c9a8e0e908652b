package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {

    private static final Notebook BEDS = Notebook.titled("Oyster Beds",
            Cell.prose("a1", "# Oyster Beds\n\n<script>alert('tide')</script>\n\n[up](javascript:alert(1)) **grey** ![the beds at low water](file:///beds.png)"),
            Cell.code("a2", "Picture.of(Region.rectangle(inches(beds), inches(2))).filled(Colour.hex(\"#5d8a7a\")).labelled(\"bed\", \"A bed <of> oysters\")"),
            Cell.code("a3", "int beds = dial(\"beds\", 2, 12, 6);"),
            Cell.code("a4", "Table.of(\"Beds\", \"name\", \"width\").row(\"north, near\", inches(3, 2)).row(\"south\", inches(beds))"),
            Cell.code("a5", "int rows = 4;\nint wrong = rows +;"),
            Cell.code("a6", "wrong + 1"),
            Cell.code("a7", "System.out.println(\"low water\");\n\"beds: \" + beds"));

    @TempDir
    static Path folder;
    private static Path notebook;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path drawn;

    @BeforeAll
    static void save() throws IOException {
        notebook = folder.resolve("beds.json");
        NotebookFile.save(BEDS, notebook);
    }

    @BeforeEach
    void clear(@TempDir Path other) {
        drawn = other.resolve("drawn");
    }

    private int run(String... arguments) {
        return Main.run(arguments, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    @Test
    void every_cell_that_can_be_drawn_is_and_the_report_tells_of_all() throws Exception {
        byte[] before = Files.readAllBytes(notebook);
        assertThat(run("draw", notebook.toString(), "--out", drawn.toString(), "--set", "beds=9", "--quiet")).isEqualTo(1);
        try (Stream<Path> files = Files.list(drawn)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrder("a2.svg", "a2.png", "a4.csv", "a7.txt", "report.json");
        }
        assertThat(Files.readString(drawn.resolve("a2.svg"))).contains("width=\"9in\" height=\"2in\"", "<title>A bed &lt;of&gt; oysters</title>");
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(drawn.resolve("a2.svg").toFile());
        // RFC 4180: a field with a comma stands in quotes, a line ends in CRLF.
        assertThat(Files.readString(drawn.resolve("a4.csv"))).isEqualTo("name,width\r\n\"north, near\",1 1/2 in\r\nsouth,9 in\r\n");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(drawn.resolve("report.json")))).startsWith("rw-r");
        JsonNode report = new ObjectMapper().readTree(drawn.resolve("report.json").toFile());
        JsonNode cells = report.get("cells");
        assertThat(cells.findValuesAsText("id")).containsExactly("a2", "a3", "a4", "a5", "a6", "a7");
        assertThat(cells.findValuesAsText("state")).containsExactly("drawn", "drawn", "drawn", "failed", "failed", "drawn");
        assertThat(cells.get(0).get("result").asText()).isEqualTo("picture");
        assertThat(cells.get(0).get("files")).hasSize(2);
        assertThat(cells.get(3).get("error").get("line").asInt()).isEqualTo(2);
        assertThat(cells.get(3).get("error").get("column").asInt()).isBetween(17, 19);
        assertThat(cells.get(5).get("output").asText()).isEqualTo("low water\n");
        assertThat(err.toString().lines()).hasSize(2).allMatch(l -> l.startsWith(notebook + ": cell a"));
        assertThat(err.toString()).contains("cell a5 failed at line 2, column", "cell a6 failed");
        assertThat(out.toString().strip()).isEqualTo("4 of 6 cells drawn, 5 files in " + drawn);
        assertThat(Files.readAllBytes(notebook)).isEqualTo(before);
    }

    @Test
    void a_dial_that_is_not_there_is_answered_with_the_nearest() {
        assertThat(run("draw", notebook.toString(), "--out", drawn.toString(), "--set", "bedz=9", "--quiet")).isEqualTo(2);
        assertThat(err.toString().strip()).isEqualTo("calicograph: there is no dial 'bedz'; did you mean 'beds'?");
    }

    @Test
    void a_value_out_of_range_is_answered_with_the_range() {
        assertThat(run("draw", notebook.toString(), "--out", drawn.toString(), "--set", "beds=40", "--quiet")).isEqualTo(2);
        assertThat(err.toString().strip()).startsWith("calicograph: The dial 'beds' can't be set to ").endsWith("it takes values from 2 to 12.").doesNotContain("\n");
    }

    @Test
    void a_page_shows_html_in_prose_as_text_and_needs_no_other_file() throws IOException {
        Path page = drawn.resolveSibling("beds.html");
        assertThat(run("page", notebook.toString(), "--out", page.toString(), "--quiet")).isEqualTo(1);
        String html = Files.readString(page);
        assertThat(html).contains("<h1>Oyster Beds</h1>", "&lt;script&gt;", "<strong>grey</strong>", "<svg ", "<td>north, near</td>",
                "<details>", "This cell failed.", "@media print");
        assertThat(html).doesNotContain("href=\"javascript:", "src=", "<link", "@import", "<img").contains("Content-Security-Policy", "[picture: the beds at low water]");
        // The page's own script, which ticks rows off, and no other.
        assertThat(html.split("<script", -1)).hasSize(2);
    }

    @Test
    void a_sheet_at_full_size_says_in_a_page_how_large_it_prints() throws IOException {
        Path sheets = folder.resolve("sheets.json");
        NotebookFile.save(Notebook.titled("Sheets", Cell.code("a1", "Tiling.on(Paper.A4).pages(\"Plate\", PatchworkPicture.of(NinePatch.block(inches(6))))")), sheets);
        Path page = drawn.resolveSibling("sheets.html");
        assertThat(run("page", sheets.toString(), "--out", page.toString(), "--quiet")).isZero();
        String html = Files.readString(page);
        // ISO 216: A4 is 210 x 297 mm.
        assertThat(html).containsPattern("class=\"sheet\" style=\"page: sheet-ca1-1; --width: 8\\.2677\\d*in; --height: 11\\.6929\\d*in\"").contains("width: var(--width); height: var(--height); max-width: none")
                .containsPattern("@page sheet-ca1-1 \\{ size: 8\\.2677\\d*in 11\\.6929\\d*in; margin: 0; \\}").contains("shown smaller here");
    }

    @Test
    void a_sheet_draws_every_value_of_two_dials() throws IOException {
        Path sheet = drawn.resolveSibling("sheet.svg");
        assertThat(run("sheet", notebook.toString(), "--over", "beds=2,4,8", "--out", sheet.toString(), "--quiet")).isZero();
        String svg = Files.readString(sheet);
        assertThat(svg).contains(">beds 2</text>", ">beds 4</text>", ">beds 8</text>");
        // Three beds of different shapes: no two of the drawn paths are the same.
        assertThat(svg.lines().filter(l -> l.contains("#5d8a7a")).map(l -> l.replaceAll(".*d=\"M[^L]*|\".*", "")).distinct()).hasSize(3);
    }

    @Test
    void lengths_are_written_in_metric_on_demand_and_stay_what_they_are() throws Exception {
        run("draw", notebook.toString(), "--out", drawn.toString(), "--set", "beds=3", "--metric", "--quiet");
        // 1 in = 2.54 cm exactly (international inch, 1959)
        assertThat(Files.readString(drawn.resolve("a4.csv"))).isEqualTo("name,width\r\n\"north, near\",3.81 cm\r\nsouth,7.62 cm\r\n");
        assertThat(Files.readString(drawn.resolve("a2.svg"))).contains("width=\"3in\" height=\"2in\"");
    }

    @Test
    void no_output_replaces_a_notebook_or_a_file_of_another_kind() throws Exception {
        Path other = folder.resolve("other.json");
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear Wren");
        Path linked = folder.resolve("linked.html");
        NotebookFile.save(BEDS, other);
        Files.deleteIfExists(linked);
        Files.createSymbolicLink(linked, other);
        byte[] before = Files.readAllBytes(notebook);
        byte[] otherBefore = Files.readAllBytes(other);
        for (Path file : new Path[] {notebook, other, letter, linked, folder}) {
            for (String command : new String[] {"page", "book"}) {
                err.getBuffer().setLength(0);
                assertThat(run(command, notebook.toString(), "--out", file.toString())).as(command + " " + file).isEqualTo(2);
                assertThat(err.toString()).startsWith("calicograph: " + file + ": ").contains("another name").hasLineCount(1);
            }
        }
        Path report = folder.resolve("reported").resolve("report.json");
        Files.createDirectories(report.getParent());
        NotebookFile.save(BEDS, report);
        assertThat(run("draw", report.toString(), "--out", report.getParent().toString())).isEqualTo(2);
        assertThat(run("draw", notebook.toString(), "--out", report.getParent().toString())).isEqualTo(2);
        assertThat(Files.readAllBytes(report)).isEqualTo(otherBefore);
        assertThat(Files.readAllBytes(notebook)).isEqualTo(before);
        assertThat(Files.readAllBytes(other)).isEqualTo(otherBefore);
        assertThat(letter).hasContent("Dear Wren");
    }

    @Test
    void no_two_cells_share_a_file_and_what_is_there_is_of_this_run() throws Exception {
        Path names = folder.resolve("names.json");
        NotebookFile.save(Notebook.titled("Names", Cell.code("a", "List.of(\"one\", Table.of(\"T\", \"n\").row(\"=1+1\").row(\"-2\"))"),
                Cell.code("a-2", "\"two\""), Cell.code("A", "\"three\"")), names);
        assertThat(run("draw", names.toString(), "--out", drawn.toString(), "--quiet")).isZero();
        JsonNode cells = new ObjectMapper().readTree(drawn.resolve("report.json").toFile()).get("cells");
        java.util.List<String> files = new java.util.ArrayList<>();
        cells.forEach(cell -> cell.get("files").forEach(file -> files.add(file.asText())));
        assertThat(files.stream().map(f -> f.toLowerCase(java.util.Locale.ROOT))).doesNotHaveDuplicates();
        assertThat(drawn.resolve(cells.get(1).get("files").get(0).asText())).hasContent("two");
        assertThat(drawn.resolve(cells.get(2).get("files").get(0).asText())).hasContent("three");
        assertThat(Files.writeString(drawn.resolve("mine.txt"), "mine")).exists();
        NotebookFile.save(Notebook.titled("Names", Cell.code("a", "\"one\""), Cell.code("a-2", "1 +")), names);
        assertThat(run("draw", names.toString(), "--out", drawn.toString(), "--quiet")).isEqualTo(1);
        try (Stream<Path> left = Files.list(drawn)) {
            assertThat(left.map(f -> f.getFileName().toString())).containsExactlyInAnyOrder("a.txt", "mine.txt", "report.json");
        }
    }

    @Test
    void a_table_holds_words_where_a_spreadsheet_would_reckon() {
        assertThat(org.calicograph.drawing.Table.of("T", "n").row("=1+1").row("+1.02 %").row("+a").row("@a").row("-2").row("-1 1/2 in").row("-2+3").row("-a").row("-").csv())
                .isEqualTo("n\r\n'=1+1\r\n+1.02 %\r\n'+a\r\n'@a\r\n-2\r\n-1 1/2 in\r\n'-2+3\r\n'-a\r\n-\r\n");
    }
}
