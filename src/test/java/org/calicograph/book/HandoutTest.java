package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.drafting.Draft;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class HandoutTest {

    @Test
    void every_step_has_a_panel_that_says_what_it_uses() throws Exception {
        Draft draft = Draft.blank("Lamp", Length.inches(8), Length.inches(8)).middle("O").circle("rim", "O", Length.inches(3))
                .point("A", Length.inches(4), Length.inches(1)).divide("P", "rim", 5, "A");
        try (PDDocument document = Loader.loadPDF(Handout.of(draft).pdf())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("Lamp", "Step 1", "Step 4", "Uses O").doesNotContain("Step 5");
        }
        assertThatThrownBy(() -> Handout.ofAny("a star")).hasMessageContaining("not of String");
    }
}
