package org.calicograph.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.junit.jupiter.api.Test;

class ScatterTest {

    private static List<Patchwork> kinds(int count) {
        List<Patchwork> all = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            all.add(Block.plain(Fabric.of("cloth " + k, "#24425c"), Length.inches(6), Length.inches(6)).named("block " + k));
        }
        return all;
    }

    private static void holds(Scatter scatter) {
        BlockAt at = scatter.blocks();
        List<Integer> counts = new ArrayList<>(java.util.Collections.nCopies(scatter.kinds().size(), 0));
        for (int r = 0; r < scatter.rows(); r++) {
            for (int c = 0; c < scatter.columns(); c++) {
                Patchwork here = at.at(c, r);
                int k = scatter.kinds().indexOf(here);
                counts.set(k, counts.get(k) + 1);
                for (int[] step : new int[][] {{1, 0}, {0, 1}, {1, 1}, {-1, 1}}) {
                    int x = c + step[0];
                    int y = r + step[1];
                    if (x >= 0 && x < scatter.columns() && y < scatter.rows() && (scatter.corners() || step[0] * step[1] == 0)) {
                        assertTrue(!at.at(x, y).equals(here), "two of '" + here.name() + "' touch at " + c + ", " + r);
                    }
                }
            }
        }
        assertEquals(scatter.counts(), counts);
    }

    @Test
    void no_two_alike_touch_and_every_block_is_laid_as_often_as_asked() {
        Random chance = new Random(4);
        for (int n = 0; n < 150; n++) {
            int columns = 3 + chance.nextInt(7);
            int rows = 3 + chance.nextInt(7);
            Patchwork[] some = kinds(3 + chance.nextInt(5)).toArray(Patchwork[]::new);
            holds(Scatter.of(columns, rows, some).shuffled(n));
        }
        for (int n = 0; n < 40; n++) {
            holds(Scatter.of(4 + n % 5, 4 + n % 4, kinds(6).toArray(Patchwork[]::new)).cornersToo().shuffled(n));
        }
    }

    @Test
    void small_counts_are_scattered_just_where_looking_at_every_placing_finds_one() {
        List<Patchwork> three = kinds(3);
        for (int a = 0; a <= 9; a++) {
            for (int b = 0; a + b <= 9; b++) {
                List<Integer> counts = List.of(a, b, 9 - a - b);
                boolean there = exists(new int[9], 0, new int[] {a, b, 9 - a - b});
                boolean found;
                try {
                    holds(new Scatter(3, 3, three, counts, false, 7));
                    found = true;
                } catch (DesignException e) {
                    found = false;
                    assertTrue(e.getMessage().contains("every way was tried") || e.getMessage().contains("can't lie apart"), e.getMessage());
                }
                assertEquals(there, found, counts.toString());
            }
        }
    }

    private static boolean exists(int[] at, int p, int[] left) {
        if (p == 9) {
            return true;
        }
        for (int k = 0; k < 3; k++) {
            if (left[k] > 0 && !(p % 3 > 0 && at[p - 1] == k) && !(p > 2 && at[p - 3] == k)) {
                at[p] = k;
                left[k]--;
                boolean ok = exists(at, p + 1, left);
                left[k]++;
                if (ok) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void the_same_shuffle_gives_the_same_scatter_and_another_another() {
        Patchwork[] some = kinds(5).toArray(Patchwork[]::new);
        BlockAt one = Scatter.of(6, 6, some).blocks();
        BlockAt same = Scatter.of(6, 6, some).blocks();
        BlockAt other = Scatter.of(6, 6, some).shuffled(2).blocks();
        List<Patchwork> a = new ArrayList<>();
        List<Patchwork> b = new ArrayList<>();
        for (int p = 0; p < 36; p++) {
            assertSame(one.at(p % 6, p / 6), same.at(p % 6, p / 6));
            a.add(one.at(p % 6, p / 6));
            b.add(other.at(p % 6, p / 6));
        }
        assertNotEquals(a, b);
    }

    @Test
    void too_many_alike_and_counts_that_do_not_come_out_are_refused() {
        assertTrue(assertThrows(DesignException.class, () -> Scatter.of(3, 3, kinds(2).toArray(Patchwork[]::new)).counts(6, 3)).getMessage().contains("6 of 'block 0' can't lie apart"));
        assertTrue(assertThrows(DesignException.class, () -> Scatter.of(3, 3, kinds(2).toArray(Patchwork[]::new)).counts(3, 3)).getMessage().contains("make the counts come to 9"));
    }
}
