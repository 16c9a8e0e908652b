package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.calicograph.drafting.Draft;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class DraftReviewTest {

    private static Length in(String text) {
        return Length.inches(text);
    }

    /** A five-pointed star: middle, radius and turn may be drawn otherwise. */
    private static Draft star(String x, String y, String radius, Angle lean, int parts, String second) {
        return Draft.blank("star", in("8"), in("8")).point("O", in(x), in(y)).circle("rim", "O", in(radius))
                .point("A", in(x).plus(in(radius).times(Math.sin(lean.inRadians()))), in(y).minus(in(radius).times(Math.cos(lean.inRadians()))))
                .divide("P", "rim", parts, "A").ink("star", "P1", "P3", second, "P2", "P4", "P1");
    }

    private static Draft octagon(String corner, String side, boolean whole) {
        Draft draft = Draft.blank("octagon", in("10"), in("10")).point("A", in(corner), in(corner)).point("B", in(corner).plus(in(side)), in(corner))
                .segment("top", "A", "B").bisector("upright", "A", "B").perpendicular("left", "top", "A");
        return whole ? draft.circle("sweep", "A", "B") : draft;
    }

    @Test
    void twelve_right_drafts_are_right() {
        Draft lesson = star("4", "4", "3 1/2", Angle.ZERO, 5, "P5");
        List<Draft> right = List.of(lesson, star("4 1/8", "4", "3 1/2", Angle.ZERO, 5, "P5"), star("4", "4 1/4", "3 1/2", Angle.ZERO, 5, "P5"),
                star("3 7/8", "3 15/16", "3 1/2", Angle.ZERO, 5, "P5"), star("4", "4", "3.502", Angle.ZERO, 5, "P5"), star("4", "4", "3 1/2", Angle.degrees(0.05), 5, "P5"));
        right.forEach(d -> assertTrue(DraftReview.of(lesson, d).isRight(), () -> DraftReview.of(lesson, d).sentences().toString()));
        Draft square = octagon("1", "3", true);
        List.of(square, octagon("1 1/2", "3", true), octagon("2", "3", true), octagon("1", "3.004", true), octagon("1/2", "3", true), octagon("1", "3", true).point("note", in("9"), in("9")))
                .forEach(d -> assertTrue(DraftReview.of(square, d).isRight(), () -> DraftReview.of(square, d).sentences().toString()));
    }

    private static void planted(Draft lesson, Draft student, String figure, int step, boolean matters) {
        DraftReview review = DraftReview.of(lesson, student);
        assertFalse(review.isRight());
        List<DraftReview.Difference> made = review.differences().stream().filter(DraftReview.Difference::isMadeHere).toList();
        assertEquals(figure, made.get(0).figure(), () -> review.sentences().toString());
        assertEquals(step, made.get(0).step());
        assertEquals(matters, made.get(0).matters(), () -> review.sentences().toString());
    }

    @Test
    void twelve_planted_mistakes_are_found_in_the_step_where_they_were_made() {
        Draft lesson = star("4", "4", "3 1/2", Angle.ZERO, 5, "P5");
        planted(lesson, star("4", "4", "3 3/4", Angle.ZERO, 5, "P5"), "rim", 2, true);
        planted(lesson, star("4", "4", "3 1/4", Angle.ZERO, 5, "P5"), "rim", 2, true);
        planted(lesson, star("4", "4", "3.52", Angle.ZERO, 5, "P5"), "rim", 2, false);
        planted(lesson, star("4", "4", "3 1/2", Angle.degrees(4), 5, "P5"), "A", 3, true);
        planted(lesson, star("4", "4", "3 1/2", Angle.degrees(-10), 5, "P5"), "A", 3, true);
        planted(lesson, star("4", "4", "3 1/2", Angle.ZERO, 6, "P5"), "P2", 4, true);
        planted(lesson, star("4", "4", "3 1/2", Angle.ZERO, 5, "P2"), "star", 5, true);
        Draft square = octagon("1", "3", true);
        Draft blank = Draft.blank("octagon", in("10"), in("10")).point("A", in("1"), in("1"));
        planted(square, blank.point("B", in("4"), in("1 1/8")).segment("top", "A", "B").bisector("upright", "A", "B").perpendicular("left", "top", "A").circle("sweep", "A", "B"), "B", 2, true);
        planted(square, blank.point("B", in("4"), in("1")).segment("top", "B", "A").bisector("upright", "A", "B").perpendicular("left", "top", "B").circle("sweep", "A", "B"), "left", 5, true);
        planted(square, blank.point("B", in("4"), in("1")).segment("top", "A", "B").bisector("upright", "A", "B").perpendicular("left", "top", "A").circle("sweep", "B", "A"), "sweep", 6, true);
        planted(square, blank.point("B", in("4"), in("1")).segment("top", "A", "B").bisector("upright", "A", "B").turned("left", "top", "A", Angle.degrees(88)).circle("sweep", "A", "B"), "left", 5, true);
        planted(square, blank.point("B", in("4 1/64"), in("1")).segment("top", "A", "B").bisector("upright", "A", "B").perpendicular("left", "top", "A").circle("sweep", "A", "B"), "B", 2, false);
    }

    @Test
    void what_follows_from_a_mistake_is_not_called_one_itself() {
        DraftReview review = DraftReview.of(star("4", "4", "3 1/2", Angle.ZERO, 5, "P5"), star("4", "4", "3 1/2", Angle.degrees(6), 5, "P5"));
        assertEquals("A", review.differences().stream().filter(DraftReview.Difference::isMadeHere).map(DraftReview.Difference::figure).collect(Collectors.joining()));
        assertTrue(review.sentences().get(0).contains("'P1', 'P2', 'P3', 'P4', 'P5', 'star' come from it"), review.sentences().toString());
    }

    @Test
    void a_draft_that_lies_elsewhere_is_told_so_and_one_that_is_not_finished_what_is_missing() {
        DraftReview elsewhere = DraftReview.of(octagon("1", "3", true), octagon("2", "3", true));
        assertEquals("The whole draft lies 1 in to the right and 1 in below of the lesson's. That makes no difference.", elsewhere.sentences().get(0));
        DraftReview begun = DraftReview.of(octagon("1", "3", true), octagon("1", "3", false));
        assertEquals(List.of("sweep"), begun.missing());
        assertFalse(begun.isRight());
    }
}
