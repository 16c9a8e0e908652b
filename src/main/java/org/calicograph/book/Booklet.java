package org.calicograph.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.calicograph.book.page.PageFlow;
import org.calicograph.costing.Estimate;
import org.calicograph.costing.Rates;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tiling;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.finishing.Finishing;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.quilt.Quilt;
import org.calicograph.quilting.Batting;

/**
 * A booklet that a stranger can sew a quilt from.
 *
 * @param paper   every page's size
 * @param batting what goes in the middle; it says how far apart the quilting may lie
 * @param parts   what is printed, one part or more
 */
public record Booklet(Quilt quilt, CuttingRules rules, Paper paper, Batting batting, Set<Part> parts) implements Drawable {

    /** @throws IllegalArgumentException if there is no part */
    public Booklet {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("the booklet of '" + quilt.title() + "' has no part; name one, such as Part.TEMPLATES");
        }
        parts = Collections.unmodifiableSet(EnumSet.copyOf(parts));
    }

    /** On A4, with inch rules and a batting of unknown make. */
    public static Booklet of(Quilt quilt) {
        return new Booklet(quilt, CuttingRules.usual(), Paper.A4, Batting.UNKNOWN, EnumSet.allOf(Part.class));
    }

    /** A booklet of a piece of work, by the usual rules. */
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

    /** The same on other paper. */
    public Booklet on(Paper other) {
        return new Booklet(quilt, rules, other, batting, parts);
    }

    /** The same by other cutting rules. */
    public Booklet with(CuttingRules other) {
        return new Booklet(quilt, other, paper, batting, parts);
    }

    /** The same on another batting. */
    public Booklet with(Batting other) {
        return new Booklet(quilt, rules, paper, other, parts);
    }

    /** These parts of it alone, in the booklet's order. */
    public Booklet only(Part... wanted) {
        return new Booklet(quilt, rules, paper, batting, wanted.length == 0 ? Set.of() : EnumSet.copyOf(List.of(wanted)));
    }

    /**
     * Every page, each exactly as large as the paper: cover, what it takes, cutting, sewing, finishing, and templates at full size last.
     *
     * @throws IllegalArgumentException if the only parts asked for are templates, and the quilt needs none
     */
    public List<Picture> pages() {
        Cutting cutting = Cutting.of(quilt).by(rules);
        SewingPlan plan = SewingPlan.of(quilt.title(), quilt.top(), rules);
        List<Picture> pages = new ArrayList<>();
        if (!parts.equals(EnumSet.of(Part.TEMPLATES))) {
            pages.addAll(set(cutting, plan));
            pages.set(0, pages.get(0).labelled(Picture.Label.CHAPTER, quilt.title()));
        }
        if (parts.contains(Part.TEMPLATES)) {
            addTemplates(cutting, plan, pages);
        }
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("'" + quilt.title() + "' is cut by ruler alone and needs no templates; ask for another part");
        }
        return List.copyOf(pages);
    }

    private List<Picture> set(Cutting cutting, SewingPlan plan) {
        Finishing finishing = Finishing.of(quilt, rules);
        PageFlow flow = new PageFlow(paper, quilt.title());
        if (parts.contains(Part.COVER)) {
            new Cover(this, plan, Difficulty.of(quilt.top(), plan, rules)).set(flow);
            flow.turnPage();
        }
        if (parts.contains(Part.MATERIALS)) {
            Glance glance = new Glance(this, cutting, plan, finishing);
            glance.set(flow);
            glance.setColouring(flow);
        }
        if (parts.contains(Part.CUTTING)) {
            CuttingPages cuts = new CuttingPages(this, cutting);
            cuts.setBefore(flow);
            cuts.set(flow);
        }
        if (parts.contains(Part.SEWING)) {
            new SewingPages(plan, rules).set(flow);
        }
        if (parts.contains(Part.FINISHING)) {
            FinishingPages end = new FinishingPages(this, finishing);
            end.set(flow);
            end.setEstimate(flow, Estimate.of(quilt, cutting, Rates.USUAL));
        }
        if (parts.contains(Part.MEASURES)) {
            new TeacherPage(this, cutting, plan).set(flow);
        }
        return flow.pages();
    }

    private void addTemplates(Cutting cutting, SewingPlan plan, List<Picture> pages) {
        int before = pages.size();
        Templates.of(quilt.title(), cutting.fabrics().stream().flatMap(f -> f.pieces().stream()).toList(), rules).on(paper).pages()
                .forEach(p -> pages.add(p.over(PageFlow.sheet(paper))));
        if (pages.size() > before) {
            pages.set(before, pages.get(before).labelled(Picture.Label.CHAPTER, "Templates"));
        }
        for (SewingPlan.Laid laid : plan.layings()) {
            Picture placement = laid.laying().placement();
            Tiling.on(paper).pages("Placement: " + laid.laying().applique().name(), placement, placement.bounds())
                    .forEach(p -> pages.add(p.over(PageFlow.sheet(paper))));
        }
    }

    /** The booklet as a PDF; the same quilt gives the same bytes. */
    public byte[] pdf() {
        return PdfWriter.write(quilt.title(), pages(), paper.width(), paper.height());
    }

    /** The finished size in words. */
    String size() {
        return rules.exact(quilt.width()) + " x " + rules.exact(quilt.height());
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
