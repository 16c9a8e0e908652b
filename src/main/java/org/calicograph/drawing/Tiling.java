package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * A picture at full size on ordinary paper.
 *
 * @param margin   left clear on every side, since printers can't reach the edge
 * @param overlap  how far neighbouring pages show the same strip, to be laid one on the other
 * @param mirrored left and right exchanged, as for freezer paper ironed to the wrong side
 */
public record Tiling(Paper paper, Length margin, Length overlap, boolean mirrored) {

    /** More pages than this are refused: nobody glues them together. */
    public static final int MOST_PAGES = 600;

    /** Kept clear at the foot of each page: a test square, and what to heed. */
    private static final Length FOOT = Length.inches(1, 4).plus(Length.inches(1));
    /** No lettering is smaller on paper: 7 points. */
    private static final double LEAST = 7.0 / 72;
    private static final double SMALL = 9 / 72.0;
    private static final List<String> HEED = List.of("Print at 100 %, not fitted. The square is 1 in (25.4 mm) each way; if it is not, print again.",
            "Fold the foot back, and lay pages together on the dashed lines, cross on cross.",
            "Cut away from yourself with fingers clear of the blade, and close the cutter when you lay it down.",
            "Mind the hot iron. The makers' instructions and the rules of your place come first.");

    private static final Colour INK = Colour.hex("#2b2b2b");
    private static final Colour FAINT = Colour.hex("#8c9aa3");
    private static final Pen MARK = Pen.of(INK, 0.008);
    private static final Pen JOIN = Pen.of(FAINT, 0.008).dashed(0.06, 0.06);

    public Tiling {
        if (margin.compareTo(Length.ZERO) < 0 || overlap.compareTo(Length.ZERO) < 0) {
            throw new IllegalArgumentException("pages with a margin of " + margin + " and an overlap of " + overlap
                    + " can't be laid out; use 0 or more");
        }
        Length least = margin.times(2).plus(overlap).plus(Length.inches(2));
        if (least.compareTo(paper.width()) > 0 || least.plus(FOOT).compareTo(paper.height()) > 0) {
            throw new IllegalArgumentException("a margin of " + margin + " and an overlap of " + overlap
                    + " leave less than 2 in of " + paper.name() + " to draw on; make them smaller");
        }
    }

    /** With a margin and an overlap of 1/2 in. */
    public static Tiling on(Paper paper) {
        return new Tiling(paper, Length.inches(1, 2), Length.inches(1, 2), false);
    }

    /** As seen from behind, or not. */
    public Tiling mirrored(boolean yes) {
        return new Tiling(paper, margin, overlap, yes);
    }

    /**
     * The pages, each exactly as large as the paper with its top left corner at the origin. The first
     * is the key: how the pages lie together. The others follow row by row, the blank ones left out, with crosses where
     * their joins meet, their neighbours' names, and at the foot of each a 1 in test square and what to heed.
     *
     * @throws IllegalArgumentException if the picture needs more than {@link #MOST_PAGES}
     */
    public List<Picture> pages(String title, Picture picture) {
        return pages(title, picture, picture.bounds());
    }

    /** The sides of a page's window less the overlap: where the next page's begins. */
    public double stepAcross() {
        return step(paper.width());
    }

    /** How far one page lies below the next, in inches. */
    public double stepDown() {
        return step(paper.height().minus(FOOT));
    }

