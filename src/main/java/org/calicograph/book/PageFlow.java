package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/** Sets headings, paragraphs, tables and pictures on pages, from the top down. */
final class PageFlow {

    private static final double MARGIN = 0.75;
    private static final double BODY = 0.145;
    private static final double SMALL = 0.115;
    private static final double LEADING = 1.42;
    private static final Colour INK = Colour.hex("#2b2b2b");
    private static final Colour QUIET = Colour.hex("#6d6a64");
    private static final Colour HEAD = Colour.hex("#24425c");
    private static final Colour BAND = Colour.hex("#f1eee7");

    private final Paper paper;
    private final String foot;
    private final List<List<Picture>> pages = new ArrayList<>();
    private double y;

    PageFlow(Paper paper, String foot) {
        this.paper = paper;
        this.foot = foot;
        turnPage();
    }

    private double width() {
        return paper.width().inInches() - 2 * MARGIN;
    }

    private double bottom() {
        return paper.height().inInches() - MARGIN - 0.25;
    }

    /** Room left on the page. */
    double room() {
        return bottom() - y;
    }

    /** What a whole page holds. */
    double page() {
        return bottom() - MARGIN;
    }

    void turnPage() {
        pages.add(new ArrayList<>());
        y = MARGIN;
    }

    private boolean isFresh() {
        return pages.get(pages.size() - 1).isEmpty();
    }

    private void put(Picture picture) {
        pages.get(pages.size() - 1).add(picture);
    }

    private void require(double height) {
        if (height > room() && !isFresh()) {
            turnPage();
        }
    }

    void chapter(String title) {
        if (!isFresh()) {
            turnPage();
        }
        y += 0.3;
        line(title, MARGIN, 0.3, Picture.Weight.BOLD, HEAD);
        y += 0.12;
        put(rule(y));
        y += 0.28;
    }

    /** A heading with room for what follows it. */
    void heading(String title, double following) {
        require(0.6 + following);
        if (!isFresh()) {
            y += 0.22;
        }
        y += 0.2;
        line(title, MARGIN, 0.2, Picture.Weight.BOLD, INK);
        y += 0.16;
    }

    private Picture rule(double at) {
        return new Picture.Shape(List.of(Path.through(new Point(MARGIN, at), new Point(MARGIN + width(), at))), Paint.NONE, Pen.of(HEAD, 0.012));
    }

