package org.calicograph.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;

/**
 * The templates of a quilt, for sheets at full size.
 *
 * @param title     what they are for
 * @param templates one for all pieces of a shape, mirror images and other fabrics too
 * @param mirrored  left and right exchanged, for freezer paper ironed to the wrong side
 */
public record Templates(String title, List<Template> templates, Paper paper, boolean mirrored) implements Drawable {

    /** A turning allowance for appliqué (common practice: 3/16 to 1/4 in). */
    public static final Length TURNING = Pieces.TURN_UNDER;
    /** As much as pages overlap, so that nothing shows on the page beside its own. */
    private static final double GAP = 0.5;

    public Templates {
        templates = List.copyOf(templates);
    }

    /** For every piece that no ruler cuts. */
    public static Templates of(Quilt quilt) {
        return of(quilt.title(), Pieces.of(quilt.top(), CuttingRules.usual()), CuttingRules.usual());
    }

    /** The templates of a piece of work, by the usual rules. */
    public static Templates of(Patchwork work) {
        return of(work, CuttingRules.usual());
    }

    /** The templates of a piece of work, by cutting rules. */
    public static Templates of(Patchwork work, CuttingRules rules) {
        return of(work.name(), Pieces.of(work, rules), rules);
    }

    /** For shapes laid on a ground, with {@link #TURNING}, and what no ruler cuts of the ground. */
    public static Templates of(Applique applique) {
        return of(applique, CuttingRules.usual(), TURNING);
    }

    /** The same with another allowance; nothing where raw edges are fused. */
    public static Templates of(Applique applique, CuttingRules rules, Length turning) {
        return of(applique.name(), Pieces.of(applique, rules, turning), rules);
    }

    static Templates of(String title, List<Piece> pieces, CuttingRules rules) {
        List<Piece> first = new ArrayList<>();
        List<Template> all = new ArrayList<>();
        for (Piece p : pieces) {
            boolean turned = p.method() instanceof CutMethod.Laid laid && !laid.turnUnder().isZero();
            if (!p.isCutByRuler()) {
                int same = find(first, q -> q.method().getClass() == p.method().getClass() && p.hasShapeOf(q));
                int mirror = same < 0 ? find(first, q -> q.method().getClass() == p.method().getClass() && p.isMirrorOf(q)) : -1;
                int at = Math.max(same, mirror);
                if (at < 0) {
                    first.add(p);
                    all.add(turned ? Template.turned(p, ((CutMethod.Laid) p.method()).turnUnder()) : Template.of(p, rules.seam()));
                } else {
                    all.set(at, all.get(at).alsoFor(p, same < 0));
                }
            }
        }
        return new Templates("Templates: " + title, all, Paper.A4, false);
    }

    private static int find(List<Piece> pieces, java.util.function.Predicate<Piece> wanted) {
        for (int i = 0; i < pieces.size(); i++) {
            if (wanted.test(pieces.get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** For every patch, with an allowance to turn under instead of a seam. */
    public static Templates turned(Patchwork work, Length allowance) {
        if (!allowance.isPositive()) {
            throw new IllegalArgumentException("a turning allowance of " + allowance + " leaves nothing to turn under; use " + TURNING + " or so");
        }
        return new Templates("Shapes to turn under: " + work.name(), Pieces.of(work, CuttingRules.usual()).stream()
                .map(p -> Template.turned(p, allowance)).toList(), Paper.A4, false);
    }

    /** The same on other paper. */
    public Templates on(Paper other) {
        return new Templates(title, templates, other, mirrored);
    }

    /** For freezer paper, ironed to the wrong side of the cloth. */
    public Templates mirrored(boolean yes) {
        return new Templates(title, templates, paper, yes);
    }

    /**
     * Pages at full size, the first a key with a test square; none if there are no templates. Templates
     * that fit a page stand whole on one; larger ones lie on as few pages as can be, turned if that helps.
     *
     * @throws IllegalArgumentException if they need more than {@link Tiling#MOST_PAGES}
     */
    public List<Picture> pages() {
        if (templates.isEmpty()) {
            return List.of();
        }
        Tiling tiling = Tiling.on(paper).mirrored(mirrored);
        Bench bench = new Bench(tiling.stepAcross(), tiling.stepDown());
        templates.stream().map(t -> bench.turned(t).picture()).sorted(Comparator.comparingInt((Picture p) -> -bench.cells(p))
                .thenComparingDouble(p -> -p.bounds().height())).forEach(bench::lay);
        return tiling.pages(title, Picture.group(bench.placed), bench.frame());
    }

    /** Pages side by side in rows, the templates laid on them from the left; no join runs through one that fits a page. */
    private static final class Bench {

        private static final int ACROSS = 6;

        private final double wide;
        private final double high;
        private final List<Picture> placed = new ArrayList<>();
        /** The first cell of the next block, and how many cells high its row of blocks is. */
        private int column;
        private int row;
        private int tall = 1;
        private int widest = 1;
        /** The shelf within the page that is being filled; below 0 if none is. */
        private double x = -1;
        private double y;
        private double shelf;

        Bench(double wide, double high) {
            this.wide = wide;
            this.high = high;
        }

        int cells(Picture p) {
            return across(p) * down(p);
        }

        private int across(Picture p) {
            return (int) Math.max(1, Math.ceil((p.bounds().width() + GAP) / wide - 1e-9));
        }

        private int down(Picture p) {
            return (int) Math.max(1, Math.ceil((p.bounds().height() + GAP) / high - 1e-9));
        }

        /** The way round that takes fewer pages, or else the one less high. */
        Template turned(Template t) {
            Template other = t.quarterTurned();
            int saved = cells(t.picture()) - cells(other.picture());
            return saved > 0 ? other : t;
        }

        void lay(Picture p) {
            Box b = p.bounds();
            if (cells(p) > 1) {
                block(across(p), down(p));
                double left = (column - across(p)) * wide + (across(p) * wide - b.width()) / 2;
                placed.add(p.moved(left - b.left(), row * high + (down(p) * high - b.height()) / 2 - b.top()));
                return;
            }
            if (x >= 0 && x + b.width() + GAP / 2 > wide) {
                x = GAP / 2;
                y += shelf + GAP;
                shelf = 0;
            }
            if (x < 0 || y + b.height() + GAP / 2 > high) {
                block(1, 1);
                x = GAP / 2;
                y = GAP / 2;
                shelf = 0;
            }
            placed.add(p.moved((column - 1) * wide + x - b.left(), row * high + y - b.top()));
            x += b.width() + GAP;
            shelf = Math.max(shelf, b.height());
        }

        private void block(int across, int down) {
            if (column > 0 && column + across > ACROSS) {
                column = 0;
                row += tall;
                tall = 1;
            }
            column += across;
            tall = Math.max(tall, down);
            widest = Math.max(widest, column);
        }

        Box frame() {
            return new Box(0, 0, widest * wide, (row + tall) * high);
        }
    }

    @Override
    public Exhibit show() {
        if (templates.isEmpty()) {
            return Exhibit.words(title + ": none; a ruler cuts every piece.");
        }
        List<Exhibit> parts = new ArrayList<>();
        pages().forEach(p -> parts.add(Exhibit.of(p)));
        return new Exhibit.Several(parts);
    }
}
