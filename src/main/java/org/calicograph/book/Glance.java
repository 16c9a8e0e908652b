package org.calicograph.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.book.page.PageFlow;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.finishing.Finishing;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.patchwork.Patch;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;

/** What the quilt takes: cloths with their swatches, notions and tools, and a page of its lines to colour in. */
record Glance(Booklet booklet, Cutting cutting, SewingPlan plan, Finishing finishing) {

    void set(PageFlow flow) {
        CuttingRules rules = booklet.rules();
        flow.chapter("At a glance");
        flow.heading("Fabric", 1.5);
        List<PageFlow.Figure> swatches = new ArrayList<>();
        for (FabricCut f : cutting.fabrics()) {
            swatches.add(new PageFlow.Figure(Described.swatch(f, swatch(f)), f.name(), "buy " + f.yardage().asked(rules)));
        }
        flow.grid(Math.max(4, Math.min(6, swatches.size())), 0.7, swatches);
        Table key = Table.of("Fabric", "Fabric", "Buy", "Pieces", "What it is for");
        Map<String, Set<String>> uses = uses();
        for (FabricCut f : cutting.fabrics()) {
            key = key.row(f.name(), f.yardage().asked(rules), f.pieces().stream().mapToInt(Piece::count).sum(),
                    String.join(", ", uses.getOrDefault(f.name(), Set.of("the top"))));
        }
        flow.table(key);
        flow.paragraph(cutting.assumptions());
        flow.heading("Backing, batting and binding", 2.2);
        flow.table(finishing.table());
        flow.heading("Notions and tools", 1.0);
        flow.points(List.of("Rotary cutter, cutting mat and a ruler with " + rules.text(rules.rulerStep()) + " lines",
                "Thread for piecing and for quilting; a new machine needle for each", "Pins, a seam ripper, chalk or a marker that you have tried on a scrap",
                "Iron and pressing board"));
    }

    /** A page of lines alone. */
    void setColouring(PageFlow flow) {
        flow.heading("To colour in", 5.5);
        flow.picture(Described.lines(booklet.quilt().top().patchCount(), lines()), flow.page() - 1, "Copy this page before you colour it; letters of the fabrics can stand where no colours are at hand.");
    }

    private Picture lines() {
        Box box = booklet.quilt().top().outline().bounds();
        double seam = Math.max(box.width(), box.height()) / 900;
        List<Picture> parts = new ArrayList<>();
        for (Patch p : booklet.quilt().top().patches()) {
            parts.add(new Picture.Shape(p.shape().paths(), Paint.NONE, Pen.of(org.calicograph.colour.Colour.hex("#55524d"), seam)));
        }
        return Picture.group(parts);
    }

    private static Picture swatch(FabricCut f) {
        return new Picture.Shape(List.of(Path.rectangle(new Box(0, 0, 1.2, 0.6))), Paint.of(f.fabric()), Pen.of(org.calicograph.colour.Colour.hex("#55524d"), 0.01));
    }

    /** For each fabric the blocks and other works in which its pieces are sewn. */
    private Map<String, Set<String>> uses() {
        Map<String, String> fabricOf = new LinkedHashMap<>();
        cutting.fabrics().forEach(f -> f.pieces().forEach(p -> fabricOf.put(p.letter(), f.name())));
        Map<String, Set<String>> uses = new LinkedHashMap<>();
        for (Stage s : plan.stages()) {
            for (String letter : s.letters().values()) {
                if (fabricOf.containsKey(letter)) {
                    uses.computeIfAbsent(fabricOf.get(letter), x -> new LinkedHashSet<>()).add(s.name());
                }
            }
        }
        booklet.quilt().binding().ifPresent(b -> uses.computeIfAbsent(b.name(), x -> new LinkedHashSet<>()).add("binding"));
        return uses;
    }
}
