package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;

/**
 * Long pieces joined from strips that are cut across the cloth, what is left of a strip beginning the
 * next piece. The fewest strips that do; with these, as many seams as can be lie clear of the corners and
 * of the middle of their piece, which the eye goes to first (common practice).
 *
 * @param way    straight or diagonal
 * @param strips what is used of the length of each strip; all but a trimmed one and the last are used whole
 * @param pieces in the order of the border
 */
public record StripJoins(BorderCloth.Way way, List<Length> strips, List<Joined> pieces) {

    /** Seams keep so far from corners and middles where they can: a few inches (common practice). */
    public static final Length CLEAR = Length.inches(3);
    /** No part is so short that it would show less than this beside its seam. */
    private static final Length LEAST = Length.inches(1);

    /**
     * A piece put together.
     *
     * @param length cut length
     * @param parts  cut lengths of its parts, one after another
     * @param near   how many of its seams lie near a corner or its middle
     */
    public record Joined(Length length, List<Length> parts, int near) {
        public Joined {
            parts = List.copyOf(parts);
        }

        /** How many joins it takes. */
        public int joins() {
            return parts.size() - 1;
        }
    }

    public StripJoins {
        strips = List.copyOf(strips);
        pieces = List.copyOf(pieces);
    }

    static StripJoins of(BorderCloth cloth, BorderCloth.Way way) {
        return new Search(cloth, way).best();
    }

    /** Seams within pieces; not those at corners. */
    public int joins() {
        return pieces.stream().mapToInt(Joined::joins).sum();
    }

    /** Seams that could not be kept clear of a corner or a middle. */
    public int near() {
        return pieces.stream().mapToInt(Joined::near).sum();
    }

    /** Strips used so far, the last of them perhaps with something left. */
    private record Bench(List<Length> used, Length left, List<Joined> pieces, int near) {

        Bench taking(Length part) {
            List<Length> next = new ArrayList<>(used);
            next.set(next.size() - 1, next.get(next.size() - 1).plus(part));
            return new Bench(next, left.minus(part), pieces, near);
        }

        Bench fresh(Length strip) {
            List<Length> next = new ArrayList<>(used);
            next.add(Length.ZERO);
            return new Bench(next, strip, pieces, near);
        }

        Bench with(Joined piece) {
            List<Joined> next = new ArrayList<>(pieces);
            next.add(piece);
            return new Bench(used, left, next, near + piece.near());
        }
    }

    /** Every way to go on that can matter: for as many strips and as many seams in bad places, the most left over. */
    private static final class Search {

        private final BorderCloth cloth;
        private final BorderCloth.Way way;
        private final Length strip;
        private final Length lost;
        private final Length clear;

        Search(BorderCloth cloth, BorderCloth.Way way) {
            this.cloth = cloth;
            this.way = way;
            this.strip = cloth.cloth();
            this.lost = cloth.lost(way);
            // A diagonal seam runs half the strip's width to either side of its middle.
            this.clear = way == BorderCloth.Way.DIAGONAL_JOINS ? CLEAR.plus(cloth.width().half()) : CLEAR;
        }

        StripJoins best() {
            List<Bench> benches = List.of(new Bench(List.of(), Length.ZERO, List.of(), 0));
            for (Length piece : cloth.pieces()) {
                List<Bench> next = new ArrayList<>();
                benches.forEach(b -> extend(b, piece, List.of(), Length.ZERO, 0, next));
                benches = worthKeeping(next);
            }
            Bench best = benches.get(0);
            return new StripJoins(way, best.used(), best.pieces());
        }

        /** Fewest strips first, then fewest seams in bad places; a strip more can make up for itself once, not twice. */
        private static List<Bench> worthKeeping(List<Bench> all) {
            all.sort(Comparator.comparingInt((Bench b) -> b.used().size()).thenComparingInt(Bench::near)
                    .thenComparing(Bench::left, Comparator.reverseOrder()));
            int fewest = all.get(0).used().size();
            Map<List<Integer>, Bench> kept = new LinkedHashMap<>();
            all.stream().filter(b -> b.used().size() <= fewest + 1).forEach(b -> kept.putIfAbsent(List.of(b.used().size(), b.near()), b));
            return List.copyOf(kept.values());
        }

        /** @param covered of the piece, from its beginning to the cut end of its last part */
        private void extend(Bench bench, Length piece, List<Length> parts, Length covered, int near, List<Bench> into) {
            Length before = parts.isEmpty() ? Length.ZERO : covered.minus(lost);
            Length need = piece.minus(before);
            if (bench.left().compareTo(need) >= 0) {
                into.add(bench.taking(need).with(new Joined(piece, with(parts, need), near)));
                return;
            }
            if (bench.left().compareTo(lost.plus(LEAST)) >= 0) {
                Length end = Length.min(before.plus(bench.left()), piece.minus(LEAST));
                boolean isClear = isClear(end, piece);
                join(bench, piece, parts, before, end, near + (isClear ? 0 : 1), into);
                if (!isClear) {
                    Length middle = piece.half().minus(clear).plus(lost.half());
                    Length back = piece.minus(clear).plus(lost.half());
                    Length sooner = end.compareTo(back) > 0 ? back : middle;
                    if (sooner.compareTo(end) < 0 && isClear(sooner, piece) && sooner.minus(before).compareTo(lost.plus(LEAST)) >= 0) {
                        join(bench, piece, parts, before, sooner, near, into);
                    }
                }
            }
            if (bench.left().compareTo(strip) < 0) {
                extend(bench.fresh(strip), piece, parts, covered, near, into);
            }
        }

        private void join(Bench bench, Length piece, List<Length> parts, Length before, Length end, int near, List<Bench> into) {
            Length part = end.minus(before);
            extend(bench.taking(part).fresh(strip), piece, with(parts, part), end, near, into);
        }

        private boolean isClear(Length end, Length piece) {
            Length seam = end.minus(lost.half());
            return seam.compareTo(clear) >= 0 && piece.minus(seam).compareTo(clear) >= 0
                    && seam.minus(piece.half()).abs().compareTo(clear) >= 0;
        }

        private static List<Length> with(List<Length> parts, Length part) {
            List<Length> next = new ArrayList<>(parts);
            next.add(part);
            return next;
        }
    }
}
