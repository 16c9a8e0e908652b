package org.calicograph.book.page;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Said;
import org.calicograph.drawing.Table;
import org.calicograph.drawing.Tag;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Sets headings, paragraphs, tables and pictures on pages, from the top down. Heights are inches. */
public final class PageFlow {

    private static final double MARGIN = 0.75;
    /** A page is turned before its end only when at least so much of it is full. */
    private static final double FULL_ENOUGH = 0.5;
    /** A chapter begins on the page that is open if at most so much of it is full. */
    private static final double ROOM_FOR_CHAPTER = 0.4;

    private final Paper paper;
    private final String foot;
    private final Pages pages = new Pages();
    private final List<Chapter> chapters = new ArrayList<>();
    private double y;
    private String warned = "";
    private int warnedOn;

    /** @param page counted from 1 */
    public record Chapter(String title, int page) { }

    public PageFlow(Paper paper, String foot) {
        this.paper = paper;
        this.foot = foot;
        this.y = MARGIN;
    }

    /** The width between the margins. */
    public double width() {
        return paper.width().inInches() - 2 * MARGIN;
    }

    private double bottom() {
        return paper.height().inInches() - MARGIN - 0.25;
    }

    /** Room left on the page. */
    public double room() {
        return bottom() - y;
    }

    /** What a whole page holds. */
    public double page() {
        return bottom() - MARGIN;
    }

    public void turnPage() {
        pages.turn();
        y = MARGIN;
    }

    private boolean isFresh() {
        return pages.isFresh();
    }

    private boolean mayTurn() {
        return (y - MARGIN) / page() >= FULL_ENOUGH;
    }

    private void require(double height) {
        if (height > room() && !isFresh()) {
            turnPage();
        }
    }

    /** A part of the booklet with a name. */
    public void chapter(String title) {
        if (!isFresh() && (y - MARGIN) / page() > ROOM_FOR_CHAPTER) {
            turnPage();
        }
        if (!isFresh()) {
            y += 0.35;
        }
        chapters.add(new Chapter(title, pages.count()));
        y += 0.3;
        pages.put(Tag.Role.CHAPTER, line(title, MARGIN, 0.3, Picture.Weight.BOLD, Type.HEAD));
        y += 0.12;
        pages.put(Tag.Role.FURNITURE, new Picture.Shape(List.of(Path.through(new Point(MARGIN, y), new Point(MARGIN + width(), y))), Paint.NONE, Pen.of(Type.HEAD, 0.012)));
        y += 0.28;
    }

    /** A heading with room for what follows it; on a page that is not half full with as much of that as has room. */
    public void heading(String title, double following) {
        List<String> lines = Type.wrapped(title, width(), 0.2);
        double own = 0.6 + (lines.size() - 1) * 0.26;
        require(own + (mayTurn() ? following : Math.min(following, 1.2)));
        if (!isFresh()) {
            y += 0.22;
        }
        pages.begin(Tag.Role.HEADING);
        for (String l : lines) {
            y += l.equals(lines.get(0)) ? 0.2 : 0.26;
            pages.put(line(l, MARGIN, 0.2, Picture.Weight.BOLD, Type.INK));
        }
        pages.end();
        y += 0.16;
    }

