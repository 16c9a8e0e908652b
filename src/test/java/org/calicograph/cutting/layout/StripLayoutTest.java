package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class StripLayoutTest {

    private static final Length CLOTH = Length.inches(40);

    @Property(tries = 60)
    void strips_are_legal_and_give_every_blank(@ForAll @IntRange(min = 1, max = 8) int kinds, @ForAll Random random) {
        List<Blank> blanks = blanks(kinds, random);
        StripLayout strips = StripLayout.of(CLOTH, blanks);
        LegalCut.check(strips.layout(), blanks);
        assertThat(strips.layout().length()).isGreaterThanOrEqualTo(strips.layout().bound().length());
        assertThat(given(strips)).isEqualTo(blanks.stream().collect(Collectors.groupingBy(Blank::name, Collectors.summingInt(b -> 1))));
    }

    @Property(tries = 60)
    void what_is_cut_from_a_strip_fits_on_it(@ForAll @IntRange(min = 1, max = 8) int kinds, @ForAll Random random) {
        StripLayout strips = StripLayout.of(CLOTH, blanks(kinds, random));
        Length across = Length.ZERO;
        for (StripLayout.Strip s : strips.strips()) {
            Length taken = s.cuts().stream().map(StripLayout.Cut::taken).reduce(Length.ZERO, Length::plus);
            assertThat(taken).isLessThanOrEqualTo(s.length());
            assertThat(s.cuts()).allSatisfy(c -> assertThat(c.high().times((long) c.pile())).isLessThanOrEqualTo(s.width()));
            assertThat(s.cuts()).allSatisfy(c -> assertThat(c.count() % c.pile()).isZero());
            if (s.way() == StripLayout.Way.ACROSS) {
                across = across.plus(s.width().times((long) s.count()));
            }
        }
        assertThat(across).isLessThanOrEqualTo(strips.layout().length());
        if (strips.strips().stream().allMatch(s -> s.way() == StripLayout.Way.ACROSS)) {
            assertThat(across).isEqualTo(strips.layout().length());
        }
    }

    /** a page of quilt maths: 100 pieces of 3 1/2 in at 12 from a 44 in strip take 9 strips. */
    @Test
    void a_hundred_squares_take_nine_strips() {
        Blank a = square("A", "3 1/2");
        StripLayout strips = StripLayout.of(Length.inches(44), Collections.nCopies(100, a));
        assertThat(strips.strips()).containsExactly(
                strip(StripLayout.Way.ACROSS, 8, "3 1/2", Length.inches(44), cut("A", 12, "3 1/2", "3 1/2")),
                strip(StripLayout.Way.ACROSS, 1, "3 1/2", Length.inches(44), cut("A", 4, "3 1/2", "3 1/2")));
        assertThat(strips.layout().length()).isEqualTo(Length.inches("31 1/2"));
    }

    /** Common practice: rectangles stand in the strip whichever way takes less cloth, and share strips with what is as high. */
    @Test
    void kinds_as_high_as_each_other_share_a_strip() {
        List<Blank> blanks = new ArrayList<>(Collections.nCopies(5, square("A", "4 1/2")));
        blanks.addAll(Collections.nCopies(7, Blank.of("B", Length.inches("4 1/2"), Length.inches("2 1/2"))));
        assertThat(StripLayout.of(CLOTH, blanks).strips()).containsExactly(strip(StripLayout.Way.ACROSS, 1, "4 1/2", CLOTH,
                cut("A", 5, "4 1/2", "4 1/2"), cut("B", 7, "2 1/2", "4 1/2")));
    }

    /** Reckoned by hand: beside one square of 21 in on 40 in of cloth seven pieces of 2 1/2 in are cut off, each three times 6 1/2 in high. */
    @Test
    void low_blanks_are_piled_at_the_end_of_a_high_strip() {
        List<Blank> blanks = new ArrayList<>(List.of(square("A", "21")));
        blanks.addAll(Collections.nCopies(20, Blank.of("E", Length.inches("2 1/2"), Length.inches("6 1/2")).directed()));
        assertThat(StripLayout.of(CLOTH, blanks).strips()).containsExactly(new StripLayout.Strip(StripLayout.Way.ACROSS, 1, Length.inches(21), CLOTH, List.of(
                cut("A", 1, "21", "21"), new StripLayout.Cut("E", 18, Length.inches("2 1/2"), Length.inches("6 1/2"), 3),
                new StripLayout.Cut("E", 2, Length.inches("2 1/2"), Length.inches("6 1/2"), 2))));
    }

    /** Common practice: what is longer than the cloth is wide is cut first, along the selvedge, and small pieces come from what is left beside it. */
    @Test
    void long_strips_are_cut_first_and_the_rest_of_their_length_is_used() {
        List<Blank> blanks = new ArrayList<>(Collections.nCopies(4, Blank.of("D", Length.inches("4 1/2"), Length.inches("54 1/2"))));
        blanks.addAll(Collections.nCopies(30, square("H", "2 1/2")));
        StripLayout strips = StripLayout.of(CLOTH, blanks);
        assertThat(strips.strips()).containsExactly(
                strip(StripLayout.Way.ALONG, 4, "4 1/2", Length.inches("54 1/2"), cut("D", 1, "54 1/2", "4 1/2")),
                strip(StripLayout.Way.BESIDE, 3, "2 1/2", Length.inches(22), cut("H", 8, "2 1/2", "2 1/2")),
                strip(StripLayout.Way.BESIDE, 1, "2 1/2", Length.inches(22), cut("H", 6, "2 1/2", "2 1/2")));
        assertThat(strips.layout().length()).isEqualTo(Length.inches("54 1/2"));
    }

    @Test
    void a_print_with_a_direction_is_not_turned() {
        Blank tall = Blank.of("G", Length.inches(3), Length.inches(10)).directed();
        assertThat(StripLayout.of(CLOTH, Collections.nCopies(14, tall)).layout().length()).isEqualTo(Length.inches(20));
        assertThat(StripLayout.of(CLOTH, Collections.nCopies(14, Blank.of("G", Length.inches(3), Length.inches(10)))).layout().length())
                .isEqualTo(Length.inches(12));
    }

    @Test
    void a_blank_wider_than_the_cloth_is_refused_with_the_repair() {
        assertThatThrownBy(() -> StripLayout.of(CLOTH, List.of(Blank.of("back", Length.inches(60), Length.inches(50)))))
                .hasMessage("'back' is 50 in wide but the cloth only 40 in; cut it lengthwise, join it from two, or take wider cloth");
    }

    private static Map<String, Integer> given(StripLayout strips) {
        return strips.strips().stream().flatMap(s -> s.cuts().stream().map(c -> Map.entry(c.name(), c.count() * s.count())))
                .collect(Collectors.groupingBy(Map.Entry::getKey, Collectors.summingInt(Map.Entry::getValue)));
    }

    /** Some of each kind; about one kind in five is longer than the cloth is wide, and one in four keeps its direction. */
    private static List<Blank> blanks(int kinds, Random random) {
        List<Blank> all = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
            Length across = Length.inches(8 + random.nextInt(100), 8);
            Length along = random.nextInt(5) == 0 ? Length.inches(330 + random.nextInt(300), 8) : Length.inches(8 + random.nextInt(120), 8);
            Blank b = new Blank(String.valueOf((char) ('A' + i)), across, along, random.nextInt(4) > 0);
            all.addAll(Collections.nCopies(1 + random.nextInt(12), b));
        }
        return all;
    }

    private static Blank square(String name, String side) {
        return Blank.of(name, Length.inches(side), Length.inches(side));
    }

    private static StripLayout.Strip strip(StripLayout.Way way, int count, String width, Length length, StripLayout.Cut... cuts) {
        return new StripLayout.Strip(way, count, Length.inches(width), length, List.of(cuts));
    }

    private static StripLayout.Cut cut(String name, int count, String every, String high) {
        return new StripLayout.Cut(name, count, Length.inches(every), Length.inches(high), 1);
    }
}
