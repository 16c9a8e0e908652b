package org.calicograph.desk.code;

/** Where the next line of a Java text begins. */
final class Indent {

    static final String STEP = "    ";

    private Indent() { }

    /** What to put in for a line break at the offset: the break, and as much room as the line has, more behind a brace. */
    static String breakAt(String text, int offset) {
        int start = text.lastIndexOf('\n', offset - 1) + 1;
        int end = start;
        while (end < offset && text.charAt(end) == ' ') {
            end++;
        }
        boolean opens = text.substring(start, offset).stripTrailing().endsWith("{");
        return "\n" + text.substring(start, end) + (opens ? STEP : "");
    }
}
