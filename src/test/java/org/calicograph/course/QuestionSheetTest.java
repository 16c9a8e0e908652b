package org.calicograph.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.book.Sheaf;
import org.calicograph.drafting.Question;
import org.calicograph.drawing.Paper;
import org.junit.jupiter.api.Test;

class QuestionSheetTest {

    private static String text(Sheaf sheaf) throws IOException {
        try (PDDocument document = Loader.loadPDF(sheaf.pdf())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void the_student_reads_questions_only_and_the_teacher_answers_and_hints() throws IOException {
        QuestionSheet sheet = QuestionSheet.of("The net loft", Question.of("How long is the net?", inches("7 3/16"), "Lay it along the wall.").answered(inches(5)),
                Question.of("How many knots?", 421, "Count a row."));
        assertThat(text(sheet.pages())).contains("The net loft, questions", "Question 1", "How long is the net?", "Question 2", "How many knots?", "Answer: __")
                .doesNotContain("7 3/16", "421", "wall", "not it yet", "5 in");
        assertThat(text(sheet.answers())).contains("answers for the teacher", "7 3/16 in", "Lay it along the wall.", "421", "Count a row.");
        assertThat(sheet.whole().pages()).hasSize(sheet.pages().pages().size() + sheet.answers().pages().size());
        assertThat(sheet.on(Paper.LETTER).pages().paper()).isEqualTo(Paper.LETTER);
    }

    @Test
    void many_questions_run_over_pages_and_none_is_lost() throws IOException {
        List<Question> many = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            many.add(Question.of("How many gulls on post " + i + "?", i, "Look again at post " + i + "."));
        }
        QuestionSheet sheet = QuestionSheet.of("Gulls", many.toArray(Question[]::new));
        assertThat(sheet.pages().pages().size()).isGreaterThan(4);
        String asked = text(sheet.pages());
        String told = text(sheet.answers());
        for (int i = 1; i <= 30; i++) {
            assertThat(asked).contains("gulls on post " + i + "?");
            assertThat(told).contains("post " + i + ".");
        }
    }

    @Test
    void a_sheet_without_a_question_is_refused() {
        assertThatThrownBy(() -> QuestionSheet.of("Nothing")).hasMessage("the sheet 'Nothing' asks nothing; give it a question");
    }
}
