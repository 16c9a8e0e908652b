package org.calicograph.cutting.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.calicograph.measure.Length;

/**
 * A binary tree of panels, annealed: swaps and regrafts of subtrees, and blanks passed from one lot to
 * another of their kind, are kept if they cost less, or by chance while it is hot. The cost is the least length at the cloth's width, with a price on width
 * beyond it, and a share of the waste within every subtree to lead the way between equal lengths.
 */
final class SlicingTree {

    private static final double SLACK = 1.08;
    private static final double WASTE_SHARE = 0.4;
    /** No subtree of a good layout wastes more than this share of the whole. */
    private static final double LIMIT = 0.12;
    private static final double HOT = 0.03;
    private static final double COLD = 0.003;

    private final List<Kind> kinds;
    /** For each leaf its kind, and how many of it. */
    private final int[] kindOf;
    private final int[] sizes;
    /** For each kind its leaves. */
    private final int[][] lots;
    private final List<Map<Integer, Curve>> curvesOf = new ArrayList<>();
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

    /** @param kinds one or more */
    SlicingTree(Length width, List<Kind> kinds, long seed) {
        this.kinds = kinds;
        this.unit = unit(width, kinds);
        this.capacity = (int) (width.units() / unit);
        this.widest = (int) (capacity * SLACK) + 1;
        this.random = new SplittableRandom(seed);
        this.lots = new int[kinds.size()][];
        List<int[]> leaf = new ArrayList<>();
        for (int k = 0; k < kinds.size(); k++) {
            curvesOf.add(new HashMap<>());
            List<Integer> halves = kinds.get(k).halves();
            lots[k] = IntStream.range(leaf.size(), leaf.size() + halves.size()).toArray();
            for (int n : halves) {
                leaf.add(new int[] {k, n});
            }
        }
        this.leaves = leaf.size();
        kindOf = leaf.stream().mapToInt(l -> l[0]).toArray();
        sizes = leaf.stream().mapToInt(l -> l[1]).toArray();
        this.limit = LIMIT * IntStream.range(0, leaves).mapToDouble(l -> curve(l).area()).sum();
        int nodes = 2 * leaves - 1;
        left = new int[nodes];
        right = new int[nodes];
        parent = new int[nodes];
        curves = new Curve[nodes];
        touched = new int[4 * nodes + 4];
        kept = new Curve[4 * nodes + 4];
        plant();
    }

    /** How many lots the kinds come in. */
    static int lots(List<Kind> kinds) {
        return kinds.stream().mapToInt(k -> k.halves().size()).sum();
    }

    private Curve curve(int leaf) {
        Kind kind = kinds.get(kindOf[leaf]);
        return curvesOf.get(kindOf[leaf]).computeIfAbsent(sizes[leaf], n -> kind.curve(n, unit, capacity));
    }

    /** The common measure of all sides, or a fine enough grid onto which sides are rounded up. */
    private static long unit(Length width, List<Kind> kinds) {
        long unit = 0;
        for (Kind k : kinds) {
            unit = LengthBound.gcd(LengthBound.gcd(unit, k.blank().across().units()), k.blank().along().units());
        }
        return Math.max(unit, width.units() >> 14);
    }

