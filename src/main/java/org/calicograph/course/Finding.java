package org.calicograph.course;

/**
 * One thing that was looked at.
 *
 * @param what  what was looked at: 'the bed', 'contrast'
 * @param words what was found, with the repair where it is wrong
 */
public record Finding(Season season, String what, State state, String words) {

    /** How it stands. */
    public enum State {
        /** As it should be. */
        RIGHT("right"),
        /** It must be mended. */
        WRONG("wrong"),
        /** Not done yet, or not said. */
        OPEN("to do");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As it is said. */
        public String words() {
            return words;
        }

        static java.util.Optional<State> of(String words) {
            return java.util.Arrays.stream(values()).filter(s -> s.words.equals(words)).findFirst();
        }
    }

    /** Something that is as it should be. */
    public static Finding right(Season season, String what, String words) {
        return new Finding(season, what, State.RIGHT, words);
    }

    /** Something that must be mended. */
    public static Finding wrong(Season season, String what, String words) {
        return new Finding(season, what, State.WRONG, words);
    }

    /** Something that is still to do, or to say. */
    public static Finding open(Season season, String what, String words) {
        return new Finding(season, what, State.OPEN, words);
    }
}
