package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.book.page.PageFlow;
import org.calicograph.colour.Colour;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/** What is settled before the first cut, and then cloth by cloth what is cut: list and layout from one plan. */
record CuttingPages(Booklet booklet, Cutting cutting) {

    void setBefore(PageFlow flow) {
        CuttingRules rules = booklet.rules();
        flow.chapter("Before cutting");
        flow.points(List.of(
                "Read the booklet through once.",
                "Wash and press the fabric if you will wash the quilt, all of it in the same way.",
                "Find the straight grain and cut the first edge across it. A print that runs one way is laid so that it stands upright in the quilt.",
                "All sizes are for " + rules.text(rules.seam()) + " seams. Sew two strips together, press, and measure across both: the seam is right "
                        + "when they are as wide as their cut widths less two seam allowances.",
                "Cut one piece of each kind and sew one block before the rest is cut."));
        flow.caution(Cutting.CAUTION);
    }

    void set(PageFlow flow) {
        CuttingRules rules = booklet.rules();
        flow.chapter("Cutting");
        flow.paragraph("Each cloth in its order: the strips across it first, edge to edge, numbered as in the drawing, then what each strip gives. "
                + "Tick off each row. Triangles are cut large where a ruler has no line for them; the exact size stands beside.");
        flow.caution(Cutting.CAUTION);
        for (FabricCut f : cutting.fabrics()) {
            Table pieces = f.table(rules);
            Table strips = f.strips(rules);
            flow.heading(f.name() + ": " + f.yardage().asked(rules), Math.min(flow.height(strips) + flow.height(pieces) + 2.9, flow.page() - 1));
            flow.table(strips, true);
            flow.picture(Described.layout(f, rules, f.picture(rules)), 4.6, f.caption(rules));
            flow.table(pieces, true);
        }
        flow.heading("Labels for the piles", 1.6);
        flow.paragraph("Cut these out and pin each on its pile.");
        flow.grid(4, 0.62, labels());
    }

    private List<PageFlow.Figure> labels() {
        List<PageFlow.Figure> all = new ArrayList<>();
        for (FabricCut f : cutting.fabrics()) {
            for (Piece p : f.pieces()) {
                all.add(new PageFlow.Figure(Described.label(p, label(p)), "", ""));
            }
        }
        return all;
    }

    private Picture label(Piece p) {
        Picture frame = new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, 1.6, 0.62))), Paint.NONE, Pen.of(Colour.hex("#55524d"), 0.01).dashed(0.06, 0.04));
        return Picture.group(frame,
                new Picture.Lettering(p.letter(), new Point(0.1, 0.44), 0.34, Picture.Anchor.START, Picture.Weight.BOLD, Colour.hex("#2b2b2b")),
                new Picture.Lettering(p.fabric().name(), new Point(1.52, 0.26), 0.125, Picture.Anchor.END, Picture.Weight.REGULAR, Colour.hex("#2b2b2b")),
                new Picture.Lettering(p.count() + (p.count() == 1 ? " piece" : " pieces"), new Point(1.52, 0.5), 0.125, Picture.Anchor.END, Picture.Weight.REGULAR,
                        Colour.hex("#2b2b2b")));
    }

}
