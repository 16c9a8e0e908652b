package org.calicograph.notebook;

/** A foreign text as it may stand within a one-line message. */
final class Excerpt {

    private static final int LONGEST = 60;

    private Excerpt() { }

    /** Control characters and line ends shown as escapes, and no more than 60 characters. */
    static String of(String text) {
        return of(text, LONGEST);
    }

    static String of(String text, int longest) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length() && i < longest; i++) {
            char c = text.charAt(i);
            boolean hidden = Character.isISOControl(c) || Character.getType(c) == Character.FORMAT
                    || c == '\u2028' || c == '\u2029';
            out.append(hidden ? String.format("\\u%04x", (int) c) : String.valueOf(c));
        }
        return text.length() > longest ? out + "…" : out.toString();
    }
}
