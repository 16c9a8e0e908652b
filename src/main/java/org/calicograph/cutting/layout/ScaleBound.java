package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;

/**
 * Lengths that are refuted by conservative scales (Fekete and Schepers, 'A general framework for bounds
 * for higher-dimensional orthogonal packing problems', 2004): if widths are replaced by numbers such
 * that whatever fits side by side across the cloth adds up to no more than a capacity, and lengths
 * likewise, the blanks' new areas still go into the new cloth. Where they do not, the cloth is too short.
 *
 * <p>The scales: the sides as they are; sides counted in whole steps; the same with sides over half the
 * cloth measured by what they leave (Carlier, Clautiaux and Moukrim, 2007); and sides with the small
 * ones left out where a large one stands. All are whole numbers, so nothing is rounded.
 */
final class ScaleBound {

    /** Steps of a side divided by up to this are tried. */
    private static final int DIVISORS = 16;
    private static final int MOST_KINDS = 10;

    /** A number for each side, in their order; those that fit beside each other add up to no more than the capacity. */
    private record Scale(long[] of, long capacity) {
        /** True if this refutes whatever the other does. */
        boolean covers(Scale other) {
            for (int i = 0; i < of.length; i++) {
                if (of[i] * other.capacity < other.of[i] * capacity) {
                    return false;
                }
            }
            return true;
        }
    }

    private final List<Kind> kinds;
    private final long unit;
    private final int[] counts;
    private final int[] sides;
    private final int[] first;
    private final int[] second;
    private final int width;
    private final List<Scale> across;

    /** @param unit a common measure of all sides and no larger than the width, itself so many units */
    ScaleBound(List<Blank> blanks, long unit, int width) {
        this.width = width;
        this.unit = unit;
        kinds = Kind.of(blanks);
        counts = kinds.stream().mapToInt(Kind::count).toArray();
        sides = kinds.stream().flatMapToInt(k -> IntStream.of(k.across(unit), k.along(unit))).distinct().sorted().toArray();
        first = kinds.stream().mapToInt(k -> Arrays.binarySearch(sides, k.across(unit))).toArray();
        second = kinds.stream().mapToInt(k -> Arrays.binarySearch(sides, k.along(unit))).toArray();
        across = tooMany() ? List.of() : scales(width);
    }

    private boolean tooMany() {
        return kinds.size() > MOST_KINDS;
    }

    /** True if no layout is so short: the length in grid units. */
    boolean refutes(int length) {
        if (tooMany()) {
            return false;
        }
        boolean[] asked = new boolean[counts.length];
        boolean[] turned = new boolean[counts.length];
        for (int i = 0; i < counts.length; i++) {
            Kind k = kinds.get(i);
            asked[i] = k.across(unit) <= width && k.along(unit) <= length;
            turned[i] = k.blank().turnable() && k.along(unit) <= width && k.across(unit) <= length;
            if (!asked[i] && !turned[i]) {
                return true;
            }
        }
        for (Scale g : scales(length)) {
            for (Scale f : across) {
                double sum = 0;
                for (int i = 0; i < counts.length; i++) {
                    long one = asked[i] ? f.of[first[i]] * g.of[second[i]] : Long.MAX_VALUE;
                    long other = turned[i] ? f.of[second[i]] * g.of[first[i]] : Long.MAX_VALUE;
                    sum += (double) counts[i] * Math.min(one, other);
                }
                if (sum > (double) f.capacity * g.capacity) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<Scale> scales(int capacity) {
        List<Scale> scales = new ArrayList<>();
        add(scales, capacity, x -> x, capacity);
        for (int side : sides) {
            for (long j = 1; side <= capacity && j <= DIVISORS; j++) {
                long parts = j;
                long most = capacity * parts / side;
                add(scales, capacity, x -> x * parts / side, most);
                add(scales, capacity, x -> 2 * x > capacity ? 2 * (most - (capacity - x) * parts / side)
                        : 2 * x == capacity ? most : 2 * (x * parts / side), 2 * most);
            }
            if (2L * side <= capacity) {
                add(scales, capacity, x -> x > capacity - side ? capacity : x < side ? 0 : x, capacity);
            }
        }
        return scales;
    }

    /** Adds a scale unless one that is there does as well; those that it outdoes go. */
    private void add(List<Scale> scales, int capacity, LongUnaryOperator of, long most) {
        Scale scale = new Scale(IntStream.of(sides).mapToLong(x -> x > capacity ? 0 : of.applyAsLong(x)).toArray(), most);
        if (scales.stream().noneMatch(s -> s.covers(scale))) {
            scales.removeIf(scale::covers);
            scales.add(scale);
        }
    }
}
