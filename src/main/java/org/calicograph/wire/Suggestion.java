package org.calicograph.wire;

/**
 * A way to go on writing.
 *
 * @param insert what would stand in place of the text from the anchor to the cursor
 * @param fits   true if its type suits what the place expects
 * @param kind   what it is
 */
public record Suggestion(String insert, boolean fits, Kind kind) {

    public enum Kind { NAME, METHOD, KEYWORD }
}
