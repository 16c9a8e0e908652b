package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drafting.Draft;
import org.calicograph.drafting.Step;
import org.calicograph.book.page.PageFlow;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tag;
import org.calicograph.measure.Length;
import org.calicograph.show.DraftPicture;

/** A draft to hand out: a panel for each step with its words and what it uses. */
public record Handout(Draft draft, Paper paper) implements Drawable {

    /** A handout of a lesson, step by step, on A4. */
    public static Handout of(Draft draft) {
        return new Handout(draft, Paper.A4);
    }

    /**
     * A handout of a draft or of a handout itself.
     *
     * @throws IllegalArgumentException if the value is neither
     */
    public static Handout ofAny(Object value) {
        if (value instanceof Handout handout) {
            return handout;
        }
        if (value instanceof Draft draft) {
            return of(draft);
        }
        throw new IllegalArgumentException("a handout is made of a draft, not of "
                + (value == null ? "nothing" : value.getClass().getSimpleName()) + "; name a draft");
    }

    /** The same on other paper. */
    public Handout on(Paper other) {
        return new Handout(draft, other);
    }

    /** Every page, each exactly as large as the paper. */
    public List<Picture> pages() {
        PageFlow flow = new PageFlow(paper, draft.title());
        flow.chapter(draft.title());
        flow.paragraph("Drafted full size on a sheet of " + Length.inches(draft.sheet().width()) + " x " + Length.inches(draft.sheet().height())
                + ". Blue is what a step uses, red what it makes.");
        List<PageFlow.Figure> panels = new ArrayList<>();
        for (int i = 0; i < draft.steps().size(); i++) {
            Step step = draft.steps().get(i);
            String used = step.used().isEmpty() ? "" : " Uses " + String.join(", ", step.used()) + ".";
            panels.add(new PageFlow.Figure(DraftPicture.step(draft, i).tagged(Tag.of(Tag.Role.FIGURE, "The draft after step " + (i + 1) + " of " + draft.steps().size())), "Step " + (i + 1), step.words() + used));
        }
        flow.grid(2, 3.2, panels);
        return flow.pages();
    }

    /** The pages as a PDF file. */
    public byte[] pdf() {
        return PdfWriter.write(draft.title(), pages(), paper.width(), paper.height());
    }

    @Override
    public Exhibit show() {
        return new Exhibit.Several(pages().stream().map(Exhibit::of).toList());
    }
}
