package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * Judges a layout by where its blanks lie alone, without its tree: all there, none outside, none
 * overlapping, directions kept, and parted by edge-to-edge cuts, which are searched for afresh.
 */
public final class LegalCut {

    private record Rect(long x0, long y0, long x1, long y1) { }

    private LegalCut() { }

    public static void check(Layout layout, List<Blank> asked) {
        List<Rect> rects = new ArrayList<>();
        Map<Blank, Integer> missing = new HashMap<>();
        asked.forEach(b -> missing.merge(b, 1, Integer::sum));
        for (Layout.Spot s : layout.spots()) {
            Blank b = s.taken().blank();
            missing.merge(b, -1, Integer::sum);
            boolean turned = s.taken().turned();
            assertThat(turned && !b.turnable()).as("turned " + b).isFalse();
            long w = (turned ? b.along() : b.across()).units();
            long h = (turned ? b.across() : b.along()).units();
            rects.add(new Rect(s.x().units(), s.y().units(), s.x().units() + w, s.y().units() + h));
        }
        assertThat(missing.values()).as("blanks missing or cut twice").allMatch(n -> n == 0);
        for (Rect r : rects) {
            assertThat(r.x0 >= 0 && r.y0 >= 0 && r.x1 <= layout.width().units() && r.y1 <= layout.length().units())
                    .as("inside the cloth: " + r).isTrue();
        }
        assertThat(canBeCut(rects)).as("parted by edge-to-edge cuts").isTrue();
    }

    /** Parting by a free line also proves that nothing overlaps across it. */
    private static boolean canBeCut(List<Rect> rects) {
        if (rects.size() < 2) {
            return true;
        }
        for (int axis = 0; axis < 2; axis++) {
            ToLongFunction<Rect> from = axis == 0 ? Rect::x0 : Rect::y0;
            ToLongFunction<Rect> to = axis == 0 ? Rect::x1 : Rect::y1;
            List<Rect> sorted = new ArrayList<>(rects);
            sorted.sort(Comparator.comparingLong(from));
            List<List<Rect>> parts = new ArrayList<>();
            long reach = Long.MIN_VALUE;
            for (Rect r : sorted) {
                if (from.applyAsLong(r) >= reach) {
                    parts.add(new ArrayList<>());
                }
                parts.get(parts.size() - 1).add(r);
                reach = Math.max(reach, to.applyAsLong(r));
            }
            if (parts.size() > 1) {
                return parts.stream().allMatch(LegalCut::canBeCut);
            }
        }
        return false;
    }
}
