package org.calicograph.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javafx.scene.image.Image;
import javafx.scene.image.PixelReader;

/** Writes what a window shows as PNG (ISO/IEC 15948), 8-bit red, green and blue, without filters. */
final class Shot {

    private Shot() { }

    static void write(Image image, Path file) {
        int w = (int) image.getWidth();
        int h = (int) image.getHeight();
        PixelReader pixels = image.getPixelReader();
        byte[] rows = new byte[h * (1 + 3 * w)];
        int at = 0;
        for (int y = 0; y < h; y++) {
            rows[at++] = 0;
            for (int x = 0; x < w; x++) {
                int argb = pixels.getArgb(x, y);
                rows[at++] = (byte) (argb >> 16);
                rows[at++] = (byte) (argb >> 8);
                rows[at++] = (byte) argb;
            }
        }
        try {
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
                out.write(rows);
            }
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
            chunk(png, "IHDR", ByteBuffer.allocate(13).putInt(w).putInt(h).put(new byte[] {8, 2, 0, 0, 0}).array());
            chunk(png, "IDAT", packed.toByteArray());
            chunk(png, "IEND", new byte[0]);
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.write(file, png.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}
