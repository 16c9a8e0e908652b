package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookPartsTest {

    @TempDir
    Path folder;

    private String told = "";

    private int book(String cell, String parts) throws IOException {
        Path notebook = folder.resolve("n.json");
        Files.writeString(notebook, "{\"calicograph\": 1, \"title\": \"Reeds\", \"cells\": [{\"id\": \"a\", \"kind\": \"code\", \"text\": [\"" + cell + "\"]}]}");
        StringWriter words = new StringWriter();
        PrintWriter to = new PrintWriter(words, true);
        int code = Main.run(new String[] {"book", notebook.toString(), "--out", folder.resolve("b.pdf").toString(), "--parts", parts}, to, to);
        told = words.toString();
        return code;
    }

    private String text() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("b.pdf").toFile())) {
            return new PDFTextStripper().getText(pdf);
        }
    }

    @Test
    void parts_alone_are_printed_and_nothing_else() throws IOException {
        String peel = "var quilt = Quilt.of(\\\"Reeds\\\", Setting.straight(2, 2).of(OrangePeel.block(inches(6))));";
        assertThat(book(peel, "templates")).as(told).isZero();
        assertThat(told).contains("templates of 'quilt'");
        assertThat(text()).contains("1 in").doesNotContain("What it is for").doesNotContain("Estimate");
        assertThat(book(peel, "cutting,sewing")).as(told).isZero();
        assertThat(text()).contains("Sewing").contains("Each strip gives").doesNotContain("Finishing");
    }

    @Test
    void an_unknown_part_and_templates_that_are_not_needed_are_said() throws IOException {
        String plain = "var quilt = Quilt.of(\\\"Reeds\\\", Setting.straight(2, 2).of(FourPatch.block(inches(6))));";
        assertThat(book(plain, "covers")).isEqualTo(2);
        assertThat(told).contains("'covers' is no part of a booklet").contains("templates");
        assertThat(book(plain, "templates")).isEqualTo(1);
        assertThat(told).contains("needs no templates");
    }
}
