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
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/** Cards half a sheet large. The smallest letters are a good 1/4 in: read from six feet by most eyes (an inch to 25 ft, common practice, from memory). */
final class WallCards {

    private static final double TITLE = 0.6;
    private static final double NAME = 0.4;
    private static final double WORDS = 0.27;

    private WallCards() { }

    /** @throws IllegalArgumentException if the words of one don't fit its card */
    static Sheaf of(Exhibition show) {
        Paper paper = show.paper();
        // Half a sheet, lying.
        Paper card = new Paper("card", paper.width(), paper.height().half());
        List<Picture> pages = new ArrayList<>();
        for (int i = 0; i < show.entries().size(); i += 2) {
            List<Picture> parts = new ArrayList<>();
            parts.add(PageFlow.sheet(paper));
            for (int k = i; k < Math.min(i + 2, show.entries().size()); k++) {
                parts.add(card(show.entries().get(k), k + 1, card).moved(0, (k - i) * card.height().inInches()));
            }
            double half = card.height().inInches();
            parts.add(new Picture.Shape(List.of(Path.through(new Point(0, half), new Point(paper.width().inInches(), half))), Paint.NONE,
                    Pen.of(Colour.hex("#8a867e"), 0.01).dashed(0.1, 0.1)).tagged(Tag.of(Tag.Role.FURNITURE)));
            pages.add(Picture.group(parts));
        }
        return new Sheaf(show.title() + ", cards", paper, pages);
    }

    private static Picture card(ShowEntry e, int number, Paper card) {
        double spare = set(e, number, card, 0).room();
        PageFlow flow = set(e, number, card, Math.max(0, spare / 2 - 0.1));
        if (flow.pages().size() > 1) {
            throw new IllegalArgumentException("what " + e.maker() + " says of '" + e.title() + "' is too long for a card at letters that can be read from across an aisle; say it in about "
                    + 180 + " letters, not " + e.words().length());
        }
        return flow.pages().get(0);
    }

    private static PageFlow set(ShowEntry e, int number, Paper card, double above) {
        PageFlow flow = new PageFlow(card, e.title());
        flow.space(above);
        flow.centred(number + "  " + e.title(), TITLE, true);
        flow.space(0.08);
        flow.centred(e.maker(), NAME, false);
        flow.space(0.1);
        flow.centred(e.size(), WORDS, false);
        if (!e.words().isEmpty()) {
            flow.space(0.15);
            flow.centredWords(e.words(), WORDS);
        }
        return flow;
    }
}
