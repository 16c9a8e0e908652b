package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.calicograph.colour.Colour;
import org.calicograph.drawing.writing.PngPixels;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Transform;
import org.junit.jupiter.api.Test;

class PngPixelsTest {

    private static final Picture SQUARE = new Picture.Shape(java.util.List.of(Path.rectangle(new Box(1, 0, 2, 1))),
            Paint.of(Colour.hex("#1f3a5f")), Pen.NONE);

    @Test
    void pixels_lie_where_the_transform_puts_them() {
        for (boolean smooth : new boolean[] {true, false}) {
            int[] pixels = PngPixels.paint(SQUARE, Transform.scale(2), 6, 3, Colour.WHITE, smooth);
            for (int y = 0; y < 3; y++) {
                for (int x = 0; x < 6; x++) {
                    boolean inside = y < 2 && x >= 2 && x < 4;
                    assertThat(pixels[y * 6 + x]).as(x + ", " + y).isEqualTo(inside ? 0xff1f3a5f : 0xffffffff);
                }
            }
        }
    }

    /** Two patches of one cloth: whatever the cloth, the seam between them can be told from it on a screen; a seam that stands out stays as it is. */
    @Test
    void a_seam_between_two_patches_is_seen_on_any_cloth() {
        Pen thread = Pen.of(Colour.hex("#3b3a38"), 0.2);
        for (String cloth : new String[] {"#000000", "#1f3a5f", "#24425c", "#3b3a38", "#5a1f1f", "#777777", "#f1e7d2", "#ffffff"}) {
            Picture two = Picture.group(java.util.stream.Stream.of(0.0, 1.0).<Picture>map(x -> new Picture.Shape(java.util.List.of(Path.rectangle(new Box(x, 0, x + 1, 1))),
                    Paint.of(Colour.hex(cloth)), thread)).toList());
            int[] pixels = PngPixels.paint(two, Transform.scale(20), 40, 20, Colour.WHITE, true);
            Colour seam = Colour.packed(pixels[10 * 40 + 20] & 0xffffff);
            Colour patch = Colour.packed(pixels[10 * 40 + 10] & 0xffffff);
            assertThat(patch.hex()).isEqualTo(cloth);
            assertThat(Math.abs(seam.value() - patch.value())).as("seam %s on %s", seam, cloth).isGreaterThan(19);
            if (patch.value() >= 50) {
                assertThat(seam.hex()).as("on %s", cloth).isEqualTo("#3b3a38");
            }
        }
    }

    @Test
    void a_picture_without_pixels_is_refused() {
        assertThatThrownBy(() -> PngPixels.paint(SQUARE, Transform.IDENTITY, 0, 3, Colour.WHITE, true))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("0 by 3");
    }
}
