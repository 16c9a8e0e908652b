package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.measure.Length;

/**
 * A layout in strips, as most hands cut: first whatever is longer than the cloth is wide, along the
 * selvedge; then strips across what is left of that length; then strips across the whole width. Each strip
 * is cut into blanks as high as the strip, and what room is left at its end may give lower ones, several from each piece cut
 * off where the strip is high enough.
 *
 * <p>Each kind of blank lies one way throughout; the ways are chosen together for the least length, all
 * of them tried where there are few kinds. Such a layout is easy to cut and seldom the shortest.
 *
 * @param strips in the order of cutting, alike ones together
 */
public record StripLayout(Layout layout, List<Strip> strips) {

    /** Where a strip is cut from. */
    public enum Way {
        ALONG("along the selvedge"), BESIDE("across the rest of that length"), ACROSS("across the cloth");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * Strips that are cut up alike.
     *
     * @param width  the measure from one cut to the next
     * @param length of each, before it is cut up
     */
    public record Strip(Way way, int count, Length width, Length length, List<Cut> cuts) {
        public Strip {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Equal blanks from one strip.
     *
     * @param count how many blanks
     * @param every the length of strip that is cut off
     * @param high  the blank's other side, at most the strip's width
     * @param pile  how many blanks come from each piece cut off
     */
    public record Cut(String name, int count, Length every, Length high, int pile) {

        /** The length of strip that all of them take. */
        public Length taken() {
            return every.times((long) count / pile);
        }
    }

    private static final int TRIALS = 60_000;

    /** One strip and what lies on it, the highest first. */
    private record Row(Way way, List<List<Panel.Taken>> piles) {
        Length high() {
            return piles.get(0).get(0).along();
        }

        Panel panel(Length width) {
            return Panel.abreast(piles.stream().map(p -> Panel.stacked(List.copyOf(p))).toList()).filledTo(width, high());
        }

        List<Panel.Taken> taken() {
            return piles.stream().flatMap(List::stream).toList();
        }
    }

    public StripLayout {
        strips = List.copyOf(strips);
    }

    /**
     * The blanks in strips on cloth of a usable width.
     *
     * @throws IllegalArgumentException if there is no blank, or one is wider than the cloth however it lies, naming both
     */
    public static StripLayout of(Length width, List<Blank> blanks) {
        LayoutSearch.requireFit(width, blanks);
        return of(width, blanks, LengthBound.of(width, blanks));
    }

    /** The blanks of a layout in strips on the same cloth; its bound is theirs too. */
    public static StripLayout of(Layout layout) {
        return of(layout.width(), layout.spots().stream().map(s -> s.taken().blank()).toList(), layout.bound());
    }

    private static StripLayout of(Length width, List<Blank> blanks, LengthBound bound) {
        List<Panel.Taken> lengthwise = new ArrayList<>();
        List<Blank> rest = new ArrayList<>();
        for (Blank b : blanks) {
            if (Length.max(b.across(), b.along()).compareTo(width) <= 0) {
                rest.add(b);
            } else {
                lengthwise.add(new Panel.Taken(b, !fits(b, false, width)));
            }
        }
        lengthwise.sort(Comparator.comparing(Panel.Taken::along).thenComparing(Panel.Taken::across).reversed());
        List<Panel> sections = new ArrayList<>();
        List<Strip> strips = new ArrayList<>();
        while (!lengthwise.isEmpty()) {
            sections.add(section(width, lengthwise, rest, strips));
        }
        for (Row row : shortest(width, rest, Way.ACROSS)) {
            sections.add(row.panel(width));
            add(strip(row, width), strips);
        }
        return new StripLayout(new Layout(width, Panel.stacked(sections).filledTo(width, Length.ZERO), bound), strips);
    }

    private static boolean fits(Blank b, boolean turned, Length width) {
        return (!turned || b.turnable()) && (turned ? b.along() : b.across()).compareTo(width) <= 0;
    }

    /** A length of cloth as long as the longest blank left: such blanks side by side, and strips across what remains of its width. */
    private static Panel section(Length width, List<Panel.Taken> lengthwise, List<Blank> rest, List<Strip> strips) {
        Length along = lengthwise.get(0).along();
        Length left = width;
        List<Panel> columns = new ArrayList<>();
        for (Panel.Taken t : List.copyOf(lengthwise)) {
            if (t.across().compareTo(left) <= 0) {
                columns.add(t);
                lengthwise.remove(t);
                left = left.minus(t.across());
                add(new Strip(Way.ALONG, 1, t.across(), along, List.of(new Cut(t.blank().name(), 1, t.along(), t.across(), 1))), strips);
            }
        }
        List<Panel> beside = new ArrayList<>();
        Length room = along;
        for (Row row : shortest(left, narrow(rest, left), Way.BESIDE)) {
            if (row.high().compareTo(room) <= 0) {
                beside.add(row.panel(left));
                row.taken().forEach(t -> rest.remove(t.blank()));
                room = room.minus(row.high());
                add(strip(row, left), strips);
            }
        }
        if (!beside.isEmpty()) {
            columns.add(Panel.stacked(beside));
        }
        return Panel.abreast(columns).filledTo(width, along);
    }

    private static List<Blank> narrow(List<Blank> blanks, Length width) {
        return blanks.stream().filter(b -> fits(b, false, width) || fits(b, true, width)).toList();
    }

    private static Strip strip(Row row, Length length) {
        Map<List<Object>, Cut> cuts = new LinkedHashMap<>();
        for (List<Panel.Taken> pile : row.piles()) {
            Panel.Taken t = pile.get(0);
            cuts.merge(List.of(t.blank().name(), t.across(), t.along(), pile.size()), new Cut(t.blank().name(), pile.size(), t.across(), t.along(), pile.size()),
                    (a, b) -> new Cut(a.name(), a.count() + b.count(), a.every(), a.high(), a.pile()));
        }
        return new Strip(row.way(), 1, row.high(), length, List.copyOf(cuts.values()));
    }

    private static void add(Strip strip, List<Strip> strips) {
        if (!strips.isEmpty()) {
            Strip last = strips.get(strips.size() - 1);
            if (strip.equals(new Strip(last.way(), 1, last.width(), last.length(), last.cuts()))) {
                strips.set(strips.size() - 1, new Strip(last.way(), last.count() + 1, last.width(), last.length(), last.cuts()));
                return;
            }
        }
        strips.add(strip);
    }

    private static List<Row> shortest(Length width, List<Blank> blanks, Way way) {
        List<Kind> kinds = Kind.of(blanks);
        boolean few = kinds.size() < 16 && (1L << kinds.size()) * blanks.size() <= TRIALS;
        return few ? allWays(width, kinds, way) : oneByOne(width, kinds, way);
    }

    private static List<Row> allWays(Length width, List<Kind> kinds, Way way) {
        Optional<List<Row>> best = Optional.empty();
        for (int ways = 0; ways < 1 << kinds.size(); ways++) {
            boolean[] turned = new boolean[kinds.size()];
            boolean possible = true;
            for (int i = 0; i < turned.length; i++) {
                turned[i] = (ways >> i & 1) == 1;
                possible &= fits(kinds.get(i).blank(), turned[i], width);
            }
            if (possible) {
                List<Row> rows = rows(width, kinds, turned, way);
                if (best.isEmpty() || length(rows).compareTo(length(best.get())) < 0) {
                    best = Optional.of(rows);
                }
            }
        }
        return best.orElse(List.of());
    }

    /** Each kind turned by itself as long as that helps. */
    private static List<Row> oneByOne(Length width, List<Kind> kinds, Way way) {
        boolean[] turned = new boolean[kinds.size()];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = !fits(kinds.get(i).blank(), false, width);
        }
        List<Row> best = rows(width, kinds, turned, way);
        boolean better = true;
        while (better) {
            better = false;
            for (int i = 0; i < turned.length; i++) {
                if (fits(kinds.get(i).blank(), !turned[i], width)) {
                    turned[i] = !turned[i];
                    List<Row> rows = rows(width, kinds, turned, way);
                    if (length(rows).compareTo(length(best)) < 0) {
                        best = rows;
                        better = true;
                    } else {
                        turned[i] = !turned[i];
                    }
                }
            }
        }
        return best;
    }

    private static Length length(List<Row> rows) {
        return rows.stream().map(Row::high).reduce(Length.ZERO, Length::plus);
    }

    private static List<Row> rows(Length width, List<Kind> kinds, boolean[] turned, Way way) {
        List<Panel.Taken> lying = new ArrayList<>();
        for (int i = 0; i < turned.length; i++) {
            boolean turn = turned[i];
            kinds.get(i).blanks().forEach(b -> lying.add(new Panel.Taken(b, turn)));
        }
        return Shelves.piles(width, lying).stream().map(row -> new Row(way, row)).toList();
    }
}
