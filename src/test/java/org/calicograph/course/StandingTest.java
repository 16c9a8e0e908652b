package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.Fit;
import org.calicograph.fitting.Mattress;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.quilt.Quilt;
import org.calicograph.quilting.Batting;
import org.calicograph.setting.Setting;
import org.calicograph.stitching.QuiltingPlan;
import org.junit.jupiter.api.Test;

class StandingTest {

    private static final Fabric NAVY = Fabric.of("navy", "#24425c");
    private static final Fabric SAND = Fabric.of("sand", "#e8dcc0");

    private static Quilt quilt(Fabric dark, Fabric light) {
        Block block = Block.onGrid("Sails", 2, Length.inches(12)).square(Role.DARK, 0, 0, 1).square(Role.LIGHT, 1, 0, 1)
                .square(Role.LIGHT, 0, 1, 1).square(Role.DARK, 1, 1, 1).block().with(java.util.Map.of(Role.DARK, dark, Role.LIGHT, light));
        return Quilt.of("Oyster Beds", Setting.straight(6, 8).of(block));
    }

    private static Finding found(Standing standing, String what) {
        return standing.findings().stream().filter(f -> f.what().equals(what)).findFirst().orElseThrow();
    }

    @Test
    void a_quilt_that_nothing_was_said_of_is_right_where_it_can_be_reckoned_and_to_do_elsewhere() {
        Standing standing = Standing.of(quilt(NAVY, SAND));
        assertEquals(Finding.State.RIGHT, found(standing, "the top").state());
        assertEquals("192 patches cover 72 in x 96 in whole.", found(standing, "the top").words());
        assertEquals(Finding.State.RIGHT, found(standing, "contrast").state());
        assertEquals(Finding.State.OPEN, found(standing, "the bed").state());
        assertEquals(Finding.State.OPEN, found(standing, "cut").state());
        assertTrue(standing.report().wrong().isEmpty());
    }

    @Test
    void a_quilt_that_misses_its_bed_says_by_what_and_one_that_covers_it_with_which_drop() {
        Standing standing = Standing.of(quilt(NAVY, SAND));
        assertEquals(Finding.State.WRONG, found(standing.on(BedCover.over(Mattress.QUEEN).drop(Length.inches(14))), "the bed").state());
        assertEquals(Finding.State.RIGHT, found(standing.on(BedCover.over(Mattress.TWIN).drop(Length.inches(12))), "the bed").state());
    }

    @Test
    void a_border_that_does_not_fit_is_told_with_its_reason() {
        Finding wrong = found(Standing.of(quilt(NAVY, SAND)).fitting("Border 2", Fit.around(Length.inches(72), Length.inches(96)).units(Length.inches(7)).count(50)), "Border 2");
        assertEquals(Finding.State.WRONG, wrong.state());
        assertTrue(wrong.words().contains("don't come out whole along 72 in"), wrong.words());
        assertEquals(Finding.State.RIGHT, found(Standing.of(quilt(NAVY, SAND)).fitting("Border 1", Fit.around(Length.inches(72), Length.inches(96)).units(Length.inches(6))), "Border 1").state());
    }

    @Test
    void cloths_that_run_together_are_named() {
        Finding wrong = found(Standing.of(quilt(NAVY, Fabric.of("indigo", "#26405a"))), "contrast");
        assertEquals(Finding.State.WRONG, wrong.state());
        assertTrue(wrong.words().startsWith("navy and indigo run together"), wrong.words());
    }

    @Test
    void cloth_in_hand_is_held_against_the_cutting_plan() {
        // 96 squares cut 6 1/2 in: six to a strip of 40 in, sixteen strips, 104 in, and the usual 1/8 yd to square up: 108 1/2 in.
        Standing enough = Standing.of(quilt(NAVY.inHand(Length.inches(217, 2)), SAND));
        Standing few = Standing.of(quilt(NAVY.inHand(Length.inches(108)), SAND));
        assertEquals(Finding.State.RIGHT, found(enough, "navy in hand").state(), found(enough, "navy in hand").words());
        assertEquals(Finding.State.WRONG, found(few, "navy in hand").state());
        assertTrue(found(few, "navy in hand").words().contains("more, or ask what can stand in for it"), found(few, "navy in hand").words());
    }

    @Test
    void lines_farther_apart_than_the_batting_allows_are_wrong() {
        Quilt quilt = quilt(NAVY, SAND);
        QuiltingPlan bare = QuiltingPlan.on(quilt.top()).on(Batting.WOOL).with("one line", NAVY.colour(), List.of(Path.through(Point.of(0, 48), Point.of(72, 48))));
        assertEquals(Finding.State.WRONG, found(Standing.of(quilt).quilted(bare), "the lines").state());
    }

    @Test
    void a_tick_before_its_turn_is_told() {
        Finding wrong = found(Standing.of(quilt(NAVY, SAND)).done(Milestone.CUT, Milestone.QUILTED), "quilted");
        assertEquals(Finding.State.WRONG, wrong.state());
        assertTrue(wrong.words().contains("'pieced' is not"), wrong.words());
        assertEquals(Finding.State.RIGHT, found(Standing.of(quilt(NAVY, SAND)).done(Milestone.CUT, Milestone.PIECED), "pieced").state());
    }

    @Test
    void what_is_shown_reads_back_as_it_was() {
        for (String title : List.of("Oyster Beds", "The Harbour's Light' stands, by night")) {
            StandingReport report = Standing.of(quilt(NAVY, SAND).titled(title)).by("Hesper Tolland").done(Milestone.CUT).report();
            assertEquals(Optional.of(report), StandingReport.read(report.exhibit()));
        }
        assertEquals(Optional.empty(), StandingReport.read(Exhibit.words("words")));
    }

    @Test
    void a_season_stands_as_its_worst_finding() {
        StandingReport report = Standing.of(quilt(NAVY, SAND)).on(BedCover.over(Mattress.QUEEN).drop(Length.inches(14))).done(Milestone.CUT, Milestone.PIECED).report();
        assertEquals(Finding.State.WRONG, report.state(Season.DRAFTING));
        assertEquals(Finding.State.RIGHT, report.state(Season.COLOUR));
        assertEquals(Finding.State.RIGHT, report.state(Season.PIECING));
        assertEquals(Finding.State.OPEN, report.state(Season.QUILTING));
    }
}
