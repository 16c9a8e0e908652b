package org.calicograph.course;

import java.util.List;
import java.util.stream.Stream;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.drafting.Question;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Table;

/**
 * The questions of a lesson on paper, with room to write, and the teacher's sheet with the answers kept apart.
 *
 * @param title     what the lesson is called
 * @param questions in the order in which they are asked
 */
public record QuestionSheet(String title, List<Question> questions, Paper paper) implements Drawable {

    /** Room to work in below each question, in inches. */
    private static final double ROOM = 0.75;

    /** @throws IllegalArgumentException if there is no question */
    public QuestionSheet {
        questions = List.copyOf(questions);
        if (questions.isEmpty()) {
            throw new IllegalArgumentException("the sheet '" + title + "' asks nothing; give it a question");
        }
    }

    /** A sheet of questions on A4. An answer that was given is not printed. */
    public static QuestionSheet of(String title, Question... questions) {
        return new QuestionSheet(title, List.of(questions), Paper.A4);
    }

    /** The same on other paper. */
    public QuestionSheet on(Paper other) {
        return new QuestionSheet(title, questions, other);
    }

    /** The student's pages, without answers. */
    public Sheaf pages() {
        PageFlow flow = new PageFlow(paper, title + ", questions");
        flow.chapter(title + ", questions");
        flow.paragraph("Draft along on a sheet of your own. Write down how you came by each number: measured, counted or reckoned.");
        for (int i = 0; i < questions.size(); i++) {
            flow.heading("Question " + (i + 1), 0.6 + ROOM);
            flow.paragraph(questions.get(i).words());
            flow.space(Math.min(ROOM, Math.max(0, flow.room() - 0.3)));
            flow.paragraph("Answer: ______________________________________________");
        }
        return new Sheaf(title + ", questions", paper, flow.pages());
    }

    /** The teacher's sheet: the right answers, and the hint that helps to each. */
    public Sheaf answers() {
        PageFlow flow = new PageFlow(paper, title + ", answers");
        flow.chapter(title + ", answers for the teacher");
        Table table = Table.of("", "No.", "Question", "Answer", "Hint");
        for (int i = 0; i < questions.size(); i++) {
            table = table.row(String.valueOf(i + 1), questions.get(i).words(), questions.get(i).right(), questions.get(i).hint());
        }
        flow.table(table);
        return new Sheaf(title + ", answers", paper, flow.pages());
    }

    /** The student's pages and behind them, on pages of their own, the teacher's. */
    public Sheaf whole() {
        return new Sheaf(title, paper, Stream.concat(pages().pages().stream(), answers().pages().stream()).toList());
    }

    /** The student's pages; the answers are shown by {@link #answers} alone. */
    @Override
    public Exhibit show() {
        return pages().show();
    }
}
