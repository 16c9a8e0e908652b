package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Stash;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * What to do when a fabric runs out: which patches to cut from another, so that the whole quilt can be
 * cut from what is in hand and the picture changes least.
 *
 * <p>A patch changes the picture by its finished area times the difference (CIEDE2000) between its own
 * fabric and the one it is cut from; the sum is made least. Small cases are solved exactly, larger ones
 * within a bound that the {@link Substitution} states. Only where no cloth is left at all is a patch put
 * down to be bought. Of patches alike, those that come last along a gradient are the ones replaced.
 *
 * @param work      the quilt as it was meant
 * @param stash     what there is to cut from; a fabric of the quilt that it also names is taken from here
 * @param allowance what cutting takes beyond the finished area
 * @param order     patches at 1 are replaced before patches at 0
 * @param blend     how far kept and replaced patches are mixed where they meet, from 0 to 1 of the gradient
 */
public record RunningOut(Patchwork work, Stash stash, CuttingAllowance allowance, Gradient order, double blend, long seed) {

    /** Dearer than any difference of colour: buying is what's left when nothing else fits. */
    private static final double BUYING = 1000;

    public RunningOut {
        if (!(blend >= 0 && blend <= 1)) {
            throw new IllegalArgumentException("kept and replaced patches can't blend over " + blend + " of the quilt; use 0 to 1");
        }
    }

    /** With the usual allowance, replaced from the outside in, with a clean border. */
    public static RunningOut of(Patchwork work, Stash stash) {
        return new RunningOut(work, stash, CuttingAllowance.USUAL, Gradient.outward(work), 0, 1);
    }

    /** The same question with another allowance for cutting. */
    public RunningOut allowing(CuttingAllowance other) {
        return new RunningOut(work, stash, other, order, blend, seed);
    }

    /** The same question with the way in which cloths should run out. */
    public RunningOut towards(Gradient other) {
        return new RunningOut(work, stash, allowance, other, blend, seed);
    }

    /** The same question with kept and replaced patches mixed where they meet, over 0 to 1 of the gradient, by chance from a seed. */
    public RunningOut blended(double over, long chance) {
        return new RunningOut(work, stash, allowance, order, over, chance);
    }

    /** Patches that are alike to the cutter: one fabric, one need, one finished area. */
    private record Kind(String fabric, long need, long area) implements Comparable<Kind> {
        private static final Comparator<Kind> ORDER = Comparator.comparing(Kind::fabric).thenComparingLong(Kind::need)
                .thenComparingLong(Kind::area);

        @Override
        public int compareTo(Kind other) {
            return ORDER.compare(this, other);
        }
    }

    /** The answer: each patch in a cloth of which there is enough. */
    public Substitution solve() {
        Map<String, Fabric> cloths = cloths();
        List<Fabric> fabrics = List.copyOf(cloths.values());
        Map<Kind, List<Patch>> kinds = kinds();
        List<List<Patch>> groups = List.copyOf(kinds.values());
        Assignment problem = problem(cloths, groups);

        LeastChange found = LeastChange.of(problem);
        return placed(fabrics, groups, found);
    }

    /** Every fabric there is to cut from, by name: the stash first, then those that only the quilt names. */
    private Map<String, Fabric> cloths() {
        Map<String, Fabric> cloths = new LinkedHashMap<>();
        stash.fabrics().forEach(f -> cloths.put(f.name(), f));
        work.patches().forEach(p -> cloths.putIfAbsent(p.fabric().name(), p.fabric()));
        return cloths;
    }

    private Map<Kind, List<Patch>> kinds() {
        Map<Kind, List<Patch>> kinds = new TreeMap<>();
        for (Patch p : work.patches()) {
            long need = Math.round(allowance.need(p.shape()).squareInches() * 1e6);
            long area = Math.round(p.shape().area().squareInches() * 1e6);
            kinds.computeIfAbsent(new Kind(p.fabric().name(), need, area), k -> new ArrayList<>()).add(p);
        }
        return kinds;
    }

