package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class LayoutTest {

    private static final Length CLOTH = Length.inches(42);

    @Property(tries = 60)
    void every_layout_is_legal(@ForAll @IntRange(min = 1, max = 60) int count, @ForAll Random random) {
        List<Blank> blanks = blanks(count, random);
        for (LayoutSearch search : List.of(LayoutSearch.QUICK, new LayoutSearch(800, 2))) {
            Layout layout = search.lay(CLOTH, blanks);
            LegalCut.check(layout, blanks);
            assertThat(layout.length()).isGreaterThanOrEqualTo(layout.bound().length());
        }
    }

    @Property(tries = 40)
    void cloth_cut_up_at_random_is_laid_again_within_a_twentieth(@ForAll @IntRange(min = 5, max = 14) int count, @ForAll Random random) {
        List<Blank> blanks = cutUp(20, 20, count, random);
        Layout layout = new LayoutSearch(60_000, 2).lay(Length.inches(20), blanks);
        LegalCut.check(layout, blanks);
        assertThat(layout.length()).isBetween(Length.inches(20), Length.inches(21));
    }

    @Test
    void ten_thousand_pieces_are_laid_in_rows() {
        List<Blank> blanks = blanks(10_000, new Random(5));
        Layout layout = LayoutSearch.USUAL.lay(CLOTH, blanks);
        LegalCut.check(layout, blanks);
        assertThat(layout.overBound()).isLessThan(0.12);
    }

    @Test
    void the_same_blanks_are_laid_the_same_way_twice() {
        List<Blank> blanks = blanks(25, new Random(11));
        assertThat(LayoutSearch.USUAL.lay(CLOTH, blanks)).isEqualTo(LayoutSearch.USUAL.lay(CLOTH, blanks));
    }

    @Test
    void squares_fill_whole_strips_and_the_bound_says_so() {
        // 16 squares of 2 1/2 in lie across 42 in: 40 in are filled, so 32 squares need 5 in.
        List<Blank> blanks = Collections.nCopies(32, Blank.of("A", Length.inches("2 1/2"), Length.inches("2 1/2")));
        Layout layout = LayoutSearch.USUAL.lay(CLOTH, blanks);
        assertThat(layout.length()).isEqualTo(Length.inches(5));
        assertThat(layout.bound().length()).isEqualTo(Length.inches(5));
        assertThat(layout.bound().reason()).isEqualTo("area over the 40 in of width that blanks can fill");
    }

    @Test
    void a_directed_blank_keeps_its_direction() {
        Blank long_ = new Blank("border", Length.inches(3), Length.inches(40), false);
        Layout layout = LayoutSearch.USUAL.lay(CLOTH, Collections.nCopies(4, long_));
        assertThat(layout.length()).isEqualTo(Length.inches(40));
        Layout turned = LayoutSearch.USUAL.lay(CLOTH, Collections.nCopies(4, Blank.of("border", Length.inches(3), Length.inches(40))));
        assertThat(turned.length()).isEqualTo(Length.inches(12));
    }

    @Test
    void a_blank_wider_than_the_cloth_is_refused_with_the_repair() {
        assertThatThrownBy(() -> LayoutSearch.USUAL.lay(CLOTH, List.of(Blank.of("back", Length.inches(60), Length.inches(50)))))
                .hasMessage("'back' is 50 in wide but the cloth only 42 in; cut it lengthwise, join it from two, or take wider cloth");
    }

    static List<Blank> blanks(int count, Random random) {
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Length a = Length.inches(8 + random.nextInt(90), 8);
            Length b = Length.inches(8 + random.nextInt(90), 8);
            blanks.add(new Blank("P" + i, a, b, random.nextInt(4) > 0));
        }
        return blanks;
    }

    /** A sheet parted by random edge-to-edge cuts: its own length is the optimum. */
    static List<Blank> cutUp(int across, int along, int count, Random random) {
        List<int[]> sheets = new ArrayList<>(List.of(new int[] {across, along}));
        while (sheets.size() < count) {
            int[] s = sheets.remove(random.nextInt(sheets.size()));
            int side = random.nextInt(s[0] + s[1]) < s[0] ? 0 : 1;
            if (s[side] < 2) {
                sheets.add(s);
                continue;
            }
            int at = 1 + random.nextInt(s[side] - 1);
            int[] a = s.clone();
            int[] b = s.clone();
            a[side] = at;
            b[side] = s[side] - at;
            sheets.add(a);
            sheets.add(b);
        }
        List<Blank> blanks = new ArrayList<>();
        for (int[] s : sheets) {
            blanks.add(Blank.of("P" + blanks.size(), Length.inches(s[0]), Length.inches(s[1])));
        }
        Collections.shuffle(blanks, random);
        return blanks;
    }
}
