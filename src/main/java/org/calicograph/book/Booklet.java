package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.quilting.Batting;
import org.calicograph.show.PatchworkPicture;
import org.calicograph.piecing.Chain;
import org.calicograph.cutting.Cutting;
import org.calicograph.costing.Estimate;
import org.calicograph.cutting.FabricCut;
import org.calicograph.finishing.Finishing;
import org.calicograph.costing.Rates;
import org.calicograph.piecing.Laying;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;
import org.calicograph.cutting.layout.LayoutPicture;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.seams.SeamKind;

/**
 * A booklet that a stranger can sew a quilt from.
 *
 * @param paper   every page's size
 * @param batting what goes in the middle; it says how far apart the quilting may lie
 */
public record Booklet(Quilt quilt, CuttingRules rules, Paper paper, Batting batting) implements Drawable {

    /** Shares of the width that the columns of a cutting table take. */
    private static final double[] COLUMNS = {0.07, 0.08, 0.14, 0.17, 0.16, 0.14, 0.24};

    /** On A4, with inch rules and a batting of unknown make. */
    public static Booklet of(Quilt quilt) {
        return new Booklet(quilt, CuttingRules.INCH, Paper.A4, Batting.UNKNOWN);
    }

    public static Booklet of(Patchwork work) {
        return of(Quilt.of(work.name(), work));
    }

    /**
     * A booklet of a quilt, of patchwork, or of a booklet itself.
     *
     * @throws IllegalArgumentException if the value is none of these
     */
    public static Booklet ofAny(Object value) {
        if (value instanceof Booklet booklet) {
            return booklet;
        }
        if (value instanceof Quilt quilt) {
            return of(quilt);
        }
        if (value instanceof Patchwork work) {
            return of(work);
        }
        throw new IllegalArgumentException("a booklet is made of a quilt or of patchwork, not of "
                + (value == null ? "nothing" : value.getClass().getSimpleName()) + "; name a quilt");
    }

    public Booklet on(Paper other) {
        return new Booklet(quilt, rules, other, batting);
    }

    public Booklet with(CuttingRules other) {
        return new Booklet(quilt, other, paper, batting);
    }

    public Booklet with(Batting other) {
        return new Booklet(quilt, rules, paper, other);
    }

    /** Every page, each exactly as large as the paper, templates at full size last. */
    public List<Picture> pages() {
        Cutting cutting = Cutting.of(quilt, rules);
        PageFlow flow = new PageFlow(paper, quilt.title());
        cover(flow);
        materials(flow, cutting);
        cutting(flow, cutting);
        sewing(flow);
        finishing(flow);
        label(flow);
        estimate(flow, cutting);
        List<Picture> pages = new ArrayList<>(flow.pages());
        Templates.of(quilt.title(), cutting.fabrics().stream().flatMap(f -> f.pieces().stream()).toList(), rules).on(paper).pages()
                .forEach(p -> pages.add(p.over(PageFlow.sheet(paper))));
        return List.copyOf(pages);
    }

    /** The booklet as a PDF; the same quilt gives the same bytes. */
    public byte[] pdf() {
        return PdfWriter.write(pages(), paper.width(), paper.height());
    }

    private String size() {
        return rules.exact(quilt.width()) + " x " + rules.exact(quilt.height());
    }

    private void cover(PageFlow flow) {
        flow.space(0.5);
        flow.centred(quilt.title(), 0.55, true);
        flow.space(0.12);
        flow.centred(size() + " finished", 0.19, false);
        flow.space(0.4);
        flow.picture(PatchworkPicture.of(quilt), flow.room() - 1.0, "");
        flow.space(0.1);
        flow.centred(quilt.top().patchCount() + " patches", 0.15, false);
    }

