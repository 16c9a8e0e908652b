package org.calicograph.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ColourVisionTest {

    private static void sees(ColourVision vision, double r, double g, double b, double tolerance) {
        LinearRgb seen = vision.sees(new LinearRgb(0.1, 0.2, 0.3));
        assertThat(new double[] {seen.red(), seen.green(), seen.blue()})
                .containsExactly(new double[] {r, g, b}, within(tolerance));
    }

    private static void seen(ColourVision vision, double r, double g, double b) {
        Colour seen = vision.sees(new Colour(0.1, 0.2, 0.3));
        assertThat(new double[] {seen.red(), seen.green(), seen.blue()}).containsExactly(new double[] {r, g, b}, within(1e-7));
    }

    @Test
    void light_is_seen_as_another_library_publishes() {
        // Test values of colorspacious, encoded sRGB in and out: deuteranomaly 50 and protanomaly 95.
        seen(new ColourVision(ColourVision.Kind.DEUTAN, 0.5), 0.12440528, 0.19103024, 0.29911687);
        seen(new ColourVision(ColourVision.Kind.PROTAN, 0.95), 0.15588987, 0.20387910, 0.30416046);
    }

    @Test
    void missing_cones_follow_the_published_matrices() {
        // Machado, Oliveira and Fernandes 2009, supplementary matrices at severity 1.0.
        sees(ColourVision.PROTANOPIA, 0.0152286 + 0.2105166 - 0.0614604, 0.0114503 + 0.1572562 + 0.0297648,
                -0.0003882 - 0.0096232 + 0.3155994, 1e-7);
        sees(ColourVision.DEUTERANOPIA, 0.0367322 + 0.1721292 - 0.0683904, 0.0280085 + 0.1345002 + 0.0142239,
                -0.0011820 + 0.0085880 + 0.2906643, 1e-7);
        sees(ColourVision.TRITANOPIA, 0.1255528 - 0.0153498 - 0.0536337, -0.0078411 + 0.1861618 + 0.0442806,
                0.0004733 + 0.1382734 + 0.0911700, 1e-7);
    }

    @Test
    void greys_look_the_same_to_every_eye() {
        for (ColourVision.Kind kind : ColourVision.Kind.values()) {
            for (double severity = 0; severity <= 1; severity += 0.05) {
                Colour seen = new ColourVision(kind, severity).sees(new Colour(0.5, 0.5, 0.5));
                assertThat(seen.difference(new Colour(0.5, 0.5, 0.5))).isLessThan(0.01);
            }
        }
    }

    @Test
    void red_and_green_come_closer_without_middle_cones() {
        Colour red = Colour.hex("#b5553c");
        Colour green = Colour.hex("#6f7d3a");
        ColourVision eye = ColourVision.DEUTERANOPIA;
        assertThat(eye.sees(red).difference(eye.sees(green))).isLessThan(red.difference(green) / 2);
    }

    @Test
    void a_severity_beyond_one_is_refused() {
        assertThatThrownBy(() -> new ColourVision(ColourVision.Kind.TRITAN, 1.5))
                .hasMessage("colour vision with a severity of 1.5 can't be simulated; use 0 to 1");
    }
}
