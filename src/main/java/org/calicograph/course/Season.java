package org.calicograph.course;

/** The four seasons of the year, in order. */
public enum Season {
    /** Spring: design and drafting. */
    DRAFTING("drafting"),
    /** Summer: colour and cloth. */
    COLOUR("colour"),
    /** Autumn: cutting and piecing. */
    PIECING("piecing"),
    /** Winter: quilting and binding, up to the show. */
    QUILTING("quilting");

    private final String words;

    Season(String words) {
        this.words = words;
    }

    /** As it is said. */
    public String words() {
        return words;
    }

    /** The season of these words; none of another's. */
    static java.util.Optional<Season> of(String words) {
        return java.util.Arrays.stream(values()).filter(s -> s.words.equals(words)).findFirst();
    }
}
