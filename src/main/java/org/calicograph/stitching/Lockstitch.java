package org.calicograph.stitching;

import org.calicograph.measure.Length;

/**
 * How much thread a lockstitch takes.
 *
 * <p>An inch of seam takes {@code 2 + 2 T S} inches of thread, needle and bobbin together, where T is
 * the thickness of the layers as sewn and S the stitches to the inch (stitch class 301; published in
 * textile-trade tables). Half of it is taken to come from the bobbin (a balanced stitch). Tails are added at
 * every start.
 *
 * @param stitch    the length of one stitch
 * @param thickness of the layers under the foot
 * @param tail      at each end of a run, needle and bobbin each
 */
public record Lockstitch(Length stitch, Length thickness, Length tail) {

    /** By machine: 2 1/2 mm, about 10 stitches to the inch, in layers of 0.08 in. */
    public static final Lockstitch MACHINE = new Lockstitch(Length.mm(2.5), Length.inches(0.08), Length.inches(4));

    public Lockstitch {
        if (!stitch.isPositive() || thickness.compareTo(Length.ZERO) < 0 || tail.compareTo(Length.ZERO) < 0) {
            throw new IllegalArgumentException("stitches of " + stitch + " in layers of " + thickness + " with tails of " + tail
                    + " take no thread that can be told; use a stitch above 0 and the others 0 or more");
        }
    }

    /** Stitches to the inch. */
    public static Lockstitch ofStitches(double toTheInch, Length thickness) {
        if (!(toTheInch > 0)) {
            throw new IllegalArgumentException(toTheInch + " stitches to the inch can't be sewn; use a number above 0, such as 10");
        }
        return new Lockstitch(Length.inches(1 / toTheInch), thickness, MACHINE.tail);
    }

    /** How many stitches go to an inch. */
    public double stitchesPerInch() {
        return 1 / stitch.inInches();
    }

    /** Inches of thread in an inch of seam, needle and bobbin together. */
    public double perInch() {
        return 2 + 2 * thickness.inInches() * stitchesPerInch();
    }

    /** All the thread for lines of a length in inches, sewn in so many runs. */
    public Length needed(double inches, int starts) {
        return Length.inches(inches * perInch()).plus(tail.times(4L * starts));
    }

    /** The thread that a route takes, needle and bobbin together, with the tails of its starts. */
    public Length needed(Route route) {
        return needed(route.length(), route.starts());
    }

    /** Full bobbins, each of a length. */
    public int bobbins(Length needed, Length bobbin) {
        if (!bobbin.isPositive()) {
            throw new IllegalArgumentException("a bobbin that holds " + bobbin + " is empty; measure what yours holds, such as 60 yards");
        }
        return (int) Math.ceil(needed.half().ratioTo(bobbin) - 1e-9);
    }

    /** Minutes to sew lines of a length in inches at so many stitches a minute, with some minutes for each start. */
    public double minutes(double inches, int starts, double stitchesAMinute, double minutesAStart) {
        if (!(stitchesAMinute > 0)) {
            throw new IllegalArgumentException(stitchesAMinute + " stitches a minute never get done; use a number above 0, such as 400");
        }
        return inches * stitchesPerInch() / stitchesAMinute + starts * minutesAStart;
    }
}
