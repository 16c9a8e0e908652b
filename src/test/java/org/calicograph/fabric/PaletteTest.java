package org.calicograph.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Lab;
import org.calicograph.colour.Oklab;
import org.calicograph.colour.Photo;
import org.calicograph.colour.Swatch;
import org.junit.jupiter.api.Test;

class PaletteTest {

    /** An estuary at dusk, drawn: sky, water with glints, mud, and grain over all. */
    private static Photo estuary(long seed) {
        Random random = new Random(seed);
        return Photo.drawn(240, 160, (x, y) -> {
            double t = y / 160.0;
            double grain = random.nextGaussian() * 0.03;
            Colour base = y < 70 ? Colour.hex("#f2c48d").blended(Colour.hex("#5d7fa3"), 1 - t * 2.2)
                    : y < 120 ? (random.nextInt(9) == 0 ? Colour.hex("#f7e6c4") : Colour.hex("#2d4f66").blended(Colour.hex("#7d9aa5"), t))
                    : Colour.hex("#6b5844").blended(Colour.hex("#3a3128"), x / 240.0);
            Oklab lab = base.oklab();
            return new Oklab(lab.lightness() + grain, lab.a(), lab.b()).colour().packed();
        });
    }

    private static double meanDifference(Photo photo, List<Colour> colours) {
        List<Lab> labs = colours.stream().map(c -> c.lab(Lab.White.D65)).toList();
        double sum = 0;
        int n = 0;
        for (int i = 0; i < photo.count(); i += 7) {
            Lab p = Colour.packed(photo.pixel(i) & 0xFFFFFF).lab(Lab.White.D65);
            sum += labs.stream().mapToDouble(p::difference).min().orElseThrow();
            n++;
        }
        return sum / n;
    }

    /** The usual one-pass method: split the box with the longest side at its median (Heckbert 1982). */
    private static List<Colour> medianCut(Photo photo, int k) {
        List<List<int[]>> boxes = new ArrayList<>();
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < photo.count(); i++) {
            int p = photo.pixel(i);
            all.add(new int[] {p >> 16 & 255, p >> 8 & 255, p & 255});
        }
        boxes.add(all);
        while (boxes.size() < k) {
            int[] best = {0, 0, -1};
            for (int b = 0; b < boxes.size(); b++) {
                for (int c = 0; c < 3; c++) {
                    int channel = c;
                    var range = boxes.get(b).stream().mapToInt(p -> p[channel]).summaryStatistics();
                    if (range.getMax() - range.getMin() > best[2]) {
                        best = new int[] {b, c, range.getMax() - range.getMin()};
                    }
                }
            }
            int channel = best[1];
            List<int[]> box = boxes.remove(best[0]).stream().sorted(Comparator.comparingInt(p -> p[channel])).toList();
            boxes.add(box.subList(0, box.size() / 2));
            boxes.add(box.subList(box.size() / 2, box.size()));
        }
        return boxes.stream().map(b -> new Colour(b.stream().mapToInt(p -> p[0]).average().orElse(0) / 255,
                b.stream().mapToInt(p -> p[1]).average().orElse(0) / 255, b.stream().mapToInt(p -> p[2]).average().orElse(0) / 255)).toList();
    }

    @Test
    void the_same_photograph_gives_the_same_palette() {
        Photo photo = estuary(3);
        assertThat(Palette.of(photo, 6)).isEqualTo(Palette.of(photo, 6));
    }

    @Test
    void another_start_finds_nearly_the_same_colours() {
        Photo photo = estuary(3);
        double one = meanDifference(photo, Palette.of(photo, 6, 1).colours());
        double two = meanDifference(photo, Palette.of(photo, 6, 99).colours());
        assertThat(one / two).isBetween(0.97, 1.03);
    }

    @Test
    void clusters_beat_one_pass_quantising_in_mean_difference() {
        for (long seed = 1; seed <= 4; seed++) {
            for (int k : new int[] {4, 6, 8, 12}) {
                Photo photo = estuary(seed);
                assertThat(meanDifference(photo, Palette.of(photo, k).colours()))
                        .as("%s colours, picture %s", k, seed).isLessThan(meanDifference(photo, medianCut(photo, k)));
            }
        }
    }

    @Test
    void proportions_are_those_of_the_picture() {
        Photo flag = Photo.drawn(10, 10, (x, y) -> y < 7 ? 0x1f3a5f : x < 5 ? 0xb5553c : 0xf3ecdd);
        List<Swatch> swatches = Palette.of(flag, 5).swatches();
        assertThat(swatches).extracting(Swatch::share).containsExactly(0.7, 0.15, 0.15);
        assertThat(swatches).extracting(s -> s.colour().hex()).containsExactlyInAnyOrder("#1f3a5f", "#b5553c", "#f3ecdd");
    }

    @Test
    void clear_pixels_count_for_nothing() {
        Photo photo = Photo.of(2, 1, new int[] {0x00ff0000, 0xff0000ff});
        assertThat(Palette.of(photo, 2).colours()).extracting(Colour::hex).containsExactly("#0000ff");
        assertThatThrownBy(() -> Palette.of(Photo.of(1, 1, new int[] {0}), 2))
                .hasMessage("every pixel of the photograph is clear; give one with something in it");
    }

    @Test
    void impossible_sizes_and_numbers_are_refused() {
        assertThatThrownBy(() -> Photo.of(2, 2, new int[3]))
                .hasMessage("a photograph of 2 x 2 pixels comes with 3 of them; give one for each place");
        assertThatThrownBy(() -> Palette.of(estuary(1), 0))
                .hasMessage("a palette of 0 colours can't be taken from a photograph; use 1 to 64");
    }

    @Test
    void a_cloth_repeats_at_its_scale() {
        Cloth stripe = new Cloth(Photo.drawn(4, 2, (x, y) -> x < 2 ? 0x000000 : 0xffffff), org.calicograph.measure.Length.inches(2));
        assertThat(stripe.height()).isEqualTo(org.calicograph.measure.Length.inches(1));
        assertThat(stripe.at(0.5, 0.2)).isEqualTo(Colour.BLACK);
        assertThat(stripe.at(-0.5, 7.2)).isEqualTo(Colour.WHITE);
        // Half black and half white reflect half the light: 0.735 in sRGB.
        assertThat(Fabric.of("ticking", stripe).colour().red()).isCloseTo(0.7354, within(1e-4));
    }
}
