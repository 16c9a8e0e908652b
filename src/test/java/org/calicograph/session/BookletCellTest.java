package org.calicograph.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.calicograph.drawing.Paper;
import org.calicograph.notebook.Cell;
import org.junit.jupiter.api.Test;

class BookletCellTest {

    @Test
    void the_question_that_a_cell_ends_with_is_found() {
        assertThat(BookletCell.question("int n = dial(\"n\", 0, 9, 0);\nQuestion.of(\"How many?\", 3,\n    \"Count; then count again.\").answered(n)"))
                .isEqualTo("Question.of(\"How many?\", 3,\n    \"Count; then count again.\").answered(n)");
        assertThat(BookletCell.question("Question.of(\"How many?\", 3, \"\");\n")).isEqualTo("Question.of(\"How many?\", 3, \"\")");
        assertThat(BookletCell.question("var knots = Question.of(\"How many?\", 3, \"\");\nknots")).isEqualTo("knots");
        assertThat(BookletCell.question("int n = 2; new Question(\"How wide?\", n, 0.1, \" in\", \"\", Optional.empty())"))
                .isEqualTo("new Question(\"How wide?\", n, 0.1, \" in\", \"\", Optional.empty())");
    }

    @Test
    void a_title_with_quotation_marks_stays_a_title() {
        assertThat(BookletCell.ofQuestions("The \"fan\" \\ rose", List.of(Cell.code("a", "one"), Cell.code("b", "two")), Paper.A4).text())
                .isEqualTo("org.calicograph.course.QuestionSheet.of(\"The \\\"fan\\\" \\\\ rose\",\none,\ntwo).on(org.calicograph.drawing.Paper.A4).whole()");
    }
}
