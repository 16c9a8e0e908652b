package org.calicograph.stitching.route;

import java.util.Arrays;
import java.util.List;

/**
 * Route inspection (the Chinese postman): how often to go over each edge of a {@link Net} so that every
 * required edge is covered and the length, with a price for each start, is least.
 *
 * <p>Where the required edges of a part hang together the cost is the least there is ({@link Retracing}). Where they
 * hang together only through edges that may be travelled, {@link Linking} searches; on small nets it ends
 * with the least, else {@link #bound} says how much less there could be.
 *
 * @param times    for each edge, how often the route goes over it; at least 1 where it is required
 * @param length   of the whole route
 * @param bound    no route costs less than this length with as many starts as this one
 * @param exact    true if the cost is known to be the least
 * @param matching the share of the time that the matching took, from 0 to 1
 */
public record Postman(List<Integer> times, double length, double bound, boolean exact, double matching) {

    /** Back to where it began, or ending wherever is best. */
    public enum Ends { CLOSED, OPEN }

    /** The fewest starts, and with those the least length. */
    public static Postman of(Net net, Ends ends) {
        return of(net, ends, Double.POSITIVE_INFINITY);
    }

    /** @param start what a start costs, as a length; infinite for the fewest starts */
    public static Postman of(Net net, Ends ends, double start) {
        if (!(start >= 0)) {
            throw new IllegalArgumentException("a start can't be worth a length of " + start + "; give it 0 or more");
        }
        long begun = Cpu.nanos();
        int[] times = new int[net.edges().size()];
        int[] all = new int[times.length];
        Arrays.fill(all, 1);
        double length = 0;
        double spare = 0;
        long matching = 0;
        for (Net.Share share : net.shares(all)) {
            // No retracing is worth more than going over everything twice more.
            double most = 1 + 2 * share.net().edges().stream().mapToDouble(Net.Edge::length).sum();
            Linking.Found found = new Linking(share.net(), ends == Ends.OPEN, Math.min(start, most)).least();
            for (int i = 0; i < found.times().length; i++) {
                times[share.edges().get(i)] = found.times()[i];
                length += found.times()[i] * share.net().edges().get(i).length();
            }
            spare += found.cost() - found.bound();
            matching += found.matchingNanos();
        }
        double share = (double) matching / Math.max(1, Cpu.nanos() - begun);
        return new Postman(Arrays.stream(times).boxed().toList(), length, Math.max(length - spare, Math.min(length, net.requiredLength())),
                spare < 1e-6, Math.min(1, share));
    }
}
