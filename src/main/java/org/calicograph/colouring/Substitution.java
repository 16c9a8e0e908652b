package org.calicograph.colouring;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * A quilt that can be cut from what is in hand.
 *
 * @param asked   the quilt as it was meant and what there is
 * @param fabrics every fabric that there was to cut from
 * @param after   the quilt with its substitutes
 * @param used    cloth taken of each fabric in hand, in square inches, by name
 * @param toBuy   cloth that must be bought all the same, in square inches, by name; empty if all fits
 */
public record Substitution(RunningOut asked, List<Fabric> fabrics, Patchwork after, Map<String, Double> used,
        Map<String, Double> toBuy, Change change) implements Drawable {

    /** Cloth is bought by the eighth of a yard (common practice). */
    public static final Length STEP = Length.inches(9, 2);

    /**
     * How much the picture changes.
     *
     * @param seen  finished area times CIEDE2000, summed over the patches in other fabrics, in square inches
     * @param total the same with what must be bought counted at 1000 a square inch; this is made least
     * @param bound no choice has a smaller total
     * @param exact true if this is proved to be the least
     */
    public record Change(double seen, double total, double bound, boolean exact) {

        /** How far the total may be above the least, as a part of the total. */
        public double gap() {
            return exact || total == 0 ? 0 : (total - bound) / total;
        }

        @Override
        public String toString() {
            return exact ? "the least change possible"
                    : String.format(Locale.ROOT, "at most %.1f %% above the least change possible (%.0f; the bound is %.0f)",
                            Math.ceil(1000 * gap()) / 10, total, bound);
        }
    }

    public Substitution {
        fabrics = List.copyOf(fabrics);
        used = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(used));
        toBuy = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(toBuy));
    }

    private Fabric fabric(String name) {
        return fabrics.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
    }

    /** The length off the bolt to ask for, up to the next eighth of a yard. */
    public Length lengthOf(String name, double squareInches) {
        return Length.inches(squareInches / fabric(name).usableWidth().inInches()).roundedUpTo(STEP);
    }

    /** What was replaced by what: patches and finished area. */
    public Table changes() {
        Map<String, double[]> sums = new java.util.TreeMap<>();
        Map<String, Patch> before = new java.util.HashMap<>();
        asked.work().patches().forEach(p -> before.put(p.id(), p));
        for (Patch p : after.patches()) {
            String own = before.get(p.id()).fabric().name();
            if (!own.equals(p.fabric().name())) {
                double[] s = sums.computeIfAbsent(own + "\n" + p.fabric().name(), k -> new double[2]);
                s[0]++;
                s[1] += p.shape().area().squareInches();
            }
        }
        Table table = Table.of("Substitutes", "fabric", "substitute", "patches", "finished area (sq in)", "difference (CIEDE2000)");
        for (Map.Entry<String, double[]> e : sums.entrySet()) {
            String[] names = e.getKey().split("\n");
            table = table.row(names[0], names[1], (int) e.getValue()[0], tenths(e.getValue()[1]),
                    tenths(fabric(names[0]).colour().difference(fabric(names[1]).colour())));
        }
        return table;
    }

    /** Each fabric that is used or was meant to be: what the quilt was meant to take, what is in hand, what is taken now, and what to buy to keep it as meant. */
    public Table cloth() {
        Map<String, Double> meant = new LinkedHashMap<>();
        asked.work().patches().forEach(p -> meant.merge(p.fabric().name(), asked.allowance().need(p.shape()).squareInches(), Double::sum));
        Table table = Table.of("Cloth, with " + asked.allowance(), "fabric", "meant (sq in)", "in hand (sq in)", "taken (sq in)",
                "must be bought", "to keep it as meant, buy", "cost");
        for (Fabric f : fabrics) {
            double wanted = meant.getOrDefault(f.name(), 0.0);
            if (wanted == 0 && !used.containsKey(f.name())) {
                continue;
            }
            double hand = f.areaInHand().map(Area::squareInches).orElse(Double.POSITIVE_INFINITY);
            double lacking = Math.max(0, wanted - hand);
            Length length = lacking > 1e-9 ? lengthOf(f.name(), lacking) : Length.ZERO;
            String cost = length.isZero() ? "" : f.price().map(p -> p.of(length) + " " + p.currency()).orElse("");
            table = table.row(f.name(), tenths(wanted), Double.isInfinite(hand) ? "as needed" : tenths(hand),
                    tenths(used.getOrDefault(f.name(), 0.0)),
                    toBuy.containsKey(f.name()) ? lengthOf(f.name(), toBuy.get(f.name())) : "", length.isZero() ? "" : length, cost);
        }
        return table;
    }

    private static BigDecimal tenths(double value) {
        return BigDecimal.valueOf(value).setScale(1, java.math.RoundingMode.HALF_UP);
    }

    /** Before and after, what was replaced, and the cloth. */
    @Override
    public Exhibit show() {
        double width = 4.5;
        Picture picture = TopPicture.line("as meant", 0, 0, 0.16).above(TopPicture.of(asked.work(), width), 0.08)
                .beside(TopPicture.line("from what is in hand", 0, 0, 0.16).above(TopPicture.of(after, width), 0.08), 0.4);
        String caption = toBuy.isEmpty() ? "The whole quilt can be cut: " + change
                : "Not all can be cut; some must be bought: " + change;
        return Exhibit.several(Exhibit.of(picture, caption), Exhibit.of(changes()), Exhibit.of(cloth()));
    }
}
