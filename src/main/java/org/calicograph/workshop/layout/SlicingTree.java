package org.calicograph.workshop.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.calicograph.measure.Length;

/**
 * A binary tree of panels, annealed: swaps and regrafts of subtrees are kept if they cost less, or by
 * chance while it is hot. The cost is the least length at the cloth's width, with a price on width
 * beyond it, and a share of the waste within every subtree to lead the way between equal lengths.
 */
final class SlicingTree {

    private static final double SLACK = 1.08;
    private static final double WASTE_SHARE = 0.4;
    /** No subtree of a good layout wastes more than this share of the whole. */
    private static final double LIMIT = 0.12;
    private static final double HOT = 0.03;
    private static final double COLD = 0.003;

    private final List<Lot> lots;
    private final long unit;
    private final int capacity;
    private final int widest;
    private final double limit;
    private final int leaves;
    private final int[] left;
    private final int[] right;
    private final int[] parent;
    private final Curve[] curves;
    private final Curve.Bench bench = new Curve.Bench();
    private final SplittableRandom random;
    private final int[] touched;
    private final Curve[] kept;
    private int touches;
    private int root;
    private double waste;
    private double widthPrice;

    /** @param lots one or more */
    SlicingTree(Length width, List<Lot> lots, long seed) {
        this.lots = lots;
        this.leaves = lots.size();
        this.unit = unit(width, lots);
        this.capacity = (int) (width.units() / unit);
        this.widest = (int) (capacity * SLACK) + 1;
        this.limit = LIMIT * lots.stream().mapToDouble(l -> l.curve(unit, capacity).area()).sum();
        this.random = new SplittableRandom(seed);
        int nodes = 2 * leaves - 1;
        left = new int[nodes];
        right = new int[nodes];
        parent = new int[nodes];
        curves = new Curve[nodes];
        touched = new int[4 * nodes + 4];
        kept = new Curve[4 * nodes + 4];
        plant();
    }

    /** The common measure of all sides, or a fine enough grid onto which sides are rounded up. */
    private static long unit(Length width, List<Lot> lots) {
        long unit = 0;
        for (Lot l : lots) {
            unit = LengthBound.gcd(LengthBound.gcd(unit, l.blank().across().units()), l.blank().along().units());
        }
        return Math.max(unit, width.units() >> 14);
    }

    private void plant() {
        List<Integer> loose = new ArrayList<>();
        for (int i = 0; i < leaves; i++) {
            curves[i] = lots.get(i).curve(unit, capacity);
            left[i] = -1;
            loose.add(i);
        }
        int node = leaves;
        while (loose.size() > 1) {
            int a = loose.remove(random.nextInt(loose.size()));
            int b = loose.remove(random.nextInt(loose.size()));
            left[node] = a;
            right[node] = b;
            parent[a] = node;
            parent[b] = node;
            curves[node] = bench.combine(curves[a], curves[b], widest, limit);
            waste += curves[node].waste();
            loose.add(node++);
        }
        root = loose.get(0);
        parent[root] = -1;
    }

    /** The shortest panel found; none if no tree came within the cloth's width. */
    Optional<Panel> anneal(long moves, Length goal) {
        if (leaves == 1) {
            return Optional.of(built(root, capacity, curves[root].lengthWithin(capacity)));
        }
        widthPrice = curves[root].area() / ((double) capacity * capacity);
        double expected = curves[root].area() / capacity;
        double now = cost();
        int best = curves[root].lengthWithin(capacity);
        int[][] bestTree = {left.clone(), right.clone()};
        int bestRoot = root;
        int target = (int) Math.floor((double) goal.units() / unit + 1e-9);
        int nodes = 2 * leaves - 1;
        for (long m = 0; m < moves && best > target; m++) {
            double heat = expected * HOT * Math.pow(COLD / HOT, (double) m / moves);
            touches = 0;
            double wasteBefore = waste;
            boolean swap = random.nextBoolean();
            int v = random.nextInt(nodes);
            int u = random.nextInt(nodes);
            int oldSibling = -1;
            if (v == root || swap && u == root || u == v || above(v, u)) {
                continue;
            }
            if (swap) {
                if (parent[u] == parent[v] || above(u, v)) {
                    continue;
                }
                swap(v, u);
                refresh(parent[v]);
                refresh(parent[u]);
            } else {
                oldSibling = sibling(v);
                if (u == parent[v] || u == oldSibling) {
                    continue;
                }
                int grand = parent[parent[v]];
                graft(v, u);
                if (grand != -1) {
                    refresh(grand);
                }
                refresh(parent[v]);
            }
            double next = cost();
            if (next <= now || random.nextDouble() < Math.exp((now - next) / heat)) {
                now = next;
                int length = curves[root].lengthWithin(capacity);
                if (length < best) {
                    best = length;
                    bestTree = new int[][] {left.clone(), right.clone()};
                    bestRoot = root;
                }
            } else {
                waste = wasteBefore;
                for (int i = touches - 1; i >= 0; i--) {
                    curves[touched[i]] = kept[i];
                }
                if (swap) {
                    swap(v, u);
                } else {
                    graft(v, oldSibling);
                }
            }
        }
        restore(bestTree, bestRoot);
        return best == Integer.MAX_VALUE ? Optional.empty() : Optional.of(built(root, capacity, best));
    }