    /** The cloths, and after them one for each: more of the same, to be bought. */
    private Assignment problem(Map<String, Fabric> cloths, List<List<Patch>> groups) {
        List<Fabric> fabrics = List.copyOf(cloths.values());
        int m = fabrics.size();
        double[] capacity = new double[m + 1];
        for (int c = 0; c < m; c++) {
            capacity[c] = fabrics.get(c).areaInHand().map(a -> a.squareInches()).orElse(Double.POSITIVE_INFINITY);
        }
        capacity[m] = Double.POSITIVE_INFINITY;
        int n = groups.size();
        int[] count = new int[n];
        double[] need = new double[n];
        double[][] cost = new double[n][m + 1];
        Map<String, Double> differences = new HashMap<>();
        for (int k = 0; k < n; k++) {
            Patch first = groups.get(k).get(0);
            Fabric own = cloths.get(first.fabric().name());
            double area = first.shape().area().squareInches();
            count[k] = groups.get(k).size();
            need[k] = largestNeed(groups.get(k));
            for (int c = 0; c < m; c++) {
                Fabric other = fabrics.get(c);
                cost[k][c] = area * differences.computeIfAbsent(own.name() + "\n" + other.name(),
                        key -> own.name().equals(other.name()) ? 0 : own.colour().difference(other.colour()));
            }
            cost[k][m] = area * BUYING;
        }
        return new Assignment(count, need, cost, capacity);
    }

    /** Alike to a millionth of a square inch; the largest makes sure that all fit. */
    private double largestNeed(List<Patch> group) {
        return group.stream().mapToDouble(p -> allowance.need(p.shape()).squareInches()).max().orElseThrow();
    }

    private Substitution placed(List<Fabric> fabrics, List<List<Patch>> groups, LeastChange found) {
        int[][] solution = found.solution();
        int m = fabrics.size();
        Map<String, Fabric> chosen = new HashMap<>();
        Map<String, Double> toBuy = new LinkedHashMap<>();
        Map<String, Double> used = new LinkedHashMap<>();
        for (int k = 0; k < groups.size(); k++) {
            List<Patch> group = groups.get(k).stream().sorted(Comparator.comparingDouble(this::rank).thenComparing(Patch::id)).toList();
            Fabric own = fabrics.stream().filter(f -> f.name().equals(group.get(0).fabric().name())).findFirst().orElseThrow();
            List<Integer> nearestFirst = new ArrayList<>();
            for (int c = 0; c < m; c++) {
                nearestFirst.add(c);
            }
            nearestFirst.sort(Comparator.comparingDouble(c -> fabrics.get(c) == own ? -1 : own.colour().difference(fabrics.get(c).colour())));
            int next = 0;
            for (int c : nearestFirst) {
                for (int i = 0; i < solution[k][c]; i++) {
                    Patch p = group.get(next++);
                    chosen.put(p.id(), fabrics.get(c));
                    used.merge(fabrics.get(c).name(), allowance.need(p.shape()).squareInches(), Double::sum);
                }
            }
            while (next < group.size()) {
                Patch p = group.get(next++);
                chosen.put(p.id(), own);
                toBuy.merge(own.name(), allowance.need(p.shape()).squareInches(), Double::sum);
            }
        }
        double bought = 0;
        for (int k = 0; k < groups.size(); k++) {
            bought += solution[k][m] * groups.get(k).get(0).shape().area().squareInches() * BUYING;
        }
        return new Substitution(this, fabrics, work.recoloured(p -> chosen.get(p.id())), used, toBuy,
                new Substitution.Change(found.cost() - bought, found.cost(), found.bound(), found.exact()));
    }

    private double rank(Patch p) {
        return order.at(p.shape().bounds().centre()) + (blend == 0 ? 0 : (Chance.of(seed, p.id()) - 0.5) * blend);
    }
}
