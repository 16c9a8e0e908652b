package org.calicograph.drawing.writing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Walk;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Transform;

/**
 * Writes a picture as PNG (ISO/IEC 15948), smoothed, on a ground of one colour. Letters are drawn from
 * the outlines of the house's typeface, so that no font of the system is needed or used.
 *
 * <p>The file is put together here, from 8-bit red, green and blue and the pixels in a metre: three
 * chunks, where a library would first look for its plug-ins at the cost of a cold start.
 */
public final class PngWriter {

    /** The most pixels of a picture: 100 million. */
    public static final long MOST_PIXELS = 100_000_000;
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private PngWriter() { }

    /** On white. */
    public static byte[] write(Picture picture, double pixelsPerInch) {
        return write(picture, pixelsPerInch, Colour.WHITE);
    }

    /**
     * @param pixelsPerInch above 0
     * @throws IllegalArgumentException if the picture would have more than {@link #MOST_PIXELS}
     */
    public static byte[] write(Picture picture, double pixelsPerInch, Colour ground) {
        Box box = picture.bounds();
        if (!(pixelsPerInch > 0)) {
            throw new IllegalArgumentException("a picture at " + pixelsPerInch + " pixels an inch can't be drawn; use more than 0");
        }
        // A width that comes within a thousandth of whole pixels is meant to be whole.
        double w = Math.max(1, Math.ceil(box.width() * pixelsPerInch - 1e-3));
        double h = Math.max(1, Math.ceil(box.height() * pixelsPerInch - 1e-3));
        if (!(w * h <= MOST_PIXELS)) {
            throw new IllegalArgumentException(String.format(java.util.Locale.ROOT, "a picture of %.1f by %.1f in at %s pixels an inch would have"
                    + " %.0f million pixels; the most is %d million, so use fewer pixels an inch", box.width(), box.height(),
                    pixelsPerInch, w * h / 1e6, MOST_PIXELS / 1_000_000));
        }
        BufferedImage image = new BufferedImage((int) w, (int) h, BufferedImage.TYPE_INT_RGB);
        PngCanvas canvas = new PngCanvas(image, ground);
        Walk.over(picture, Transform.move(-box.left(), -box.top()).then(Transform.scale(pixelsPerInch)), canvas);
        canvas.close();
        return file(image, pixelsPerInch);
    }

    /** The pixels an inch at which a picture just fits into a size in pixels; at most the given most. */
    public static double fitting(Picture picture, int width, int height, double most) {
        Box box = picture.bounds();
        double across = box.width() == 0 ? most : width / box.width();
        double down = box.height() == 0 ? most : height / box.height();
        return Math.min(most, Math.min(across, down));
    }

    /** A photograph as a file, on white. */
    static byte[] write(Photo photo) {
        return file(image(photo), 96);
    }

    /** The pixels of a photograph, on white. */
    static BufferedImage image(Photo photo) {
        int w = photo.width();
        BufferedImage image = new BufferedImage(w, photo.height(), BufferedImage.TYPE_INT_RGB);
        int[] row = new int[w];
        for (int y = 0; y < photo.height(); y++) {
            for (int x = 0; x < w; x++) {
                int p = photo.pixel(x, y);
                row[x] = p >>> 24 == 255 ? p : onWhite(p);
            }
            image.setRGB(0, y, w, 1, row, 0, w);
        }
        return image;
    }

    private static int onWhite(int p) {
        int a = p >>> 24;
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            rgb |= ((p >> shift & 255) * a + 255 * (255 - a) + 127) / 255 << shift;
        }
        return rgb;
    }

    private static byte[] file(BufferedImage image, double pixelsPerInch) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SIGNATURE);
        chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(image.getWidth()).putInt(image.getHeight())
                .put(new byte[] {8, 2, 0, 0, 0}).array());
        int perMetre = (int) Math.max(1, Math.round(pixelsPerInch / 0.0254));
        chunk(out, "pHYs", ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put((byte) 1).array());
        chunk(out, "IDAT", pixels(image));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
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

    /** Every row behind the filter 'up': what differs from the row above. */
    private static byte[] pixels(BufferedImage image) {
        int w = image.getWidth();
        int[] row = new int[w];
        int[] above = new int[w];
        byte[] line = new byte[1 + 3 * w];
        line[0] = 2;
        Deflater deflater = new Deflater(6);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater, 1 << 16)) {
            for (int y = 0; y < image.getHeight(); y++) {
                image.getRaster().getDataElements(0, y, w, 1, row);
                for (int x = 0, at = 1; x < w; x++) {
                    line[at++] = (byte) ((row[x] >> 16) - (above[x] >> 16));
                    line[at++] = (byte) ((row[x] >> 8) - (above[x] >> 8));
                    line[at++] = (byte) (row[x] - above[x]);
                }
                out.write(line);
                int[] spare = above;
                above = row;
                row = spare;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }
}