    private Picture line(String text, double x, double size, Picture.Weight weight, Colour colour) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, weight, colour);
    }

    private Picture middle(String text, double x, double size, Picture.Weight weight, Colour colour) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.MIDDLE, weight, colour);
    }

    public void paragraph(String text) {
        for (String part : text.split("\n")) {
            List<String> lines = Type.wrapped(part, width(), Type.BODY);
            require(Math.min(lines.size(), 2) * Type.BODY * Type.LEADING);
            pages.begin(Tag.Role.PARAGRAPH);
            for (String l : lines) {
                require(Type.BODY * Type.LEADING);
                y += Type.BODY * Type.LEADING;
                pages.put(line(l, MARGIN, Type.BODY, Picture.Weight.REGULAR, Type.INK));
            }
            pages.end();
            y += Type.BODY * 0.7;
        }
    }

    /** A list of points; none is parted, and neither the first nor the last stands alone. */
    public void points(List<String> items) {
        pages.begin(Tag.Role.LIST);
        List<List<String>> all = items.stream().map(i -> Type.wrapped(i, width() - 0.25, Type.BODY)).toList();
        for (int k = 0; k < all.size(); k++) {
            List<String> lines = all.get(k);
            boolean keep = k == 0 || k == all.size() - 2;
            double next = keep && k + 1 < all.size() ? all.get(k + 1).size() * Type.BODY * Type.LEADING + Type.BODY * 0.4 : 0;
            require(lines.size() * Type.BODY * Type.LEADING + next);
            pages.begin(Tag.Role.ITEM);
            y += Type.BODY * Type.LEADING;
            pages.put(Tag.Role.MARK, line("•", MARGIN + 0.05, Type.BODY, Picture.Weight.REGULAR, Type.HEAD));
            y -= Type.BODY * Type.LEADING;
            body(Tag.Role.WORDS, lines);
            pages.end();
            y += Type.BODY * 0.4;
        }
        pages.end();
        y += Type.BODY * 0.4;
    }

    /** Indented lines that stay together. */
    private void body(Tag.Role role, List<String> lines) {
        pages.begin(role);
        for (String l : lines) {
            y += Type.BODY * Type.LEADING;
            pages.put(line(l, MARGIN + 0.25, Type.BODY, Picture.Weight.REGULAR, Type.INK));
        }
        pages.end();
    }

    /** A cautionary note in a box; once on a page. */
    public void caution(String text) {
        if (!text.equals(warned) || warnedOn != pages.count()) {
            warned = text;
            warn(text);
            warnedOn = pages.count();
        }
    }

    private void warn(String text) {
        List<String> lines = Type.wrapped(text, width() - 0.5, Type.BODY);
        double height = (lines.size() + 1) * Type.BODY * Type.LEADING + 0.24;
        require(height);
        pages.begin(Tag.Role.NOTE);
        pages.put(Tag.Role.FURNITURE, new Picture.Shape(List.of(Path.rectangle(new Box(MARGIN, y, MARGIN + width(), y + height))), Paint.of(Colour.hex("#fbf1e3")),
                Pen.of(Colour.hex("#b5553c"), 0.015)));
        double top = y;
        y += 0.06 + Type.BODY * Type.LEADING;
        pages.put(Tag.Role.PARAGRAPH, line("Take care", MARGIN + 0.25, Type.BODY, Picture.Weight.BOLD, Colour.hex("#8e3b25")));
        body(Tag.Role.PARAGRAPH, lines);
        pages.end();
        y = top + height + 0.18;
    }

    /** A picture in the middle, as large as fits the width and the given height; made smaller where that keeps it on a page not yet half full. */
    public void picture(Picture picture, double most, String caption) {
        List<String> under = caption.isEmpty() ? List.of() : Type.wrapped(caption, width(), Type.SMALL);
        double words = under.isEmpty() ? 0.15 : under.size() * Type.SMALL * Type.LEADING + 0.2;
        Box box = picture.bounds();
        double largest = Math.min(most, page() - words);
        if (!mayTurn() && largest + words > room() && room() - words >= 0.45 * Math.min(largest, width() / box.width() * box.height())) {
            largest = room() - words;
        }
        double scale = Math.min(width() / box.width(), largest / box.height());
        double height = box.height() * scale;
        require(height + words - 1e-9);
        double left = MARGIN + (width() - box.width() * scale) / 2;
        pages.put(figure(Legible.scaled(picture.moved(-box.left(), -box.top()), scale).transformed(Transform.move(left, y)), picture));
        y += height + 0.04;
        pages.begin(Tag.Role.CAPTION);
        for (String l : under) {
            y += Type.SMALL * Type.LEADING;
            pages.put(middle(l, MARGIN + width() / 2, Type.SMALL, Picture.Weight.REGULAR, Type.QUIET));
        }
        pages.end();
        y += under.isEmpty() ? 0.11 : 0.16;
    }

    /** As it is tagged, or else as a figure that says what is read off it. */
    private static Picture figure(Picture placed, Picture picture) {
        return picture instanceof Picture.Group g && g.tag().isPresent() ? placed : placed.tagged(Tag.of(Tag.Role.FIGURE, Said.of(picture)));
    }

    /** A picture with a line above all in bold and words beneath; either may be empty. */
    public record Figure(Picture picture, String title, String words) { }

    /** Figures side by side, none larger than its place or the given height; a row is never parted. */
    public void grid(int columns, double largest, List<Figure> figures) {
        double place = width() / columns;
        double room = place - 0.25;
        double size = largest;
        // A little smaller rather than a last row alone on the next page.
        for (double smaller : new double[] {1, 0.9, 0.8, 0.7}) {
            if (height(columns, largest * smaller, figures) <= room()) {
                size = largest * smaller;
                break;
            }
        }
        for (FigureRow row : FigureRow.rows(columns, room, figures)) {
            double tallest = row.tallest(size);
            double words = row.words();
            require(tallest + words + 0.16);
            double top = y;
            for (int i = 0; i < row.figures().size(); i++) {
                Figure f = row.figures().get(i);
                double scale = row.scale(f, size);
                Box box = f.picture().bounds();
                double middle = MARGIN + place * (i + 0.5);
                pages.put(figure(Legible.scaled(f.picture().moved(-box.centre().x(), -box.bottom()), scale).transformed(Transform.move(middle, top + tallest)), f.picture()));
                y = top + tallest + 0.06;
                int titled = row.titled(f);
                pages.begin(Tag.Role.CAPTION);
                for (String l : row.captions(f)) {
                    y += Type.SMALL * Type.LEADING;
                    pages.put(middle(l, middle, Type.SMALL, titled > 0 ? Picture.Weight.BOLD : Picture.Weight.REGULAR, titled-- > 0 ? Type.INK : Type.QUIET));
                }
                pages.end();
            }
            y = top + tallest + words + 0.3;
        }
    }

    /** How high a grid is on one page. */
    public double height(int columns, double most, List<Figure> figures) {
        return FigureRow.rows(columns, width() / columns - 0.25, figures).stream().mapToDouble(r -> r.tallest(most) + 0.3 + r.words()).sum();
    }

    /** A table, its columns as wide as they need; where it is parted, two rows or more stand on either side. */
    public void table(Table table) {
        table(table, false);
    }

    /** @param ticked with a box before each row, to be ticked off by hand */
    public void table(Table table, boolean ticked) {
        double left = MARGIN + (ticked ? 0.24 : 0);
        TableSetter set = TableSetter.of(table, width() - (left - MARGIN));
        int n = set.rows().size();
        require(set.headHeight() + (n == 0 ? 0 : set.height(0)) + (n == 2 || n == 3 ? set.height(1) + (n == 3 ? set.height(2) : 0) : n > 1 ? set.height(1) : 0));
        pages.begin(Tag.of(Tag.Role.TABLE, table.title()));
        new RowPen(left, set).head(Tag.Role.ROW);
        boolean banded = false;
        for (int i = 0; i < n; i++) {
            // The last but one takes the last with it, so that no row stands alone.
            double needs = set.height(i) + (i == n - 2 ? set.height(n - 1) : 0);
            if (needs > room() && !isFresh()) {
                turnPage();
                new RowPen(left, set).head(Tag.Role.FURNITURE);
            }
            new RowPen(left, set).row(set.rows().get(i), set.height(i), banded ? Type.BAND : Colour.WHITE, ticked);
            banded = !banded;
        }
        pages.end();
        y += 0.2;
    }

    /** How high a table is on one page. */
    public double height(Table table) {
        return TableSetter.of(table, width()).height() + 0.2;
    }

    private final class RowPen {
        private final double left;
        private final TableSetter set;

        RowPen(double left, TableSetter set) {
            this.left = left;
            this.set = set;
        }

        /** The names of the columns; where they stand again, on the next page, they are not read again. */
        void head(Tag.Role as) {
            pages.begin(as);
            cells(set.head(), set.headHeight(), Picture.Weight.BOLD, Tag.Role.COLUMN, Type.HEAD_BAND);
            pages.end();
        }

        void row(List<List<String>> cells, double height, Colour ground, boolean ticked) {
            pages.begin(Tag.Role.ROW);
            if (ticked) {
                double side = 0.13;
                pages.put(Tag.Role.FURNITURE, new Picture.Shape(List.of(Path.rectangle(new Box(MARGIN, y + 0.06, MARGIN + side, y + 0.06 + side))), Paint.NONE, Pen.of(Type.INK, 0.01)));
            }
            cells(cells, height, Picture.Weight.REGULAR, Tag.Role.CELL, ground);
            pages.end();
        }

        private void cells(List<List<String>> cells, double height, Picture.Weight weight, Tag.Role role, Colour ground) {
            if (!ground.equals(Colour.WHITE)) {
                pages.put(Tag.Role.FURNITURE, new Picture.Shape(List.of(Path.rectangle(new Box(left, y, left + set.width(), y + height))), Paint.of(ground), Pen.NONE));
            }
            double top = y;
            double x = left;
            for (int c = 0; c < cells.size(); c++) {
                y = top + 0.02;
                pages.begin(role);
                for (String l : cells.get(c)) {
                    y += Type.SMALL * Type.LEADING;
                    pages.put(line(l, x + 0.07, Type.SMALL, weight, Type.INK));
                }
                pages.end();
                x += set.widths()[c];
            }
            y = top + height;
        }
    }

    /** A line in the middle of the page, smaller where it would not fit. */
    public void centred(String text, double size, boolean bold) {
        y += size * Type.LEADING;
        double fit = Math.min(size, size * width() / Math.max(1e-9, Type.measure(text, size)));
        pages.put(bold ? Tag.Role.TITLE : Tag.Role.PARAGRAPH,
                middle(text, MARGIN + width() / 2, fit, bold ? Picture.Weight.BOLD : Picture.Weight.REGULAR, bold ? Type.HEAD : Type.INK));
    }

    /** Words in the middle of the page, broken into lines no wider than it. */
    public void centredWords(String text, double size) {
        pages.begin(Tag.Role.PARAGRAPH);
        for (String l : Type.wrapped(text, width(), size)) {
            require(size * Type.LEADING);
            y += size * Type.LEADING;
            pages.put(middle(l, MARGIN + width() / 2, size, Picture.Weight.REGULAR, Type.INK));
        }
        pages.end();
    }

    public void space(double inches) {
        y += inches;
    }

    /** The chapters so far, in order. */
    public List<Chapter> chapters() {
        return List.copyOf(chapters);
    }

    /** The pages so far, each as large as the paper, numbered but for the first. */
    public List<Picture> pages() {
        return pages.on(paper, foot, MARGIN, width(), chapters);
    }

    /** White paper, so that a page has its own size wherever it is shown. */
    public static Picture sheet(Paper paper) {
        return new Picture.Shape(List.of(Path.rectangle(Box.of(paper.width(), paper.height()))), Paint.of(Colour.WHITE), Pen.NONE).tagged(Tag.of(Tag.Role.FURNITURE));
    }
}
