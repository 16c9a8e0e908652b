package org.calicograph.exhibition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.calicograph.book.Sheaf;
import org.calicograph.drawing.Paper;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

/** Read back from the printed pages. */
class ExhibitionTest {

    private static final Exhibition SHOW = Exhibition.of("Saltmarsh Reach", "November").with(
            ShowEntry.of("Slack Water", "Hesper Tolland", Length.inches(88), Length.inches(100)).saying("Stars over still water."),
            ShowEntry.of("Nine Lamps", "Marn Ostley", Length.inches(42), Length.inches(42)), ShowEntry.of("Low Road", "Odile Farrow", Length.inches(64), Length.inches("82 1/2")));

    private static String text(Sheaf sheaf) throws IOException {
        try (var document = Loader.loadPDF(sheaf.pdf())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void numbers_names_and_sizes_agree_on_everything_that_is_printed() throws IOException {
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            Exhibition show = SHOW.on(paper);
            for (int i = 0; i < 3; i++) {
                ShowEntry e = show.entries().get(i);
                for (Sheaf sheaf : List.of(show.cards(), show.catalogue(), show.ballot(2))) {
                    assertTrue(text(sheaf).contains((i + 1) + " " + e.title()), sheaf.title() + ": " + text(sheaf));
                }
                for (Sheaf sheaf : List.of(show.cards(), show.catalogue(), show.labels())) {
                    assertTrue(text(sheaf).contains(e.maker()), sheaf.title());
                    assertTrue(text(sheaf).contains(e.width() + " x " + e.height()), sheaf.title());
                }
            }
            assertTrue(text(show.cards()).contains("Stars over still water."));
        }
    }

    @Test
    void no_letter_of_a_card_is_smaller_than_is_read_from_six_feet() throws IOException {
        // An inch of letter for 25 ft of distance (common practice, from memory): 0.24 in for six feet.
        double[] least = {99};
        try (var document = Loader.loadPDF(SHOW.cards().pdf())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    least[0] = Math.min(least[0], text.getFontSizeInPt());
                }
            }.getText(document);
        }
        assertTrue(least[0] >= 0.24 * 72, "the smallest is " + least[0] + " pt");
    }

    @Test
    void labels_warn_of_iron_and_needle() throws IOException {
        assertTrue(text(SHOW.labels()).contains("Mind the hot iron") && text(SHOW.labels()).contains("needle"));
    }

    @Test
    void what_cannot_be_printed_is_refused_with_the_repair() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> SHOW.ballot(4)).getMessage().contains("use 1 to 3"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> SHOW.with(SHOW.entries().get(0))).getMessage().contains("twice"));
        ShowEntry wordy = ShowEntry.of("Long", "A", Length.inches(40), Length.inches(40)).saying("word ".repeat(200));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> SHOW.with(wordy).cards()).getMessage().contains("too long for a card"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> ShowEntry.of("Flat", "A", Length.ZERO, Length.inches(4))).getMessage().contains("finished size"));
        assertEquals(3, SHOW.entries().size());
    }
}
