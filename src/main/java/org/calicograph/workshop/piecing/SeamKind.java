package org.calicograph.workshop.piecing;

/** How a seam is sewn. */
public enum SeamKind {
    /** From edge to edge in one straight line. */
    STRAIGHT("straight seam"),
    /** Along one curve: clip, pin at middle and ends, and ease. */
    CURVED("curved seam"),
    /** Around one or more corners: stop a seam allowance short of the corner and turn there. */
    SET_IN("set-in seam"),
    /** Sewn in part first, and closed once the ring around is complete. */
    PARTIAL("partial seam");

    private final String words;

    SeamKind(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
