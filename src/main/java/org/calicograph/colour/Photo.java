package org.calicograph.colour;

import java.util.Arrays;
import java.util.function.IntBinaryOperator;

/** A photograph as a value: rows of pixels in sRGB, from the top left. */
public final class Photo {

    private final int width;
    private final int height;
    private final int[] pixels;
    private final int hash;
    private Colour mean; // found when first asked for; the same whoever finds it

    private Photo(int width, int height, int[] pixels) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
        this.hash = Arrays.hashCode(pixels) * 31 + width;
    }

    /**
     * A photograph of its pixels, row by row, each 0xAARRGGBB; the numbers are copied.
     *
     * @throws IllegalArgumentException if the sizes are not above 0 or don't fit the number of pixels
     */
    public static Photo of(int width, int height, int[] pixels) {
        check(width, height);
        if ((long) width * height != pixels.length) {
            throw new IllegalArgumentException("a photograph of " + width + " x " + height + " pixels comes with "
                    + pixels.length + " of them; give one for each place");
        }
        return new Photo(width, height, pixels.clone());
    }

    /** A picture made by a rule: the pixel (0xRRGGBB) at each place. */
    public static Photo drawn(int width, int height, IntBinaryOperator rule) {
        check(width, height);
        int[] pixels = new int[Math.multiplyExact(width, height)];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = 0xFF000000 | rule.applyAsInt(x, y);
            }
        }
        return new Photo(width, height, pixels);
    }

    private static void check(int width, int height) {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("a photograph is " + width + " x " + height + " pixels; it needs at least 1 x 1");
        }
    }

    /** How many pixels it is wide. */
    public int width() {
        return width;
    }

    /** How many pixels it is high. */
    public int height() {
        return height;
    }

    /** The pixel at a column and a row, as 0xAARRGGBB. */
    public int pixel(int x, int y) {
        if (x < 0 || y < 0 || x >= width || y >= height) {
            throw new IndexOutOfBoundsException("pixel (" + x + ", " + y + ") of a photograph of " + width + " x " + height);
        }
        return pixels[y * width + x];
    }

    /** The number of pixels. */
    public int count() {
        return pixels.length;
    }

    /** The pixel at an index, row by row, as 0xAARRGGBB. */
    public int pixel(int index) {
        return pixels[index];
    }

    /** All pixels, row by row, as 0xAARRGGBB: a copy. */
    public int[] pixels() {
        return pixels.clone();
    }

    /** The mean of the light that the pixels give, clear ones left out; white if all are clear. */
    public Colour meanColour() {
        if (mean == null) {
            mean = meanOfAll();
        }
        return mean;
    }

    private Colour meanOfAll() {
        double[] sum = new double[3];
        double weight = 0;
        for (int p : pixels) {
            double a = (p >>> 24) / 255.0;
            for (int c = 0; c < 3; c++) {
                sum[c] += a * LinearRgb.ofByte(p >> (16 - 8 * c) & 255);
            }
            weight += a;
        }
        return weight == 0 ? Colour.WHITE : new LinearRgb(sum[0] / weight, sum[1] / weight, sum[2] / weight).clipped();
    }

    /** True if the two hold the same pixels. */
    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Photo p && hash == p.hash && width == p.width && Arrays.equals(pixels, p.pixels);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return "photograph, " + width + " x " + height + " pixels";
    }
}
