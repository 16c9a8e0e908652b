package org.calicograph.notebook;

import java.util.Arrays;
import java.util.List;

/**
 * One cell: prose to be read or code to be drawn. Lines of its text end in a line feed; a text that
 * comes with other line ends is taken over with these.
 */
public sealed interface Cell permits Cell.Prose, Cell.Code {

    /** Unique within the notebook; see {@link CellId}. */
    String id();

    String text();

    /** Fields of the file that this version doesn't know. */
    Json.Obj unknown();

    /** The same cell, of the same kind, with another text. */
    Cell withText(String text);

    /** The same cell under another id. */
    Cell withId(String id);

    /** {@code prose} or {@code code}, as in the file. */
    String kind();

    /** Markdown (CommonMark). */
    record Prose(String id, String text, Json.Obj unknown) implements Cell {
        public Prose {
            CellId.check(id);
            text = lineFeeds(text);
        }

        @Override
        public Prose withText(String other) {
            return new Prose(id, other, unknown);
        }

        @Override
        public Prose withId(String other) {
            return new Prose(other, text, unknown);
        }

        @Override
        public String kind() {
            return "prose";
        }
    }

    /** Java, as JShell takes it. */
    record Code(String id, String text, Json.Obj unknown) implements Cell {
        public Code {
            CellId.check(id);
            text = lineFeeds(text);
        }

        @Override
        public Code withText(String other) {
            return new Code(id, other, unknown);
        }

        @Override
        public Code withId(String other) {
            return new Code(other, text, unknown);
        }

        @Override
        public String kind() {
            return "code";
        }
    }

    static Prose prose(String id, String text) {
        return new Prose(id, text, Json.Obj.EMPTY);
    }

    static Code code(String id, String text) {
        return new Code(id, text, Json.Obj.EMPTY);
    }

    /** The lines of the text; none if it is empty. */
    default List<String> lines() {
        return text().isEmpty() ? List.of() : Arrays.asList(text().split("\n", -1));
    }

    private static String lineFeeds(String text) {
        return text.indexOf('\r') < 0 ? text : text.replace("\r\n", "\n").replace('\r', '\n');
    }
}
