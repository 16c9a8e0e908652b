package org.calicograph.fitting;

import org.calicograph.covering.DesignException;
import org.calicograph.measure.Length;

/**
 * A length as wished, and how far it may be given up.
 *
 * @param wished   the length as wished
 * @param least    the shortest allowed
 * @param greatest the longest allowed
 * @param step     whole multiples of this are allowed away from the wished one
 */
public record Leeway(Length wished, Length least, Length greatest, Length step) {

    /** @throws DesignException if a length or the step is not above 0, or the least is above the greatest */
    public Leeway {
        for (Length each : new Length[] {wished, least, step}) {
            if (!each.isPositive()) {
                throw new DesignException("a length of " + wished + ", from " + least + " to " + greatest + " in steps of " + step
                        + ", can't be fitted; use lengths above 0");
            }
        }
        if (least.compareTo(greatest) > 0) {
            throw new DesignException("lengths from " + least + " to " + greatest + " can't be fitted; give the lesser first");
        }
    }

    /** Just this length; steps of 1/8 in if it should be given up. */
    static Leeway just(Length length) {
        return new Leeway(length, length, length, Length.inches(1, 8));
    }

    /** The same steps about another length. */
    Leeway about(Length length) {
        return new Leeway(length, length, length, step);
    }

    Leeway between(Length shortest, Length longest) {
        return new Leeway(wished, shortest, longest, step);
    }

    Leeway steps(Length fraction) {
        return new Leeway(wished, least, greatest, fraction);
    }

    /** True if only the wished length will do. */
    boolean isFixed() {
        return least.equals(greatest);
    }

    /** How many steps below the wished length are allowed; below 0 if even the wished one is too short. */
    long stepsDown() {
        return Math.floorDiv(wished.units() - least.units(), step.units());
    }

    /** How many steps above the wished length are allowed; below 0 if even the wished one is too long. */
    long stepsUp() {
        return Math.floorDiv(greatest.units() - wished.units(), step.units());
    }

    /** The wished length so many steps on. */
    Length at(long steps) {
        return wished.plus(step.times(steps));
    }
}
