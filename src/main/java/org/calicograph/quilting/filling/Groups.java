package org.calicograph.quilting.filling;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jgrapht.alg.util.UnionFind;

/** Numbered things that hang together. A group goes by the least number in it, so that what follows doesn't depend on the order of joining. */
public final class Groups {

    private final UnionFind<Integer> sets;
    private final int[] least;

    /** @param size things from 0 to one less, each apart from the others */
    public Groups(int size) {
        sets = new UnionFind<>(IntStream.range(0, size).boxed().collect(Collectors.toSet()));
        least = IntStream.range(0, size).toArray();
    }

    /** The least number of the group that a thing is in. */
    public int of(int thing) {
        return least[sets.find(thing)];
    }

    /** Joins the groups of two things; true if the two were apart. */
    public boolean join(int a, int b) {
        int x = of(a);
        int y = of(b);
        sets.union(a, b);
        least[sets.find(a)] = Math.min(x, y);
        return x != y;
    }
}
