package org.calicograph.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.calicograph.colour.Colour;
import org.calicograph.colour.LinearRgb;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Wheel;
import org.calicograph.colour.Xyz;
import org.calicograph.course.ColourExercise.Kind;
import org.calicograph.geometry.Box;
import org.junit.jupiter.api.Test;

class ColourExerciseTest {

    private static ColourExercise of(int students) {
        return ColourExercise.of(IntStream.range(0, students).mapToObj(i -> "Student " + i).toArray(String[]::new));
    }

    @Test
    void every_two_students_meet_once_and_nobody_twice_in_a_round() {
        for (int n = 2; n <= 25; n++) {
            Set<Set<String>> met = new HashSet<>();
            List<List<ColourExercise.Pair>> rounds = of(n).rounds();
            assertThat(rounds).hasSize(n % 2 == 0 ? n - 1 : n);
            for (List<ColourExercise.Pair> round : rounds) {
                Set<String> busy = new HashSet<>();
                for (ColourExercise.Pair pair : round) {
                    assertThat(busy.add(pair.one())).isTrue();
                    if (!pair.other().isEmpty()) {
                        assertThat(busy.add(pair.other())).isTrue();
                        assertThat(met.add(Set.of(pair.one(), pair.other()))).isTrue();
                    }
                }
                assertThat(busy).hasSize(n);
            }
            assertThat(met).hasSize(n * (n - 1) / 2);
        }
    }

    @Test
    void no_two_students_have_one_hue_and_the_hues_go_round_the_wheel() {
        for (int n : new int[] {2, 5, 12, 20}) {
            ColourExercise evening = of(n);
            Set<String> hues = new HashSet<>();
            evening.students().forEach(s -> assertThat(hues.add(evening.hueOf(s).colour().hex())).isTrue());
        }
        assertThat(of(3).students().stream().map(s -> of(3).hueOf(s).name())).containsExactly("yellow", "red", "blue");
        assertThatThrownBy(() -> of(3).hueOf("Nobody")).hasMessageContaining("'Nobody'");
        assertThatThrownBy(() -> ColourExercise.of("Ada", "Ada")).hasMessageContaining("'Ada'");
    }

    /** A sheet photographed under a light of a colour, as light falls on paint: band by band. */
    private static Photo photographed(Map<Kind, Colour> pasted, double red, double green, double blue) {
        return Photo.drawn(650, 350, (x, y) -> {
            Colour c = new LinearRgb(0.88, 0.88, 0.88).clipped();
            for (Map.Entry<Kind, Colour> e : pasted.entrySet()) {
                Box b = ColourSheet.box(e.getKey());
                if (x / 100.0 > b.left() && x / 100.0 < b.right() && y / 100.0 > b.top() && y / 100.0 < b.bottom()) {
                    c = e.getValue();
                }
            }
            LinearRgb light = c.linear();
            return new LinearRgb(light.red() * red, light.green() * green, light.blue() * blue).clipped().packed();
        });
    }

    private static Map<Kind, Colour> right(Wheel.Hue hue) {
        return Map.of(Kind.TRUE_COLOUR, hue.colour(), Kind.TINT, hue.colour().tint(0.55), Kind.SHADE, hue.colour().shade(0.45), Kind.TONE, hue.colour().tone(0.5));
    }

    @Test
    void right_swatches_are_right_in_every_hue_and_light() {
        ColourExercise evening = of(12);
        for (String student : evening.students()) {
            for (double[] light : new double[][] {{1, 1, 1}, {0.95, 0.8, 0.6}, {0.5, 0.55, 0.65}}) {
                JudgedSwatches judged = evening.judged(student, photographed(right(evening.hueOf(student)), light[0], light[1], light[2]));
                assertThat(judged.isRight()).as(judged.swatches().toString()).isTrue();
                assertThat(judged.swatches()).allMatch(s -> s.difference() < 12);
            }
        }
    }

    @Test
    void planted_mistakes_are_found_and_named() {
        ColourExercise evening = of(12);
        Colour blue = evening.hueOf("Student 8").colour();
        Map<Kind, Colour> good = right(evening.hueOf("Student 8"));
        Map<Kind, Colour> swapped = Map.of(Kind.TRUE_COLOUR, blue, Kind.TINT, good.get(Kind.SHADE), Kind.SHADE, good.get(Kind.TINT), Kind.TONE, good.get(Kind.TONE));
        assertThat(evening.judged("Student 8", photographed(swapped, 1, 0.9, 0.75)).swatches()).extracting(JudgedSwatches.Swatch::fault)
                .satisfiesExactly(f -> assertThat(f).isEmpty(), f -> assertThat(f).contains("more white"), f -> assertThat(f).contains("more black"), f -> assertThat(f).isEmpty());
        Map<Kind, Colour> dull = Map.of(Kind.TRUE_COLOUR, good.get(Kind.TONE), Kind.TINT, good.get(Kind.TINT), Kind.SHADE, good.get(Kind.SHADE), Kind.TONE, blue);
        assertThat(evening.judged("Student 8", photographed(dull, 1, 1, 1)).swatches().get(0).fault()).contains("clearer");
        assertThat(evening.judged("Student 4", photographed(good, 1, 1, 1)).swatches()).allMatch(s -> s.fault().contains("red"));
        assertThatThrownBy(() -> evening.judged("Student 1", Photo.drawn(65, 35, (x, y) -> 0))).hasMessageContaining("nearly black");
    }

    /** Bradford's adaptation of the ICC: D65 to D50 takes white to white; values of the two whites by ASTM E308 (from memory). */
    @Test
    void a_white_adapted_is_the_other_white() {
        Xyz d65 = new Xyz(0.95047, 1, 1.08883);
        Xyz d50 = new Xyz(0.96422, 1, 0.82521);
        Xyz made = d65.adapted(d65, d50);
        assertThat(made.x()).isCloseTo(d50.x(), within(1e-5));
        assertThat(made.z()).isCloseTo(d50.z(), within(1e-5));
        Xyz grey = new Xyz(0.3, 0.2, 0.1);
        Xyz back = grey.adapted(d65, d50).adapted(d50, d65);
        assertThat(back.x()).isCloseTo(0.3, within(1e-5));
        assertThat(back.z()).isCloseTo(0.1, within(1e-5));
    }
}
