package org.calicograph.book;

import org.calicograph.book.page.PageFlow;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Table;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;

/** For whoever teaches from it: every measure of the quilt in two tables. */
record TeacherPage(Booklet booklet, Cutting cutting, SewingPlan plan) {

    void set(PageFlow flow) {
        CuttingRules rules = booklet.rules();
        flow.chapter("All measures, for the teacher");
        Table pieces = Table.of("Pieces", "Letter", "Fabric", "How many", "Shape", "Finished size");
        for (FabricCut f : cutting.fabrics()) {
            for (Piece p : f.pieces()) {
                pieces = pieces.row(p.letter(), f.name(), p.count(), p.method().shape(), p.size(rules));
            }
        }
        flow.table(pieces);
        Table works = Table.of("Works", "What is sewn", "Make", "Finished size", "Steps");
        for (Stage s : plan.stages()) {
            works = works.row(s.name(), s.count(), rules.exact(s.work().width()) + " x " + rules.exact(s.work().height()), s.chains().size());
        }
        flow.table(works);
    }
}
