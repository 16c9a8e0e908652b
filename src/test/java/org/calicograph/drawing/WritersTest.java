package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.Golden;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class WritersTest {

    private static final Picture SQUARE = Picture.of(Region.rectangle(new Box(2, 3, 3, 4))).filled(Colour.BLACK);

    private static Document xml(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static BufferedImage png(byte[] bytes) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    private static BufferedImage rendered(byte[] pdf, float dpi) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, dpi);
        }
    }

    @Test
    void the_scene_looks_as_it_was_accepted() {
        Golden.picture("drawing/scene", Scene.everything());
    }

    @Test
    void png_and_pdf_show_the_same_scene() throws IOException {
        BufferedImage one = png(PngWriter.write(Scene.everything(), 100));
        BufferedImage two = rendered(PdfWriter.write("Saltmarsh Reach", Scene.everything()), 100);
        assertThat(two.getWidth()).isCloseTo(one.getWidth(), within(1));
        assertThat(two.getHeight()).isCloseTo(one.getHeight(), within(1));
        int w = Math.min(one.getWidth(), two.getWidth());
        int h = Math.min(one.getHeight(), two.getHeight());
        long total = 0;
        long far = 0;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int d = distance(one.getRGB(x, y), two.getRGB(x, y));
                total += d;
                far += d > 60 ? 1 : 0;
            }
        }
        // Edges are smoothed differently; whole areas must not differ.
        assertThat((double) total / w / h).as("mean difference of 255").isLessThan(1.5);
        assertThat((double) far / w / h).as("share of pixels that differ much").isLessThan(0.01);
    }

    private static int distance(int a, int b) {
        return Math.max(Math.abs((a >> 16 & 255) - (b >> 16 & 255)),
                Math.max(Math.abs((a >> 8 & 255) - (b >> 8 & 255)), Math.abs((a & 255) - (b & 255))));
    }

    @Test
    void svg_is_well_formed_with_unique_ids_and_titles() throws Exception {
        Picture twins = Picture.group(SQUARE.labelled("a b", "first"), SQUARE.labelled("a b", "second"), SQUARE.labelled("3", "third"),
                SQUARE.labelled("a-b", "fourth"), SQUARE.labelled("ü", ""), SQUARE.labelled("", "]]><script>\u0001\ud800"));
        Document document = xml(SvgWriter.write(Picture.group(Scene.everything(), twins)));
        NodeList groups = document.getElementsByTagName("g");
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < groups.getLength(); i++) {
            Element group = (Element) groups.item(i);
            assertThat(group.getAttribute("id")).matches("[A-Za-z_][A-Za-z0-9_-]*");
            assertThat(ids.add(group.getAttribute("id"))).as("unique: " + group.getAttribute("id")).isTrue();
            assertThat(group.getFirstChild().getNextSibling().getNodeName()).isEqualTo("title");
        }
        assertThat(ids).contains("ring", "leaf", "a-b", "a-b-2", "p3", "a-b-3").hasSize(8);
        assertThat(document.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("A ring <navy> & \"sand\"");
    }

    @Test
    void a_square_inch_is_72_points_in_pdf_and_an_inch_in_svg() throws Exception {
        // ISO 32000-1, 8.3.2.3: the unit of default user space is 1/72 inch. SVG 1.1, 7.10: in is an absolute unit.
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", SQUARE))) {
            PDPage page = document.getPage(0);
            assertThat(page.getMediaBox().getWidth()).isEqualTo(72);
            assertThat(page.getMediaBox().getHeight()).isEqualTo(72);
        }
        Element root = xml(SvgWriter.write(SQUARE)).getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("1in");
        assertThat(root.getAttribute("height")).isEqualTo("1in");
        assertThat(root.getAttribute("viewBox")).isEqualTo("2 3 1 1");
        assertThat(SvgWriter.write(SQUARE)).contains("<path d=\"M2 3L3 3L3 4L2 4Z\" fill=\"#000000\"/>");
    }

    @Test
    void a_square_inch_is_where_it_should_be_on_a_page() throws IOException {
        BufferedImage page = rendered(PdfWriter.write("Saltmarsh Reach", List.of(SQUARE), Length.inches(17, 2), Length.inches(11)), 72);
        assertThat(page.getWidth()).isEqualTo(612);
        assertThat(page.getHeight()).isEqualTo(792);
        int black = 0;
        for (int y = 0; y < 792; y++) {
            for (int x = 0; x < 612; x++) {
                boolean inside = x >= 144 && x < 216 && y >= 216 && y < 288;
                assertThat(page.getRGB(x, y) & 0xffffff).as(x + ", " + y).isEqualTo(inside ? 0 : 0xffffff);
                black += inside ? 1 : 0;
            }
        }
        assertThat(black).isEqualTo(72 * 72);
    }

    @Test
    void a_quilt_past_200_inches_stays_true_to_scale() throws IOException {
        Picture banner = Picture.of(Region.rectangle(new Box(0, 0, 500, 10))).filled(Colour.BLACK);
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", banner))) {
            PDPage page = document.getPage(0);
            assertThat(page.getUserUnit()).isEqualTo(3);
            assertThat(page.getMediaBox().getWidth() * page.getUserUnit()).isCloseTo(36_000, within(0.01f));
            assertThat(page.getMediaBox().getWidth()).isLessThanOrEqualTo(14_400);
        }
    }

    @Test
    void every_picture_has_a_page() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", List.of(SQUARE, Picture.EMPTY, Scene.everything()), Length.inches(8), Length.inches(10)))) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            assertThat(new PDFTextStripper().getText(document)).contains("Saltmarsh Reach, 7 3/8 in").contains("Bold é “½”");
        }
    }

    @Test
    void the_same_picture_gives_the_same_bytes() throws InterruptedException {
        byte[] pdf = PdfWriter.write("Saltmarsh Reach", Scene.everything());
        byte[] png = PngWriter.write(Scene.everything(), 50);
        Thread.sleep(1100); // a clock to the second would show
        assertThat(PdfWriter.write("Saltmarsh Reach", Scene.everything())).isEqualTo(pdf);
        assertThat(PngWriter.write(Scene.everything(), 50)).isEqualTo(png);
        assertThat(SvgWriter.write(Scene.everything())).isEqualTo(SvgWriter.write(Scene.everything()));
        assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).doesNotContain("CreationDate", "ModDate");
    }

    @Test
    void a_png_knows_its_pixels_an_inch() throws IOException {
        byte[] bytes = PngWriter.write(SQUARE, 150);
        assertThat(png(bytes).getWidth()).isEqualTo(150);
        // 150 pixels an inch are 5906 a metre.
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("pHYs");
        assertThat(java.nio.ByteBuffer.wrap(bytes, at + 4, 4).getInt()).isEqualTo(5906);
    }

    @Test
    void a_png_fits_into_what_it_is_given() throws IOException {
        BufferedImage image = png(PngWriter.write(Scene.everything(), PngWriter.fitting(Scene.everything(), 320, 320, 1000)));
        assertThat(image.getWidth()).isEqualTo(320);
        assertThat(image.getHeight()).isLessThanOrEqualTo(320);
    }

    @Test
    void a_png_too_large_says_so() {
        assertThatThrownBy(() -> PngWriter.write(Picture.of(Region.rectangle(new Box(0, 0, 108, 108))).filled(Colour.BLACK), 300))
                .hasMessage("a picture of 108.0 by 108.0 in at 300.0 pixels an inch would have 1050 million pixels; the most is 100 million,"
                        + " so use fewer pixels an inch");
    }

    @Test
    void an_empty_picture_can_be_written() throws Exception {
        xml(SvgWriter.write(Picture.EMPTY));
        assertThat(png(PngWriter.write(Picture.EMPTY, 96)).getWidth()).isEqualTo(1);
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", Picture.EMPTY))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void groups_a_hundred_thousand_deep_can_be_written() {
        Picture deep = SQUARE;
        for (int i = 0; i < 100_000; i++) {
            deep = deep.over(Picture.EMPTY);
        }
        assertThat(SvgWriter.write(deep)).isEqualTo(SvgWriter.write(SQUARE));
    }

    @Test
    void what_the_typeface_lacks_is_shown_by_a_stand_in() throws IOException {
        Picture text = Picture.text("潮 tide", new Point(0, 0), 1);
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", text))) {
            assertThat(new PDFTextStripper().getText(document)).containsPattern("[□?] tide");
        }
    }

    @Test
    void arcs_stay_arcs_and_large_ones_are_halved() {
        assertThat(SvgWriter.write(Picture.of(Path.from(0, 0).arcTo(new Point(2, 0), 0.5).open()))).contains("d=\"M0 0A1.25 1.25 0 0 1 2 0\"");
        assertThat(SvgWriter.write(Picture.of(Path.from(0, 0).arcTo(new Point(2, 0), 2).open()))).contains("d=\"M0 0A1.25 1.25 0 0 1 1 -2A1.25 1.25 0 0 1 2 0\"");
    }
}
