package org.calicograph.stranger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.command.Main;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The booklets of the notebooks that come with the product; what is on their covers is held against what was sewn. */
class StrangerNotebooksTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"harbour-light,", "ropewalk-workroom,", "ropewalk-workroom,--metric", "estuary-settings,", "tide-table-quilting,", "oyster-beds-colour,"})
    void she_sews_the_quilt_of_a_shipped_notebook(String notebook, String metric) throws IOException {
        Path book = folder.resolve("book.pdf");
        StringWriter told = new StringWriter();
        List<String> call = new java.util.ArrayList<>(List.of("book", "notebooks/" + notebook + ".json", "--out", book.toString(), "--quiet"));
        if (metric != null) {
            call.add(metric);
        }
        int code = Main.run(call.toArray(String[]::new), new PrintWriter(told, true), new PrintWriter(told, true));
        assertThat(code).as(told.toString()).isZero();
        byte[] pdf = Files.readAllBytes(book);
        Stranger her = Stranger.with(pdf);
        assertThat(her.defects()).as(notebook).isEmpty();
        int patches = -1;
        for (Printed.Words w : Printed.read(pdf)) {
            Matcher m = Pattern.compile("(?:.*; )?(\\d+) patches").matcher(w.text());
            patches = w.page() == 1 && m.matches() ? Integer.parseInt(m.group(1)) : patches;
        }
        assertThat(her.pieces()).isEqualTo(patches);
    }
}