    /**
     * The same for a picture that is to lie in a frame: a frame of whole {@linkplain #stepAcross steps} has its
     * pages' joins along them.
     */
    public List<Picture> pages(String title, Picture picture, Box frame) {
        Picture whole = mirrored ? picture.transformed(Transform.mirrorAcross(0)) : picture;
        Box all = mirrored ? frame.transformed(Transform.mirrorAcross(0)) : frame;
        int columns = count(all.width(), stepAcross());
        int rows = count(all.height(), stepDown());
        if ((long) columns * rows > MOST_PAGES) {
            throw new IllegalArgumentException("'" + title + "' is " + Length.inches(all.width()) + " x " + Length.inches(all.height())
                    + " and needs " + (long) columns * rows + " pages of " + paper.name() + "; print a part of it, or use larger paper");
        }
        List<Picture> flat = whole.flattened();
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Box window = window(all, column, row);
                List<Picture> shown = Clip.to(window).of(flat);
                if (!shown.isEmpty()) {
                    tiles.add(new Tile(column, row, window, shown));
                }
            }
        }
        List<Picture> pages = new ArrayList<>();
        pages.add(key(title, whole, all, tiles));
        tiles.forEach(t -> pages.add(page(title, t, tiles)));
        return List.copyOf(pages);
    }

    private record Tile(int column, int row, Box window, List<Picture> shown) {
        String name() {
            return nameAt(column, row);
        }
    }

    private static String nameAt(int column, int row) {
        String letters = "";
        for (int r = row; r >= 0; r = r / 26 - 1) {
            letters = (char) ('A' + r % 26) + letters;
        }
        return letters + (column + 1);
    }

    private double step(Length side) {
        return side.minus(margin.times(2)).minus(overlap).inInches();
    }

    private int count(double size, double step) {
        return Math.max(1, (int) Math.ceil((size - overlap.inInches()) / step - 1e-9));
    }

    /** The tiles as a whole are centred on the picture. */
    private Box window(Box all, int column, int row) {
        double across = stepAcross();
        double down = stepDown();
        double over = overlap.inInches();
        double left = all.centre().x() - (count(all.width(), across) * across + over) / 2 + column * across;
        double top = all.centre().y() - (count(all.height(), down) * down + over) / 2 + row * down;
        return new Box(left, top, left + across + over, top + down + over);
    }

    private Picture sheet() {
        Box box = Box.of(paper.width(), paper.height());
        return new Picture.Shape(List.of(Path.rectangle(box)), Paint.of(Colour.WHITE), Pen.NONE).tagged(Tag.of(Tag.Role.FURNITURE));
    }

    private Picture page(String title, Tile tile, List<Tile> tiles) {
        double m = margin.inInches();
        double half = overlap.inInches() / 2;
        Box w = tile.window();
        List<Picture> parts = new ArrayList<>();
        parts.add(sheet());
        double foot = paper.height().inInches() - m - 1;
        String name = title + ", page " + tile.name() + (mirrored ? ", mirrored" : "");
        parts.add(new Picture.Lettering(name, Point.of(m + 1.15, foot + 0.16), SMALL * 1.1, Picture.Anchor.START, Picture.Weight.BOLD, INK).tagged(Tag.of(Tag.Role.HEADING)));
        Picture shown = Picture.group(tile.shown());
        parts.add(shown.moved(m - w.left(), m - w.top()).tagged(Tag.of(Tag.Role.FIGURE, Said.of("At full size, lines to lay together and cut by", shown))));
        double right = m + w.width();
        double bottom = m + w.height();
        List<Path> joins = new ArrayList<>();
        if (half > 0) {
            for (double x : new double[] {m + half, right - half}) {
                joins.add(Path.through(Point.of(x, m), Point.of(x, bottom)));
            }
            for (double y : new double[] {m + half, bottom - half}) {
                joins.add(Path.through(Point.of(m, y), Point.of(right, y)));
            }
            parts.add(new Picture.Shape(joins, Paint.NONE, JOIN).tagged(Tag.of(Tag.Role.FURNITURE)));
        }
        for (double x : new double[] {m + half, (m + right) / 2, right - half}) {
            for (double y : new double[] {m + half, (m + bottom) / 2, bottom - half}) {
                if (x != (m + right) / 2 || y != (m + bottom) / 2) {
                    parts.add(cross(x, y));
                }
            }
        }
        parts.add(square(m, foot));
        for (int i = 0; i < HEED.size(); i++) {
            parts.add(words(HEED.get(i), m + 1.15, foot + 0.38 + 0.19 * i, SMALL, Picture.Anchor.START));
        }
        // In the margin, clear of the lines, unless there is none.
        double out = m >= 0.4 ? 0.05 : -half - 0.05;
        double side = m + w.height() * 0.25;
        neighbour(tile, tiles, 1, 0).ifPresent(n -> parts.add(words(n + " >", right + out, side, 0.11, anchor(out > 0))));
        neighbour(tile, tiles, -1, 0).ifPresent(n -> parts.add(words("< " + n, m - out, side, 0.11, anchor(out < 0))));
        double middle = m + w.width() * 0.5;
        neighbour(tile, tiles, 0, 1).ifPresent(n -> parts.add(words("below: " + n, middle, bottom + (out > 0 ? 0.16 : out), 0.11, Picture.Anchor.MIDDLE)));
        neighbour(tile, tiles, 0, -1).ifPresent(n -> parts.add(words("above: " + n, middle, out > 0 ? m - 0.05 : m - out + 0.1, 0.11, Picture.Anchor.MIDDLE)));
        return Picture.group(parts);
    }

    private static Picture.Anchor anchor(boolean start) {
        return start ? Picture.Anchor.START : Picture.Anchor.END;
    }

    private static java.util.Optional<String> neighbour(Tile tile, List<Tile> tiles, int right, int down) {
        return tiles.stream().filter(t -> t.column() == tile.column() + right && t.row() == tile.row() + down)
                .map(Tile::name).findFirst();
    }

    private static Picture cross(double x, double y) {
        return new Picture.Shape(List.of(Path.through(Point.of(x - 0.12, y), Point.of(x + 0.12, y)),
                Path.through(Point.of(x, y - 0.12), Point.of(x, y + 0.12)), Path.circle(Point.of(x, y), 0.06)), Paint.NONE, MARK)
                .tagged(Tag.of(Tag.Role.FURNITURE));
    }

    private static Picture words(String text, double x, double y, double size, Picture.Anchor anchor) {
        return lettering(text, x, y, size, anchor).tagged(Tag.of(Tag.Role.PARAGRAPH));
    }

    private static Picture lettering(String text, double x, double y, double size, Picture.Anchor anchor) {
        return new Picture.Lettering(text, Point.of(x, y), size, anchor, Picture.Weight.REGULAR, INK);
    }

    private static Picture square(double left, double top) {
        return Picture.group(new Picture.Shape(List.of(Path.rectangle(new Box(left, top, left + 1, top + 1))), Paint.NONE, MARK),
                lettering("1 in", left + 0.5, top + 0.55, 0.14, Picture.Anchor.MIDDLE)).tagged(Tag.of(Tag.Role.FIGURE, "The test square, 1 in each way"))
                .labelled("test-square", "1 in test square");
    }

    private Picture key(String title, Picture whole, Box all, List<Tile> tiles) {
        double m = Math.max(margin.inInches(), 0.5);
        double width = paper.width().inInches() - 2 * m;
        double height = paper.height().inInches() - 2 * m;
        List<Picture> parts = new ArrayList<>();
        parts.add(sheet());
        parts.add(new Picture.Lettering(title, Point.of(m, m + 0.25), 0.25, Picture.Anchor.START, Picture.Weight.BOLD, INK).tagged(Tag.of(Tag.Role.CHAPTER)));
        List<String> lines = List.of(
                (tiles.size() == 1 ? "1 page of " : tiles.size() + " pages of ") + paper.name() + " at full size, " + Length.inches(all.width()).roundedTo(Length.inches(1, 16)) + " x "
                        + Length.inches(all.height()).roundedTo(Length.inches(1, 16)) + (mirrored ? ", mirrored" : ""),
                "Print at 100 %, not fitted to the page.",
                "Measure the square: each side is 1 in (25.4 mm). If it is not, print again.",
                "Lay each page over the next, cross on cross, along the dashed lines.",
                HEED.get(2), HEED.get(3));
        IntStream.range(0, lines.size()).forEach(i ->
                parts.add(words(lines.get(i), m, m + 0.55 + 0.2 * i, 0.13, Picture.Anchor.START)));
        double y = m + 1.9;
        parts.add(square(m, y));
        double top = y + 1.3;
        Box covered = tiles.stream().map(Tile::window).reduce(all, Box::union);
        double scale = Math.min(width / covered.width(), (height + m - top) / covered.height());
        Transform t = Transform.move(-covered.left(), -covered.top()).then(Transform.scale(scale)).then(Transform.move(m, top));
        // Lettering that would be too small to read is left to the pages themselves.
        List<Picture> laid = new ArrayList<>();
        laid.add(Picture.group(whole.flattened().stream().filter(p -> !(p instanceof Picture.Lettering l) || l.size() * scale >= LEAST).toList()).transformed(t));
        double half = overlap.inInches() / 2;
        for (Tile tile : tiles) {
            Box box = tile.window().grownBy(-half).transformed(t);
            laid.add(new Picture.Shape(List.of(Path.rectangle(box)), Paint.NONE, Pen.of(FAINT, 0.01)));
            laid.add(lettering(tile.name(), box.left() + 0.04, box.top() + Math.min(0.16, box.height() * 0.4),
                    Math.min(0.13, box.height() * 0.3), Picture.Anchor.START));
        }
        parts.add(Picture.group(laid).tagged(Tag.of(Tag.Role.FIGURE, Said.of("How the pages lie: " + rows(tiles), whole))));
        return Picture.group(parts);
    }

    /** From the top down, from the left; a page that is blank has no name. */
    private static String rows(List<Tile> tiles) {
        return tiles.stream().collect(Collectors.groupingBy(Tile::row, TreeMap::new, Collectors.mapping(Tile::name, Collectors.joining(", ")))).values().stream()
                .collect(Collectors.joining("; below them "));
    }
}
