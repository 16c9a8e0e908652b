package org.calicograph.quilting;

/** Things that hang together: a disjoint-set forest. */
final class Groups {

    private final int[] parent;

    Groups(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    int of(int i) {
        while (parent[i] != i) {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        return i;
    }

    /** True if the two were apart. */
    boolean join(int a, int b) {
        int x = of(a);
        int y = of(b);
        parent[Math.max(x, y)] = Math.min(x, y);
        return x != y;
    }
}
