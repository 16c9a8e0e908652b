package org.calicograph.piecing;

import java.util.Optional;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.seams.Unit;

/**
 * Joinings that are all alike, sewn one after another without cutting the thread.
 *
 * @param number of the step within its stage
 * @param name   what the step makes: a small letter, or the stage's own name for its last step
 * @param what   what is sewn together: pieces by their capitals, what was sewn before by its small letters
 * @param how    what a seam that isn't straight asks for; empty for a straight one
 * @param sample one of the joinings
 * @param times  in the whole quilt
 */
public record Chain(int number, String name, String what, String how, Unit.Sewn sample, int times) {

    private static final int LETTERS = 26;

    Chain with(Chain more) {
        return new Chain(number, name, what, how, sample, times + more.times);
    }

    Chain told(String other) {
        return new Chain(number, name, what, other, sample, times);
    }

    Chain named(String other) {
        return new Chain(number, other, what, how, sample, times);
    }

    /** The small letter of a step: a to z, then aa, ab and so on. */
    static String letter(int number) {
        return number <= LETTERS ? String.valueOf((char) ('a' + number - 1)) : letter((number - 1) / LETTERS) + letter((number - 1) % LETTERS + 1);
    }

    /**
     * The finished width and height of what is made; empty unless it is a rectangle that stands upright, since only
     * that can be checked with a ruler in a moment.
     */
    public Optional<Size> finished() {
        Box box = null;
        double area = 0;
        for (Unit.Single s : sample.singles()) {
            box = box == null ? s.shape().bounds() : box.union(s.shape().bounds());
            area += s.shape().area().squareInches();
        }
        boolean rectangle = Math.abs(box.width() * box.height() - area) < 1e-4 * Math.max(1, area);
        return rectangle ? Optional.of(new Size(Length.inches(box.width()), Length.inches(box.height()))) : Optional.empty();
    }

    /** The sides of an upright rectangle. */
    public record Size(Length width, Length height) {
        /** The same with a seam allowance on every side. */
        public Size withSeams(Length seam) {
            return new Size(width.plus(seam.times(2)), height.plus(seam.times(2)));
        }
    }
}
