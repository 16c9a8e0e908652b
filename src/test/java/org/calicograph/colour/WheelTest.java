package org.calicograph.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.calicograph.fabric.Palette;
import org.calicograph.fabric.Ramp;
import org.calicograph.fabric.Scheme;
import org.calicograph.measure.Angle;
import org.junit.jupiter.api.Test;

class WheelTest {

    private final Wheel pigment = Wheel.pigment();

    private String opposite(String name) {
        Wheel.Hue hue = pigment.hues().stream().filter(h -> h.name().equals(name)).findFirst().orElseThrow();
        return pigment.nearest(pigment.opposite(hue.colour())).name();
    }

    @Test
    void painters_complements_stand_opposite() {
        // The six complementary pairs of the twelve-part wheel: common practice in art schools.
        Map.of("red", "green", "yellow", "violet", "blue", "orange", "yellow-orange", "blue-violet",
                "red-orange", "blue-green", "red-violet", "yellow-green").forEach((one, other) -> {
                    assertThat(opposite(one)).isEqualTo(other);
                    assertThat(opposite(other)).isEqualTo(one);
                });
    }

    @Test
    void every_step_has_its_own_place_and_colour() {
        for (Wheel wheel : List.of(pigment, Wheel.perceptual())) {
            for (int i = 0; i < 12; i++) {
                Colour c = wheel.hues().get(i).colour();
                assertThat(wheel.placeOf(c).degrees()).isCloseTo(30 * i, within(1e-6));
                assertThat(wheel.at(Angle.degrees(30 * i))).isEqualTo(c);
            }
        }
    }

    @Test
    void places_between_steps_come_back() {
        for (double d = 1; d < 360; d += 7) {
            Oklch exact = pigment.at(Angle.degrees(d)).oklch();
            double back = pigment.placeOf(exact.colour()).degrees();
            // The blue-green stretch leaves the screen's range, and what is cut off there moves a little.
            assertThat(Math.abs(back - d)).as("at %s", d).isLessThan(4);
        }
    }

    @Test
    void a_true_colour_turns_into_a_true_colour_and_a_tint_into_a_tint() {
        Colour yellow = pigment.hues().get(0).colour();
        Colour violet = pigment.hues().get(6).colour();
        assertThat(pigment.turned(yellow, Angle.HALF).difference(violet)).isLessThan(0.1);
        // Blue and violet, whose tints lie well within the screen's range; nothing is cut off.
        Colour blue = pigment.hues().get(8).colour();
        assertThat(pigment.turned(blue.tint(0.5), Angle.degrees(-60)).difference(violet.tint(0.5))).isLessThan(0.1);
        assertThat(pigment.turned(blue.shade(0.3), Angle.degrees(-60)).difference(violet.shade(0.3))).isLessThan(0.1);
        assertThat(pigment.turned(Colour.hex("#7f9fa3"), Angle.ZERO).difference(Colour.hex("#7f9fa3"))).isLessThan(0.1);
    }

    @Test
    void the_perceptual_wheel_is_even_in_lightness() {
        assertThat(Wheel.perceptual().hues()).allSatisfy(h ->
                assertThat(h.colour().oklch().lightness()).isCloseTo(0.72, within(1e-6)));
    }

    @Test
    void a_grey_has_no_place() {
        assertThatThrownBy(() -> pigment.placeOf(Colour.hex("#808080")))
                .hasMessage("#808080 is a grey and has no place on the pigment wheel; choose a colour with a hue");
    }

    @Test
    void schemes_start_from_their_colour_and_have_their_number() {
        Colour blue = Colour.hex("#2a5f99");
        assertThat(Scheme.TRIADIC.on(pigment, blue).colours()).hasSize(3).startsWith(blue);
        assertThat(Scheme.SQUARE.on(pigment, blue).colours()).hasSize(4);
        Palette pair = Scheme.COMPLEMENTARY.on(pigment, blue);
        assertThat(pair.name()).isEqualTo("complementary from blue");
        assertThat(pair.swatches().get(1).name()).contains("orange");
        assertThat(Scheme.MONOCHROMATIC.on(pigment, blue).colours()).hasSize(4);
    }

    @Test
    void ramps_step_evenly_in_value() {
        for (Ramp ramp : List.of(Ramp.byValue(Colour.hex("#fff3b0"), Colour.hex("#241a5f"), 9),
                Ramp.byValue(Colour.BLACK, Colour.WHITE, 11))) {
            List<Colour> c = ramp.colours();
            double step = (c.get(c.size() - 1).value() - c.get(0).value()) / (c.size() - 1);
            for (int i = 1; i < c.size(); i++) {
                assertThat(c.get(i).value() - c.get(i - 1).value()).isCloseTo(step, within(0.05));
            }
        }
    }

    @Test
    void tints_lighten_shades_darken_and_tones_go_to_the_middle() {
        for (Wheel.Hue hue : pigment.hues()) {
            Colour c = hue.colour();
            assertThat(c.tint(0.4).value()).isGreaterThan(c.value());
            assertThat(c.shade(0.4).value()).isLessThan(c.value());
            assertThat(Math.abs(c.tone(0.4).value() - 50)).isLessThan(Math.abs(c.value() - 50) + 1e-6);
            assertThat(c.tone(0.4).oklch().chroma()).isCloseTo(c.oklch().chroma() * 0.6, within(0.01));
        }
        // A painter's yellow and grey make olive (common practice): darker than the tint by far.
        Colour yellow = Colour.hex("#ffff00");
        assertThat(yellow.tint(0.5).value() - yellow.tone(0.5).value()).isGreaterThan(20);
        // Kubelka and Munk: a band that throws back a half has K/S of a quarter, so that half of it and half of white throw back 0.6096.
        assertThat(new LinearRgb(0.5, 0.5, 0.5).clipped().mixedAsPaint(Colour.WHITE, 0.5).linear().green()).isCloseTo(1.125 - Math.sqrt(0.125 * 0.125 + 0.25), within(1e-6));
        // Yellow paint and blue paint make green (common practice).
        assertThat(Colour.hex("#ffd400").mixedAsPaint(Colour.hex("#2a5f99"), 0.5).oklch().hue()).isBetween(115.0, 165.0);
        assertThat(HueReport.of(pigment).rows()).hasSize(12);
        assertThat(HueReport.of(pigment).rows().get(4).opposite().name()).isEqualTo("green");
    }
}
