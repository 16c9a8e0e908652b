package org.calicograph.stitching.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.calicograph.quilting.filling.Groups;

/**
 * Which of the edges that may be travelled a route uses (the rural postman, NP-hard), by branch and bound.
 *
 * <p>A node of the search has said of some of those edges that they are used or left out. What it can cost at
 * least is told by the retracing with the rest free, joined or not; and that retracing is a route itself, perhaps
 * with more starts. An edge of a shortest spanning tree of links between what is apart (after Frederickson 1979) is
 * decided next. The search ends when nothing can be better, or when its share of work is done: then the best
 * route found stands, and the bound says how much better another could be.
 */
final class Linking {

    /** Nodes looked into at most, and at most so many by edges by odd corners. */
    private static final int MOST_NODES = 3000;
    private static final double MOST_WORK = 4e5;

    /** @param cost length and the price of the starts; {@code bound} is below the cost of every route */
    record Found(int[] times, double cost, double bound, long matchingNanos) { }

    private record Node(int[] fate, double bound, int[] times) { }

    private static final int USED = 1;
    private static final int LEFT_OUT = -1;

    private final Net net;
    private final boolean open;
    private final double start;
    private long matchingNanos;
    private int[] best;
    private double bestCost = Double.POSITIVE_INFINITY;

    /**
     * @param net   hangs together
     * @param open  if a run may end elsewhere than where it began
     * @param start the price of a start, as a length, finite
     */
    Linking(Net net, boolean open, double start) {
        this.net = net;
        this.open = open;
        this.start = start;
    }

