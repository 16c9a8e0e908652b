package org.calicograph.book;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A part of a booklet that can be printed by itself. */
public enum Part {
    /** The quilt large, its size, how hard it is. */
    COVER,
    /** What to buy, and the colouring page. */
    MATERIALS,
    /** What to do before cutting, and every cloth cut by cut. */
    CUTTING,
    /** Units, blocks, rows and rounds. */
    SEWING,
    /** Backing, batting, binding, sleeve, time and money. */
    FINISHING,
    /** All measures in a table, for a teacher. */
    MEASURES,
    /** Templates and placements at full size. */
    TEMPLATES;

    /** As one says and types it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The part of a name.
     *
     * @throws IllegalArgumentException if there is none, naming those that there are
     */
    public static Part of(String word) {
        return Arrays.stream(values()).filter(p -> p.word().equalsIgnoreCase(word.strip())).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + word + "' is no part of a booklet; use "
                        + Arrays.stream(values()).map(Part::word).collect(Collectors.joining(", "))));
    }
}