    private void materials(PageFlow flow, Cutting cutting) {
        flow.chapter("Before you begin");
        flow.paragraph("Read the booklet through once. Wash and press the fabric if you will wash the quilt. All sizes are for "
                + rules.text(rules.seam()) + " seams; sew a test seam and measure it before the first block.");
        flow.caution(Cutting.CAUTION + " " + SewingPlan.CAUTION);
        flow.heading("Notions", 1.0);
        flow.points(List.of("Rotary cutter, cutting mat and a ruler with " + rules.text(rules.rulerStep()) + " lines",
                "Thread for piecing and for quilting; a new machine needle for each", "Pins, a seam ripper, chalk or a marker that you have tried on a scrap",
                "Iron and pressing board"));
        flow.heading("Fabric", 1.2);
        Table fabrics = Table.of("Fabric", "Fabric", "Buy", "Laid out on", "No layout can be below");
        for (FabricCut f : cutting.fabrics()) {
            fabrics = fabrics.row(f.fabric().name(), f.yardage().asked(rules),
                    rules.text(f.layout().length().roundedUpTo(rules.rulerStep())) + " of cloth",
                    rules.exact(f.layout().bound().length()) + ": " + f.layout().bound().reason());
        }
        flow.table(fabrics, 0.22, 0.13, 0.2, 0.45);
        flow.paragraph(cutting.assumptions());
        double[] columns = {0.17, 0.13, 0.32, 0.38};
        Table finishing = Finishing.of(quilt.width(), quilt.height(), rules).table();
        flow.heading("Backing, batting and binding", flow.height(finishing, columns) + 0.3);
        flow.table(finishing, columns);
    }

    private void cutting(PageFlow flow, Cutting cutting) {
        flow.chapter("Cutting");
        flow.paragraph("Cut the largest pieces first, in the order of the layout: the strips numbered beside it are cut across "
                + "the cloth, edge to edge, and then cut on. The exact size stands beside the one on the ruler; triangles are cut large.");
        for (FabricCut f : cutting.fabrics()) {
            Table table = f.table(rules);
            // With its layout on the page, if a page holds both.
            flow.heading(f.fabric().name() + ", " + f.yardage().asked(rules), Math.min(flow.height(table, COLUMNS) + 2.9, 7));
            flow.table(table, COLUMNS);
            flow.space(0.12);
            flow.table(f.strips(rules), 0.1, 0.15, 0.3, 0.45);
            flow.picture(LayoutPicture.of(f.toCut(rules), f.fabric().colour(), rules::text, b -> f.cutsWithin(b, rules)), 2.3, 4.8, f.caption(rules));
        }
    }

    private void sewing(PageFlow flow) {
        flow.chapter("Sewing");
        flow.paragraph("Sew alike units one after another without cutting the thread between them. Press each seam before the "
                + "next one crosses it, the way its arrow points. A letter is a piece, and 'unit 3' is what step 3 made.");
        flow.caution(SewingPlan.CAUTION);
        SewingPlan plan = SewingPlan.of(quilt.title(), quilt.top(), rules);
        for (Stage s : plan.stages()) {
            stage(flow, s);
        }
        for (SewingPlan.Laid l : plan.layings()) {
            flow.heading(l.caption(), 4.6);
            flow.paragraph(Laying.ORDER);
            flow.caution(Laying.CAUTION);
            flow.picture(l.laying().placement(), 2.8, 4.8, "");
            flow.table(l.laying().table(), 0.12, 0.22, 0.22, 0.22, 0.22);
        }
    }

    /** The stage drawn apart beside the way its seams are pressed, and then step by step. */
    private void stage(PageFlow flow, Stage s) {
        boolean block = s.work() instanceof Block;
        double tall = Math.min(block ? 2.6 : 3.6, 3.2 * s.work().height().ratioTo(s.work().width()));
        int columns = block ? 4 : 3;
        double largest = block ? 1.1 : 1.8;
        List<Chain> chains = s.chains();
        boolean oneRow = chains.size() == 1 && chains.get(0).how().isEmpty() && !block;
        List<PageFlow.Figure> steps = oneRow ? List.of() : steps(s);
        // With all its steps on the page if a page holds them, else with the first row of them.
        double above = Math.max(1.0, tall) + 1.3;
        double whole = above + flow.height(columns, largest, steps);
        flow.heading(s.name() + ", " + (s.count() == 1 ? "make 1" : "make " + s.count()), whole <= flow.page() - 0.6 ? whole
                : above + flow.height(columns, largest, steps.subList(0, Math.min(columns, steps.size()))));
        flow.grid(2, tall, List.of(
                new PageFlow.Figure(s.exploded(), "", rules.exact(s.work().width()) + " x " + rules.exact(s.work().height()) + " finished, drawn apart"),
                new PageFlow.Figure(s.pressed(), "", s.pressing().conflicts().isEmpty() ? "press as the arrows point; the seams nest"
                        : "press as the arrows point")));
        if (!s.warnings().isEmpty()) {
            flow.paragraph(s.warnings());
        }
        if (!s.pressing().words().isEmpty()) {
            flow.paragraph(s.pressing().words());
        }
        if (oneRow) {
            flow.paragraph("Sew " + chains.get(0).what() + " in one row.");
        } else {
            flow.grid(columns, largest, steps);
        }
    }

