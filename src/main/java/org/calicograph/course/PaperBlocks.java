package org.calicograph.course;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tag;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * One block many times over, to be cut apart and laid anew by hand. An arrow at its edge tells which way is up, so that what
 * was laid can be written down; {@link org.calicograph.turning.LaidOut} reads it.
 *
 * @param side    how wide each is printed
 * @param copies  how many, in all
 * @param shaded  true with its cloths in pale tints, false in line alone
 */
public record PaperBlocks(Patchwork block, Length side, int copies, boolean shaded, Paper paper) {

    private static final double MARGIN = 0.6;
    private static final double FOOT = 0.75;
    private static final Colour INK = Colour.hex("#3b3a38");

    /** @throws IllegalArgumentException if a block is larger than the page, or there are none */
    public PaperBlocks {
        if (copies < 1) {
            throw new IllegalArgumentException(copies + " paper blocks can't be printed; ask for 1 or more");
        }
        double most = Math.min(paper.width().inInches() - 2 * MARGIN, paper.height().inInches() - 2 * MARGIN - FOOT);
        double longer = side.inInches() * Math.max(1, block.height().ratioTo(block.width()));
        if (!side.isPositive() || longer > most) {
            throw new IllegalArgumentException("a paper block " + side + " wide does not go on " + paper.name() + "; use a width up to "
                    + Length.inches(Math.floor(most * 4) / 4 * side.inInches() / Math.max(longer, 1e-9)));
        }
    }

    /** Two dozen, 2 in wide, in line, on A4. */
    public static PaperBlocks of(Patchwork block) {
        return new PaperBlocks(block, Length.inches(2), 24, false, Paper.A4);
    }

    /** The same so wide. */
    public PaperBlocks wide(Length other) {
        return new PaperBlocks(block, other, copies, shaded, paper);
    }

    /** So many of them. */
    public PaperBlocks copies(int number) {
        return new PaperBlocks(block, side, number, shaded, paper);
    }

    /** With pale tints of the cloths. */
    public PaperBlocks tinted() {
        return new PaperBlocks(block, side, copies, true, paper);
    }

    /** The same on other paper. */
    public PaperBlocks on(Paper other) {
        return new PaperBlocks(block, side, copies, shaded, other);
    }

    /** The pages. */
    public Sheaf pages() {
        double wide = side.inInches();
        double scale = wide / block.width().inInches();
        double high = block.height().inInches() * scale;
        int across = (int) Math.floor((paper.width().inInches() - 2 * MARGIN) / wide + 1e-9);
        int down = (int) Math.floor((paper.height().inInches() - 2 * MARGIN - FOOT) / high + 1e-9);
        Picture one = one(scale, wide, high);
        List<Picture> pages = new ArrayList<>();
        for (int from = 0; from < copies; from += across * down) {
            List<Picture> parts = new ArrayList<>();
            parts.add(PageFlow.sheet(paper));
            List<Picture> blocks = new ArrayList<>();
            for (int k = from; k < Math.min(copies, from + across * down); k++) {
                int place = k - from;
                blocks.add(one.moved(MARGIN + place % across * wide, MARGIN + place / across * high));
            }
            String what = blocks.size() + (blocks.size() == 1 ? " copy of the block " : " copies of the block ") + block.name() + ", " + side + " wide, up to " + across
                    + " in a row, edge to edge, each of " + block.patchCount() + (block.patchCount() == 1 ? " patch" : " patches") + " with an arrow at its top edge";
            parts.add(Picture.group(blocks).tagged(Tag.of(Tag.Role.FIGURE, what)));
            double foot = paper.height().inInches() - MARGIN - FOOT + 0.35;
            parts.add(words("Cut along the outer lines. Lay the blocks with their arrows any way, edge to edge, and see what comes of it.", foot));
            parts.add(words("Write down where each arrow points: u, r, d, l, row by row; a capital letter for one that is turned over.", foot + 0.19));
            parts.add(words("Mind your fingers with scissors and cutter.", foot + 0.38));
            pages.add(Picture.group(parts));
        }
        return new Sheaf(block.name() + ", paper blocks", paper, pages);
    }

    private Picture one(double scale, double wide, double high) {
        List<Picture> parts = new ArrayList<>();
        for (Patch p : block.patches()) {
            Paint paint = shaded ? Paint.of(p.fabric().colour().tint(0.55)) : Paint.of(Colour.WHITE);
            parts.add(new Picture.Shape(p.shape().paths(), paint, Pen.of(INK, 0.012 / scale)));
        }
        double arrow = wide / 14;
        double x = wide / 2;
        Path head = Path.polygon(new Point(x, arrow * 0.35), new Point(x + arrow * 0.45, arrow * 1.25), new Point(x - arrow * 0.45, arrow * 1.25));
        return Picture.group(Picture.group(parts).scaled(scale), new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, wide, high))), Paint.NONE, Pen.of(INK, 0.02)),
                new Picture.Shape(List.of(head), Paint.of(Colour.hex("#b5553c")), Pen.of(Colour.WHITE, 0.012)));
    }

    private static Picture words(String text, double y) {
        return new Picture.Lettering(text, new Point(MARGIN, y), 9.5 / 72, Picture.Anchor.START, Picture.Weight.REGULAR, INK).tagged(Tag.of(Tag.Role.PARAGRAPH));
    }
}
