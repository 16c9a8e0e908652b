package org.calicograph.colouring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.calicograph.Golden;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.drawing.Underlay;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.junit.jupiter.api.Test;

class PhotoValuesTest {

    /** A low sun over the reach: bands of sky, a disc, dark water with streaks. */
    private static Photo sunset() {
        return Photo.drawn(160, 120, (x, y) -> {
            double sun = Math.hypot(x - 105, y - 60);
            int level = y > 78 ? 40 + (int) (18 * Math.sin(x / 9.0 + y / 4.0)) + (Math.abs(x - 105) < 100 - y ? 90 : 0) : sun < 22 ? 245 : 190 - y + (int) Math.max(0, 60 - sun);
            return Math.max(0, Math.min(255, level)) * 0x010101;
        });
    }

    @Test
    void cells_of_a_wedge_of_grey_rise_in_even_steps() {
        Photo wedge = Photo.drawn(100, 10, (x, y) -> (int) Math.round(x * 255 / 99.0) * 0x010101);
        PhotoValues values = PhotoValues.of(wedge, 100, 5);
        assertThat(values.down()).isEqualTo(10);
        int last = 1;
        for (int x = 0; x < 100; x++) {
            assertThat(values.value(x, 3)).isBetween(last, last + 1);
            last = values.value(x, 3);
        }
        assertThat(last).isEqualTo(5);
        // L* = 50 is sRGB 119 (CSS Color Module Level 4: lab(50% 0 0) is about #777777), in the middle of five steps.
        assertThat(values.value(46, 0)).isEqualTo(3);
    }

    @Test
    void squares_and_traced_shapes_look_as_they_were_accepted() {
        PhotoValues values = PhotoValues.of(sunset(), 20, 5);
        Golden.picture("colour/photo-squares", TopPicture.of(values.squares(inches(1, 2)), 6));
        Block traced = values.traced(inches(20), 6);
        Golden.picture("colour/photo-traced", TopPicture.of(traced, 6));
        assertThat(traced.patchCount()).isLessThan(60);
        assertThat(traced.width()).isEqualTo(inches(20));
    }

    /** Block.of checks the covering law; here the areas are added up besides. */
    @Property(tries = 12)
    void traced_shapes_cover_without_overlap(@ForAll @LongRange(min = 0, max = 10_000) long seed, @ForAll @IntRange(min = 2, max = 6) int values, @ForAll @IntRange(min = 1, max = 9) int least) {
        java.util.Random random = new java.util.Random(seed);
        double a = 4 + random.nextInt(20);
        double b = 4 + random.nextInt(20);
        Photo photo = Photo.drawn(48, 36, (x, y) -> (int) (127 + 120 * Math.sin(x / a * 2) * Math.cos(y / b * 2 + x / 15.0)) * 0x010101);
        Block traced = PhotoValues.of(photo, 24, values).traced(inches(12), least);
        double sum = traced.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
        assertThat(sum).isCloseTo(12 * 9, within(1e-6));
        double cell = 0.25;
        assertThat(traced.patches()).allSatisfy((Patch p) -> assertThat(p.shape().area().squareInches()).isGreaterThan(least * cell / 8));
    }

    @Test
    void own_cloth_takes_the_place_of_the_greys_and_impossible_wishes_are_refused() {
        PhotoValues two = PhotoValues.of(sunset(), 10, 2).in(List.of(Fabric.of("tide", "#24425c"), Fabric.of("foam", "#f3ecdd")));
        assertThat(two.squares(inches(1)).patches()).extracting(p -> p.fabric().name()).contains("tide", "foam").doesNotContain("value 1");
        assertThat(two.table().rows()).hasSize(2);
        assertThatThrownBy(() -> two.in(List.of(Fabric.of("tide", "#24425c")))).hasMessageContaining("give one for each");
        assertThatThrownBy(() -> PhotoValues.of(sunset(), 500, 3)).hasMessageContaining("use 1 to 160");
        assertThatThrownBy(() -> PhotoValues.of(sunset(), 40, 1)).hasMessageContaining("use 2 to 12");
        assertThatThrownBy(() -> PhotoValues.of(sunset(), 40, 3).traced(inches(0), 1)).hasMessageContaining("use a width above 0");
    }

    @Test
    void a_photograph_lies_beneath_a_drawing_and_is_fainter() {
        Underlay underlay = Underlay.of(sunset(), inches(8));
        assertThat(underlay.height()).isEqualTo(inches(6));
        Picture traced = underlay.under(Picture.of(Path.circle(new Point(5.25, 3), 1.1)).outlined(Pen.SEAM));
        assertThat(traced.bounds().width()).isCloseTo(8, within(1e-9));
        assertThat(SvgWriter.write(traced)).contains("<image");
        assertThat(PngWriter.write(traced, 40)).isNotEmpty();
        assertThatThrownBy(() -> underlay.at(2)).hasMessageContaining("strength from 0 to 1");
    }
}
