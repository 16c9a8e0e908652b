package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class LengthBoundTest {

    /** By trying every place of every blank, with cuts of any kind: a bound must hold even so. */
    @Property(tries = 100)
    void no_layout_of_a_few_blanks_is_shorter_than_the_bound(@ForAll Random random) {
        int width = 3 + random.nextInt(5);
        List<Blank> blanks = new ArrayList<>();
        int kinds = 1 + random.nextInt(3);
        while (kinds-- > 0) {
            Length a = Length.inches(1 + random.nextInt(Math.min(4, width)));
            Length b = random.nextBoolean() ? a : Length.inches(1 + random.nextInt(4));
            blanks.addAll(Collections.nCopies(1 + random.nextInt(4), new Blank("P" + kinds, a, b, random.nextInt(3) > 0)));
        }
        int bound = (int) Math.ceil(LengthBound.of(Length.inches(width), blanks).length().inInches() - 1e-9);
        assertThat(fits(width, bound - 1, blanks)).as("%s on %d in, shorter than %d in", blanks, width, bound).isFalse();
    }

    /** Ten lie across 40 in and 42 need a fifth row, of whatever layout: 18 3/4 in, though their area asks for less than 15. */
    @Test
    void squares_are_counted_in_whole_steps_both_ways() {
        List<Blank> blanks = new ArrayList<>(Collections.nCopies(36, Blank.of("A", Length.inches("3 3/4"), Length.inches("3 3/4"))));
        blanks.addAll(Collections.nCopies(6, Blank.of("B", Length.inches("4 1/8"), Length.inches("4 1/8"))));
        LengthBound bound = LengthBound.of(Length.inches(40), blanks);
        assertThat(bound.length()).isEqualTo(Length.inches("18 3/4"));
        assertThat(bound.reason()).isEqualTo("wide and long blanks leave too little room for the others");
        assertThat(LayoutSearch.USUAL.lay(Length.inches(40), blanks).length()).isEqualTo(bound.length());
    }

    /** True if the blanks can be laid on cells of an inch, whatever the cuts. */
    private static boolean fits(int width, int length, List<Blank> blanks) {
        Map<Blank, Integer> left = new LinkedHashMap<>();
        blanks.forEach(b -> left.merge(b, 1, Integer::sum));
        double area = blanks.stream().mapToDouble(b -> b.area().squareInches()).sum();
        return length > 0 && new LengthBoundTest().fill(new boolean[length][width], left, (int) Math.round(width * length - area));
    }

    /** So many states are looked at; the few cases that need more say nothing. */
    private int budget = 300_000;

    /** Fills the first free cell with every blank that is left, and at last with nothing. */
    private boolean fill(boolean[][] taken, Map<Blank, Integer> left, int spare) {
        if (spare < 0 || budget-- < 0) {
            return false;
        }
        if (left.values().stream().allMatch(n -> n == 0)) {
            return true;
        }
        for (int y = 0; y < taken.length; y++) {
            for (int x = 0; x < taken[0].length; x++) {
                if (!taken[y][x]) {
                    for (Blank b : left.keySet()) {
                        for (Blank lying : b.turnable() && !b.across().equals(b.along()) ? List.of(b, b.turned()) : List.of(b)) {
                            if (left.get(b) > 0 && lay(taken, x, y, lying, true)) {
                                left.merge(b, -1, Integer::sum);
                                boolean done = fill(taken, left, spare);
                                left.merge(b, 1, Integer::sum);
                                lay(taken, x, y, lying, false);
                                if (done) {
                                    return true;
                                }
                            }
                        }
                    }
                    taken[y][x] = true;
                    boolean done = fill(taken, left, spare - 1);
                    taken[y][x] = false;
                    return done;
                }
            }
        }
        return false;
    }

    /** Lays a blank where all is free, or takes it up again. */
    private static boolean lay(boolean[][] taken, int x, int y, Blank b, boolean down) {
        int w = (int) b.across().inInches();
        int h = (int) b.along().inInches();
        if (y + h > taken.length || x + w > taken[0].length) {
            return false;
        }
        for (int pass = 0; pass < 2; pass++) {
            for (int i = y; i < y + h; i++) {
                for (int j = x; j < x + w; j++) {
                    if (pass == 0 && down && taken[i][j]) {
                        return false;
                    }
                    taken[i][j] = pass == 0 ? taken[i][j] : down;
                }
            }
        }
        return true;
    }
}
