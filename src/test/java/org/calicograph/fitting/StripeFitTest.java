package org.calicograph.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.Golden;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class StripeFitTest {

    /** A print that mirrors about 0 and half a repeat, and nowhere else. */
    private static double print(double place, double repeat) {
        double turn = 2 * Math.PI * place / repeat;
        return Math.cos(turn) + 0.7 * Math.cos(2 * turn) + 0.3 * Math.cos(3 * turn);
    }

    /** Whether the print at the end of a strip, run backwards, is the print at the beginning of the next. */
    private static boolean mirrors(StripeFit fit, List<Length> starts, double slack) {
        double r = fit.repeat().inInches();
        for (int side = 0; side < 4; side++) {
            double end = starts.get(side).plus(fit.outer(side)).inInches();
            double next = starts.get((side + 1) % 4).inInches();
            for (double t = 0; t < r; t += r / 23) {
                if (Math.abs(print(end - t, r) - print(next + t, r)) > slack) {
                    return false;
                }
            }
        }
        return true;
    }

    @Property(tries = 60, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void every_match_mirrors_at_every_mitre(@ForAll @IntRange(min = 20, max = 90) int across, @ForAll @IntRange(min = -6, max = 6) int halves,
                                            @ForAll @IntRange(min = 3, max = 12) int width, @ForAll @IntRange(min = 3, max = 24) int repeat) {
        Length half = inches(repeat).half();
        Length down = inches(across + 72).plus(half.times((long) halves));
        StripeFit fit = StripeFit.around(inches(across + 72), down, inches(width)).repeating(inches(repeat));
        List<StripeMatch> all = fit.solutions();
        assertThat(all).isNotEmpty().isSortedAccordingTo(StripeMatch.BEST_FIRST);
        assertThat(all).allMatch(m -> mirrors(fit, m.starts(), 1e-6));
        assertThat(all.get(0).looks()).isEqualTo(halves % 2 == 0 ? 1 : 2);
        assertThat(all.get(0).centred()).isEqualTo(halves % 2 == 0);
    }

    /** Against every choice of four beginnings on a grid: what mirrors is found, and nothing else, on 150 generated questions. */
    @Test
    void the_search_agrees_with_brute_force() {
        Random random = new Random(3);
        int matched = 0;
        int not = 0;
        for (int i = 0; i < 150; i++) {
            int repeat = 2 * (2 + random.nextInt(4));
            int across = 20 + random.nextInt(20);
            int down = random.nextInt(3) == 0 ? across : 20 + random.nextInt(20);
            StripeFit fit = StripeFit.around(inches(across), inches(down), inches(2)).repeating(inches(repeat)).steps(inches(1)).within(Length.ZERO);
            List<List<Length>> found = fit.solutions().stream().map(StripeMatch::starts).filter(s -> s.stream().allMatch(x -> x.isMultipleOf(inches(1)))).toList();
            int brute = 0;
            for (int k = 0; k < repeat * repeat * repeat * repeat; k++) {
                List<Length> starts = List.of(inches(k % repeat), inches(k / repeat % repeat), inches(k / repeat / repeat % repeat), inches(k / repeat / repeat / repeat));
                if (mirrors(fit, starts, 1e-6)) {
                    brute++;
                    assertThat(found).contains(starts);
                }
            }
            assertThat(found).as("%s", fit).hasSize(brute);
            assertThat(fit.solutions().isEmpty()).isEqualTo((across - down) * 2 % repeat != 0);
            matched += brute > 0 ? 1 : 0;
            not += brute == 0 ? 1 : 0;
        }
        assertThat(matched).isGreaterThan(20);
        assertThat(not).isGreaterThan(20);
    }

    @Test
    void where_the_print_does_not_match_the_least_change_that_does_comes_first() {
        StripeFit fit = StripeFit.around(inches(60), inches(77), inches(6)).repeating(inches(10));
        assertThat(fit.solutions()).isEmpty();
        assertThat(fit.why()).startsWith("The sides differ by 17 in, which is 3.40 half repeats of 5 in; the print mirrors at every mitre only if that is a whole number");
        List<Change<StripeMatch>> others = fit.others();
        assertThat(others.get(0).words()).isEqualTo("make it 2 in wider, 62 in x 77 in, with spacer strips of 1 in finished on the sides");
        assertThat(others.get(0).solution().looks()).isEqualTo(2);
        assertThat(others.get(1).words()).isEqualTo("make it 2 in shorter, 60 in x 75 in");
        assertThat(others).filteredOn(c -> c.solution().looks() == 1).first().extracting(Change::words).isEqualTo(
                "make it 3 in longer, 60 in x 80 in, with spacer strips of 1 1/2 in finished at the ends");
        assertThat(fit.heights(inches(70), inches(90))).containsExactly(inches(70), inches(75), inches(80), inches(85), inches(90));
        for (Length height : fit.heights(inches(40), inches(100))) {
            assertThat(fit.sized(inches(60), height).solutions()).isNotEmpty();
        }
        assertThat(fit.oneWay().why()).startsWith("The print runs one way");
        assertThat(fit.oneWay().others()).isEmpty();
        StripeFit square = StripeFit.around(inches(60), inches(60), inches(6)).repeating(inches(10)).oneWay();
        assertThat(square.solutions()).isEmpty();
        assertThat(square.others()).singleElement().extracting(Change::words).isEqualTo("use a print of the same repeat that mirrors about a line across the strip");
    }

    @Test
    void the_cloth_holds_every_strip_at_its_place_in_the_print() {
        StripeFit fit = StripeFit.around(inches(60), inches(80), inches(6)).repeating(inches(10));
        // Four stripes side by side, every strip with its middle on the same kind of line or the other: the longest, and half the rest at most.
        StripeMatch four = fit.best();
        assertThat(four.looks()).isEqualTo(1);
        assertThat(four.cloth()).isEqualTo(fit.cut(1));
        assertThat(fit.extraCloth(four)).isEqualTo(inches(10));
        // One stripe: the four cuts end to end, and what lies between one place in the print and the next.
        StripeMatch one = fit.lanes(1).best();
        Length cuts = fit.cut(0).plus(fit.cut(1)).times(2);
        assertThat(one.cloth()).isGreaterThanOrEqualTo(cuts);
        assertThat(one.cloth()).isLessThan(cuts.plus(inches(30)));
        // Cuts of 76 and 96 in begin at one place of a 10 in repeat: each but the last takes 80 or 100 in, the last its own length.
        assertThat(one.cloth().inInches()).isCloseTo(Math.min(80 + 100 + 80 + 96, 100 + 100 + 80 + 76), within(1e-9));
        Golden.picture("setting/stripes-alike", FitPictures.stripes(fit, four));
        StripeFit pairs = StripeFit.around(inches(40), inches(55), inches(6)).repeating(inches(10));
        Golden.picture("setting/stripes-in-pairs", FitPictures.stripes(pairs, pairs.best()));
    }
}
