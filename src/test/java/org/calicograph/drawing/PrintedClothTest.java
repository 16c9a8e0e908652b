package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.calicograph.colour.Photo;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.fabric.Cloth;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class PrintedClothTest {

    /** Half an inch of cloth: red to the upper left, blue to the right, white below. */
    private static final Cloth CLOTH = new Cloth(Photo.drawn(40, 40, (x, y) -> y >= 20 ? 0xffffff : x < 20 ? 0xcc0000 : 0x0000cc), Length.inches(1, 2));

    private static Picture sheet() {
        return Picture.of(Path.rectangle(new Box(0, 0, 2, 1))).filled(Paint.of(CLOTH)).outlined(Pen.NONE);
    }

    private static BufferedImage png(Picture picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(PngWriter.write(picture, 100)));
    }

    private static BufferedImage pdf(Picture picture) throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfWriter.write("Saltmarsh Reach", picture))) {
            return new PDFRenderer(document).renderImageWithDPI(0, 100);
        }
    }

    private static void isClose(BufferedImage image, int x, int y, int rgb) {
        int p = image.getRGB(x, y);
        for (int shift = 0; shift <= 16; shift += 8) {
            assertThat(Math.abs((p >> shift & 255) - (rgb >> shift & 255))).as("pixel %s, %s is %x", x, y, p & 0xffffff).isLessThan(24);
        }
    }

    @Test
    void cloth_repeats_at_true_scale_in_png_and_pdf() throws IOException {
        for (BufferedImage image : new BufferedImage[] {png(sheet()), pdf(sheet())}) {
            for (int repeat = 0; repeat < 4; repeat++) {
                isClose(image, 50 * repeat + 12, 12, 0xcc0000);
                isClose(image, 50 * repeat + 37, 12, 0x0000cc);
                isClose(image, 50 * repeat + 12, 37, 0xffffff);
                isClose(image, 50 * repeat + 12, 62, 0xcc0000);
            }
        }
    }

    @Test
    void cloth_turns_with_its_shape() throws IOException {
        Picture turned = Picture.group(sheet()).turned(Angle.QUARTER);
        Box box = turned.bounds();
        for (BufferedImage image : new BufferedImage[] {png(turned.moved(-box.left(), -box.top())), pdf(turned)}) {
            // A quarter turn clockwise takes the upper left of a repeat to its upper right.
            isClose(image, 87, 12, 0xcc0000);
            isClose(image, 87, 37, 0x0000cc);
            isClose(image, 62, 12, 0xffffff);
        }
    }

    @Test
    void svg_holds_each_cloth_once_as_a_pattern_in_inches() {
        String svg = SvgWriter.write(Picture.group(sheet(), sheet().moved(0, 2).moved(0, -2), sheet().scaled(2)));
        assertThat(svg.split("<pattern ", -1)).hasSize(3);
        assertThat(svg).contains("<pattern id=\"cloth\" patternUnits=\"userSpaceOnUse\" width=\"0.5\" height=\"0.5\"")
                .contains("fill=\"url(#cloth)\"").contains("fill=\"url(#cloth-2)\"").contains("data:image/png;base64,");
    }

    @Test
    void fine_prints_are_averaged_where_they_are_drawn_small() throws IOException {
        Cloth fine = new Cloth(Photo.drawn(512, 512, (x, y) -> (x + y) % 2 == 0 ? 0 : 0xffffff), Length.inches(1));
        BufferedImage image = png(Picture.of(Path.rectangle(new Box(0, 0, 1, 1))).filled(Paint.of(fine)).outlined(Pen.NONE));
        isClose(image, 50, 50, 0x808080);
    }

    @Test
    void flattening_carries_the_lay() {
        Picture.Shape flat = (Picture.Shape) sheet().scaled(2).flattened().get(0);
        assertThat(flat.fill()).isEqualTo(new Paint.Printed(CLOTH, Transform.scale(2)));
        assertThat(flat.fill().plain()).isInstanceOf(Paint.Flat.class);
    }
}
