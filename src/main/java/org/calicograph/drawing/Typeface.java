package org.calicograph.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.calicograph.geometry.Box;

/**
 * The one typeface of the house, Liberation Sans as it comes with PDFBox (SIL Open Font License), so
 * that a word has the same width on every machine and in every kind of file.
 */
public final class Typeface {

    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** Bold is the regular face with a stroke of this share of its size about it; widths stay as they are. */
    public static final double BOLD_STROKE = 0.03;

    private static final Map<Picture.Weight, Typeface> FACES = new EnumMap<>(Picture.Weight.class);

    private final TrueTypeFont font;
    private final CmapLookup characters;
    private final int unitsPerEm;

    private Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        this.characters = font.getUnicodeCmapLookup();
        this.unitsPerEm = font.getUnitsPerEm();
    }

    /** The face of this weight. */
    public static synchronized Typeface of(Picture.Weight weight) {
        if (FACES.isEmpty()) {
            Typeface face = load();
            for (Picture.Weight w : Picture.Weight.values()) {
                FACES.put(w, face);
            }
        }
        return FACES.get(weight);
    }

    private static Typeface load() {
        try {
            return new Typeface(embeddable());
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface that comes with PDFBox can't be read; build again", e);
        }
    }

    /** A copy of the font of one's own, for a document to take in; a font is not made for several threads. */
    public static TrueTypeFont embeddable() throws IOException {
        try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        }
    }

    /** The font as it was read. */
    public TrueTypeFont font() {
        return font;
    }

    /** The width of a text at a size, both in inches. */
    public double width(String text, double size) {
        double units = 0;
        for (int glyph : glyphs(text)) {
            units += advance(glyph);
        }
        return units / unitsPerEm * size;
    }

    /** The glyphs of a text; a character that the face doesn't have is glyph 0, an empty box. */
    public int[] glyphs(String text) {
        return text.codePoints().map(characters::getGlyphId).toArray();
    }

    /** How far a glyph moves on, in units of which {@link #unitsPerEm} are the size of the type. */
    public synchronized int advance(int glyph) {
        try {
            return font.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The units to an em in which the font is drawn. */
    public int unitsPerEm() {
        return unitsPerEm;
    }

    /** The text with a hollow square, or a question mark, for each character that the face doesn't have. */
    public String shown(String text) {
        StringBuilder out = new StringBuilder();
        int stand = characters.getGlyphId(0x25A1) > 0 ? 0x25A1 : '?';
        text.codePoints().forEach(c -> out.appendCodePoint(characters.getGlyphId(c) > 0 ? c : stand));
        return out.toString();
    }

    Box box(Picture.Lettering text) {
        double width = width(text.text(), text.size());
        double left = left(text);
        return new Box(left, text.at().y() - 0.73 * text.size(), left + width, text.at().y() + 0.21 * text.size());
    }

    /** Where the text starts, whatever its anchor, in inches. */
    public double left(Picture.Lettering text) {
        double width = width(text.text(), text.size());
        return text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
    }
}
