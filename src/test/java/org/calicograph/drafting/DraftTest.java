package org.calicograph.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class DraftTest {

    private static Draft ring(int points) {
        return Draft.blank("Star", inches(12), inches(12)).middle("O").circle("rim", "O", inches(5))
                .point("T", inches(6), inches(1)).divide("P", "rim", points, "T");
    }

    /** The side of a pentagon in a circle of radius 1 is 1.176 (a page on compass construction); exactly 2 sin 36. */
    @Test
    void the_pentagon_has_the_published_side() {
        Draft draft = ring(5);
        assertThat(draft.at("P1").distance(draft.at("P2")) / 5).isCloseTo(1.175571, within(1e-6)).isCloseTo(2 * Math.sin(Math.toRadians(36)), within(1e-12));
    }

    /** A five-pointed star joins 1-3-5-2-4-1; its tips measure 36 degrees ('Drafting for the Creative Quilter', p. 33). */
    @Test
    void the_five_pointed_star_has_tips_of_36_degrees_and_eleven_faces_with_its_circle() {
        Draft star = ring(5).ink("star", "P1", "P3", "P5", "P2", "P4", "P1").inkCurve("edge", "rim");
        assertThat(star.angle("P3", "P1", "P4").degrees()).isCloseTo(36, within(1e-9));
        assertThat(star.faces().faces()).hasSize(16 - 5);
    }

    /** Star polygons: a tip of {n/k} is 180 - 360 k / n degrees, any textbook of geometry. */
    @Property(tries = 80)
    void every_star_closes_and_its_tips_agree_with_the_algebra(@ForAll @IntRange(min = 5, max = 32) int n, @ForAll @IntRange(min = 2, max = 15) int k) {
        if (2 * k >= n) {
            return;
        }
        Draft draft = ring(n);
        double tip = draft.angle("P" + (1 + k), "P1", "P" + (n + 1 - k)).degrees();
        assertThat(tip).isCloseTo(180 - 360.0 * k / n, within(1e-9));
    }

    @Test
    void bisectors_perpendiculars_and_parallels_agree_with_the_algebra() {
        Draft draft = Draft.blank("Lines", inches(10), inches(10)).point("A", inches(1), inches(2)).point("B", inches(9), inches(4)).point("C", inches(3), inches(8))
                .segment("AB", "A", "B").bisector("half", "A", "B").crossing("M", "AB", "half")
                .perpendicular("high", "AB", "C").crossing("H", "high", "AB").parallel("beside", "AB", "C")
                .angleBisector("split", "B", "A", "C").segment("BC", "B", "C").crossing("S", "split", "BC");
        assertThat(draft.at("M").near(draft.at("A").midway(draft.at("B")), 1e-9)).isTrue();
        assertThat(draft.angle("C", "H", "B").degrees()).isCloseTo(90, within(1e-9));
        // The bisector of an angle parts the far side as the near sides: Euclid, Elements VI.3.
        double parts = draft.at("B").distance(draft.at("S")) / draft.at("S").distance(draft.at("C"));
        assertThat(parts).isCloseTo(draft.at("A").distance(draft.at("B")) / draft.at("A").distance(draft.at("C")), within(1e-9));
    }

    /** Circles of one radius, each through the other's centre, meet at 60 degrees: Euclid, Elements I.1. */
    @Test
    void two_circles_make_an_equilateral_triangle() {
        Draft draft = Draft.blank("Triangle", inches(10), inches(10)).point("A", inches(3), inches(6)).point("B", inches(7), inches(6))
                .circle("a", "A", "B").circle("b", "B", "A").point("up", inches(5), inches(1)).crossing("C", "a", "b", "up");
        assertThat(draft.angle("A", "C", "B").degrees()).isCloseTo(60, within(1e-9));
        assertThat(draft.distance("A", "C")).isEqualTo(inches(4));
    }

    @Test
    void a_draft_remembers_its_steps_and_can_go_back() {
        Draft draft = ring(10);
        assertThat(draft.steps()).hasSize(4);
        assertThat(draft.steps().get(3).words()).isEqualTo("Divide rim into 10 equal parts of 36° from T on, and mark P1 to P10.");
        assertThat(draft.after(2).figures()).containsOnlyKeys("O", "rim");
    }

    @Test
    void names_that_are_missing_or_taken_are_refused_with_what_is_there() {
        assertThatThrownBy(() -> ring(5).segment("s", "P1", "Q")).hasMessageContaining("'Q', which is not on the sheet; there are O, rim, T, P1");
        assertThatThrownBy(() -> ring(5).middle("O")).hasMessageContaining("'O', which is there already");
        assertThatThrownBy(() -> ring(5).circle("c", "rim", "O")).hasMessageContaining("'rim' in step 5 is not a point");
        assertThatThrownBy(() -> ring(5).divide("Q", "rim", 5, "O")).hasMessageContaining("'O' does not lie on 'rim'");
    }

    @Test
    void a_question_is_checked_without_giving_the_answer_away() {
        Question question = Question.of("What is the angle at the tip?", org.calicograph.measure.Angle.degrees(36), "Divide 180 by five.");
        assertThat(question.answered(36).isRight()).isTrue();
        assertThat(question.answered(72)).hasToString("What is the angle at the tip?\n72° is not it yet. Divide 180 by five.");
        Question length = Question.of("How long?", inches("2 5/16"), "Measure it.");
        assertThat(length.answered(inches("2 5/16"))).hasToString("How long?\n2 5/16 in is right.");
        assertThat(length.answered(inches("3/16"))).hasToString("How long?\n3/16 in is not it yet. Measure it.");
        assertThat(length.right()).isEqualTo("2 5/16 in");
        assertThat(Question.of("How wide?", inches(0.9428), "").right()).isEqualTo("15/16 in (0.943 in)");
        assertThat(Question.of("What angle?", org.calicograph.measure.Angle.radians(Math.PI / 6), "").right()).isEqualTo("30°");
        assertThat(Question.of("What angle?", org.calicograph.measure.Angle.degrees(112.5), "").right()).isEqualTo("112.5°");
        assertThat(Question.of("How many?", 36, "").right()).isEqualTo("36");
    }

    @Test
    void a_question_can_ask_for_a_nearer_answer() {
        Question question = Question.of("How wide?", inches(0.943), "Divide.");
        assertThat(question.answered(inches(1)).isRight()).isTrue();
        assertThat(question.within(inches("1/32")).answered(inches(1)).isRight()).isFalse();
        assertThat(question.answered(inches(1)).within(inches("1/32")).isRight()).isFalse();
        assertThat(question.within(inches("1/32")).answered(inches("15/16")).isRight()).isTrue();
        assertThatThrownBy(() -> question.within(inches(-1))).hasMessage("'How wide?' can't be right within -1 in; use nothing or more");
    }

    @Test
    void a_crossing_that_is_not_clear_or_lies_off_the_sheet_is_asked_about() {
        Draft two = Draft.blank("Lens", inches(8), inches(8)).point("A", inches(3), inches(4)).point("B", inches(5), inches(4))
                .circle("left", "A", inches(2)).circle("right", "B", inches(2));
        assertThatThrownBy(() -> two.crossing("X", "left", "right", "A")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("meet in two places equally near to A").hasMessageContaining("(4.000, 2.268)").hasMessageContaining("(4.000, 5.732)");
        Draft above = two.point("N", inches(4), inches(1));
        assertThat(((Figure.Dot) above.crossing("X", "left", "right", "N").figures().get("X")).at().y()).isCloseTo(4 - Math.sqrt(3), org.assertj.core.api.Assertions.within(1e-9));
        Draft wide = Draft.blank("Wide", inches(4), inches(4)).point("A", inches(1), inches(1)).point("B", inches(3), inches(1)).circle("one", "A", inches(3))
                .circle("other", "B", inches(3)).point("S", inches(2), inches(3));
        assertThatThrownBy(() -> wide.point("N", inches(2), inches(0)).crossing("X", "one", "other", "N")).hasMessageContaining("off the sheet of 4 in x 4 in");
        assertThat(wide.crossing("X", "one", "other", "S").figures()).containsKey("X");
    }

    /** Steps on a slant, carried square to a side, cut the side in equal parts: Euclid, Elements VI.10. */
    @Property(tries = 60)
    void steps_along_a_slant_part_the_side_evenly(@ForAll @IntRange(min = 2, max = 12) int parts, @ForAll @IntRange(min = 1, max = 15) int sixteenths) {
        Draft slant = Draft.blank("Slant", inches(20), inches(20)).point("A", inches(1), inches(19)).point("B", inches(7), inches(19)).point("E", inches(7), inches(11))
                .segment("AB", "A", "B");
        org.calicograph.measure.Length step = inches(sixteenths, 16);
        assertThat(slant.stepOff("S", "A", "E", step, parts - 1 > 10 / step.inInches() ? 1 : parts - 1).at("S1").distance(slant.at("A"))).isCloseTo(sixteenths / 16.0, within(1e-9));
        // The side is 6 and the slant 10 by I.47, so that every step comes down 6/10 of its length further on.
        org.calicograph.measure.Length share = inches(10).dividedBy(parts);
        Draft even = slant.stepOff("S", "A", "E", share, parts);
        for (int i = 1; i <= parts; i++) {
            Draft down = even.perpendicular("v" + i, "AB", "S" + i).crossing("F" + i, "v" + i, "AB");
            assertThat(down.at("F" + i).distance(down.at("A"))).as("mark " + i).isCloseTo(Math.min(6, 0.6 * share.times(i).inInches()), within(1e-9)).isCloseTo(6.0 * i / parts, within(1e-5));
        }
    }

    @Test
    void steps_that_leave_the_line_or_have_no_length_are_refused() {
        Draft line = Draft.blank("Line", inches(6), inches(4)).point("A", inches(1), inches(2)).point("B", inches(5), inches(2));
        assertThat(line.stepOff("S", "A", "B", inches(1), 4).steps().get(2).words()).isEqualTo("Lay the ruler's zero on A and its edge along to B, and mark every 1 in: S1 to S4.");
        assertThat(line.stepOff("S", "A", "B", inches(3), 1).steps().get(2).words()).endsWith("mark every 3 in: S1.");
        assertThat(line.stepOff("S", "A", "B", inches(1), 4).at("S4").near(line.at("B"), 1e-9)).isTrue();
        assertThatThrownBy(() -> line.stepOff("S", "A", "B", inches(1), 5)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'S' in step 3 can't be stepped off: 5 steps of 1 in reach 5 in, but from A to B it is 4 in; use fewer or shorter steps");
        assertThatThrownBy(() -> line.stepOff("S", "A", "B", inches(1), 0)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'S' can't be stepped off 0 times by 1 in; use 1 or more steps longer than nothing");
        assertThatThrownBy(() -> line.stepOff("S", "A", "B", inches(0), 2)).hasMessageContaining("2 times by 0 in");
        assertThatThrownBy(() -> line.stepOff("S", "A", "B", inches(-1), 2)).hasMessageContaining("use 1 or more steps longer than nothing");
        assertThatThrownBy(() -> line.stepOff("S", "A", "Z", inches(1), 2)).hasMessageContaining("'Z', which is not on the sheet");
        assertThatThrownBy(() -> line.point("S2", inches(3), inches(3)).stepOff("S", "A", "B", inches(1), 2)).hasMessageContaining("'S2', which is there already");
        assertThatThrownBy(() -> line.stepOff("S", "A", "A", inches(1), 1)).hasMessageContaining("but from A to A it is 0 in");
    }
}