    private void plant() {
        List<Integer> loose = new ArrayList<>();
        for (int i = 0; i < leaves; i++) {
            curves[i] = curve(i);
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

    /**
     * The shortest panel found; none if no tree came within the cloth's width.
     *
     * @param work the most points of curves to put together, however many moves that makes
     */
    Optional<Panel> anneal(long moves, long work, Length goal) {
        widthPrice = curves[root].area() / ((double) capacity * capacity);
        double expected = curves[root].area() / capacity;
        double now = cost();
        int best = curves[root].lengthWithin(capacity);
        Saved saved = new Saved(left.clone(), right.clone(), sizes.clone(), root);
        int target = (int) Math.floor((double) goal.units() / unit + 1e-9);
        double done = 0;
        for (long m = 0; done < 1 && best > target && leaves > 1; m++) {
            double heat = expected * HOT * Math.pow(COLD / HOT, done);
            done = Math.max((m + 1.0) / moves, (double) bench.work() / work);
            touches = 0;
            double wasteBefore = waste;
            Optional<Runnable> undo = leaves > kinds.size() && random.nextInt(3) == 0 ? passed() : moved();
            if (undo.isEmpty()) {
                continue;
            }
            double next = cost();
            if (next <= now || random.nextDouble() < Math.exp((now - next) / heat)) {
                now = next;
                int length = curves[root].lengthWithin(capacity);
                if (length < best) {
                    best = length;
                    saved = new Saved(left.clone(), right.clone(), sizes.clone(), root);
                }
            } else {
                waste = wasteBefore;
                for (int i = touches - 1; i >= 0; i--) {
                    curves[touched[i]] = kept[i];
                }
                undo.get().run();
            }
        }
        if (best == Integer.MAX_VALUE) {
            return Optional.empty();
        }
        restore(saved);
        return built(root, capacity, best);
    }

    private record Saved(int[] left, int[] right, int[] sizes, int root) { }

    /** Passes some blanks from one lot to another of their kind; gives what undoes it, or nothing if there is none to pass. */
    private Optional<Runnable> passed() {
        int from = random.nextInt(leaves);
        int[] same = lots[kindOf[from]];
        int to = same[random.nextInt(same.length)];
        if (to == from || sizes[from] == 0) {
            return Optional.empty();
        }
        int n = 1 + random.nextInt(random.nextBoolean() ? Math.min(3, sizes[from]) : sizes[from]);
        pass(from, to, n);
        for (int leaf : new int[] {from, to}) {
            note(leaf, curve(leaf));
            refresh(parent[leaf]);
        }
        return Optional.of(() -> pass(to, from, n));
    }

    private void pass(int from, int to, int n) {
        sizes[from] -= n;
        sizes[to] += n;
    }

    /** Swaps two subtrees, or grafts one beside another; gives what undoes it, or nothing if they are in each other's way. */
    private Optional<Runnable> moved() {
        boolean swap = random.nextBoolean();
        int v = random.nextInt(curves.length);
        int u = random.nextInt(curves.length);
        if (v == root || swap && u == root || u == v || above(v, u)) {
            return Optional.empty();
        }
        if (swap) {
            if (parent[u] == parent[v] || above(u, v)) {
                return Optional.empty();
            }
            swap(v, u);
            refresh(parent[v]);
            refresh(parent[u]);
            return Optional.of(() -> swap(v, u));
        }
        int sibling = sibling(v);
        if (u == parent[v] || u == sibling) {
            return Optional.empty();
        }
        int grand = parent[parent[v]];
        graft(v, u);
        if (grand != -1) {
            refresh(grand);
        }
        refresh(parent[v]);
        return Optional.of(() -> graft(v, sibling));
    }

    private double cost() {
        Curve r = curves[root];
        double best = 1e15;
        for (int i = 0; i < r.size(); i++) {
            best = Math.min(best, r.lengths()[i] + Math.max(0, r.widths()[i] - capacity) * widthPrice);
        }
        return best + WASTE_SHARE * waste / capacity;
    }

    private void restore(Saved saved) {
        System.arraycopy(saved.left(), 0, left, 0, left.length);
        System.arraycopy(saved.right(), 0, right, 0, right.length);
        System.arraycopy(saved.sizes(), 0, sizes, 0, sizes.length);
        root = saved.root();
        recompute(root);
    }

    private void recompute(int node) {
        if (left[node] < 0) {
            curves[node] = curve(node);
        } else {
            recompute(left[node]);
            recompute(right[node]);
            curves[node] = bench.combine(curves[left[node]], curves[right[node]], widest, limit);
        }
    }

    private void note(int node, Curve next) {
        touched[touches] = node;
        kept[touches++] = curves[node];
        curves[node] = next;
    }

    private void refresh(int from) {
        boolean first = true;
        for (int v = from; v != -1; v = parent[v]) {
            Curve old = curves[v];
            Curve next = bench.combine(curves[left[v]], curves[right[v]], widest, limit);
            note(v, next);
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

    /** The panel of a subtree within a width and a length of the grid; none if its lots are empty. */
    private Optional<Panel> built(int node, int across, int along) {
        if (left[node] < 0) {
            return sizes[node] == 0 ? Optional.empty() : Optional.of(kinds.get(kindOf[node]).laid(blanks(node), across, along, unit));
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
                return joined(built(left[node], w, h), built(right[node], across, along - h), Panel::stacked);
            }
            if (b.lengthWithin(across - w) <= along) {
                return joined(built(left[node], w, h), built(right[node], across - w, along), Panel::abreast);
            }
        }
        throw new IllegalStateException("no panel of " + across + " by " + along + " grid units holds the subtree " + node);
    }

    private static Optional<Panel> joined(Optional<Panel> a, Optional<Panel> b, Function<List<Panel>, Panel> how) {
        List<Panel> both = Stream.of(a, b).flatMap(Optional::stream).toList();
        return both.isEmpty() ? Optional.empty() : Optional.of(how.apply(both));
    }

    /** The blanks of a lot: lots of a kind take them in turn. */
    private List<Blank> blanks(int leaf) {
        int from = 0;
        for (int lot : lots[kindOf[leaf]]) {
            if (lot < leaf) {
                from += sizes[lot];
            }
        }
        return kinds.get(kindOf[leaf]).blanks().subList(from, from + sizes[leaf]);
    }
}