    private static List<PageFlow.Figure> steps(Stage s) {
        List<PageFlow.Figure> steps = new ArrayList<>();
        List<Picture> drawn = s.steps();
        for (Chain c : s.chains()) {
            String seam = c.sample().kind() == SeamKind.STRAIGHT ? "" : "; " + c.sample().kind() + (c.how().isEmpty() ? "" : ": " + c.how());
            steps.add(new PageFlow.Figure(drawn.get(c.number() - 1), c.number() + "  " + c.what(), (c.times() == 1 ? "once" : c.times() + " times, in a chain") + seam));
        }
        return steps;
    }

    private void finishing(PageFlow flow) {
        Finishing f = Finishing.of(quilt.width(), quilt.height(), rules);
        Finishing.Backing back = f.backing();
        flow.chapter("Quilting and finishing");
        flow.points(List.of(
                "Join the backing from " + back.widths() + (back.widths() == 1 ? " length" : " lengths") + " of " + rules.text(back.each())
                        + (back.widths() == 1 ? "." : back.upright() ? "; the seams run down the quilt." : "; the seams run across the quilt.")
                        + " Trim the selvages off before you sew, and press the seams open.",
                "Lay the backing wrong side up, the batting on it, the top right side up; smooth each from the middle. Baste.",
                "Quilt from the middle outwards, lines at most " + rules.text(batting.widestGap()) + " apart: " + (batting.equals(Batting.UNKNOWN)
                        ? "no batting is chosen, and where its maker states nothing that is as far as the usual advice goes."
                        : "that is the usual limit of " + batting.name() + ".") + " What its package says comes before this.",
                "Trim the edges square. Measure the quilt through the middle, not along its edge.",
                "Join " + f.bindingStrips() + " strips of " + rules.text(f.how().strip()) + " slantwise into "
                        + rules.text(rules.taped(f.bindingLength())) + " of binding, fold it in two lengthwise and press. Sew it to the front, raw edges "
                        + "level, mitring the corners; turn it to the back and sew it down.",
                "For hanging, hem a sleeve of " + rules.text(f.how().sleeve()) + " cut height, fold it in two, and sew it behind the top edge."));
        flow.caution("Needles break: wear glasses when you quilt by machine, and count pins in and out. " + SewingPlan.CAUTION);
    }

    private void estimate(PageFlow flow, Cutting cutting) {
        Estimate estimate = Estimate.of(quilt, cutting, Rates.USUAL);
        flow.chapter("Time and cost");
        flow.paragraph(estimate.assumptions());
        flow.heading("Time", 1.6);
        flow.table(estimate.time(), 0.2, 0.28, 0.37, 0.15);
        flow.heading("Cost", 2.0);
        flow.table(estimate.costs(), 0.3, 0.27, 0.25, 0.18);
    }

    private void label(PageFlow flow) {
        double height = 2.6;
        flow.heading("Label, for the back of the quilt or the wall beside it", height + 0.1);
        flow.label(quilt.title(), size(), height);
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        List<Picture> pages = pages();
        for (int i = 0; i < pages.size(); i++) {
            parts.add(Exhibit.of(pages.get(i), "page " + (i + 1) + " of " + pages.size()));
        }
        return new Exhibit.Several(parts);
    }
}
