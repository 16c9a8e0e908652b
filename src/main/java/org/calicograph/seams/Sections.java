package org.calicograph.seams;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A unit split into what one foundation each can do: patches sewn on one after another, each by one
 * straight seam along the edge of what is there.
 */
public final class Sections {

    private Sections() { }

    /**
     * Patches in the order of sewing onto one foundation.
     *
     * @param patches numbered from 1 in this order
     */
    public record Section(List<Unit.Single> patches) {
        public Section {
            patches = List.copyOf(patches);
        }
    }

    /**
     * The sections, those that are sewn together first standing first: the fewest for this order of sewing. A section
     * that a patch is to be sewn to is whole by then, so that the patch's seam runs along its whole edge.
     *
     * @throws IllegalArgumentException if a seam is curved, set in or partial: no foundation does that
     */
    public static List<Section> of(Unit unit) {
        for (Unit.Sewn s : unit.steps()) {
            if (s.kind() != SeamKind.STRAIGHT) {
                throw new IllegalArgumentException("a foundation can't hold a " + s.kind()
                        + "; piece this block without one, or redraft it with straight seams from edge to edge");
            }
        }
        return plan(unit);
    }

    /** One section where one foundation holds the whole unit, or the fewest that its parts, each in order, go into. */
    private static List<Section> plan(Unit unit) {
        if (unit instanceof Unit.Single single) {
            return List.of(new Section(List.of(single)));
        }
        List<Unit> parts = ((Unit.Sewn) unit).parts();
        List<List<Section>> own = parts.stream().map(Sections::plan).toList();
        int n = parts.size();
        int[] fewest = new int[n + 1];
        int[] from = new int[n + 1];
        for (int end = 1; end <= n; end++) {
            fewest[end] = Integer.MAX_VALUE;
            for (int begin = 0; begin < end; begin++) {
                int count = fewest[begin] + (isOne(parts, own, begin, end) ? 1 : begin == end - 1 ? own.get(begin).size() : n * unit.singles().size());
                if (count < fewest[end]) {
                    fewest[end] = count;
                    from[end] = begin;
                }
            }
        }
        List<Section> all = new ArrayList<>();
        for (int end = n; end > 0; end = from[end]) {
            all.addAll(0, isOne(parts, own, from[end], end) ? List.of(run(parts, own, from[end], end)) : own.get(from[end]));
        }
        return List.copyOf(all);
    }

    /** True if one foundation holds these neighbours: all are patches but one at most, and that one is whole on one foundation. */
    private static boolean isOne(List<Unit> parts, List<List<Section>> own, int begin, int end) {
        List<Integer> sewn = IntStream.range(begin, end).filter(i -> parts.get(i) instanceof Unit.Sewn).boxed().toList();
        return sewn.size() <= 1 && sewn.stream().allMatch(i -> own.get(i).size() == 1);
    }

    /** From the part that is sewn already, or the largest patch as is usual for geese, outwards on either side. */
    private static Section run(List<Unit> parts, List<List<Section>> own, int begin, int end) {
        int core = IntStream.range(begin, end).filter(i -> parts.get(i) instanceof Unit.Sewn).findFirst()
                .orElseGet(() -> IntStream.range(begin, end).boxed().max(Comparator.comparingDouble((Integer i) -> Math.rint(area(parts.get(i)) * 1e6))
                        .thenComparing(Comparator.reverseOrder())).orElseThrow());
        List<Unit.Single> run = new ArrayList<>(own.get(core).get(0).patches());
        for (int i = core + 1; i < end; i++) {
            run.addAll(parts.get(i).singles());
        }
        for (int i = core - 1; i >= begin; i--) {
            run.addAll(parts.get(i).singles());
        }
        return new Section(run);
    }

    private static double area(Unit part) {
        return part.singles().get(0).shape().area().squareInches();
    }
}
