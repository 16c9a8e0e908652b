package org.calicograph.measure;

/**
 * A cut size: what the cutter measures, seam allowances included.
 *
 * @param length the length between cut edges
 */
public record Cut(Length length) implements Comparable<Cut> {

    /** The finished size of a strip, square or rectangle cut so. */
    public Finished finishedWith(Length seam) {
        return new Finished(length.minus(seam.times(2)));
    }

    /** The same cut on the ruler's next line: up to the next multiple of the step. */
    public Cut upTo(Length step) {
        return new Cut(length.roundedUpTo(step));
    }

    @Override
    public int compareTo(Cut other) {
        return length.compareTo(other.length);
    }

    @Override
    public String toString() {
        return length + " cut";
    }
}
