package org.calicograph.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.calicograph.book.page.PageFlow;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.piecing.Chain;
import org.calicograph.piecing.Laying;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;
import org.calicograph.seams.SeamKind;

/** What is sewn, innermost first: each block step by step, an appliqué once its ground is there, and then what joins them. */
record SewingPages(SewingPlan plan, CuttingRules rules) {

    void set(PageFlow flow) {
        flow.chapter("Sewing");
        flow.paragraph("A capital letter is a piece as it was cut; a small letter is what an earlier step of the same block made. Sew alike ones "
                + "after another without cutting the thread between them. Press each seam before the next one crosses it, the way its arrow points. "
                + "The size beside a step has its seam allowances on: check one before you sew the rest.");
        flow.caution(SewingPlan.CAUTION);
        Set<SewingPlan.Laid> told = new HashSet<>();
        for (Stage s : plan.stages()) {
            for (SewingPlan.Laid l : plan.layings()) {
                if (s.letters().containsValue(l.laying().applique().name()) && told.add(l)) {
                    laid(flow, l);
                }
            }
            stage(flow, s);
        }
        for (SewingPlan.Laid l : plan.layings()) {
            if (told.add(l)) {
                laid(flow, l);
            }
        }
    }

    /** The stage drawn apart beside the way its seams are pressed, and then step by step. */
    private void stage(PageFlow flow, Stage s) {
        boolean block = s.work() instanceof Block;
        if (block && s.chains().size() <= 2) {
            small(flow, s);
            return;
        }
        double tall = Math.min(block ? 2.6 : 3.6, 3.2 * s.work().height().ratioTo(s.work().width()));
        int columns = block ? 4 : 3;
        double largest = block ? 1.1 : 1.8;
        List<PageFlow.Figure> steps = steps(s);
        double above = Math.max(1.0, tall) + 1.3;
        double whole = above + flow.height(columns, largest, steps);
        flow.heading(s.name() + ": make " + s.count(), whole <= flow.page() - 0.6 ? whole
                : above + flow.height(columns, largest, steps.subList(0, Math.min(columns, steps.size()))));
        flow.grid(2, tall, whole(s));
        words(flow, s);
        flow.grid(columns, largest, steps);
    }

    /** A unit of one or two seams has all its drawings in a row. */
    private void small(PageFlow flow, Stage s) {
        List<PageFlow.Figure> all = new ArrayList<>(whole(s));
        all.addAll(steps(s));
        flow.heading(s.name() + ": make " + s.count(), flow.height(4, 1.3, all));
        flow.grid(4, 1.3, all);
        words(flow, s);
    }

    private List<PageFlow.Figure> whole(Stage s) {
        return List.of(new PageFlow.Figure(Described.apart(s, s.exploded()), "", size(s.work().width(), s.work().height()) + " finished, drawn apart"),
                new PageFlow.Figure(Described.pressed(s, s.pressed()), "", s.pressing().conflicts().isEmpty() ? "press as the arrows point; the seams nest"
                        : "press as the arrows point"));
    }

    private static void words(PageFlow flow, Stage s) {
        if (!s.warnings().isEmpty()) {
            flow.paragraph(s.warnings());
        }
        if (!s.pressing().words().isEmpty()) {
            flow.paragraph(s.pressing().words());
        }
    }

    private List<PageFlow.Figure> steps(Stage s) {
        List<PageFlow.Figure> steps = new ArrayList<>();
        List<Picture> drawn = s.steps();
        for (Chain c : s.chains()) {
            String seam = c.sample().kind() == SeamKind.STRAIGHT ? "" : "; " + c.sample().kind() + (c.how().isEmpty() ? "" : ": " + c.how());
            String size = c.finished().map(f -> f.withSeams(rules.seam())).map(f -> "; " + size(f.width(), f.height())).orElse("");
            steps.add(new PageFlow.Figure(Described.step(c, drawn.get(c.number() - 1)), c.name() + " = " + c.what(), "make " + c.times() + size + seam));
        }
        return steps;
    }

    private String size(Length width, Length height) {
        return rules.exact(width) + " x " + rules.exact(height);
    }

    private void laid(PageFlow flow, SewingPlan.Laid l) {
        String name = l.laying().applique().name();
        flow.heading(name + ": lay " + l.count(), 4.6);
        flow.paragraph(Laying.ORDER);
        flow.caution(Laying.CAUTION);
        flow.picture(Described.placement(name, l.laying().table().rows().size(), l.laying().placement()), 4.8, "the order in which the shapes are laid; the sheets at the end have it at full size");
        Table order = l.laying().table();
        Table shorter = Table.of(order.title(), "Order", "Shape", "Fabric");
        for (List<Table.Entry> row : order.rows()) {
            shorter = shorter.row(row.get(0), row.get(1), row.get(2));
        }
        flow.table(shorter, true);
    }
}
