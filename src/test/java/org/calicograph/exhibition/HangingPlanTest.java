package org.calicograph.exhibition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class HangingPlanTest {

    @Test
    void no_other_placing_hangs_more_quilts_or_needs_fewer_walls() {
        Random chance = new Random(11);
        for (int n = 0; n < 3_000; n++) {
            int quilts = 1 + chance.nextInt(7);
            int walls = 1 + chance.nextInt(3);
            long[] widths = chance.longs(quilts, 1, 12).toArray();
            long[] lengths = chance.longs(walls, 3, 25).toArray();
            boolean[][] allowed = new boolean[quilts][walls];
            for (boolean[] each : allowed) {
                for (int w = 0; w < walls; w++) {
                    each[w] = chance.nextInt(5) > 0;
                }
            }
            Placement found = Placement.of(widths, lengths, allowed);
            assertTrue(found.proved());
            assertEquals(best(widths, lengths, allowed), found.hung() * 10 - found.walls(), "case " + n);
        }
    }

    /** Every placing there is, by counting in base walls + 1. */
    private static int best(long[] widths, long[] lengths, boolean[][] allowed) {
        int best = 0;
        int all = (int) Math.round(Math.pow(lengths.length + 1, widths.length));
        for (int code = 0; code < all; code++) {
            long[] room = lengths.clone();
            int hung = 0;
            int used = 0;
            boolean fits = true;
            for (int i = 0, c = code; i < widths.length; i++, c /= lengths.length + 1) {
                int w = c % (lengths.length + 1) - 1;
                if (w >= 0) {
                    room[w] -= widths[i];
                    fits &= allowed[i][w] && room[w] >= 0;
                    used |= 1 << w;
                    hung++;
                }
            }
            if (fits) {
                best = Math.max(best, hung * 10 - Integer.bitCount(used));
            }
        }
        return best;
    }

    private static Exhibition random(Random chance, int quilts) {
        Exhibition show = Exhibition.of("Saltmarsh Reach", "November");
        for (int i = 0; i < quilts; i++) {
            show = show.with(ShowEntry.of("Quilt " + i, "Maker " + i, Length.inches(20 + chance.nextInt(80)), Length.inches(20 + chance.nextInt(90))));
        }
        return show;
    }

    @Test
    void quilts_hang_within_their_walls_apart_and_off_the_floor() {
        Random chance = new Random(5);
        for (int n = 0; n < 300; n++) {
            Exhibition show = random(chance, 1 + chance.nextInt(14));
            HangingPlan plan = show.hang(HangingWall.of("a", Length.inches(100 + chance.nextInt(300)), Length.inches(90 + chance.nextInt(30))),
                    HangingWall.of("b", Length.inches(100 + chance.nextInt(300)), Length.inches(90 + chance.nextInt(30))));
            List<HangingPlan.Hung> hung = plan.hung();
            assertEquals(show.entries().size(), hung.size() + plan.left().size());
            for (HangingPlan.Hung h : hung) {
                assertEquals(show.entries().get(h.number() - 1), h.entry());
                assertTrue(h.bottom().compareTo(plan.clear()) >= 0 && h.top().compareTo(h.wall().height()) <= 0);
                assertTrue(h.left().compareTo(plan.gap()) >= 0);
                assertTrue(h.left().plus(h.entry().width()).plus(plan.gap()).compareTo(h.wall().length().plus(Length.mm(0.01))) <= 0);
                for (HangingPlan.Hung o : hung) {
                    if (o != h && o.wall().equals(h.wall()) && o.left().compareTo(h.left()) >= 0) {
                        assertTrue(h.left().plus(h.entry().width()).plus(plan.gap()).compareTo(o.left().plus(Length.mm(0.01))) <= 0, h + " and " + o);
                    }
                }
            }
        }
    }

    @Test
    void a_quilt_of_usual_height_hangs_with_its_middle_at_the_eye_and_a_tall_one_as_low_as_the_rod_asks() {
        HangingPlan plan = Exhibition.of("Saltmarsh Reach", "November").with(ShowEntry.of("Small", "A", Length.inches(40), Length.inches(40)),
                ShowEntry.of("Tall", "B", Length.inches(60), Length.inches(100))).hang(HangingWall.of("north", Length.inches(200), Length.inches(108)));
        assertEquals(Length.inches(40), plan.hung().get(0).bottom());
        assertEquals(Length.inches(8), plan.hung().get(1).bottom());
        assertEquals(Length.inches(108), plan.hung().get(1).top());
        assertEquals("All 2 quilts hang, on 1 of 1 wall.", plan.verdict());
    }

    @Test
    void what_does_not_hang_says_why() {
        Exhibition show = Exhibition.of("Saltmarsh Reach", "November").with(ShowEntry.of("Tall", "A", Length.inches(60), Length.inches(110)),
                ShowEntry.of("Wide", "B", Length.inches(120), Length.inches(60)), ShowEntry.of("One", "C", Length.inches(50), Length.inches(60)), ShowEntry.of("Two", "D", Length.inches(50), Length.inches(60)));
        HangingPlan plan = show.hang(HangingWall.of("north", Length.inches(100), Length.inches(108)));
        assertTrue(plan.verdict().startsWith("1 of 4 quilts hang; more can't."), plan.verdict());
        assertTrue(plan.verdict().contains("1 'Tall' does not hang: it is 110 in high and must be 6 in off the floor, and the highest rod is at 108 in"), plan.verdict());
        assertTrue(plan.verdict().contains("2 'Wide' does not hang: with its gaps it takes 144 in, and the longest wall has 100 in"), plan.verdict());
        assertTrue(plan.verdict().contains("the walls are full; it takes 62 in more"), plan.verdict());
    }

    @Test
    void no_wall_and_two_walls_of_one_name_are_refused() {
        Exhibition show = Exhibition.of("Saltmarsh Reach", "November");
        assertTrue(assertThrows(IllegalArgumentException.class, show::hang).getMessage().contains("HangingWall.of"));
        HangingWall wall = HangingWall.of("north", Length.inches(100), Length.inches(108));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> show.hang(wall, wall)).getMessage().contains("call each by its own"));
    }

    @Test
    void forty_quilts_on_eight_walls_are_placed_in_a_moment() {
        Random chance = new Random(3);
        Exhibition show = random(chance, 40);
        HangingWall[] walls = new HangingWall[8];
        for (int i = 0; i < walls.length; i++) {
            walls[i] = HangingWall.of("wall " + i, Length.inches(300 + 20 * i), Length.inches(116));
        }
        HangingPlan plan = show.hang(walls);
        long sum = show.entries().stream().mapToLong(e -> e.width().plus(plan.gap()).units()).sum();
        long most = java.util.stream.Stream.of(walls).mapToLong(w -> w.length().minus(plan.gap()).units()).sum();
        // The bound: all that hang take no more than all walls together.
        assertEquals(sum <= most ? 40 : plan.hung().size(), plan.hung().size());
        assertTrue(plan.hung().size() >= 24, plan.verdict());
    }
}
