package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.quilt.Quilt;
import org.calicograph.quilt.Setting;
import org.junit.jupiter.api.Test;

class BookletTest {

    private static Quilt quilt() {
        return Quilt.of("Oyster Beds", Setting.straight(4, 5).of(CurvedBlock.shell(6)));
    }

    @Test
    void every_page_is_exactly_as_large_as_the_paper() {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            for (Picture page : Booklet.of(quilt()).on(paper).pages()) {
                Box box = page.bounds();
                assertThat(box.left()).isBetween(-1e-6, 1e-6);
                assertThat(box.top()).isBetween(-1e-6, 1e-6);
                assertThat(box.width()).isCloseTo(paper.width().inInches(), within(1e-6));
                assertThat(box.height()).isCloseTo(paper.height().inInches(), within(1e-6));
            }
        }
    }

    @Test
    void the_booklet_says_what_a_stranger_needs() throws Exception {
        byte[] pdf = Booklet.of(quilt()).pdf();
        assertThat(Booklet.of(quilt()).pdf()).isEqualTo(pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("Oyster Beds", "24 in x 30 in finished", "Take care", "A rotary cutter is a razor", "Cutting", "template A",
                    "curved seam", "Quilting and finishing", "Label", "iron");
        }
    }
}
