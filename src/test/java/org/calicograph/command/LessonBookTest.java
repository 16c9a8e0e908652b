package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book of a lesson is its handout: a panel for every step of the drafting, then its questions, and last their answers. */
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
            // The questions follow without their answers; those stand on the last page, from a second road: 5 times the root of 2, 45 degrees, 5 + 4 + 7 + 6 + 2.
            String asked = text.substring(text.indexOf(", questions"), text.indexOf(", answers for the teacher"));
            assertThat(asked).contains("Question 1", "How long is the slanting side?", "Question 6", "How many pieces are in this point of the star").doesNotContain("7.071", "Question 7", "Divide 7.0711");
            PDFTextStripper last = new PDFTextStripper();
            last.setStartPage(document.getNumberOfPages());
            assertThat(last.getText(document)).contains("answers for the teacher", "7 1/16 in", "(7.071 in)", "45°", "24", "multiply 5 by 1.4142");
        }
    }

    @Test
    void a_booklet_says_what_it_is_of_and_none_is_made_when_the_last_quilt_fails() throws IOException {
        String quilt = "Setting.straight(2, 2).of(Block.plain(Fabric.of(\"navy\", \"#24425c\"), inches(6), inches(6)))";
        Path notebook = out.resolve("two.json");
        NotebookFile.save(Notebook.titled("Two", Cell.code("a1", "var small = " + quilt + ";"), Cell.code("a2", "var large = " + quilt + ";\nint left = 1 / 0;")), notebook);
        Path book = out.resolve("two.pdf");
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told, true);
        assertThat(Main.run(new String[] {"book", notebook.toString(), "--out", book.toString(), "--quiet"}, to, to)).isEqualTo(1);
        assertThat(told.toString()).contains("cell a2 failed", "'large' could not be drawn", "--quilt");
        assertThat(book).doesNotExist();
        assertThat(Main.run(new String[] {"book", notebook.toString(), "--out", book.toString(), "--quiet", "--quilt", "small"}, to, to)).isEqualTo(1);
        assertThat(told.toString()).contains("pages in " + book + ": the booklet of 'small'");
        assertThat(book).exists();
    }
}
