package org.calicograph.command.output;

/** Whether the error stream is read by a person, and how a word is made to stand out then. */
public final class Terminal {

    private Terminal() { }

    /** The launcher knows; without it a console is taken for one. */
    public static boolean isThere() {
        String told = System.getProperty("calicograph.terminal", "");
        return told.isEmpty() ? System.console() != null : Boolean.parseBoolean(told);
    }

    /** In red on a terminal, unless NO_COLOR is set; the word itself says what the colour does. */
    public static String alarming(String word) {
        return isThere() && System.getenv("NO_COLOR") == null ? "\u001b[1;31m" + word + "\u001b[0m" : word;
    }
}
