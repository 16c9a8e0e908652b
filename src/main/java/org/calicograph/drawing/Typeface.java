package org.calicograph.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.calicograph.geometry.Box;

/**
 * The one typeface of the house, Liberation Sans as it comes with PDFBox (SIL Open Font License), so
 * that a word has the same width on every machine and in every kind of file.
 */
final class Typeface {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** Bold is the regular face with a stroke of this share of its size about it; widths stay as they are. */
    static final double BOLD_STROKE = 0.03;

    private static final Map<Picture.Weight, Typeface> FACES = new EnumMap<>(Picture.Weight.class);

    private final TrueTypeFont font;

    private Typeface(TrueTypeFont font) {
        this.font = font;
    }

    static synchronized Typeface of(Picture.Weight weight) {
        if (FACES.isEmpty()) {
            Typeface face = load();
            for (Picture.Weight w : Picture.Weight.values()) {
                FACES.put(w, face);
            }
        }
        return FACES.get(weight);
    }

    private static Typeface load() {
        try (InputStream in = org.apache.pdfbox.pdmodel.PDDocument.class.getResourceAsStream(FILE)) {
            return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface that comes with PDFBox can't be read; build again", e);
        }
    }

    TrueTypeFont font() {
        return font;
    }

    /** The width of a text at a size, both in inches. */
    synchronized double width(String text, double size) {
        try {
            double units = 0;
            for (int c : text.codePoints().toArray()) {
                units += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(c));
            }
            return units / font.getUnitsPerEm() * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Box box(Picture.Lettering text) {
        double width = width(text.text(), text.size());
        double left = text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        return new Box(left, text.at().y() - 0.73 * text.size(), left + width, text.at().y() + 0.21 * text.size());
    }
}
