package org.calicograph.turning;

import java.util.ArrayList;
import java.util.List;

/**
 * Names the plane group of a repeat of square blocks.
 *
 * <p>All moves of the plane that take blocks to blocks are tried: a turn about a block's middle, then a
 * step of whole blocks. A reflection is a mirror if its step along the axis is a repeat of the pattern, and
 * else a glide. With that, the group is found by the usual questions: the greatest turn, then whether each
 * direction has mirrors, glides, both or neither.
 */
final class PlaneGroup {

    private record Kinds(boolean mirrors, boolean glides) {
        boolean any() {
            return mirrors || glides;
        }
    }

    private PlaneGroup() { }

    static String of(Repeat repeat) {
        boolean quarter = !steps(repeat, new Turn(1, false)).isEmpty();
        boolean half = !steps(repeat, new Turn(2, false)).isEmpty();
        Kinds upright = kinds(repeat, new Turn(0, true));
        Kinds level = kinds(repeat, new Turn(2, true));
        Kinds rising = kinds(repeat, new Turn(1, true));
        Kinds falling = kinds(repeat, new Turn(3, true));
        if (quarter) {
            if (!upright.any() && !rising.any()) {
                return "p4";
            }
            return upright.mirrors() && rising.mirrors() ? "p4m" : "p4g";
        }
        boolean straight = upright.any() || level.any();
        Kinds one = straight ? upright : rising;
        Kinds other = straight ? level : falling;
        if (half) {
            if (!one.any() || !other.any()) {
                return "p2";
            }
            if (one.mirrors() && other.mirrors()) {
                return one.glides() ? "cmm" : "pmm";
            }
            return one.mirrors() || other.mirrors() ? "pmg" : "pgg";
        }
        Kinds only = one.any() ? one : other;
        if (!only.any()) {
            return "p1";
        }
        return only.mirrors() ? only.glides() ? "cm" : "pm" : "pg";
    }

    private static Kinds kinds(Repeat repeat, Turn reflection) {
        List<int[]> moves = steps(repeat, Turn.NONE);
        boolean mirrors = false;
        boolean glides = false;
        int span = span(repeat);
        for (int[] first : steps(repeat, reflection)) {
            // The same step and its like one span further: a slanting axis may be a mirror here and a glide there.
            for (int i = 0; i < 4; i++) {
                int dx = first[0] + i % 2 * span;
                int dy = first[1] + i / 2 * span;
                int[] image = reflection.ofStep(dx, dy);
                // Twice the step along the axis; a mirror's is twice a repeat.
                int along = dx + image[0];
                int down = dy + image[1];
                if (along % 2 == 0 && down % 2 == 0 && isRepeat(repeat, moves, along / 2, down / 2)) {
                    mirrors = true;
                } else {
                    glides = true;
                }
            }
        }
        return new Kinds(mirrors, glides);
    }

    private static boolean isRepeat(Repeat repeat, List<int[]> moves, int across, int down) {
        int span = span(repeat);
        return moves.stream().anyMatch(m -> Math.floorMod(m[0] - across, span) == 0 && Math.floorMod(m[1] - down, span) == 0);
    }

    private static int span(Repeat repeat) {
        int a = repeat.columns();
        int b = repeat.rows();
        int gcd = java.math.BigInteger.valueOf(a).gcd(java.math.BigInteger.valueOf(b)).intValue();
        return a / gcd * b;
    }

    /** The steps, within one square span of the repeat, that after the turn bring the pattern onto itself. */
    private static List<int[]> steps(Repeat repeat, Turn turn) {
        int span = span(repeat);
        List<int[]> steps = new ArrayList<>();
        for (int dy = 0; dy < span; dy++) {
            for (int dx = 0; dx < span; dx++) {
                if (keeps(repeat, turn, dx, dy, span)) {
                    steps.add(new int[] {dx, dy});
                }
            }
        }
        return steps;
    }

    private static boolean keeps(Repeat repeat, Turn turn, int dx, int dy, int span) {
        for (int y = 0; y < span; y++) {
            for (int x = 0; x < span; x++) {
                int[] to = turn.ofStep(x, y);
                if (!repeat.looksLike(repeat.at(x, y).then(turn), repeat.at(to[0] + dx, to[1] + dy))) {
                    return false;
                }
            }
        }
        return true;
    }
}
