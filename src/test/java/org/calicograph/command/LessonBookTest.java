package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book of a lesson is its handout: a panel for every step of the drafting. */
class LessonBookTest {

    @TempDir
    private Path out;

    @Test
    void the_book_of_a_lesson_holds_a_panel_for_every_step() throws IOException {
        Path book = out.resolve("book.pdf");
        StringWriter told = new StringWriter();
        int code = Main.run(new String[] {"book", "notebooks/feathered-star.json", "--out", book.toString(), "--quiet"},
                new PrintWriter(told, true), new PrintWriter(told, true));
        assertThat(code).as(told.toString()).isZero();
        try (PDDocument document = Loader.loadPDF(book.toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("A point of a feathered star", "Blue is what a step uses");
            for (int step = 1; step <= 50; step++) {
                assertThat(text).containsPattern("Step " + step + "\\b");
            }
            assertThat(text).doesNotContain("Step 51");
        }
    }
}
