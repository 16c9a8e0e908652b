package org.calicograph.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.calicograph.Golden;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.junit.jupiter.api.Test;

class MotifFitTest {

    @Test
    void swags_meet_at_the_corners_where_their_length_divides_both_sides() {
        MotifFit fit = MotifFit.along(inches(60), inches(75)).spaced(inches("7 1/2"));
        assertThat(fit.solutions()).hasSize(1);
        assertThat(fit.nearest().across()).isEqualTo(8);
        assertThat(fit.nearest().down()).isEqualTo(10);
        assertThat(fit.nearest().total()).isEqualTo(36);
        assertThat(fit.nearest().marksAcross()).hasSize(9).startsWith(Length.ZERO).endsWith(inches(60));
        assertThat(fit.why()).isEqualTo("36 motifs 7 1/2 in apart: 8 across and 10 down, meeting at the corners; it is the only way.");
    }

    @Test
    void where_none_fits_the_reason_and_each_kind_of_change_are_given() {
        MotifFit fit = MotifFit.along(inches(61), inches(75)).spaced(inches(8)).between(inches("7 1/2"), inches("8 1/2"));
        assertThat(fit.solutions()).isEmpty();
        assertThat(fit.why()).startsWith("no spacing from 7 1/2 in to 8 1/2 in in steps of 1/8 in goes a whole number of times along both 61 in and 75 in");
        assertThat(fit.others()).extracting(Change::words).anyMatch(w -> w.contains("further out") || w.contains("further in"))
                .anyMatch(w -> w.startsWith("let the spacing differ by")).anyMatch(w -> w.startsWith("turn every corner"));
        for (Change<MotifSpacing> change : fit.others()) {
            MotifSpacing m = change.solution();
            Length across = m.alongEnds().times((long) m.across()).plus(m.reach().times(2));
            Length down = m.alongSides().times((long) m.down()).plus(m.reach().times(2));
            // What is not a change of the line still goes along the line that was asked for.
            if (!change.words().contains("along a line")) {
                assertThat(across.minus(inches(61)).abs().units()).as(change.words()).isLessThan(100);
                assertThat(down.minus(inches(75)).abs().units()).as(change.words()).isLessThan(100);
            } else {
                assertThat(across.minus(inches(61))).isEqualTo(down.minus(inches(75)));
            }
        }
        assertThat(MotifFit.along(inches(61), inches(80)).spaced(inches(5)).why()).isEqualTo("motifs 5 in apart don't come out whole along 61 in: it holds 12.20 of them.");
        assertThatThrownBy(() -> MotifFit.along(inches(0), inches(80))).isInstanceOf(DesignException.class).hasMessageContaining("use lengths above 0");
    }

    /** Against loops over every pair of spacings, counts and reaches: none missed, none false, on 1,500 generated questions. */
    @Test
    void the_search_agrees_with_brute_force() {
        Random random = new Random(7);
        Length q = inches(1, 4);
        int found = 0;
        int none = 0;
        for (int i = 0; i < 1500; i++) {
            int across = 10 + random.nextInt(50);
            int down = random.nextInt(3) == 0 ? across : 10 + random.nextInt(50);
            int wish = 3 + random.nextInt(10);
            int less = random.nextInt(Math.min(4, wish));
            int more = random.nextInt(4);
            int unlike = random.nextInt(3);
            int least = 1 + random.nextInt(3);
            int most = least + random.nextInt(5);
            MotifFit.Middle middle = MotifFit.Middle.values()[random.nextInt(3)];
            int kind = random.nextInt(3);
            MotifFit fit = MotifFit.along(q.times((long) across), q.times((long) down)).spaced(q.times((long) wish)).steps(q)
                    .between(q.times((long) wish - less), q.times((long) wish + more)).unlikeBy(q.times((long) unlike)).middle(middle);
            // Reaches are counted in halves of a quarter inch.
            fit = kind == 0 ? fit : fit.turning(q.half().times((long) least), q.half().times((long) most));
            fit = kind == 2 ? fit.corners(MotifSpacing.Corner.TURNING) : fit;
            Set<List<Long>> brute = new HashSet<>();
            for (long reach = 0; reach <= most; reach++) {
                boolean allowed = reach == 0 ? kind < 2 : kind > 0 && reach >= least;
                for (long u = wish - less; allowed && u <= wish + more; u++) {
                    for (long v = wish - less; v <= wish + more; v++) {
                        for (long a = 1; a * u + reach <= across; a++) {
                            for (long d = 1; d * v + reach <= down; d++) {
                                boolean even = middle == MotifFit.Middle.ANY || (a % 2 == 0) == (middle == MotifFit.Middle.MEETING)
                                        && (d % 2 == 0) == (middle == MotifFit.Middle.MEETING);
                                if (a * u + reach == across && d * v + reach == down && Math.abs(u - v) <= unlike && even) {
                                    brute.add(List.of(a, d, u, v, reach));
                                }
                            }
                        }
                    }
                }
            }
            Set<List<Long>> search = new HashSet<>();
            for (MotifSpacing m : fit.solutions()) {
                search.add(List.of((long) m.across(), (long) m.down(), m.alongEnds().units() / q.units(), m.alongSides().units() / q.units(),
                        2 * m.reach().units() / q.units()));
            }
            assertThat(search).as("%s", fit).isEqualTo(brute);
            assertThat(fit.solutions()).hasSize(brute.size()).isSortedAccordingTo(MotifSpacing.BEST_FIRST);
            found += brute.size();
            none += brute.isEmpty() ? 1 : 0;
        }
        assertThat(found).isGreaterThan(1000);
        assertThat(none).isGreaterThan(100);
    }

    @Test
    void a_turned_corner_reaches_equally_far_along_both_sides() {
        MotifFit fit = MotifFit.along(inches(61), inches(75)).spaced(inches(7)).turning(inches(2), inches(4)).corners(MotifSpacing.Corner.TURNING);
        MotifSpacing best = fit.nearest();
        assertThat(best.reach()).isEqualTo(inches("2 1/2"));
        assertThat(best.across()).isEqualTo(8);
        assertThat(best.down()).isEqualTo(10);
        Golden.picture("setting/swags-turning", FitPictures.motifs(best));
        Golden.picture("setting/swags-meeting", FitPictures.motifs(MotifFit.along(inches(60), inches(75)).spaced(inches("7 1/2")).nearest()));
    }
}
