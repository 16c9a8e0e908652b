package org.calicograph.stranger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The words of a PDF as they stand on its pages: nothing else of the file is looked at. */
final class Printed extends PDFTextStripper {

    /**
     * Words on one line without a gap.
     *
     * @param page counted from 1
     * @param x    of its beginning, in points from the left
     * @param y    of its base line, in points from the top
     * @param size of its type in points
     */
    record Words(int page, double x, double y, double end, double size, boolean bold, String text) {
        double middle() {
            return (x + end) / 2;
        }
    }

    private final List<Words> found = new ArrayList<>();
    private final List<RenderingMode> modes = new ArrayList<>();
    private final List<TextPosition> glyphs = new ArrayList<>();
    private int page;

    private Printed() { }

    static List<Words> read(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Printed reader = new Printed();
            reader.writeText(document, Writer.nullWriter());
            return List.copyOf(reader.found);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    protected void startPage(org.apache.pdfbox.pdmodel.PDPage p) {
        page = getCurrentPageNo();
        glyphs.clear();
        modes.clear();
    }

    @Override
    protected void processTextPosition(TextPosition glyph) {
        glyphs.add(glyph);
        modes.add(getGraphicsState().getTextState().getRenderingMode());
    }

    @Override
    protected void endPage(org.apache.pdfbox.pdmodel.PDPage p) {
        StringBuilder text = new StringBuilder();
        int start = 0;
        for (int i = 0; i < glyphs.size(); i++) {
            TextPosition g = glyphs.get(i);
            if (i > start) {
                TextPosition last = glyphs.get(i - 1);
                double gap = g.getXDirAdj() - (last.getXDirAdj() + last.getWidthDirAdj());
                if (Math.abs(g.getYDirAdj() - last.getYDirAdj()) > 0.3 || Math.abs(gap) > 0.25 * g.getFontSizeInPt()) {
                    add(start, i, text);
                    text.setLength(0);
                    start = i;
                }
            }
            text.append(g.getUnicode());
        }
        if (!glyphs.isEmpty()) {
            add(start, glyphs.size(), text);
        }
    }

    private void add(int from, int to, StringBuilder text) {
        TextPosition first = glyphs.get(from);
        TextPosition last = glyphs.get(to - 1);
        if (!text.toString().isBlank()) {
            found.add(new Words(page, first.getXDirAdj(), first.getYDirAdj(), last.getXDirAdj() + last.getWidthDirAdj(), first.getFontSizeInPt(),
                    modes.get(from) != RenderingMode.FILL, text.toString().strip()));
        }
    }
}
