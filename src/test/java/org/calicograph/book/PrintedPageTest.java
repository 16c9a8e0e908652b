package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.calicograph.command.Main;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The printed booklet, page by page, read back from the PDF by a library of its own: what a stranger at arm's length would object to. */
class PrintedPageTest {

    /** The least lettering in a drawing (common practice: 7 points). */
    private static final double LEAST = 7;
    /** Words of whoever reckoned, and numbers that no ruler shows. */
    private static final List<Pattern> STRANGE = List.of(Pattern.compile("\\d\\.\\d{4,}"), Pattern.compile("\\bunit \\d"), Pattern.compile("(?i)solver|optimal|heuristic|iteration|\\bnull\\b|exception"));

    @TempDir
    private Path out;

    private record Leaf(int number, String text, double smallest, double full) { }

    @ParameterizedTest
    @CsvSource({"harbour-light, navy slate sand foam rust"})
    void no_page_has_letters_too_small_strange_words_or_an_empty_half(String notebook, String cloths) throws IOException {
        Path book = out.resolve(notebook + ".pdf");
        StringWriter told = new StringWriter();
        PrintWriter to = new PrintWriter(told, true);
        assertThat(Main.run(new String[] {"book", "notebooks/" + notebook + ".json", "--out", book.toString(), "--quiet"}, to, to)).as(told.toString()).isZero();
        assertThat(book.toFile().length()).as("5 MB at most").isLessThan(5L << 20);
        List<Leaf> leaves = leaves(book);
        try (PDDocument document = Loader.loadPDF(book.toFile())) {
            List<String> marks = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> marks.add(item.getTitle()));
            assertThat(marks).contains("At a glance", "Sewing", "Quilting and finishing").doesNotHaveDuplicates();
            assertThat(marks.contains("Templates")).isEqualTo(leaves.stream().anyMatch(l -> l.text().contains("Templates:")));
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(marks.get(0));
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
        for (int i = 0; i < leaves.size(); i++) {
            Leaf leaf = leaves.get(i);
            assertThat(leaf.smallest()).as("page %d: letters in points", leaf.number()).isGreaterThanOrEqualTo(LEAST - 0.5);
            for (Pattern strange : STRANGE) {
                Matcher m = strange.matcher(leaf.text());
                assertThat(m.find()).as(() -> "page " + leaf.number() + " says '" + m.group() + "'").isFalse();
            }
            boolean last = i == leaves.size() - 1 || leaves.get(i + 1).text().startsWith("Templates:") || leaves.get(i).text().contains("Templates:");
            assertThat(leaf.full() > 0.5 || last || leaf.number() == 1 || beginsPart(leaves.get(i + 1))).as("page %d is full to %.2f", leaf.number(), leaf.full()).isTrue();
        }
        String all = String.join("\n", leaves.stream().map(Leaf::text).toList());
        String glance = leaves.stream().filter(l -> l.text().contains("At a glance")).findFirst().orElseThrow().text();
        for (String cloth : cloths.split(" ")) {
            assertThat(glance).as("the key names %s and what to buy", cloth).containsPattern("(?s)" + cloth + ".{0,40}(yd|m)\\b");
        }
        for (String part : List.of("Before cutting", "Sewing", "Quilting and finishing")) {
            Leaf at = leaves.stream().filter(l -> l.text().contains(part)).findFirst().orElseThrow();
            assertThat(at.text()).as(part).contains("Take care");
        }
        assertThat(all).contains("makers' instructions");
        for (Leaf leaf : leaves) {
            if (leaf.text().contains("print again")) {
                assertThat(leaf.text()).as("sheet on page %d", leaf.number()).contains("1 in", "cutter", "hot iron");
            }
        }
    }

    private static boolean beginsPart(Leaf next) {
        return next.text().lines().findFirst().map(l -> List.of("At a glance", "Before cutting", "Cutting", "Sewing", "Quilting and finishing", "Time and cost", "Templates", "All measures")
                .stream().anyMatch(l::startsWith)).orElse(false);
    }

    private static List<Leaf> leaves(Path book) throws IOException {
        List<Leaf> leaves = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(book.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int p = 0; p < document.getNumberOfPages(); p++) {
                double[] smallest = {Double.POSITIVE_INFINITY};
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition text) {
                        if (!text.getUnicode().isBlank()) {
                            smallest[0] = Math.min(smallest[0], text.getFontSizeInPt());
                        }
                        super.processTextPosition(text);
                    }
                };
                stripper.setStartPage(p + 1);
                stripper.setEndPage(p + 1);
                stripper.setSortByPosition(true);
                String text = stripper.getText(document).strip();
                leaves.add(new Leaf(p + 1, text, smallest[0], full(renderer.renderImageWithDPI(p, 36))));
            }
        }
        return leaves;
    }

    /** How much of the room between the margins, 3/4 in above and 1 in below, is used from the top down; the foot is not counted. */
    private static double full(BufferedImage page) {
        int last = 0;
        for (int y = 0; y < page.getHeight() * 0.93; y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                last = (page.getRGB(x, y) & 0xffffff) != 0xffffff ? y : last;
            }
        }
        double inches = last / 36.0;
        return (inches - 0.75) / (page.getHeight() / 36.0 - 1.75);
    }
}
