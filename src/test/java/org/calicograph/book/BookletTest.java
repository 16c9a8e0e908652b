package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.calicograph.quilting.Batting;
import org.calicograph.cutting.Figures;
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

    /** Quilting distances that packages and charts print: batting_quilting_distance.csv, each row with its source. */
    @Test
    void the_quilting_lies_as_close_as_the_chosen_batting_asks() throws Exception {
        List<Batting> known = List.of(Batting.WOOL, Batting.POLYESTER, Batting.COTTON_POLYESTER, Batting.COTTON_WITH_SCRIM, Batting.UNKNOWN);
        for (Map<String, String> row : Figures.of("batting_quilting_distance")) {
            Batting batting = known.stream().filter(b -> b.name().equals(row.get("batting"))).findFirst().orElseThrow();
            assertThat(batting.widestGap()).isBetween(Length.inches(row.get("from_in")), Length.inches(row.get("to_in")));
        }
        assertThat(text(Booklet.of(quilt()).with(Batting.WOOL))).contains("lines at most 3 in apart: that is the usual limit of wool");
        assertThat(text(Booklet.of(quilt()))).contains("lines at most 2 in apart: no batting is chosen");
    }

    private static String text(Booklet booklet) throws Exception {
        try (PDDocument document = Loader.loadPDF(booklet.pdf())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
