package org.calicograph.wire;

import java.util.function.Function;

/** The refusals that all dials share. */
final class Bounds {

    private Bounds() { }

    static void ordered(String name, boolean good, Object least, Object most, Object step) {
        if (!good) {
            throw new IllegalArgumentException("the dial '" + name + "' runs from " + least + " to " + most + " in steps of " + step
                    + "; put the least first, the most second and a step above 0");
        }
    }

    static void inside(String name, boolean good, Object value, String range) {
        if (!good) {
            throw refused(name, String.valueOf(value), range);
        }
    }

    static IllegalArgumentException refused(String name, String value, String range) {
        return new IllegalArgumentException("The dial '" + name + "' can't be set to " + value + "; it takes values " + range + ".");
    }

    static <T> T read(Dial dial, String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            throw refused(dial.name(), "'" + text + "'", dial.range());
        }
    }
}
