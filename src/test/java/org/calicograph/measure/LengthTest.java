package org.calicograph.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    /** An inch is 25.4 mm exactly (international yard of 1959, from memory). */
    @Test
    void an_inch_is_25_4_millimetres_exactly() {
        assertThat(Length.inches(1)).isEqualTo(Length.mm(25.4));
        assertThat(Length.yards(1)).isEqualTo(Length.mm(914.4));
    }

    @Test
    void sixty_fourths_thirds_and_micrometres_are_whole_units() {
        assertThat(Length.inches(1, 64).units()).isEqualTo(9525);
        assertThat(Length.inches(1, 3).units()).isEqualTo(203_200);
        assertThat(Length.mm(0.001).units()).isEqualTo(24);
        assertThat(Length.inches(1, 3).times(3)).isEqualTo(Length.inches(1));
    }

    /** Ruler fractions and their decimals: arithmetic. */
    @ParameterizedTest
    @CsvSource({"1/16,0.0625", "1/8,0.125", "3/16,0.1875", "1/4,0.25", "5/16,0.3125", "3/8,0.375", "7/16,0.4375",
        "1/2,0.5", "9/16,0.5625", "5/8,0.625", "11/16,0.6875", "3/4,0.75", "13/16,0.8125", "7/8,0.875", "15/16,0.9375"})
    void ruler_fractions_are_read_as_their_decimals(String fraction, double decimal) {
        assertThat(Length.parse(fraction)).isEqualTo(Length.inches(decimal));
        assertThat(Length.inches(decimal).toString()).isEqualTo(fraction + " in");
    }

    @ParameterizedTest
    @CsvSource({"3,3 in", "3 1/8,3 1/8 in", "3-1/8,3 1/8 in", "3½,3 1/2 in", "2.5,2 1/2 in", ".5,1/2 in", "-1/4,-1/4 in",
        "12\",12 in", "7 3/8 in,7 3/8 in", "25.4 mm,1 in", "2.54cm,1 in", "1/8 yd,4 1/2 in", "2 yards,72 in"})
    void lengths_are_read_as_the_trade_writes_them(String text, String written) {
        assertThat(Length.parse(text)).hasToString(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "three", "3 1/0", "1/0", "3 in 4", "1e9", "--1", "3 1/8 ft"})
    void what_is_not_a_length_is_refused_with_its_own_words(String text) {
        assertThatThrownBy(() -> Length.parse(text)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("'" + text + "'");
    }

    @Property
    void writing_and_reading_a_trade_fraction_gives_it_back(@ForAll @IntRange(max = 9999) int whole, @ForAll @IntRange(max = 63) int n) {
        Length length = Length.inches(whole).plus(Length.inches(n, 64));
        assertThat(Length.parse(length.toString())).isEqualTo(length);
    }

    @Property
    void an_equal_share_is_within_half_a_unit(@ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long units,
                                              @ForAll @IntRange(min = 1, max = 10_000) int parts) {
        long back = new Length(units).dividedBy(parts).units() * parts;
        assertThat(2 * Math.abs(back - units)).isLessThanOrEqualTo(parts);
    }

    @Property
    void rounding_up_reaches_the_next_line_of_the_ruler_and_no_further(@ForAll @LongRange(min = -1_000_000_000L, max = 1_000_000_000L) long units) {
        Length step = Length.inches(1, 8);
        Length length = new Length(units);
        Length up = length.roundedUpTo(step);
        assertThat(up.isMultipleOf(step)).isTrue();
        assertThat(up.minus(length).units()).isBetween(0L, step.units() - 1);
    }

    @Test
    void metric_is_written_in_centimetres_and_small_lengths_in_millimetres() {
        assertThat(Length.inches(1).in(Length.System.METRIC)).isEqualTo("2.54 cm");
        assertThat(Length.mm(6).in(Length.System.METRIC)).isEqualTo("6 mm");
    }

    @Test
    void for_a_reader_metric_has_the_exact_inches_beside_where_it_is_rounded() {
        // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)
        assertThat(Length.inches("3 1/8").shownIn(Length.System.METRIC)).isEqualTo("7.94 cm (3 1/8 in)");
        assertThat(Length.inches("2 1/2").shownIn(Length.System.METRIC)).isEqualTo("6.35 cm");
        assertThat(Length.inches(1, 4).shownIn(Length.System.METRIC)).isEqualTo("6.35 mm");
        assertThat(Length.inches("3 1/8").shownIn(Length.System.INCH)).isEqualTo("3 1/8 in");
        assertThat(new Area(100).in(Length.System.METRIC)).isEqualTo("645.16 sq cm");
    }

    @Property
    void the_text_of_a_length_gives_it_back_exactly(@ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long units) {
        assertThat(Length.parse(new Length(units).text())).isEqualTo(new Length(units));
    }

    @Test
    void what_is_written_for_a_reader_of_metric_is_read_exactly_and_two_lengths_are_refused() {
        for (int n = 1; n < 640; n++) {
            Length length = Length.inches(n, 64);
            assertThat(Length.parse(length.shownIn(Length.System.METRIC))).isEqualTo(length);
        }
        assertThatThrownBy(() -> Length.parse("20 cm (3 in)")).hasMessageContaining("two lengths");
    }

    /** 62.9117 = 62 + 14.59/16. */
    @Test
    void a_length_between_the_lines_of_a_ruler_has_its_nearest_line_beside_it() {
        assertThat(Length.inches(62.9117).onRuler()).isEqualTo("62 15/16 in (62.912 in)");
        assertThat(Length.inches(3, 8).onRuler()).isEqualTo("3/8 in");
    }
}
