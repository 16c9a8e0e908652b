package org.calicograph.costing;

import java.util.Map;
import java.util.TreeMap;

/**
 * What things cost.
 *
 * @param hour     an hour's work; 0 if it isn't counted
 * @param cloth    a yard, or a metre under metric rules, of any fabric that has no price of its own
 * @param byFabric the same by the fabric's name; 'backing' is one
 * @param batting  a square yard, or a square metre
 * @param thread   a spool
 * @param spool    its length in yards, or in metres
 * @param currency written before every sum
 */
public record Prices(double hour, double cloth, Map<String, Double> byFabric, double batting, double thread, double spool, String currency) {

    /** Rounded sums to begin with: work not counted; cloth 12 a yard, batting 8 a square yard, thread 5 for 500 yards. */
    public static final Prices USUAL = new Prices(0, 12, Map.of(), 8, 5, 500, "£");

    /** @throws IllegalArgumentException if a price is below 0, or a spool has no length */
    public Prices {
        byFabric = Map.copyOf(byFabric);
        Rates.above("price of an hour", hour, false);
        Rates.above("price of cloth", cloth, false);
        byFabric.forEach((name, price) -> Rates.above("price of " + name, price, false));
        Rates.above("price of batting", batting, false);
        Rates.above("price of thread", thread, false);
        Rates.above("length of a spool", spool, true);
    }

    Prices hour(double price) {
        return new Prices(price, cloth, byFabric, batting, thread, spool, currency);
    }

    Prices cloth(double price) {
        return new Prices(hour, price, byFabric, batting, thread, spool, currency);
    }

    Prices of(String fabric, double price) {
        Map<String, Double> all = new TreeMap<>(byFabric);
        all.put(fabric, price);
        return new Prices(hour, cloth, all, batting, thread, spool, currency);
    }

    Prices currency(String sign) {
        return new Prices(hour, cloth, byFabric, batting, thread, spool, sign);
    }

    double priceOf(String fabric) {
        return byFabric.getOrDefault(fabric, cloth);
    }
}
