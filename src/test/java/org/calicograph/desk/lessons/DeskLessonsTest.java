package org.calicograph.desk.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.junit.jupiter.api.Test;

class DeskLessonsTest {

    private static final Exhibit DRAWN = Exhibit.of(Picture.group(List.of()));

    private static CellState done(String kind, Exhibit exhibit) {
        return new CellState.Done(exhibit, kind, "", Duration.ZERO);
    }

    private static CellState steps(String... words) {
        return done("Several", Exhibit.several(Arrays.stream(words).map(w -> Exhibit.of(Picture.group(List.of()), w)).toArray(Exhibit[]::new)));
    }

    @Test
    void the_value_that_a_cell_ends_with_has_a_name() {
        assertThat(Lesson.named("var sheet = Draft.blank(\"a\", inches(8), inches(8));\nsheet")).contains("sheet");
        assertThat(Lesson.named("var star = parts.ink(\"star\", \"P1\", \"P3\");")).contains("star");
        assertThat(Lesson.named("for (int i = 0; i < 3; i++) { }\nlines;\n")).contains("lines");
        assertThat(Lesson.named("DraftPicture.panels(star, 3)")).isEmpty();
    }

    @Test
    void a_draft_that_goes_on_with_the_one_before_brings_its_new_steps_only() {
        Notebook lesson = Notebook.titled("Compass evening", Cell.prose("p1", "Begin."), Cell.code("a1", "sheet"), Cell.code("a2", "ring"),
                Cell.code("a3", "int n = 3;"), Cell.code("a4", "q"), Cell.code("a5", "other"));
        Map<String, CellState> states = Map.of("a1", done("Draft", DRAWN), "a2", done("Draft", DRAWN), "a3", done("", Exhibit.NOTHING),
                "a4", done("Question", Exhibit.words("How many?")), "a5", done("Block", DRAWN));
        assertThat(Lesson.stepCells(lesson, states)).containsExactly(new CellSource("steps-of-a1", "DraftPicture.steps(sheet)"),
                new CellSource("steps-of-a2", "DraftPicture.steps(ring)"));
        List<Lesson.Stage> stages = Lesson.stages(lesson, states, Map.of("steps-of-a1", steps("one", "two"), "steps-of-a2", steps("one", "two", "three")));
        assertThat(stages.stream().map(s -> s instanceof Lesson.Stage.Step step ? step.drawn().caption() + " " + step.number() + "/" + step.of() : s.cell()))
                .containsExactly("p1", "one 1/2", "two 2/2", "three 3/3", "a4", "a5");
    }

    @Test
    void a_draft_that_branches_off_an_earlier_one_brings_the_steps_of_its_branch_only() {
        Notebook lesson = Notebook.titled("Clock", Cell.code("a1", "hours"), Cell.code("a2", "squares"), Cell.code("a3", "star"), Cell.code("a4", "anew"));
        Map<String, CellState> states = Map.of("a1", done("Draft", DRAWN), "a2", done("Draft", DRAWN), "a3", done("Draft", DRAWN), "a4", done("Draft", DRAWN));
        List<Lesson.Stage> stages = Lesson.stages(lesson, states, Map.of("steps-of-a1", steps("one", "two"), "steps-of-a2", steps("one", "two", "square"),
                "steps-of-a3", steps("one", "two", "star", "tip"), "steps-of-a4", steps("begin", "two")));
        assertThat(stages.stream().map(s -> s instanceof Lesson.Stage.Step step ? step.drawn().caption() + " " + step.number() + "/" + step.of() : s.cell()))
                .containsExactly("one 1/2", "two 2/2", "square 3/3", "star 3/4", "tip 4/4", "begin 1/2", "two 2/2");
    }
}
