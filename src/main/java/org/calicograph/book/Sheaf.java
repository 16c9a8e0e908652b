package org.calicograph.book;

import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PdfWriter;

/**
 * Pages that belong together and are printed at full size: worksheets, cards, labels, a catalogue.
 *
 * @param pages each exactly as large as the paper
 */
public record Sheaf(String title, Paper paper, List<Picture> pages) implements Drawable {

    /** @throws IllegalArgumentException if there is no page */
    public Sheaf {
        pages = List.copyOf(pages);
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("'" + title + "' has no page; leave it out, or give it something to print");
        }
    }

    /**
     * The pages of a sheaf.
     *
     * @throws IllegalArgumentException if the value is none
     */
    public static Sheaf ofAny(Object value) {
        if (value instanceof Sheaf sheaf) {
            return sheaf;
        }
        throw new IllegalArgumentException("pages are printed of a quilt, a draft, or pages, not of "
                + (value == null ? "nothing" : value.getClass().getSimpleName()) + "; name one of these");
    }

    /** The pages as a PDF file. */
    public byte[] pdf() {
        return PdfWriter.write(title, pages, paper.width(), paper.height());
    }

    @Override
    public Exhibit show() {
        return new Exhibit.Several(pages.stream().map(Exhibit::of).toList());
    }
}
