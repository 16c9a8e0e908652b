package org.calicograph.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.fabric.Ramp;
import org.calicograph.measure.Angle;

class ColourLaws {

    @Provide
    Arbitrary<Colour> colours() {
        return Arbitraries.integers().between(0, 0xFFFFFF).map(Colour::packed);
    }

    @Property
    void every_space_leads_back(@ForAll("colours") Colour c) {
        assertThat(c.oklch().colour().packed()).isEqualTo(c.packed());
        assertThat(c.lab(Lab.White.D50).xyz().linear().clipped().packed()).isEqualTo(c.packed());
        assertThat(Colour.hex(c.hex())).isEqualTo(c);
    }

    @Property
    void differences_are_the_same_both_ways_and_nothing_from_itself(@ForAll("colours") Colour a, @ForAll("colours") Colour b) {
        assertThat(a.difference(b)).isCloseTo(b.difference(a), within(1e-9)).isGreaterThanOrEqualTo(0);
        assertThat(a.difference(a)).isZero();
    }

    @Property
    void what_a_screen_can_t_show_keeps_its_lightness_and_nearly_its_hue(@ForAll @DoubleRange(min = 0.05, max = 0.95) double lightness,
            @ForAll @DoubleRange(min = 0, max = 0.5) double chroma, @ForAll @DoubleRange(min = 0, max = 360) double hue) {
        Oklch wanted = new Oklch(lightness, chroma, hue);
        Oklch shown = wanted.colour().oklch();
        // Cutting off what is left may move it by what is just noticed, 0.02 in OKLab (CSS Color 4).
        assertThat(shown.oklab().distance(wanted.withChroma(Math.min(chroma, shown.chroma())).oklab())).isLessThan(0.021);
        assertThat(shown.lightness()).isCloseTo(lightness, within(0.021));
    }

    @Property
    void tints_never_darken_and_shades_never_lighten(@ForAll("colours") Colour c, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        assertThat(c.tint(share).value()).isGreaterThanOrEqualTo(c.value() - 0.8);
        assertThat(c.shade(share).value()).isLessThanOrEqualTo(c.value() + 0.8);
        assertThat(c.tint(1)).isEqualTo(Colour.WHITE);
        assertThat(c.shade(1)).isEqualTo(Colour.BLACK);
    }

    @Property
    void opposite_the_opposite_is_where_one_began(@ForAll("colours") Colour c) {
        Assume.that(c.oklch().chroma() > 0.02);
        Wheel wheel = Wheel.pigment();
        double place = wheel.placeOf(c).degrees();
        assertThat(place).isBetween(0.0, 360.0);
        double back = wheel.placeOf(wheel.at(wheel.placeOf(c))).minus(Angle.degrees(place)).plus(Angle.HALF).normalised().degrees();
        assertThat(back).isCloseTo(180, within(4.0));
    }

    @Property(tries = 100)
    void ramps_step_evenly_between_any_two_colours(@ForAll("colours") Colour a, @ForAll("colours") Colour b, @ForAll @IntRange(min = 3, max = 12) int steps) {
        Assume.that(Math.abs(a.value() - b.value()) > 5);
        Ramp ramp = Ramp.between(a, b, steps);
        double step = (b.value() - a.value()) / (steps - 1);
        for (int i = 0; i < steps; i++) {
            assertThat(ramp.colours().get(i).value()).isCloseTo(a.value() + i * step, within(0.2));
        }
    }
}
