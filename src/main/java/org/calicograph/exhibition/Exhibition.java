package org.calicograph.exhibition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
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
import org.calicograph.measure.Length;

/**
 * The show: its quilts, numbered from 1 in the order given, and all that is printed for it.
 *
 * @param when  when and where, as it stands on labels and catalogue
 * @param paper what is printed on
 */
public record Exhibition(String title, String when, List<ShowEntry> entries, Paper paper) implements Drawable {

    /** @throws IllegalArgumentException if two quilts have one title and one maker */
    public Exhibition {
        entries = List.copyOf(entries);
        for (int i = 0; i < entries.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (entries.get(i).title().equals(entries.get(j).title()) && entries.get(i).maker().equals(entries.get(j).maker())) {
                    throw new IllegalArgumentException("'" + entries.get(i).title() + "' by " + entries.get(i).maker() + " is in '" + title + "' twice; take one out, or tell the two apart");
                }
            }
        }
    }

    /** A show without quilts yet, printed on A4. */
    public static Exhibition of(String title, String when) {
        return new Exhibition(title, when, List.of(), Paper.A4);
    }

    /** With these quilts too. */
    public Exhibition with(ShowEntry... more) {
        List<ShowEntry> all = new ArrayList<>(entries);
        all.addAll(Arrays.asList(more));
        return new Exhibition(title, when, all, paper);
    }

    /** Printed on other paper. */
    public Exhibition on(Paper other) {
        return new Exhibition(title, when, entries, other);
    }

    /**
     * Which quilt hangs where. At least 12 in between quilts, their middles 60 in above the floor, nothing within 6 in of it
     * (common practice; change each with the plan's own words).
     */
    public HangingPlan hang(HangingWall... walls) {
        return new HangingPlan(this, List.of(walls), Length.inches(12), Length.inches(60), Length.inches(6));
    }

    /** A card to stand or hang beside each quilt, two to a page, in letters that are read from across an aisle. */
    public Sheaf cards() {
        return WallCards.of(this);
    }

    /** A label to print on cloth and sew to each back, four to a page. */
    public Sheaf labels() {
        return QuiltLabels.of(this);
    }

    /** Every quilt with its picture, its maker and what she says of it. */
    public Sheaf catalogue() {
        PageFlow flow = new PageFlow(paper, title);
        flow.space(0.4);
        flow.centred(title, 0.5, true);
        flow.centred(when, 0.24, false);
        flow.centred(entries.size() + (entries.size() == 1 ? " quilt" : " quilts"), 0.2, false);
        flow.space(0.5);
        List<PageFlow.Figure> figures = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            ShowEntry e = entries.get(i);
            figures.add(new PageFlow.Figure(pictureOf(e, i + 1).tagged(Tag.of(Tag.Role.FIGURE, described(e))), (i + 1) + "  " + e.title(), e.maker() + ", " + e.size() + (e.words().isEmpty() ? "" : ". " + e.words())));
        }
        flow.grid(2, 2.6, figures);
        return new Sheaf(title + ", catalogue", paper, flow.pages());
    }

    /** The quilt, or what stands for it. */
    static Picture pictureOf(ShowEntry e, int number) {
        return e.picture().orElseGet(() -> blank(e, number));
    }

    private static String described(ShowEntry e) {
        return e.picture().map(p -> Said.of("The quilt " + e.title(), p)).orElse("In place of a drawing, a plain sheet in the shape of the quilt " + e.title() + " with its number");
    }

    /** What stands for a quilt of which there is no drawing: its size, and its number. */
    static Picture blank(ShowEntry e, int number) {
        double width = e.width().inInches();
        double height = e.height().inInches();
        return Picture.group(new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, width, height))), Paint.of(Colour.hex("#dfe6e8")), Pen.of(Colour.hex("#8a867e"), width / 150)),
                new Picture.Lettering(String.valueOf(number), new Point(width / 2, height / 2 + width / 10), width / 4, Picture.Anchor.MIDDLE, Picture.Weight.BOLD, Colour.hex("#8a9aa3")));
    }

    /**
     * A sheet for every visitor to mark so many quilts.
     *
     * @throws IllegalArgumentException if more are to be marked than there are, or none
     */
    public Sheaf ballot(int marks) {
        if (marks < 1 || marks > entries.size()) {
            throw new IllegalArgumentException("of " + entries.size() + " quilts " + marks + " can't be marked; use 1 to " + entries.size());
        }
        PageFlow flow = new PageFlow(paper, title);
        flow.chapter("Which do you like best?");
        flow.paragraph(title + ". Mark " + marks + (marks == 1 ? " quilt" : " quilts") + ", no more, and put this sheet into the box. The numbers are those on the cards. "
                + "A sheet with more marks than " + marks + " can't be counted.");
        Table table = Table.of("Quilts", "No.", "Quilt", "Maker");
        for (int i = 0; i < entries.size(); i++) {
            table = table.row(String.valueOf(i + 1), entries.get(i).title(), entries.get(i).maker());
        }
        flow.table(table, true);
        return new Sheaf(title + ", voting sheet", paper, flow.pages());
    }

    /** Every quilt with its number and its size. */
    @Override
    public Exhibit show() {
        Table table = Table.of(title + ", " + when, "No.", "Quilt", "Maker", "Size", "What she says");
        for (int i = 0; i < entries.size(); i++) {
            ShowEntry e = entries.get(i);
            table = table.row(String.valueOf(i + 1), e.title(), e.maker(), e.size(), e.words());
        }
        return Exhibit.of(table);
    }
}
