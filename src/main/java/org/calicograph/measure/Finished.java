package org.calicograph.measure;

/**
 * A finished size: what shows once the seams are sewn.
 *
 * @param length the length between seam lines
 */
public record Finished(Length length) implements Comparable<Finished> {

    /** The cut size of a strip, square or rectangle: a seam allowance on either side. */
    public Cut cutWith(Length seam) {
        return new Cut(length.plus(seam.times(2)));
    }

    @Override
    public int compareTo(Finished other) {
        return length.compareTo(other.length);
    }

    @Override
    public String toString() {
        return length + " finished";
    }
}
