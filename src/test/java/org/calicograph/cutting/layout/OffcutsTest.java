package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class OffcutsTest {

    private static final Length CLOTH = Length.inches(40);

    /** A sheet of 40 x 60 in cut up by edge-to-edge cuts on a quarter-inch grid: it can be laid in just 60 in again. */
    private static List<Blank> cutUp(int count, Random random, boolean directed) {
        List<int[]> sheets = new ArrayList<>(List.of(new int[] {160, 240}));
        while (sheets.size() < count) {
            int[] s = sheets.remove(random.nextInt(sheets.size()));
            int side = random.nextInt(s[0] + s[1]) < s[0] ? 0 : 1;
            if (s[side] < 4) {
                sheets.add(s);
                continue;
            }
            int at = 1 + random.nextInt(s[side] - 1);
            int[] a = s.clone();
            int[] b = s.clone();
            a[side] = s[side] - at;
            b[side] = at;
            sheets.add(a);
            sheets.add(b);
        }
        List<Blank> all = new ArrayList<>();
        for (int[] s : sheets) {
            Blank b = Blank.of("P" + all.size(), Length.inches(s[0], 4), Length.inches(s[1], 4));
            all.add(directed ? b.directed() : b);
        }
        return all;
    }

    @Property(tries = 60)
    void what_is_cut_from_offcuts_is_legal(@ForAll @IntRange(min = 1, max = 80) int count, @ForAll Random random) {
        boolean directed = random.nextBoolean();
        List<Blank> blanks = cutUp(count, random, directed);
        Panel laid = Offcuts.lay(CLOTH, blanks, 300_000, 7, Length.ZERO);
        Layout layout = new Layout(CLOTH, laid.filledTo(CLOTH, laid.along()), LengthBound.of(CLOTH, blanks));
        LegalCut.check(layout, blanks);
        assertThat(laid.along()).isGreaterThanOrEqualTo(Length.inches(60));
    }

    @Test
    void two_hundred_unlike_pieces_are_laid_within_a_fiftieth_of_the_least() {
        double over = 0;
        for (int k = 0; k < 4; k++) {
            for (boolean directed : new boolean[] {false, true}) {
                List<Blank> blanks = cutUp(200, new Random(100 + k), directed);
                Layout layout = LayoutSearch.USUAL.lay(CLOTH, blanks);
                LegalCut.check(layout, blanks);
                over += layout.length().inInches() / 60 - 1;
            }
        }
        assertThat(over / 8).isLessThan(0.02);
    }

    @Test
    void changing_the_order_never_makes_it_longer() {
        for (int k = 0; k < 20; k++) {
            List<Blank> blanks = cutUp(40, new Random(k), k % 2 == 0);
            assertThat(Offcuts.lay(CLOTH, blanks, 4_000_000, 3, Length.ZERO).along()).isLessThanOrEqualTo(Offcuts.lay(CLOTH, blanks, 0, 3, Length.ZERO).along());
        }
    }
}
