package org.calicograph.drawing.writing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Typeface;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * Writes pictures as PDF, vector throughout and true to scale: an inch is 72 points. The typeface is
 * embedded, as far as it is used. A page that bears the name of a chapter is found by a bookmark, and the first one's is the
 * document's title; where none does, the title is the one given. The bytes hold no date, and the document's id is fixed.
 *
 * <p>The file is tagged (ISO 32000-1, 14.7 and 14.8): what the pictures' {@linkplain org.calicograph.drawing.Tag tags} say is
 * its structure, and a drawing without a tag is a figure that says what it shows. Lines of the same words end in a space.
 *
 * <p>A page past 200 inches, the most that readers show by points, has its points enlarged by
 * {@code UserUnit} (PDF 1.6), and stays true to scale.
 */
public final class PdfWriter {

    /** Points in an inch. */
    public static final double POINTS = 72;
    private static final double LARGEST = 200;
    private static final long DOCUMENT_ID = 1;
    /** How many parts of the structure are compressed together: many are alike. */
    private static final int OBJECTS_TOGETHER = 2000;

    private PdfWriter() { }

    /** One page of just the picture's size. */
    public static byte[] write(String title, Picture picture) {
        Box box = picture.bounds();
        double least = 1 / POINTS;
        return write(title, List.of(picture.moved(-box.left(), -box.top())), Math.max(least, box.width()), Math.max(least, box.height()));
    }

    /**
     * One page for each picture; a picture's origin is the page's upper left corner.
     *
     * @param title  of the document, unless a page names a chapter
     * @param width  of every page
     * @param height of every page
     */
    public static byte[] write(String title, List<Picture> pages, Length width, Length height) {
        if (!width.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException("a page of " + width + " by " + height + " holds nothing; use sides above 0");
        }
        return write(title, pages, width.inInches(), height.inInches());
    }

    private static byte[] write(String title, List<Picture> pages, double width, double height) {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("a PDF without pages can't be opened; give it at least one picture");
        }
        try (PDDocument document = new PDDocument()) {
            float unit = (float) Math.max(1, Math.ceil(Math.max(width, height) / LARGEST));
            document.setVersion(1.7f);
            document.setDocumentId(DOCUMENT_ID);
            PdfTitle.set(document, pages.stream().flatMap(p -> chapters(p).stream()).findFirst().orElse(title.isBlank() ? "Drawing" : title));
            PdfStructure structure = new PdfStructure(document);
            PDDocumentOutline outline = new PDDocumentOutline();
            Face face = new Face(document);
            double scale = POINTS / unit;
            for (Picture picture : pages) {
                PDPage page = new PDPage(new PDRectangle((float) (width * scale), (float) (height * scale)));
                if (unit > 1) {
                    page.setUserUnit(unit);
                }
                document.addPage(page);
                for (String chapter : chapters(picture)) {
                    bookmark(outline, page, chapter);
                }
                try (PdfPage surface = new PdfPage(document, page, face, structure)) {
                    Walk.over(picture, new Transform(scale, 0, 0, -scale, 0, height * scale), surface);
                }
            }
            if (outline.hasChildren()) {
                document.getDocumentCatalog().setDocumentOutline(outline);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, new CompressParameters(OBJECTS_TOGETHER));
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The chapters that begin on a page: it bears their names. */
    private static List<String> chapters(Picture page) {
        if (!(page instanceof Picture.Group group)) {
            return List.of();
        }
        if (group.label().isPresent()) {
            return group.label().get().id().equals(Picture.Label.CHAPTER) ? group.label().get().title().lines().toList() : List.of();
        }
        return group.parts().stream().filter(Picture.Group.class::isInstance).map(PdfWriter::chapters).flatMap(List::stream).toList();
    }

    private static void bookmark(PDDocumentOutline outline, PDPage page, String chapter) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(chapter);
        item.setDestination(page);
        outline.addLast(item);
    }

    /** The document's typeface, embedded when first used. */
    static final class Face {

        private final PDDocument document;
        private PDFont font;

        private Face(PDDocument document) {
            this.document = document;
        }

        PDFont font() throws IOException {
            if (font == null) {
                font = PDType0Font.load(document, Typeface.embeddable(), true);
            }
            return font;
        }
    }
}
