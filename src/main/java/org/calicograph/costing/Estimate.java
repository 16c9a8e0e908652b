package org.calicograph.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.NearestNames;
import org.calicograph.fabric.Price;
import org.calicograph.finishing.Finishing;
import org.calicograph.measure.Length;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;
import org.calicograph.quilt.Quilt;
import org.calicograph.seams.Unit;

/**
 * Hours and money for a quilt, each with what it rests on. An estimate: the rates are the maker's own.
 *
 * @param work  cutting, sewing, pressing, quilting, binding
 * @param goods every fabric, backing, batting and thread
 */
public record Estimate(String title, Rates rates, List<Work> work, List<Goods> goods) implements Drawable {

    /** @param rate what the hours rest on, in words */
    public record Work(String what, String amount, String rate, double hours) { }

    /** @param buy how much, in words */
    public record Goods(String what, String buy, String price, double cost) { }

    public Estimate {
        work = List.copyOf(work);
        goods = List.copyOf(goods);
    }

    /** Time and money at the usual rates. */
    public static Estimate of(Quilt quilt) {
        return of(quilt, Rates.USUAL);
    }

    /** Time and money at one's own rates. */
    public static Estimate of(Quilt quilt, Rates rates) {
        return of(quilt, Cutting.of(quilt), rates);
    }

    /** With the rules of a cutting that is there already. */
    public static Estimate of(Quilt quilt, Cutting cutting, Rates asked) {
        Rates rates = currency(cutting).map(asked::currency).orElse(asked);
        int pieces = cutting.fabrics().stream().flatMap(f -> f.pieces().stream()).mapToInt(p -> p.count()).sum();
        long seams = 0;
        double sewn = 0;
        for (Stage stage : SewingPlan.of(quilt.title(), quilt.top(), cutting.rules()).stages()) {
            for (Unit.Sewn s : stage.order().steps()) {
                seams += (long) stage.count() * s.seams().size();
                sewn += stage.count() * s.seams().stream().flatMap(List::stream).mapToDouble(l -> l.length()).sum();
            }
        }
        double lines = quilt.top().outline().area().squareInches() / rates.lineSpacing();
        Finishing finishing = Finishing.of(quilt, cutting.rules());
        double binding = finishing.bindingLength().inInches();
        List<Work> work = List.of(
                new Work("Cutting", pieces + " pieces", number(rates.pace().secondsPerPiece()) + " s a piece", pieces * rates.pace().secondsPerPiece() / 3600),
                new Work("Sewing", seams + " seams, " + run(sewn, cutting), number(rates.pace().secondsPerSeam()) + " s a seam and "
                        + number(rates.pace().inchesPerMinute()) + " in a minute", seams * rates.pace().secondsPerSeam() / 3600 + sewn / rates.pace().inchesPerMinute() / 60),
                new Work("Pressing", seams + " seams", number(rates.pace().pressingPerSeam()) + " s a seam", seams * rates.pace().pressingPerSeam() / 3600),
                new Work("Quilting", run(lines, cutting) + " of line", "lines " + number(rates.lineSpacing()) + " in apart, "
                        + number(rates.pace().quiltingPerMinute()) + " in a minute", lines / rates.pace().quiltingPerMinute() / 60),
                new Work("Binding", run(binding, cutting), number(rates.pace().bindingPerYard()) + " min a yard", binding / 36 * rates.pace().bindingPerYard() / 60));
        return new Estimate(quilt.title(), rates, work, goods(quilt, cutting, finishing, sewn + lines + 2 * binding, rates));
    }

    private static List<Goods> goods(Quilt quilt, Cutting cutting, Finishing finishing, double seams, Rates rates) {
        List<String> cloths = new ArrayList<>(cutting.fabrics().stream().map(FabricCut::name).toList());
        cloths.addAll(List.of("binding", "backing"));
        for (String priced : rates.prices().byFabric().keySet()) {
            if (!cloths.contains(priced)) {
                throw new IllegalArgumentException("the rates price '" + priced + "', which is no cloth of this quilt; it has '" + String.join("', '", cloths) + "'"
                        + NearestNames.likely(priced, cloths));
            }
        }
        boolean metric = cutting.rules().isMetric();
        double unit = metric ? 1000 / 25.4 : 36;
        List<Goods> goods = new ArrayList<>();
        for (FabricCut f : cutting.fabrics()) {
            goods.add(cloth(f.name(), f.yardage().toBuy(), priceOf(f.fabric(), metric, rates), cutting, rates));
        }
        if (quilt.binding().isEmpty()) {
            goods.add(cloth("binding", cutting.rules().bought(finishing.bindingLaid()), rates.prices().priceOf("binding"), cutting, rates));
        }
        if (quilt.backing().isEmpty()) {
            goods.add(cloth("backing", cutting.rules().bought(finishing.backing().total()), rates.prices().priceOf("backing"), cutting, rates));
        }
        double over = 2 * finishing.how().overage().inInches();
        double area = (finishing.width().inInches() + over) * (finishing.height().inInches() + over) / unit / unit;
        goods.add(new Goods("batting", number(area) + (metric ? " square metres" : " square yards"), money(rates.prices().batting(), rates)
                + (metric ? " a square metre" : " a square yard"), area * rates.prices().batting()));
        double thread = seams * Rates.THREAD_PER_INCH / unit;
        long spools = (long) Math.ceil(thread / rates.prices().spool());
        goods.add(new Goods("thread", spools + (spools == 1 ? " spool" : " spools") + " for " + Math.round(thread) + (metric ? " m" : " yd"),
                money(rates.prices().thread(), rates) + " a spool of " + number(rates.prices().spool()) + (metric ? " m" : " yd"), spools * rates.prices().thread()));
        return goods;
    }

