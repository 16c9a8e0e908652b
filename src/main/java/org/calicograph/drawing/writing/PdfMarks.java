package org.calicograph.drawing.writing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Said;
import org.calicograph.drawing.Tag;
import org.calicograph.geometry.Transform;

/**
 * Marks whatever is painted on a page as belonging to a part of the document, or as mere furniture. A run of drawing that
 * no leaf holds is a figure, which says what {@link Said} reads off it; white ground beneath such a run is furniture.
 */
final class PdfMarks {

    private static final Object FURNITURE = new Object();

    private final PdfStructure structure;
    private final PDPage page;
    private final PDPageContentStream out;
    private final Deque<PdfStructure.Element> open = new ArrayDeque<>();
    private final Deque<Picture.Label> labels = new ArrayDeque<>();
    /** The leaf that is open, and how many tags are open within it. */
    private Tag leaf;
    private int within;
    /** The part that the leaf or the run of drawing is, once there is any. */
    private PdfStructure.Element part;
    private Said run;
    private PdfExtent extent;
    /** What the content stream is marked as now. */
    private Object marked;

    PdfMarks(PdfStructure structure, PDPage page, PDPageContentStream out) {
        this.structure = structure;
        this.page = page;
        this.out = out;
        structure.turn(page);
        open.push(structure.whole());
    }

    void begin(Tag tag) {
        if (leaf != null) {
            within++;
            return;
        }
        rest();
        if (!tag.role().isLeaf()) {
            open.push(structure.element(open.peek(), tag));
            return;
        }
        leaf = tag;
        if (tag.role() == Tag.Role.CELL || tag.role() == Tag.Role.COLUMN) {
            // A row keeps its cells, empty ones too.
            part = structure.element(open.peek(), tag);
        }
    }

    void end() {
        if (within > 0) {
            within--;
            return;
        }
        boolean wasLeaf = leaf != null;
        rest();
        if (!wasLeaf) {
            open.pop();
        }
    }

    void begin(Picture.Label label) {
        labels.addLast(label);
        if (run != null) {
            run.begin(label);
        }
    }

    void end(Picture.Label label) {
        labels.removeLast();
        if (run != null) {
            run.end(label);
        }
    }

    /** Before a shape is painted. */
    void shape(Picture.Shape shape) {
        if (leaf == null && run == null && isGround(shape)) {
            mark(FURNITURE);
            return;
        }
        paint();
        if (run != null) {
            run.shape(shape, Transform.IDENTITY);
        }
    }

    private static boolean isGround(Picture.Shape shape) {
        return shape.fill() instanceof Paint.Flat flat && flat.colour().equals(Colour.WHITE) && !shape.pen().draws();
    }

    /** Before lettering is painted. */
    void lettering(Picture.Lettering text) {
        paint();
        if (run != null) {
            run.lettering(text, Transform.IDENTITY);
        }
    }

    /** True where lettering that follows goes on with the same words. */
    boolean goesOn() {
        return leaf != null && leaf.role() != Tag.Role.FIGURE && leaf.role() != Tag.Role.FURNITURE && part != null && marked == part;
    }

    /** A figure's reach; nothing elsewhere. */
    void reach(double x, double y) {
        if (extent != null) {
            extent.reach(x, y);
        }
    }

    private void paint() {
        if (leaf != null && leaf.role() == Tag.Role.FURNITURE) {
            mark(FURNITURE);
            return;
        }
        if (part == null && leaf != null) {
            part = structure.element(leaf.role() == Tag.Role.FIGURE ? open.peek().holdingFigures() : open.peek(), leaf);
            extent = leaf.role() == Tag.Role.FIGURE ? new PdfExtent() : null;
        } else if (part == null) {
            part = structure.element(open.peek().holdingFigures(), Tag.of(Tag.Role.FIGURE, "drawing"));
            extent = new PdfExtent();
            run = new Said();
            labels.forEach(run::begin);
        }
        mark(part);
    }

    private void mark(Object as) {
        if (as == marked) {
            return;
        }
        try {
            unmark();
            if (as == FURNITURE) {
                out.beginMarkedContent(COSName.ARTIFACT);
            } else {
                out.beginMarkedContent(part.type(), structure.mark(part, page));
            }
            marked = as;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void unmark() throws IOException {
        if (marked != null) {
            out.endMarkedContent();
            marked = null;
        }
    }

    /** The end of a leaf or of a run of drawing, and of the page. */
    void rest() {
        try {
            unmark();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (run != null) {
            part.says(run.words());
        }
        if (extent != null && !extent.isEmpty()) {
            part.lies(extent);
        }
        leaf = null;
        part = null;
        run = null;
        extent = null;
    }
}
