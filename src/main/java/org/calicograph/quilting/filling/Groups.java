package org.calicograph.quilting.filling;

/** Things that hang together: a disjoint-set forest. */
public final class Groups {

    private final int[] parent;

    public Groups(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    public int of(int i) {
        while (parent[i] != i) {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        return i;
    }

    /** True if the two were apart. */
    public boolean join(int a, int b) {
        int x = of(a);
        int y = of(b);
        parent[Math.max(x, y)] = Math.min(x, y);
        return x != y;
    }
}