    private void line(String text, double x, double size, Picture.Weight weight, Colour colour) {
        put(new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, weight, colour));
    }

    void paragraph(String text) {
        for (String part : text.split("\n")) {
            List<String> lines = wrapped(part, width(), BODY);
            require(Math.min(lines.size(), 2) * BODY * LEADING);
            for (String l : lines) {
                require(BODY * LEADING);
                y += BODY * LEADING;
                line(l, MARGIN, BODY, Picture.Weight.REGULAR, INK);
            }
            y += BODY * 0.7;
        }
    }

    void points(List<String> items) {
        for (String item : items) {
            List<String> lines = wrapped(item, width() - 0.25, BODY);
            require(lines.size() * BODY * LEADING);
            for (int i = 0; i < lines.size(); i++) {
                y += BODY * LEADING;
                if (i == 0) {
                    line("•", MARGIN + 0.05, BODY, Picture.Weight.REGULAR, HEAD);
                }
                line(lines.get(i), MARGIN + 0.25, BODY, Picture.Weight.REGULAR, INK);
            }
            y += BODY * 0.4;
        }
        y += BODY * 0.4;
    }

    /** A cautionary note in a box. */
    void caution(String text) {
        List<String> lines = wrapped(text, width() - 0.5, BODY);
        double height = (lines.size() + 1) * BODY * LEADING + 0.3;
        require(height);
        put(new Picture.Shape(List.of(Path.rectangle(new Box(MARGIN, y, MARGIN + width(), y + height))), Paint.of(Colour.hex("#fbf1e3")),
                Pen.of(Colour.hex("#b5553c"), 0.015)));
        double top = y;
        y += 0.1 + BODY * LEADING;
        line("Take care", MARGIN + 0.25, BODY, Picture.Weight.BOLD, Colour.hex("#8e3b25"));
        for (String l : lines) {
            y += BODY * LEADING;
            line(l, MARGIN + 0.25, BODY, Picture.Weight.REGULAR, INK);
        }
        y = top + height + 0.18;
    }

    /** A picture in the middle, as large as fits the width and the given height. */
    void picture(Picture picture, double most, String caption) {
        Box box = picture.bounds();
        double scale = Math.min(width() / box.width(), most / box.height());
        double height = box.height() * scale;
        double under = caption.isEmpty() ? 0.15 : 0.38;
        require(height + under);
        double left = MARGIN + (width() - box.width() * scale) / 2;
        put(picture.transformed(Transform.move(-box.left(), -box.top()).then(Transform.scale(scale)).then(Transform.move(left, y))));
        y += height;
        if (!caption.isEmpty()) {
            put(new Picture.Lettering(caption, new Point(MARGIN + width() / 2, y + 0.2), SMALL, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, QUIET));
        }
        y += under;
    }

    /** The same, made smaller to stay on the page if at least the least height is left there. */
    void picture(Picture picture, double least, double most, String caption) {
        double left = room() - 0.45;
        picture(picture, left >= least ? Math.min(most, left) : most, caption);
    }

    /** A picture with a line above all in bold and words beneath; either may be empty. */
    record Figure(Picture picture, String title, String words) { }

    /** Figures side by side, none larger than its place or the given height; a row is never parted. */
    void grid(int columns, double largest, List<Figure> figures) {
        double place = width() / columns;
        double room = place - 0.25;
        // A little smaller rather than a last row alone on the next page.
        double size = largest;
        for (double smaller : new double[] {1, 0.9, 0.8, 0.7}) {
            if (height(columns, largest * smaller, figures) <= room()) {
                size = largest * smaller;
                break;
            }
        }
        for (int from = 0; from < figures.size(); from += columns) {
            List<Figure> row = figures.subList(from, Math.min(figures.size(), from + columns));
            double tallest = tallest(row, room, size);
            double words = row.stream().mapToDouble(f -> captions(f, room).size() * SMALL * LEADING).max().orElseThrow();
            require(tallest + words + 0.16);
            double top = y;
            for (int i = 0; i < row.size(); i++) {
                Figure f = row.get(i);
                double scale = scale(f, room, size);
                Box box = f.picture().bounds();
                double middle = MARGIN + place * (i + 0.5);
                put(f.picture().transformed(Transform.move(-box.centre().x(), -box.bottom()).then(Transform.scale(scale))
                        .then(Transform.move(middle, top + tallest))));
                y = top + tallest + 0.06;
                int titled = f.title().isEmpty() ? 0 : wrapped(f.title(), room, SMALL).size();
                for (String l : captions(f, room)) {
                    y += SMALL * LEADING;
                    put(new Picture.Lettering(l, new Point(middle, y), SMALL, Picture.Anchor.MIDDLE,
                            titled > 0 ? Picture.Weight.BOLD : Picture.Weight.REGULAR, titled-- > 0 ? INK : QUIET));
                }
            }
            y = top + tallest + words + 0.3;
        }
    }

    /** How high a grid is on one page. */
    double height(int columns, double most, List<Figure> figures) {
        double room = width() / columns - 0.25;
        double sum = 0;
        for (int from = 0; from < figures.size(); from += columns) {
            List<Figure> row = figures.subList(from, Math.min(figures.size(), from + columns));
            sum += tallest(row, room, most) + 0.3 + row.stream().mapToDouble(f -> captions(f, room).size() * SMALL * LEADING).max().orElseThrow();
        }
        return sum;
    }

    private static double tallest(List<Figure> row, double room, double most) {
        return row.stream().mapToDouble(f -> f.picture().bounds().height() * scale(f, room, most)).max().orElseThrow();
    }

    private static double scale(Figure f, double room, double most) {
        return Math.min(room / f.picture().bounds().width(), most / f.picture().bounds().height());
    }

    private static List<String> captions(Figure f, double room) {
        List<String> lines = new ArrayList<>(f.title().isEmpty() ? List.of() : wrapped(f.title(), room, SMALL));
        lines.addAll(f.words().isEmpty() ? List.of() : wrapped(f.words(), room, SMALL));
        return lines;
    }

    /** @param shares each column's share of the width; they add up to 1 */
    void table(Table table, double... shares) {
        if (shares.length != table.columns().size()) {
            throw new IllegalArgumentException("the table '" + table.title() + "' has " + table.columns().size() + " columns but "
                    + shares.length + " shares; give one for each");
        }
        List<List<List<String>>> rows = new ArrayList<>();
        for (List<Table.Entry> row : table.rows()) {
            rows.add(cells(row.stream().map(Table.Entry::text).toList(), shares));
        }
        List<List<String>> head = cells(table.columns(), shares);
        require(height(head) + (rows.isEmpty() ? 0 : height(rows.get(0))));
        row(head, shares, Picture.Weight.BOLD, true);
        boolean banded = false;
        for (List<List<String>> row : rows) {
            if (height(row) > room() && !isFresh()) {
                turnPage();
                row(head, shares, Picture.Weight.BOLD, true);
            }
            row(row, shares, Picture.Weight.REGULAR, banded);
            banded = !banded;
        }
        y += 0.2;
    }

    /** How high a table is on one page. */
    double height(Table table, double... shares) {
        return height(cells(table.columns(), shares)) + 0.2 + table.rows().stream()
                .mapToDouble(row -> height(cells(row.stream().map(Table.Entry::text).toList(), shares))).sum();
    }

    private List<List<String>> cells(List<String> texts, double[] shares) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            cells.add(wrapped(texts.get(i), width() * shares[i] - 0.14, SMALL));
        }
        return cells;
    }

    private static double height(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1) * SMALL * LEADING + 0.09;
    }

    private void row(List<List<String>> cells, double[] shares, Picture.Weight weight, boolean banded) {
        double height = height(cells);
        if (banded) {
            put(new Picture.Shape(List.of(Path.rectangle(new Box(MARGIN, y, MARGIN + width(), y + height))),
                    Paint.of(weight == Picture.Weight.BOLD ? Colour.hex("#dfe6e8") : BAND), Pen.NONE));
        }
        double top = y;
        double x = MARGIN;
        for (int c = 0; c < cells.size(); c++) {
            y = top + 0.02;
            for (String l : cells.get(c)) {
                y += SMALL * LEADING;
                line(l, x + 0.07, SMALL, weight, INK);
            }
            x += width() * shares[c];
        }
        y = top + height;
    }

    /** Greedy lines no wider than the width; a word that is wider is broken. */
    private static List<String> wrapped(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" +")) {
            if (!line.isEmpty() && measure(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
            while (measure(line.toString(), size) > width && line.length() > 1) {
                int cut = line.length() - 1;
                while (cut > 1 && measure(line.substring(0, cut), size) > width) {
                    cut--;
                }
                lines.add(line.substring(0, cut));
                line.delete(0, cut);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static double measure(String text, double size) {
        return text.isBlank() ? 0 : Picture.text(text, Point.ORIGIN, size).bounds().width();
    }

    /** A line in the middle of the page. */
    void centred(String text, double size, boolean bold) {
        y += size * LEADING;
        double fit = Math.min(size, size * width() / Math.max(1e-9, measure(text, size)));
        put(new Picture.Lettering(text, new Point(MARGIN + width() / 2, y), fit, Picture.Anchor.MIDDLE,
                bold ? Picture.Weight.BOLD : Picture.Weight.REGULAR, bold ? HEAD : INK));
    }

    /** A card to cut out: title and size, and lines to write on. */
    void label(String title, String size, double height) {
        double wide = Math.min(width(), height * 2);
        double left = MARGIN + (width() - wide) / 2;
        Box card = new Box(left, y, left + wide, y + height);
        put(new Picture.Shape(List.of(Path.rectangle(card)), Paint.of(Colour.hex("#fdfbf6")), Pen.of(HEAD, 0.015)));
        put(new Picture.Shape(List.of(Path.rectangle(card.grownBy(-0.07))), Paint.NONE, Pen.of(HEAD, 0.006)));
        double fit = Math.min(0.3, 0.3 * (wide - 0.6) / Math.max(1e-9, measure(title, 0.3)));
        put(new Picture.Lettering(title, new Point(card.centre().x(), y + 0.5), fit, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, HEAD));
        put(new Picture.Lettering(size, new Point(card.centre().x(), y + 0.76), BODY, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, INK));
        double step = (height - 1.1) / 4;
        double at = y + 0.8;
        for (String line : List.of("Made by", "Quilted by", "Place and year", "Care")) {
            at += step;
            put(new Picture.Lettering(line, new Point(left + 0.3, at), SMALL, Picture.Anchor.START, Picture.Weight.REGULAR, QUIET));
            put(new Picture.Shape(List.of(Path.through(new Point(left + 1.4, at + 0.03), new Point(left + wide - 0.3, at + 0.03))), Paint.NONE, Pen.of(QUIET, 0.006)));
        }
        y += height + 0.2;
    }

    void space(double inches) {
        y += inches;
    }

    /** The pages so far, each as large as the paper, numbered but for the first. */
    List<Picture> pages() {
        List<Picture> out = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Picture> parts = new ArrayList<>();
            parts.add(sheet(paper));
            parts.addAll(pages.get(i));
            if (i > 0) {
                double at = paper.height().inInches() - MARGIN * 0.6;
                parts.add(new Picture.Lettering(foot, new Point(MARGIN, at), SMALL, Picture.Anchor.START, Picture.Weight.REGULAR, QUIET));
                parts.add(new Picture.Lettering("" + (i + 1), new Point(MARGIN + width(), at), SMALL, Picture.Anchor.END, Picture.Weight.REGULAR, QUIET));
            }
            out.add(new Picture.Group(parts, Transform.IDENTITY, Optional.empty()));
        }
        return List.copyOf(out);
    }

    /** White paper, so that a page has its own size wherever it is shown. */
    static Picture sheet(Paper paper) {
        return new Picture.Shape(List.of(Path.rectangle(Box.of(paper.width(), paper.height()))), Paint.of(Colour.WHITE), Pen.NONE);
    }
}
