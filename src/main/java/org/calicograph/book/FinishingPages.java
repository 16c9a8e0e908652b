package org.calicograph.book;

import java.util.List;
import org.calicograph.book.page.PageFlow;
import org.calicograph.colour.Colour;
import org.calicograph.costing.Estimate;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.finishing.Finishing;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.quilting.Batting;

/** Quilting, backing, binding, sleeve and label. */
record FinishingPages(Booklet booklet, Finishing finishing) {

    /** Goes with whatever is basted, quilted or hung. */
    static final String CAUTION = "Needles break: wear glasses when you quilt by machine, and count pins in and out. Spray for basting is used outdoors "
            + "or by an open window, away from flames. A wet or finished quilt is heavy: lift it with two, and hang it from a ladder that somebody holds. "
            + "Nothing small that can come off belongs on a quilt for a crib. The makers' instructions and local rules come before these.";

    void set(PageFlow flow) {
        CuttingRules rules = booklet.rules();
        Batting batting = booklet.batting();
        Finishing.Backing back = finishing.backing();
        flow.chapter("Quilting and finishing");
        flow.points(List.of(
                "Join the backing from " + back.widths() + (back.widths() == 1 ? " length" : " lengths") + " of " + rules.text(back.each())
                        + (back.widths() == 1 ? "." : back.upright() ? "; the seams run down the quilt." : "; the seams run across the quilt.")
                        + " Trim the selvedges off before you sew, and press the seams open.",
                "Lay the backing wrong side up, the batting on it, the top right side up; smooth each from the middle. Baste.",
                "Quilt from the middle outwards, lines at most " + rules.text(batting.widestGap()) + " apart: " + (batting.equals(Batting.UNKNOWN)
                        ? "no batting is chosen, and where its maker states nothing that is as far as the usual advice goes."
                        : "that is the usual limit of " + batting.name() + ".") + " What its package says comes before this.",
                finishing.edge().curved() ? "Trim the quilt along its curves, a seam allowance outside the last seam." : "Trim the edges square. Measure the quilt through the middle, not along its edge.",
                binding(),
                "For hanging, hem a sleeve of " + rules.text(finishing.how().sleeve()) + " cut height, fold it in two, and sew it behind the top edge."));
        flow.caution(CAUTION + " " + SewingPlan.CAUTION);
        double height = 2.6;
        flow.heading("Label, for the back of the quilt or the wall beside it", height + 0.1);
        flow.picture(Described.card(label(booklet.quilt().title(), booklet.size(), height)), height, "");
    }

    private String binding() {
        CuttingRules rules = booklet.rules();
        String length = rules.text(rules.taped(finishing.bindingLength())) + " of binding, fold it in two lengthwise and press. Sew it to the front, raw edges level";
        String back = "; turn it to the back and sew it down.";
        if (!finishing.edge().curved()) {
            return "Join " + finishing.bindingStrips() + " strips of " + rules.text(finishing.how().strip()) + " slantwise into " + length + ", mitring the corners" + back;
        }
        String squares = finishing.biasSquares() == 1 ? "Cut the square of " : "Cut each of the " + finishing.biasSquares() + " squares of ";
        return squares + rules.text(finishing.biasSquare()) + " corner to corner, sew its halves into a slanted piece and that into a tube one strip's width out of step, and cut it round and round in a strip of "
                + rules.text(finishing.how().strip()) + (finishing.biasSquares() == 1 ? " into " : "; join these slantwise into ") + length
                + ", easing it round the curves without stretching it, and stop and turn where two curves meet" + back;
    }

    void setEstimate(PageFlow flow, Estimate estimate) {
        flow.chapter("Time and cost");
        flow.paragraph(estimate.assumptions());
        flow.heading("Time", 1.6);
        flow.table(estimate.time());
        flow.heading("Cost", 2.0);
        flow.table(estimate.costs());
    }

    /** A card to cut out: title and size, and lines to write on. */
    private static Picture label(String title, String size, double height) {
        double wide = height * 2;
        Colour head = Colour.hex("#24425c");
        Colour quiet = Colour.hex("#5f5c56");
        Box card = new Box(0, 0, wide, height);
        Picture all = Picture.group(
                new Picture.Shape(List.of(Path.rectangle(card)), Paint.of(Colour.hex("#fdfbf6")), Pen.of(head, 0.015)),
                new Picture.Shape(List.of(Path.rectangle(card.grownBy(-0.07))), Paint.NONE, Pen.of(head, 0.006)));
        double has = Picture.text(title, Point.ORIGIN, 0.3).bounds().width();
        all = new Picture.Lettering(title, new Point(wide / 2, 0.5), Math.min(0.3, 0.3 * (wide - 0.6) / has), Picture.Anchor.MIDDLE, Picture.Weight.BOLD, head).over(all);
        all = new Picture.Lettering(size, new Point(wide / 2, 0.76), 0.145, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, Colour.hex("#2b2b2b")).over(all);
        double at = 0.8;
        for (String line : List.of("Made by", "Quilted by", "Place and year", "Care")) {
            at += (height - 1.1) / 4;
            all = new Picture.Lettering(line, new Point(0.3, at), 0.125, Picture.Anchor.START, Picture.Weight.REGULAR, quiet).over(all);
            all = new Picture.Shape(List.of(Path.through(new Point(1.5, at + 0.03), new Point(wide - 0.3, at + 0.03))), Paint.NONE, Pen.of(quiet, 0.006)).over(all);
        }
        return all;
    }
}
