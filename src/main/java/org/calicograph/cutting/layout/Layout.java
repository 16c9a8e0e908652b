package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * Blanks laid on a length of cloth so that every cut runs from edge to edge of the panel it parts.
 *
 * @param width the usable width of the cloth
 * @param panel the whole, as wide as the cloth
 * @param bound a length that no layout of the same blanks can be shorter than
 */
public record Layout(Length width, Panel panel, LengthBound bound) {

    /**
     * Where a blank lies.
     *
     * @param x from the left selvedge edge
     * @param y from the cut end of the cloth
     */
    public record Spot(Panel.Taken taken, Length x, Length y) { }

    /** @throws IllegalArgumentException if the panel is not as wide as the cloth */
    public Layout {
        if (!panel.across().equals(width)) {
            throw new IllegalArgumentException("the layout is " + panel.across() + " wide but the cloth " + width + "; fill it up with an offcut");
        }
    }

    /** As many of the blanks as go on a piece of cloth of a given size, the longest first; empty if none does. */
    public static Optional<Layout> filling(Length width, Length length, List<Blank> blanks) {
        LengthBound bound = new LengthBound(length, "as given");
        return Stream.of(true, false).flatMap(upright -> Nooks.fill(width, length, blanks, upright).stream())
                .map(panel -> new Layout(width, panel, bound))
                .max(Comparator.comparing(layout -> layout.used().squareInches()));
    }

    /**
     * Equal blanks, counted.
     *
     * @param across as they lie
     */
    public record Counted(String name, int count, Length across, Length along) { }

    /**
     * A part of the cloth between two cuts that go all the way across it.
     *
     * @param along  from one cut to the next
     * @param blanks what lies there
     */
    public record Band(Length along, List<Counted> blanks) { }

    /** The bands of cloth between the cuts that go all the way across, in order; offcuts alone are none. */
    public List<Band> bands() {
        List<Panel> parts = panel instanceof Panel.Rows rows ? rows.parts() : List.of(panel);
        List<Band> bands = new ArrayList<>();
        for (Panel part : parts) {
            List<Spot> within = new ArrayList<>();
            collect(part, Length.ZERO, Length.ZERO, within);
            if (!within.isEmpty()) {
                bands.add(new Band(part.along(), counted(within.stream().map(Spot::taken)
                        .map(t -> new Blank(t.blank().name(), t.across(), t.along(), t.blank().turnable())).toList())));
            }
        }
        return List.copyOf(bands);
    }

    /** Equal blanks together, in the order in which each kind comes first. */
    public static List<Counted> counted(List<Blank> blanks) {
        java.util.Map<List<Object>, Counted> kinds = new java.util.LinkedHashMap<>();
        for (Blank b : blanks) {
            kinds.merge(List.of(b.name(), b.across(), b.along()), new Counted(b.name(), 1, b.across(), b.along()),
                    (one, more) -> new Counted(one.name(), one.count() + 1, one.across(), one.along()));
        }
        return List.copyOf(kinds.values());
    }

    /** The length of cloth used. */
    public Length length() {
        return panel.along();
    }

    /** Every blank with its place, in the order of cutting. */
    public List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        collect(panel, Length.ZERO, Length.ZERO, spots);
        return List.copyOf(spots);
    }

    private static void collect(Panel panel, Length x, Length y, List<Spot> into) {
        if (panel instanceof Panel.Taken taken) {
            into.add(new Spot(taken, x, y));
        } else if (panel instanceof Panel.Rows rows) {
            Length at = y;
            for (Panel p : rows.parts()) {
                collect(p, x, at, into);
                at = at.plus(p.along());
            }
        } else if (panel instanceof Panel.Columns columns) {
            Length at = x;
            for (Panel p : columns.parts()) {
                collect(p, at, y, into);
                at = at.plus(p.across());
            }
        }
    }

    /** The area of the blanks. */
    public Area used() {
        return spots().stream().map(s -> s.taken().blank().area()).reduce(Area.ZERO, Area::plus);
    }

    /** The share of the cloth that becomes offcuts, from 0 to 1. */
    public double waste() {
        return 1 - used().squareInches() / Area.of(width, length()).squareInches();
    }

    /** How far the length is over the lower bound, as a share of it: 0 is proved best. */
    public double overBound() {
        return length().ratioTo(bound.length()) - 1;
    }
}
