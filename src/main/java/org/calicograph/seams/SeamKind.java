package org.calicograph.seams;

/** How a seam is sewn. */
public enum SeamKind {
    /** From edge to edge in one straight line. */
    STRAIGHT("straight seam"),
    /** Along one curve: clip, pin at middle and ends, and ease. */
    CURVED("curved seam"),
    /** Around one or more corners: stop a seam allowance short of the corner and turn there. */
    SET_IN("set-in seam"),
    /** In one straight line, but left open at one end until a later part has been sewn on. */
    BEGUN("part seam, one end left open"),
    /** Straight, and on from its end along a seam that was begun before, which it completes. */
    PARTIAL("partial seam");

    private final String words;

    SeamKind(String words) {
        this.words = words;
    }

    /** So many of them, in words: {@code 2 set-in seams}. */
    public String counted(long seams) {
        return seams + " " + (seams == 1 ? words : words.replaceFirst("seam", "seams"));
    }

    @Override
    public String toString() {
        return words;
    }
}