    private static Goods cloth(String what, Length needed, double price, Cutting cutting, Rates rates) {
        boolean metric = cutting.rules().isMetric();
        double units = needed.inInches() / (metric ? 1000 / 25.4 : 36);
        return new Goods(what, cutting.rules().asked(needed), money(price, rates) + (metric ? " a metre" : " a yard"), units * price);
    }

    /** What the cloth itself costs, if it says so, by the yard or the metre as it is bought; else the rate. */
    private static double priceOf(Fabric fabric, boolean metric, Rates rates) {
        return fabric.price().map(p -> p.of(metric ? Length.cm(100) : Length.yards(1)).doubleValue()).orElseGet(() -> rates.prices().priceOf(fabric.name()));
    }

    /**
     * The currency in which cloths state their prices; everything is reckoned in it. Empty if none states one.
     *
     * @throws IllegalArgumentException if there are two, naming a cloth of each
     */
    private static Optional<String> currency(Cutting cutting) {
        Optional<FabricCut> first = cutting.fabrics().stream().filter(f -> f.fabric().price().isPresent()).findFirst();
        for (FabricCut f : cutting.fabrics()) {
            String own = f.fabric().price().map(Price::currency).orElse("");
            String others = first.flatMap(g -> g.fabric().price()).map(Price::currency).orElse("");
            if (!own.isEmpty() && !own.equals(others)) {
                throw new IllegalArgumentException("'" + first.get().name() + "' is priced in " + others + " but '" + f.name() + "' in " + own
                        + "; state both in one currency");
            }
        }
        return first.flatMap(f -> f.fabric().price()).map(p -> p.currency() + " ");
    }

    private static String run(double inches, Cutting cutting) {
        return cutting.rules().isMetric() ? Math.round(inches * 0.0254) + " m" : Math.round(inches / 36) + " yd";
    }

    private static String number(double value) {
        return value == Math.rint(value) ? "" + Math.round(value) : String.format(Locale.ROOT, "%.2f", value);
    }

    private static String money(double value, Rates rates) {
        return rates.prices().currency() + String.format(Locale.ROOT, "%.2f", value);
    }

    /** All hours together. */
    public double hours() {
        return work.stream().mapToDouble(Work::hours).sum();
    }

    /** Goods, and the work if an hour has a price. */
    public double cost() {
        return goods.stream().mapToDouble(Goods::cost).sum() + hours() * rates.prices().hour();
    }

    /** The hours, by kind of work. */
    public Table time() {
        Table table = Table.of("Time for " + title, "Work", "Amount", "Rests on", "Hours");
        for (Work w : work) {
            table = table.row(w.what(), w.amount(), w.rate(), String.format(Locale.ROOT, "%.1f", w.hours()));
        }
        return table.row("All", "", "", String.format(Locale.ROOT, "%.1f", hours()));
    }

    /** The money, by what it is spent on. */
    public Table costs() {
        Table table = Table.of("Cost of " + title, "What", "Buy", "Price", "Cost");
        for (Goods g : goods) {
            table = table.row(g.what(), g.buy(), g.price(), money(g.cost(), rates));
        }
        if (rates.prices().hour() > 0) {
            table = table.row("work", String.format(Locale.ROOT, "%.1f hours", hours()), money(rates.prices().hour(), rates) + " an hour", money(hours() * rates.prices().hour(), rates));
        }
        return table.row("All", "", "", money(cost(), rates));
    }

    /** What goes with every estimate. */
    public String assumptions() {
        return "An estimate: rates and prices are settings that stand at common practice until you time a block and ask at the shop. "
                + number(Rates.THREAD_PER_INCH) + " in of thread for an inch of seam.";
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(time()), Exhibit.of(costs()), Exhibit.words(assumptions()));
    }
}
