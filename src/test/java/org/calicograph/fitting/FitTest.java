package org.calicograph.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.calicograph.measure.Length;
import org.calicograph.border.Fitting;
import org.calicograph.covering.DesignException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {

    /** Four equal sides hold a multiple of four: arithmetic. */
    @Test
    void fifty_units_can_not_go_round_a_square_but_48_and_52_can() {
        Fit fit = Fit.around(inches(72), inches(72)).units(inches(6)).count(50);
        assertThat(fit.solutions()).isEmpty();
        assertThat(fit.why()).startsWith("50 equal units can't go evenly round a square: its four sides hold the same number");
        assertThat(fit.others()).extracting(c -> c.solution().total()).startsWith(48, 52);
        assertThat(fit.others().get(1).solution().corners()).isEqualTo(Fitting.Corners.UNIT);
        assertThat(fit.nearest().across()).isEqualTo(12);
        assertThat(fit.nearest().unit()).isEqualTo(inches(6));
    }

    @Test
    void no_unit_or_spacer_lets_fifty_go_round_a_square() {
        Fit fit = Fit.around(inches(72), inches(72)).units(inches(6)).between(inches(4), inches(8)).equalSpacers(inches(1, 4), inches(4)).count(50);
        assertThat(fit.solutions()).isEmpty();
    }

    @Test
    void fifty_units_go_round_a_rectangle_as_12_and_13() {
        Fit fit = Fit.around(inches(72), inches(78)).units(inches(6)).count(50);
        assertThat(fit.solutions()).anySatisfy(f -> {
            assertThat(f.across()).isEqualTo(12);
            assertThat(f.down()).isEqualTo(13);
            assertThat(f.corners()).isEqualTo(Fitting.Corners.APART);
        });
    }

    /**
     * Spacer borders: ten 5 in units round 46 in want 2 in finished (a quilt blog, 'Making a pieced border fit', 2009);
     * seven of 4 1/8 in round 20 1/2 in want 4 3/16 in (blog on spacer borders).
     */
    @ParameterizedTest
    @CsvSource({"46,5,10,2", "20 1/2,4 1/8,7,4 3/16"})
    void published_spacers_are_found(String side, String unit, int count, String spacer) {
        Length s = Length.parse(side);
        Fit fit = Fit.around(s, s).units(Length.parse(unit)).equalSpacers(inches(1, 2), inches(5));
        assertThat(fit.solutions()).anySatisfy(f -> {
            assertThat(f.across()).isEqualTo(count);
            assertThat(f.spacerSides()).isEqualTo(Length.parse(spacer));
        });
    }

    @Test
    void an_odd_count_is_refused_with_its_reason() {
        assertThat(Fit.around(inches(60), inches(80)).units(inches(5)).count(51).why()).contains("opposite sides hold the same number");
        assertThat(Fit.around(inches(61), inches(80)).units(inches(5)).why()).contains("don't come out whole along 61 in: it holds 12.20 of them");
        assertThatThrownBy(() -> Fit.around(inches(0), inches(80))).isInstanceOf(DesignException.class).hasMessageContaining("use a length above 0");
    }

    /** Against a search that tries every count and spacer by itself: none missed, none false, on 10,000 generated questions. */
    @Test
    void the_search_agrees_with_brute_force() {
        Random random = new Random(20);
        int found = 0;
        for (int i = 0; i < 10_000; i++) {
            long across = 8 + random.nextInt(60);
            long down = random.nextInt(3) == 0 ? across : 8 + random.nextInt(60);
            long unit = 4 + random.nextInt(12);
            long less = random.nextInt(3);
            long more = random.nextInt(3);
            long spacer = random.nextInt(4);
            boolean equal = random.nextBoolean();
            boolean symmetric = random.nextInt(4) == 0;
            int least = 1 + random.nextInt(20);
            int most = random.nextInt(3) == 0 ? least : least + random.nextInt(60);
            Length q = inches(1, 4);
            Fit fit = Fit.around(q.times(across), q.times(down)).units(q.times(unit)).steps(q)
                    .between(q.times(unit - less), q.times(unit + more)).counts(least, most);
            if (spacer > 0) {
                fit = equal ? fit.equalSpacers(q, q.times(spacer)) : fit.spacers(q, q.times(spacer));
            }
            if (symmetric) {
                fit = fit.mirroredAtMiddle();
            }
            Set<List<Long>> brute = brute(across, down, unit - less, unit + more, spacer, equal || spacer == 0, symmetric, least, most);
            Set<List<Long>> search = new HashSet<>();
            for (Fitting f : fit.solutions()) {
                search.add(List.of((long) f.across(), (long) f.down(), (long) f.corners().ordinal(), 2 * f.unit().units() / q.units(),
                        2 * f.spacerSides().units() / q.units(), 2 * f.spacerEnds().units() / q.units()));
            }
            assertThat(search).as("%s", fit).isEqualTo(brute);
            found += brute.size();
        }
        assertThat(found).isGreaterThan(4_000);
    }

    /** All in halves of a quarter inch, so that a spacer may be half a step. */
    private static Set<List<Long>> brute(long across, long down, long shortest, long longest, long spacer, boolean equal, boolean symmetric, int least, int most) {
        Set<List<Long>> all = new HashSet<>();
        for (long u = shortest; u <= longest; u++) {
            for (long sides = 0; sides <= 2 * spacer; sides++) {
                for (long ends = 0; ends <= 2 * spacer; ends++) {
                    if (sides == 1 || ends == 1 || equal && sides != ends) {
                        continue;
                    }
                    for (long a = 1; a * u <= across + sides; a++) {
                        for (long d = 1; d * u <= down + ends; d++) {
                            boolean fits = a * u == across + sides && d * u == down + ends && !(symmetric && (a % 2 != 0 || d % 2 != 0));
                            for (long corner = 0; corner <= 1 && fits; corner++) {
                                long total = 2 * (a + d) + 4 * corner;
                                if (total >= least && total <= most) {
                                    all.add(List.of(a, d, corner, 2 * u, sides, ends));
                                }
                            }
                        }
                    }
                }
            }
        }
        return all;
    }
}
