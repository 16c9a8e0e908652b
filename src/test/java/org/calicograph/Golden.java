package org.calicograph;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.SvgWriter;

/**
 * Compares what is drawn with the drawing that somebody has looked at and accepted, in
 * {@code src/test/resources/golden}. What differs is left in {@code target/golden} beside a PNG to look at;
 * {@code mvn test -Dgolden.update=true -Dtest=…} accepts it.
 */
public final class Golden {

    private static final Path ACCEPTED = Path.of("src/test/resources/golden");
    private static final Path FOUND = Path.of("target/golden");
    private static final double LARGEST_VIEW = 900;

    private Golden() { }

    /** The picture as SVG, in {@code NAME.svg}; where it differs, or is accepted, a PNG to look at is left in target/golden. */
    public static void picture(String name, Picture picture) {
        String found = SvgWriter.write(picture);
        Path accepted = ACCEPTED.resolve(name + ".svg");
        try {
            if (Boolean.getBoolean("golden.update") || !Files.exists(accepted) || !Files.readString(accepted, StandardCharsets.UTF_8).equals(found)) {
                view(name, picture);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        text(name + ".svg", found);
    }

    /** A text such as a table's CSV or a report, in a file of that name. */
    public static void text(String file, String found) {
        try {
            Path accepted = ACCEPTED.resolve(file);
            if (Boolean.getBoolean("golden.update")) {
                Files.createDirectories(accepted.getParent());
                Files.writeString(accepted, found);
                return;
            }
            String expected = Files.exists(accepted) ? Files.readString(accepted, StandardCharsets.UTF_8) : "";
            if (expected.equals(found)) {
                return;
            }
            Path left = FOUND.resolve(file);
            Files.createDirectories(left.getParent());
            Files.writeString(left, found);
            fail(accepted + (expected.isEmpty() ? " is not there yet" : " differs at line " + firstDifference(expected, found))
                    + "; look at " + left + " and accept it with -Dgolden.update=true if it is right");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void view(String name, Picture picture) {
        try {
            Path file = FOUND.resolve(name + ".png");
            Files.createDirectories(file.getParent());
            Files.write(file, PngWriter.write(picture, PngWriter.fitting(picture, (int) LARGEST_VIEW, (int) LARGEST_VIEW, 300)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int firstDifference(String a, String b) {
        String[] one = a.split("\n", -1);
        String[] two = b.split("\n", -1);
        int i = 0;
        while (i < Math.min(one.length, two.length) && one[i].equals(two[i])) {
            i++;
        }
        return i + 1;
    }
}
