package org.calicograph.wire;

/**
 * A place in the text of a cell.
 *
 * @param line   from 1
 * @param column from 1, in characters; a tab counts as one
 */
public record Place(int line, int column) implements Comparable<Place> {

    public Place {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("a place at line " + line + ", column " + column + " is outside any text; count from 1");
        }
    }

    /** The place of an offset in a text; an offset beyond the end is the end. */
    public static Place of(String text, int offset) {
        int end = Math.max(0, Math.min(offset, text.length()));
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < end; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        return new Place(line, end - lineStart + 1);
    }

    @Override
    public int compareTo(Place other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    @Override
    public String toString() {
        return "line " + line + ", column " + column;
    }
}
