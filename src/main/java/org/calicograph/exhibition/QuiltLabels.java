package org.calicograph.exhibition;

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
import org.calicograph.drawing.Typeface;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/** Labels of 3 x 2 1/4 in finished, with 1/4 in around to turn under. */
final class QuiltLabels {

    private static final double WIDE = 3;
    private static final double HIGH = 2.25;
    private static final double TURN = 0.25;
    private static final Colour INK = Colour.hex("#2b2b2b");

    private QuiltLabels() { }

    static Sheaf of(Exhibition show) {
        Paper paper = show.paper();
        double margin = 0.6;
        int across = 2;
        int down = (int) Math.floor((paper.height().inInches() - 2 * margin - 0.9) / (HIGH + 2 * TURN + 0.2));
        List<Picture> pages = new ArrayList<>();
        for (int from = 0; from < show.entries().size(); from += across * down) {
            List<Picture> parts = new ArrayList<>();
            parts.add(PageFlow.sheet(paper));
            for (int k = from; k < Math.min(from + across * down, show.entries().size()); k++) {
                int place = k - from;
                parts.add(label(show.entries().get(k), show.when()).moved(margin + place % across * (WIDE + 2 * TURN + 0.2), margin + place / across * (HIGH + 2 * TURN + 0.2)));
            }
            double foot = paper.height().inInches() - margin - 0.42;
            parts.add(line("Print at 100 % on cloth made for printing, by its maker's instructions. Cut on the outer line, turn under on the inner one.", margin, foot, 9.0 / 72, false));
            parts.add(line("Mind the hot iron when you set the ink and press the edges, and the needle when you sew the label down. The makers' instructions come first.", margin, foot + 0.18, 8.4 / 72, false));
            parts.add(line("The inner line is 3 in wide (76.2 mm): measure it on the paper; if it is not, print again.", margin, foot + 0.36, 9.0 / 72, false));
            pages.add(Picture.group(parts));
        }
        return new Sheaf(show.title() + ", labels", paper, pages);
    }

    private static Picture label(ShowEntry e, String when) {
        double middle = TURN + WIDE / 2;
        List<Picture> parts = new ArrayList<>();
        parts.add(frame(0, 0, WIDE + 2 * TURN, HIGH + 2 * TURN, Pen.of(INK, 0.01)));
        parts.add(frame(TURN, TURN, WIDE, HIGH, Pen.of(Colour.hex("#8a867e"), 0.008).dashed(0.06, 0.06)));
        String[] lines = {e.title(), "made by " + e.maker(), when, e.size(), "Wash gently, by the makers' instructions"};
        double[] sizes = {0.26, 0.18, 0.15, 0.15, 0.13};
        double y = TURN + 0.12;
        for (int i = 0; i < lines.length; i++) {
            Picture.Weight weight = i == 0 ? Picture.Weight.BOLD : Picture.Weight.REGULAR;
            double size = Math.min(sizes[i], sizes[i] * (WIDE - 0.3) / Math.max(1e-9, Typeface.of(weight).width(lines[i], sizes[i])));
            y += sizes[i] * 1.75;
            parts.add(new Picture.Lettering(lines[i], new Point(middle, y), size, Picture.Anchor.MIDDLE, weight, INK).tagged(Tag.of(i == 0 ? Tag.Role.TITLE : Tag.Role.PARAGRAPH)));
        }
        return Picture.group(parts);
    }

    private static Picture line(String text, double x, double y, double size, boolean bold) {
        return new Picture.Lettering(text, new Point(x, y), size, Picture.Anchor.START, bold ? Picture.Weight.BOLD : Picture.Weight.REGULAR, INK)
                .tagged(Tag.of(Tag.Role.PARAGRAPH));
    }

    private static Picture frame(double left, double top, double width, double height, Pen pen) {
        return new Picture.Shape(List.of(Path.rectangle(new Box(left, top, left + width, top + height))), Paint.NONE, pen).tagged(Tag.of(Tag.Role.FURNITURE));
    }
}
