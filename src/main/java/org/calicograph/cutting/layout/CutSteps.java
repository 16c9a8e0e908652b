package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.calicograph.measure.Length;

/**
 * The order of a layout's cuts: the whole cloth first, in strips across it where the layout has them,
 * then what each part is cut into, and so on until every blank is free. Panels that are cut alike are cut together, so they are one step.
 */
public final class CutSteps {

    /**
     * Cuts from edge to edge of a panel, or of several alike.
     *
     * @param panel what is cut, in rows or in columns
     * @param times how many of it there are
     */
    public record Step(Panel panel, int times) {

        /** True if the cuts run along the selvedge. */
        public boolean isAlong() {
            return panel instanceof Panel.Columns;
        }

        /** The panels that the cuts part, in order. */
        public List<Panel> parts() {
            return CutSteps.parts(panel);
        }

        /** The size of a part at right angles to the cuts. */
        public Length size(Panel part) {
            return isAlong() ? part.across() : part.along();
        }

        /** Parts of one size that lie next to each other, offcuts apart. */
        public List<Run> runs() {
            List<Run> runs = new ArrayList<>();
            for (Panel p : parts()) {
                Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
                boolean spare = p instanceof Panel.Offcut;
                if (last != null && last.size().equals(size(p)) && last.spare() == spare) {
                    runs.set(runs.size() - 1, new Run(last.count() + 1, last.size(), spare));
                } else {
                    runs.add(new Run(1, size(p), spare));
                }
            }
            return List.copyOf(runs);
        }

        /** What to do, in words. */
        public String words(Function<Length, String> text) {
            List<String> cut = new ArrayList<>();
            for (Run r : runs()) {
                if (!r.spare()) {
                    cut.add(r.count() + " of " + text.apply(r.size()));
                }
            }
            return (times == 1 ? "" : times + " alike: ") + "cut " + (isAlong() ? "along" : "across") + ", " + String.join(", ", cut);
        }
    }

    /**
     * Parts of one size.
     *
     * @param spare true for an offcut
     */
    public record Run(int count, Length size, boolean spare) { }

    private CutSteps() { }

    /** Every step in order; none if the layout is a single blank as wide as the cloth. */
    public static List<Step> of(Layout layout) {
        List<Step> steps = new ArrayList<>();
        Map<Panel, Integer> level = new LinkedHashMap<>();
        level.put(layout.panel(), 1);
        while (!level.isEmpty()) {
            Map<Panel, Integer> next = new LinkedHashMap<>();
            level.forEach((panel, times) -> {
                List<Panel> parts = parts(panel);
                if (!parts.isEmpty()) {
                    steps.add(new Step(panel, times));
                }
                parts.forEach(p -> next.merge(p, times, Integer::sum));
            });
            level = next;
        }
        return List.copyOf(steps);
    }

    private static List<Panel> parts(Panel panel) {
        if (panel instanceof Panel.Rows rows) {
            return rows.parts();
        }
        return panel instanceof Panel.Columns columns ? columns.parts() : List.of();
    }
}
