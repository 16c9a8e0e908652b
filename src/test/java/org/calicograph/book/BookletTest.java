package org.calicograph.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.PdfWriter;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Block;
import org.calicograph.quilt.Patch;
import org.calicograph.quilt.Quilt;
import org.calicograph.quilt.Setting;
import org.calicograph.workshop.pieces.CutMethod;
import org.calicograph.workshop.pieces.CuttingRules;
import org.calicograph.workshop.pieces.Piece;
import org.calicograph.workshop.pieces.Pieces;
import org.junit.jupiter.api.Test;

class BookletTest {

    private static final CuttingRules RULES = CuttingRules.INCH;

    /** A curved block: a quarter of a circle in a corner. */
    private static Block shell() {
        Path quarter = Path.from(0, 0).lineTo(4, 0).arcAbout(Point.ORIGIN, Angle.QUARTER).lineTo(0, 0).open();
        Path rest = Path.from(4, 0).lineTo(6, 0).lineTo(6, 6).lineTo(0, 6).lineTo(0, 4).arcAbout(Point.ORIGIN, Angle.degrees(-90)).open();
        return Block.of("shell", Region.rectangle(Length.inches(6), Length.inches(6)),
                List.of(Patch.of("1", Role.DARK, Region.of(quarter)), Patch.of("2", Role.LIGHT, Region.of(rest))));
    }

    private static Quilt quilt() {
        return Quilt.of("Oyster Beds", Setting.straight(4, 5).of(shell()));
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

    /** Measured on the rendering: 25.4 mm to an inch (international yard, 1959), 72 points (ISO 32000), both from memory. */
    @Test
    void a_test_square_measures_one_inch_on_the_rendered_page() throws Exception {
        List<Piece> pieces = Pieces.of(quilt().top(), RULES).stream().filter(p -> p.method() instanceof CutMethod.Template).toList();
        assertThat(pieces).hasSize(2);
        List<Picture> pages = TemplateSheets.pages(pieces, RULES.seam(), Paper.A4, false);
        byte[] pdf = PdfWriter.write(pages, Paper.A4.width(), Paper.A4.height());
        int dpi = 1200;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, dpi);
            assertThat(image.getWidth() / (double) dpi).isCloseTo(Paper.A4.width().inInches(), within(0.001));
            assertThat(square(image, dpi)).as("the square's side in inches").isCloseTo(1.0, within(0.001));
        }
    }

    /** The distance between the two dark upright lines that stand an inch apart, line middle to line middle. */
    private static double square(BufferedImage image, int dpi) {
        for (int y = dpi / 2; y < image.getHeight(); y += dpi / 20) {
            java.util.List<Double> lines = new java.util.ArrayList<>();
            int start = -1;
            for (int x = 0; x < image.getWidth(); x++) {
                boolean dark = (image.getRGB(x, y) & 255) < 128;
                if (dark && start < 0) {
                    start = x;
                } else if (!dark && start >= 0) {
                    lines.add((start + x - 1) / 2.0);
                    start = -1;
                }
            }
            for (int i = 0; i < lines.size(); i++) {
                for (int j = i + 1; j < lines.size(); j++) {
                    double side = (lines.get(j) - lines.get(i)) / dpi;
                    if (Math.abs(side - 1) < 0.02 && isUpright(image, lines.get(i), y, dpi) && isUpright(image, lines.get(j), y, dpi)) {
                        return side;
                    }
                }
            }
        }
        return Double.NaN;
    }

    private static boolean isUpright(BufferedImage image, double x, int y, int dpi) {
        for (int dy = 0; dy < dpi / 3; dy += 10) {
            if (y + dy >= image.getHeight() || (image.getRGB((int) x, y + dy) & 255) > 160) {
                return false;
            }
        }
        return true;
    }

    @Test
    void templates_that_fit_a_page_stand_whole_on_one() {
        List<Piece> pieces = Pieces.of(quilt().top(), RULES).stream().filter(p -> p.method() instanceof CutMethod.Template).toList();
        // The key page, and one page for both: 4 1/2 and 6 1/2 in high.
        assertThat(TemplateSheets.pages(pieces, RULES.seam(), Paper.A3, false)).hasSize(2);
    }

    @Test
    void a_template_is_as_large_as_its_cutting_line() {
        Piece quarter = Pieces.of(shell(), RULES).stream().filter(p -> p.finished().area().squareInches() < 13).findFirst().orElseThrow();
        Box box = TemplateSheets.template(quarter, RULES.seam()).bounds();
        assertThat(box.width()).isCloseTo(4.5 + 0.014, within(0.01));
    }
}
