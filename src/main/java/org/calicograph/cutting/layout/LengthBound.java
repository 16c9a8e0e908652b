package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.calicograph.measure.Length;

/**
 * A length of cloth that no layout can be shorter than, whatever the cuts.
 *
 * @param reason why, in a few words
 */
public record LengthBound(Length length, String reason) {

    /** Widths are told apart in so many steps when reachable widths are counted. */
    private static final int STEPS = 1 << 16;
    /** So many lengths are put to the scales. */
    private static final int MOST_LENGTHS = 100;

    /** The best of four bounds: area over the width that can be filled, the longest blank, wide blanks stacked, and thin slices. */
    public static LengthBound of(Length width, List<Blank> blanks) {
        double area = 0;
        Length longest = Length.ZERO;
        Length stacked = Length.ZERO;
        String name = "";
        for (Blank b : blanks) {
            area += (double) b.across().units() * b.along().units();
            boolean canTurn = b.turnable() && b.along().compareTo(width) <= 0;
            Length least = canTurn ? Length.min(b.across(), b.along()) : b.along();
            if (b.across().compareTo(width) > 0) {
                least = b.across();
            }
            if (least.compareTo(longest) > 0) {
                longest = least;
                name = b.name();
            }
            Length narrow = b.turnable() ? Length.min(b.across(), b.along()) : b.across();
            if (narrow.times(2).compareTo(width) > 0) {
                stacked = stacked.plus(least);
            }
        }
        Length filled = reachable(width, blanks);
        Length byArea = new Length((long) Math.ceil(area / filled.units() * (1 - 1e-12)));
        String over = filled.equals(width) ? "area over width" : "area over the " + filled + " of width that blanks can fill";
        LengthBound best = new LengthBound(byArea, over);
        if (stacked.compareTo(best.length()) > 0) {
            best = new LengthBound(stacked, "blanks over half the width can't lie abreast");
        }
        best = longest.compareTo(best.length()) > 0 ? new LengthBound(longest, "'" + name + "' alone is as long") : best;
        Length sliced = SliceBound.of(width, blanks);
        if (sliced.compareTo(best.length()) > 0) {
            best = new LengthBound(sliced, "sides fill no slice across better (linear program)");
        }
        return stacked(best, width, blanks);
    }

    /**
     * The least length from a bound that sides of blanks add up to, since pushed together some stack of
     * them is as long as the cloth; and of these the first that no scales refute.
     */
    private static LengthBound stacked(LengthBound from, Length width, List<Blank> blanks) {
        long unit = 0;
        List<Length> sides = new ArrayList<>();
        for (Blank b : blanks) {
            sides.add(b.along());
            unit = gcd(unit, b.along().units());
            if (b.turnable()) {
                sides.add(b.across());
                unit = gcd(unit, b.across().units());
            }
        }
        long most = sides.stream().mapToLong(Length::units).max().orElseThrow();
        long reach = from.length().units() + Math.max(most, from.length().units() / 2);
        if (reach / unit > STEPS) {
            return from;
        }
        BitSet sums = sums(sides, unit, (int) (reach / unit) + 1);
        int first = sums.nextSetBit((int) ((from.length().units() + unit - 1) / unit));
        int last = refuted(first, sums, width, blanks, unit);
        if (last >= first) {
            return new LengthBound(new Length(sums.nextSetBit(last + 1) * unit), "wide and long blanks leave too little room for the others");
        }
        Length whole = new Length(first * unit);
        return whole.compareTo(from.length()) > 0 ? new LengthBound(whole, from.reason() + ", up to what stacked sides add to") : from;
    }

    /** The greatest refuted of the lengths that sides add up to, in units; below the first if there is none. */
    private static int refuted(int first, BitSet lengths, Length width, List<Blank> blanks, long unit) {
        long common = unit;
        for (Blank b : blanks) {
            common = gcd(common, b.across().units());
        }
        int parts = (int) (unit / common);
        if (width.units() / common > STEPS) {
            return first - 1;
        }
        ScaleBound scales = new ScaleBound(blanks, common, (int) (width.units() / common));
        int last = first - 1;
        int tried = 0;
        for (int at = first; at >= 0 && lengths.nextSetBit(at + 1) >= 0 && tried++ < MOST_LENGTHS; at = lengths.nextSetBit(at + 1)) {
            last = scales.refutes(at * parts) ? at : last;
        }
        return last;
    }

    /** Every sum of sides up to a capacity, each side as often as one likes: that only adds sums, so bounds hold. */
    private static BitSet sums(List<Length> sides, long unit, int capacity) {
        BitSet sums = new BitSet(capacity + 1);
        sums.set(0);
        sides.stream().mapToInt(l -> (int) Math.min(Integer.MAX_VALUE / 2, l.units() / unit)).distinct().sorted().forEach(size -> {
            for (int i = sums.nextSetBit(0); i >= 0 && i + size <= capacity; i = sums.nextSetBit(i + 1)) {
                sums.set(i + size);
            }
        });
        return sums;
    }

    /** The greatest width up to the cloth's that sides of blanks can fill, each as often as there are blanks. */
    private static Length reachable(Length width, List<Blank> blanks) {
        long unit = 0;
        for (Blank b : blanks) {
            unit = gcd(unit, b.across().units());
            unit = b.turnable() ? gcd(unit, b.along().units()) : unit;
        }
        if (width.units() / unit > STEPS) {
            return width;
        }
        List<Length> sides = new ArrayList<>();
        for (Blank b : blanks) {
            sides.add(b.across());
            if (b.turnable()) {
                sides.add(b.along());
            }
        }
        BitSet sums = sums(sides, unit, (int) (width.units() / unit));
        return new Length(Math.max(1, sums.length() - 1) * unit);
    }

    /** The one that says more. */
    public static LengthBound longer(LengthBound a, LengthBound b) {
        return a.length().compareTo(b.length()) >= 0 ? a : b;
    }

    /** The one that holds whichever of two ways is taken. */
    public static LengthBound shorter(LengthBound a, LengthBound b) {
        return a.length().compareTo(b.length()) <= 0 ? a : b;
    }

    static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
