package org.calicograph.drawing;

import java.util.List;

/** What a value looks like in a notebook. */
public sealed interface Exhibit {

    /** A picture, with a line beneath it; the caption may be empty. */
    record Drawn(Picture picture, String caption) implements Exhibit { }

    record Tabled(Table table) implements Exhibit { }

    /** Plain words; lines are kept. */
    record Words(String text) implements Exhibit { }

    /** Several exhibits, one beneath another. */
    record Several(List<Exhibit> parts) implements Exhibit {
        public Several {
            parts = List.copyOf(parts);
        }
    }

    /** Nothing to look at. */
    record Nothing() implements Exhibit { }

    /** Nothing to see. */
    Exhibit NOTHING = new Nothing();

    /** A picture alone. */
    static Exhibit of(Picture picture) {
        return new Drawn(picture, "");
    }

    /** A picture with a line of words below it. */
    static Exhibit of(Picture picture, String caption) {
        return new Drawn(picture, caption);
    }

    /** A table. */
    static Exhibit of(Table table) {
        return new Tabled(table);
    }

    /** A passage of words. */
    static Exhibit words(String text) {
        return new Words(text);
    }

    /** Several, one below another. */
    static Exhibit several(Exhibit... parts) {
        return new Several(List.of(parts));
    }
}
