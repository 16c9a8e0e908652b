package org.calicograph.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Arrays;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Cloth;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class ClothOnTheWireTest {

    private static final Cloth CLOTH = new Cloth(Photo.drawn(30, 20, (x, y) -> x * 8 << 16 | y * 12), Length.inches(1, 3));

    private static Exhibit sheet() {
        Picture.Shape one = Picture.of(Path.rectangle(new Box(0, 0, 2, 1))).filled(Paint.of(CLOTH));
        return Exhibit.of(Picture.group(one, one.filled(new Paint.Printed(CLOTH, Transform.scale(3))), one), "ticking");
    }

    @Test
    void cloth_arrives_as_it_was_sent_and_its_picture_is_sent_once() throws IOException {
        byte[] bytes = ExhibitFormat.bytes(sheet());
        assertThat(ExhibitFormat.exhibit(bytes)).isEqualTo(sheet());
        assertThat(bytes.length).isLessThan(4 * 30 * 20 + 1200);
    }

    @Test
    void cut_short_it_is_refused() {
        byte[] bytes = ExhibitFormat.bytes(sheet());
        for (int length = 0; length < bytes.length; length += 97) {
            byte[] part = Arrays.copyOf(bytes, length);
            assertThatThrownBy(() -> ExhibitFormat.exhibit(part)).isInstanceOf(IOException.class);
        }
    }
}
