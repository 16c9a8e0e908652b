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

    @Test
    void a_picture_without_pixels_is_refused() {
        assertThatThrownBy(() -> PngPixels.paint(SQUARE, Transform.IDENTITY, 0, 3, Colour.WHITE, true))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("0 by 3");
    }
}
