package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The answers, reckoned a second time from nothing but the printed question, by the trade's own rules (common practice:
 * seams of 1/4 in on both sides, + 7/8 and + 1 1/4 for triangles from squares, strips counted whole).
 */
class TopicTest {

    private static final int MANY = 400;
    private static final Pattern NUMBER = Pattern.compile("(\\d+) (\\d)/(\\d+)|(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?)");

    @Test
    void a_cover_is_the_mattress_with_two_drops_across_and_one_and_the_tuck_down() {
        each(Topic.BED_COVER, (q, a) -> {
            assertEquals(q.get(0) + 2 * q.get(2), a.get(0), 1e-9);
            assertEquals(q.get(1) + q.get(2) + q.get(3), a.get(1), 1e-9);
        });
    }

    @Test
    void butted_strips_take_a_seam_and_mitred_ones_two_widths_and_the_extra() {
        each(Topic.BORDER_STRIPS, (q, a) -> {
            double across = q.get(0);
            double down = q.get(1);
            double wide = q.get(2);
            double extra = q.get(3);
            assertEquals(List.of(wide + 0.5, down + 0.5, across + 2 * wide + 0.5, down + 2 * wide + extra, across + 2 * wide + extra), a);
        });
    }

    @Test
    void units_go_round_twice_each_way_with_four_corners() {
        each(Topic.BORDER_UNITS, (q, a) -> assertEquals(2 * (q.get(2) + q.get(3)) / q.get(0) + 4, a.get(0), 1e-9));
    }

    @Test
    void only_one_eighth_in_the_range_divides_both_sides() {
        each(Topic.UNIT_LENGTH, (q, a) -> {
            List<Double> whole = new ArrayList<>();
            for (long e = Math.round(q.get(2) * 8); e <= Math.round(q.get(3) * 8); e++) {
                if (Math.round(q.get(0) * 8) % e == 0 && Math.round(q.get(1) * 8) % e == 0) {
                    whole.add(e / 8.0);
                }
            }
            assertEquals(List.of(a.get(0)), whole);
            assertEquals(q.get(0) / a.get(0), a.get(1), 1e-9);
            assertEquals(q.get(1) / a.get(0), a.get(2), 1e-9);
        });
    }

    @Test
    void triangles_come_from_squares_seven_eighths_and_one_and_a_quarter_larger() {
        each(Topic.TRIANGLES, (q, a) -> {
            assertEquals(q.get(0) + 0.875, a.get(0), 1e-9);
            assertEquals(q.get(0) + 1.25, a.get(1), 1e-9);
        });
    }

    @Test
    void setting_triangles_are_large_enough_and_less_than_a_quarter_inch_too_large() {
        each(Topic.ON_POINT, (q, a) -> {
            double diagonal = q.get(0) * Math.sqrt(2);
            assertEquals(diagonal, a.get(0), 0.0051);
            assertTrue(a.get(1) >= diagonal + 0.5 * (1 + Math.sqrt(2)) - 1e-4 && a.get(1) <= diagonal + 1.25 + 0.125, q + " " + a);
            assertTrue(a.get(2) >= diagonal / 2 + 0.25 * (2 + Math.sqrt(2)) - 1e-4 && a.get(2) <= diagonal / 2 + 0.875 + 0.125, q + " " + a);
        });
    }

    @Test
    void squares_are_cut_from_whole_strips() {
        each(Topic.YARDAGE, (q, a) -> {
            double cut = q.get(1) + 0.5;
            double strips = Math.ceil(q.get(0) / Math.floor(40 / cut));
            assertEquals(strips, a.get(0), 1e-9);
            assertEquals(cut, a.get(1), 1e-9);
            assertEquals(strips * cut, a.get(2), 1e-9);
            assertEquals(Math.ceil(strips * cut / 4.5) / 8, a.get(3), 1e-9);
        });
    }

    @Test
    void a_binding_reaches_round_with_its_extra_and_one_strip_fewer_does_not() {
        each(Topic.BINDING, (q, a) -> {
            double needed = 2 * (q.get(0) + q.get(1)) + q.get(4);
            double n = a.get(0);
            double join = q.get(5);
            assertTrue(40 * n - join * (n - 1) >= needed && 40 * (n - 1) - join * (n - 2) < needed, q + " " + a);
            assertEquals(n * q.get(2), a.get(1), 1e-9);
        });
    }

    @Test
    void a_backing_is_joined_the_way_that_takes_less() {
        each(Topic.BACKING, (q, a) -> {
            double best = Double.MAX_VALUE;
            for (double[] way : new double[][] {{q.get(0), q.get(1)}, {q.get(1), q.get(0)}}) {
                int n = 1;
                while (40 * n - 0.5 * (n - 1) < way[0] + 2 * q.get(2)) {
                    n++;
                }
                best = Math.min(best, n * (way[1] + 2 * q.get(2)));
            }
            assertEquals(best, a.get(0) * a.get(1), 1e-9);
        });
    }

    private interface Check {
        void holds(List<Double> question, List<Double> answer);
    }

    private static void each(Topic topic, Check check) {
        for (int seed = 0; seed < MANY; seed++) {
            Problem problem = topic.problem(new Random(seed));
            check.holds(numbers(problem.question()), numbers(problem.answer()));
        }
    }

    private static List<Double> numbers(String text) {
        List<Double> all = new ArrayList<>();
        Matcher m = NUMBER.matcher(text);
        while (m.find()) {
            all.add(m.group(1) != null ? Double.parseDouble(m.group(1)) + Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3))
                    : m.group(4) != null ? Double.parseDouble(m.group(4)) / Double.parseDouble(m.group(5)) : Double.parseDouble(m.group(6)));
        }
        return all;
    }
}
