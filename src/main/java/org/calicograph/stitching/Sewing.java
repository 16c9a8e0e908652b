package org.calicograph.stitching;

import org.calicograph.measure.Length;

/** How the lines are sewn, by hand or by machine, with the limits of each. */
public sealed interface Sewing {

    /** Ten stitches to the inch in layers 0.08 in thick, from threads 18 in long. */
    Sewing HAND = new ByHand(10, Length.inches(0.08), Length.inches(18));

    /** What a start is worth: so much line may be sewn again, or travelled, to save one. */
    Length start();

    /** Thread for a route. */
    Length thread(Route route);

    /**
     * A running stitch. Nothing limits the roll, and a start is only a knot pulled through: what binds is the length of
     * the thread.
     *
     * @param toTheInch stitches seen on the top in an inch; 6 to 12 are usual
     * @param thickness of the layers as sewn
     * @param length    of one thread, knotted at one end; about 18 in is common practice
     */
    record ByHand(double toTheInch, Length thickness, Length length) implements Sewing {
        public ByHand {
            if (!(toTheInch > 0) || !length.isPositive() || thickness.compareTo(Length.ZERO) < 0) {
                throw new IllegalArgumentException(toTheInch + " stitches to the inch in layers of " + thickness + " with threads of " + length
                        + " can't be sewn; use numbers above 0, such as 8 to the inch and 18 in");
            }
        }

        @Override
        public Length start() {
            return Length.inches(2);
        }

        /** The line itself, and down and up again for every stitch; 3 in of each thread go into its knot and its end. */
        @Override
        public Length thread(Route route) {
            return Length.inches(route.length() * perInch()).plus(TAILS.times(threads(route)));
        }

        private double perInch() {
            return 1 + 2 * thickness.inInches() * toTheInch;
        }

        /** The line that one thread sews. */
        public Length reach() {
            return Length.inches(Math.max(0, length.inInches() - TAILS.inInches()) / perInch());
        }

        /** Threads cut: a run longer than a thread reaches is sewn with several. */
        public int threads(Route route) {
            if (!reach().isPositive()) {
                throw new IllegalArgumentException("a thread of " + length + " is used up by its knot and end; cut it longer than " + TAILS);
            }
            return route.runs().stream().mapToInt(r -> (int) Math.ceil(r.length() / reach().inInches() - 1e-9)).sum();
        }

        private static final Length TAILS = Length.inches(3);
    }

    /**
     * A lockstitch: each start means bringing up the bobbin thread and burying two ends, so that much line is gone over
     * again first; and the quilt must go through the throat.
     */
    record ByMachine(Lockstitch stitch, Throat throat) implements Sewing {
        @Override
        public Length start() {
            return Length.inches(24);
        }

        @Override
        public Length thread(Route route) {
            return stitch.needed(route);
        }
    }
}
