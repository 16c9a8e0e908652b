package org.calicograph.course;

/** What is done by hand and ticked off, in the order of the work. */
public enum Milestone {
    /** Every piece is cut. */
    CUT("cut", Season.PIECING),
    /** The top is sewn. */
    PIECED("pieced", Season.PIECING),
    /** Every line is quilted. */
    QUILTED("quilted", Season.QUILTING),
    /** The binding is on. */
    BOUND("bound", Season.QUILTING);

    private final String words;
    private final Season season;

    Milestone(String words, Season season) {
        this.words = words;
        this.season = season;
    }

    /** As it is said. */
    public String words() {
        return words;
    }

    /** When it is done. */
    public Season season() {
        return season;
    }
}
