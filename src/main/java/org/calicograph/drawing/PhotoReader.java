package org.calicograph.drawing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.calicograph.colour.Photo;

/** Reads photographs: JPEG, PNG, GIF and BMP, as the Java platform knows them. */
public final class PhotoReader {

    /** Larger pictures are refused before they are read. */
    static final long MOST_PIXELS = 120_000_000;

    private PhotoReader() { }

    /**
     * @throws IllegalArgumentException naming the file and the repair, if it can't be read, is broken,
     *     is no picture of a known kind, or is larger than 120 million pixels
     */
    public static Photo read(Path file) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new IllegalArgumentException("the photograph '" + file + "' can't be read; check that it is there and may be read", e);
        }
        return read("'" + file.getFileName() + "'", bytes);
    }

    /**
     * @param name  what a message calls it
     * @param bytes what a picture file holds
     */
    public static Photo read(String name, byte[] bytes) {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IllegalArgumentException("the photograph " + name + " is no JPEG, PNG, GIF or BMP; save it as one of these");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                return read(name, reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("the photograph " + name + " is broken: " + e.getMessage() + "; copy or save it again", e);
        }
    }

    private static Photo read(String name, ImageReader reader) throws IOException {
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
            throw new IllegalArgumentException("the photograph " + name + " has " + pixels / 1_000_000 + " million pixels; scale it down to "
                    + MOST_PIXELS / 1_000_000 + " million or fewer");
        }
        BufferedImage image = reader.read(0);
        int width = image.getWidth();
        int height = image.getHeight();
        return Photo.of(width, height, image.getRGB(0, 0, width, height, null, 0, width));
    }
}
