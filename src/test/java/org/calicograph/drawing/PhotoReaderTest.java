package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.calicograph.colour.Photo;
import org.junit.jupiter.api.Test;

class PhotoReaderTest {

    private static byte[] encoded(String kind) throws IOException {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 48; y++) {
            for (int x = 0; x < 64; x++) {
                image.setRGB(x, y, x < 32 ? 0x1f3a5f : 0xf3ecdd);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, kind, out);
        return out.toByteArray();
    }

    @Test
    void a_png_keeps_its_pixels() throws IOException {
        Photo photo = PhotoReader.read("quay", encoded("png"));
        assertThat(photo.width()).isEqualTo(64);
        assertThat(photo.height()).isEqualTo(48);
        assertThat(photo.pixel(0, 0)).isEqualTo(0xff1f3a5f);
        assertThat(photo.pixel(63, 47)).isEqualTo(0xfff3ecdd);
    }

    @Test
    void a_jpeg_comes_close() throws IOException {
        Photo photo = PhotoReader.read("quay", encoded("jpg"));
        assertThat(Math.abs((photo.pixel(4, 4) & 255) - 0x5f)).isLessThan(8);
    }

    @Test
    void broken_photographs_are_named_with_the_repair() throws IOException {
        byte[] whole = encoded("png");
        assertThatThrownBy(() -> PhotoReader.read("quay", Arrays.copyOf(whole, whole.length / 2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the photograph quay is broken").hasMessageEndingWith("copy or save it again");
        byte[] jpeg = encoded("jpg");
        assertThatThrownBy(() -> PhotoReader.read("quay", Arrays.copyOf(jpeg, 100))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PhotoReader.read("note", "tide table".getBytes(StandardCharsets.UTF_8)))
                .hasMessage("the photograph note is no JPEG, PNG, GIF or BMP; save it as one of these");
        assertThatThrownBy(() -> PhotoReader.read("nothing", new byte[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PhotoReader.read(Path.of("no-such-quay.jpg")))
                .hasMessage("the photograph 'no-such-quay.jpg' can't be read; check that it is there and may be read");
    }

    @Test
    void a_picture_beyond_all_measure_is_refused_before_it_is_read() throws IOException {
        byte[] png = encoded("png");
        // Width and height stand at bytes 16 and 20 (PNG specification, IHDR); the checksum follows the header.
        byte[] huge = png.clone();
        Arrays.fill(huge, 16, 24, (byte) 0);
        huge[17] = 1;
        huge[21] = 1;
        java.util.zip.CRC32 crc = new java.util.zip.CRC32();
        crc.update(huge, 12, 17);
        for (int i = 0; i < 4; i++) {
            huge[29 + i] = (byte) (crc.getValue() >>> (24 - 8 * i));
        }
        assertThatThrownBy(() -> PhotoReader.read("sea", huge))
                .hasMessage("the photograph sea has 4294 million pixels; scale it down to 120 million or fewer");
    }
}