    private double cost() {
        Curve r = curves[root];
        double best = 1e15;
        for (int i = 0; i < r.size(); i++) {
            best = Math.min(best, r.lengths()[i] + Math.max(0, r.widths()[i] - capacity) * widthPrice);
        }
        return best + WASTE_SHARE * waste / capacity;
    }

    private void restore(int[][] tree, int at) {
        System.arraycopy(tree[0], 0, left, 0, left.length);
        System.arraycopy(tree[1], 0, right, 0, right.length);
        root = at;
        recompute(root);
    }

    private void recompute(int node) {
        if (left[node] >= 0) {
            recompute(left[node]);
            recompute(right[node]);
            curves[node] = bench.combine(curves[left[node]], curves[right[node]], widest, limit);
        }
    }

    private void refresh(int from) {
        boolean first = true;
        for (int v = from; v != -1; v = parent[v]) {
            Curve old = curves[v];
            Curve next = bench.combine(curves[left[v]], curves[right[v]], widest, limit);
            touched[touches] = v;
            kept[touches++] = old;
            curves[v] = next;
            waste += next.waste() - old.waste();
            if (!first && next.same(old)) {
                return;
            }
            first = false;
        }
    }

    private boolean above(int a, int b) {
        for (int v = b; v != -1; v = parent[v]) {
            if (v == a) {
                return true;
            }
        }
        return false;
    }

    private int sibling(int v) {
        int p = parent[v];
        return left[p] == v ? right[p] : left[p];
    }

    private void replace(int at, int from, int to) {
        if (at == -1) {
            root = to;
        } else if (left[at] == from) {
            left[at] = to;
        } else {
            right[at] = to;
        }
        parent[to] = at;
    }

    private void swap(int a, int b) {
        int pa = parent[a];
        int pb = parent[b];
        replace(pa, a, b);
        replace(pb, b, a);
    }

    /** Takes a subtree out, its sibling moving up, and puts it beside another. */
    private void graft(int v, int beside) {
        int p = parent[v];
        replace(parent[p], p, sibling(v));
        replace(parent[beside], beside, p);
        left[p] = v;
        right[p] = beside;
        parent[beside] = p;
        parent[v] = p;
    }

    /** The panel of a subtree within a width and a length of the grid. */
    private Panel built(int node, int across, int along) {
        if (left[node] < 0) {
            return lots.get(node).laid(across, along, unit);
        }
        Curve a = curves[left[node]];
        Curve b = curves[right[node]];
        for (int i = 0; i < a.size(); i++) {
            int w = a.widths()[i];
            int h = a.lengths()[i];
            if (w > across || h > along) {
                continue;
            }
            if (b.lengthWithin(across) <= along - h) {
                return Panel.stacked(List.of(built(left[node], w, h), built(right[node], across, along - h)));
            }
            if (b.lengthWithin(across - w) <= along) {
                return Panel.abreast(List.of(built(left[node], w, h), built(right[node], across - w, along)));
            }
        }
        throw new IllegalStateException("no panel of " + across + " by " + along + " grid units holds the subtree " + node);
    }

}