    Found least() {
        Node root = node(new int[net.edges().size()]);
        double slack = 1e-9 * (1 + bestCost);
        if (bestCost > root.bound + slack) {
            offer(joined());
        }
        int odd = net.odd(once(root.fate)).size();
        long left = (long) Math.min(MOST_NODES, MOST_WORK / ((double) net.edges().size() * (odd + 1)));
        PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(Node::bound));
        queue.add(root);
        double bound = root.bound;
        double apart = apart();
        while (!queue.isEmpty() && queue.peek().bound < bestCost - slack && left > 0) {
            Node node = queue.poll();
            int edge = branch(node);
            for (int fate : new int[] {USED, LEFT_OUT}) {
                int[] fates = node.fate.clone();
                fates[edge] = fate;
                Node next = node(fates);
                if (next.bound < bestCost - slack) {
                    queue.add(next);
                }
                left--;
            }
            bound = queue.isEmpty() ? bestCost : queue.peek().bound;
        }
        bound = Math.max(bound, apart);
        return new Found(best, bestCost, bound >= bestCost - slack ? bestCost : bound, matchingNanos);
    }

    private int[] once(int[] fate) {
        int[] once = new int[fate.length];
        for (int i = 0; i < fate.length; i++) {
            once[i] = fate[i] == USED || net.edges().get(i).required() ? 1 : 0;
        }
        return once;
    }

    /** What is sewn and what is said to be used must be run over; the rest may be, but for what is left out. */
    private Node node(int[] fate) {
        int[] once = once(fate);
        List<Net.Edge> edges = new ArrayList<>();
        int[] free = new int[fate.length];
        for (int i = 0; i < fate.length; i++) {
            Net.Edge e = net.edges().get(i);
            edges.add(new Net.Edge(e.from(), e.to(), e.length(), once[i] > 0));
            free[i] = fate[i] == LEFT_OUT ? 0 : 1;
        }
        Net now = new Net(net.corners(), edges);
        int[] times = new int[fate.length];
        double bound = 0;
        for (Net.Share share : now.shares(free)) {
            int[] own = retraced(share.net());
            bound += length(share.net(), own) + start * starts(share.net().odd(own).size());
            for (int i = 0; i < own.length; i++) {
                times[share.edges().get(i)] = own[i];
            }
        }
        offer(times);
        return new Node(fate, bound, times);
    }

    private int[] retraced(Net part) {
        int[] once = new int[part.edges().size()];
        for (int i = 0; i < once.length; i++) {
            once[i] = part.edges().get(i).required() ? 1 : 0;
        }
        return sum(once, retracing(part, once));
    }

    private int[] retracing(Net part, int[] once) {
        Retracing retracing = new Retracing(part);
        int[] extra = retracing.least(part.odd(once), open, start);
        matchingNanos += retracing.matchingNanos();
        return extra;
    }

    /** All that a link brings nearer than a start joined at once, and what turns out needless dropped. */
    private int[] joined() {
        int[] linked = once(new int[net.edges().size()]);
        links(new int[linked.length], start).forEach(i -> linked[i]++);
        int[] times = sum(linked, retracing(net, linked));
        List<Integer> twice = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            if (times[i] - 2 >= (net.edges().get(i).required() ? 1 : 0)) {
                twice.add(i);
            }
        }
        twice.sort(Comparator.comparingDouble(i -> -net.edges().get(i).length()));
        double cost = cost(times);
        for (int i : twice) {
            // Two times less changes no corner's parity.
            times[i] -= 2;
            double less = cost(times);
            times[i] += less < cost ? 0 : 2;
            cost = Math.min(cost, less);
        }
        return times;
    }

    private void offer(int[] times) {
        double cost = cost(times);
        if (cost < bestCost) {
            bestCost = cost;
            best = times;
        }
    }

    /** An undecided edge on a shortest way between two parts that the node leaves apart; there is one wherever the node's route is not its bound. */
    private int branch(Node node) {
        List<Integer> undecided = links(node.fate, Double.POSITIVE_INFINITY).stream().filter(i -> node.fate[i] == 0).toList();
        return undecided.stream().filter(i -> node.times[i] == 0).findFirst().orElseGet(() -> undecided.get(0));
    }

    /**
     * No route costs less: each part that is sewn has a run to itself, or lends half the way to the nearest other
     * part to the links that join it; those halves lie apart.
     */
    private double apart() {
        int[] once = once(new int[net.edges().size()]);
        Groups parts = new Groups(net.corners());
        List<Integer> sources = new ArrayList<>();
        for (int i = 0; i < once.length; i++) {
            if (once[i] > 0) {
                parts.join(net.edges().get(i).from(), net.edges().get(i).to());
                sources.add(net.edges().get(i).from());
                sources.add(net.edges().get(i).to());
            }
        }
        Ways ways = new Ways(net, net.incidence(), sources);
        double[] nearest = new double[net.corners()];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (Net.Edge e : net.edges()) {
            int a = parts.of(ways.source(e.from()));
            int b = parts.of(ways.source(e.to()));
            if (a != b) {
                double way = ways.distance(e.from()) + e.length() + ways.distance(e.to());
                nearest[a] = Math.min(nearest[a], way);
                nearest[b] = Math.min(nearest[b], way);
            }
        }
        double[] halves = Arrays.stream(nearest).filter(n -> n < Double.POSITIVE_INFINITY).map(n -> Math.min(start, n / 2)).toArray();
        double joined = start + Arrays.stream(halves).sum();
        return net.requiredLength() + (halves.length == 0 ? start : Math.min(joined, start * halves.length));
    }

    /** The edges not sewn or used of a shortest spanning tree of links between what hangs together, shortest link first; none over a length. */
    private List<Integer> links(int[] fate, double most) {
        int[] once = once(fate);
        Groups parts = new Groups(net.corners());
        List<Integer> sources = new ArrayList<>();
        int[] free = new int[fate.length];
        for (int i = 0; i < fate.length; i++) {
            Net.Edge e = net.edges().get(i);
            free[i] = fate[i] == LEFT_OUT ? 0 : 1;
            if (once[i] > 0) {
                parts.join(e.from(), e.to());
                sources.add(e.from());
                sources.add(e.to());
            }
        }
        Ways ways = new Ways(net, net.incidence(free), sources);
        record Link(double length, int edge, int from, int to) { }
        List<Link> bridges = new ArrayList<>();
        for (int i = 0; i < fate.length; i++) {
            Net.Edge e = net.edges().get(i);
            double length = ways.distance(e.from()) + e.length() + ways.distance(e.to());
            if (free[i] > 0 && length <= most && ways.source(e.from()) >= 0 && ways.source(e.to()) >= 0) {
                bridges.add(new Link(length, i, ways.source(e.from()), ways.source(e.to())));
            }
        }
        bridges.sort(Comparator.comparingDouble(Link::length).thenComparingInt(Link::edge));
        List<Integer> tree = new ArrayList<>();
        for (Link link : bridges) {
            if (parts.join(link.from(), link.to())) {
                tree.add(link.edge());
                tree.addAll(ways.edgesTo(net.edges().get(link.edge()).from()));
                tree.addAll(ways.edgesTo(net.edges().get(link.edge()).to()));
            }
        }
        return tree.stream().distinct().toList();
    }

    private int starts(int odd) {
        return open ? Math.max(1, odd / 2) : 1;
    }

    private double cost(int[] times) {
        int[] odd = new int[net.corners()];
        net.odd(times).forEach(c -> odd[c]++);
        Groups groups = new Groups(net.corners());
        boolean[] touched = new boolean[net.corners()];
        for (int i = 0; i < times.length; i++) {
            if (times[i] > 0) {
                Net.Edge e = net.edges().get(i);
                groups.join(e.from(), e.to());
                touched[e.from()] = true;
                touched[e.to()] = true;
            }
        }
        int[] oddIn = new int[net.corners()];
        Arrays.fill(oddIn, -1);
        for (int c = 0; c < net.corners(); c++) {
            if (touched[c]) {
                int g = groups.of(c);
                oddIn[g] = Math.max(0, oddIn[g]) + odd[c];
            }
        }
        return length(net, times) + start * Arrays.stream(oddIn).filter(n -> n >= 0).map(this::starts).sum();
    }

    private static int[] sum(int[] a, int[] b) {
        int[] s = a.clone();
        for (int i = 0; i < s.length; i++) {
            s[i] += b[i];
        }
        return s;
    }

    private static double length(Net net, int[] times) {
        double length = 0;
        for (int i = 0; i < times.length; i++) {
            length += times[i] * net.edges().get(i).length();
        }
        return length;
    }
}
