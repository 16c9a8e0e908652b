package org.calicograph.colouring.wish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.calicograph.colour.Photo;
import org.calicograph.colouring.Neighbours;
import org.calicograph.colouring.PhotoValues;
import org.calicograph.colouring.Seam;
import org.calicograph.colouring.TopPicture;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;

/**
 * Which effects a top has, measured on its patches.
 *
 * <p>Values are CIE L*, chroma is OKLCH's; patches count by their area, seams by their length. The limits are rules of this
 * house, tried on tops that were made for an effect and on plain ones that have none.
 */
public record EffectReport(Patchwork work, List<Reading> readings) implements Drawable {

    /** The range of values below which nothing is seen of light. */
    private static final double RANGE = 35;
    /** Neighbours in a sheen differ by this part of the whole range on average, and none by more than twice as much. */
    private static final double SHEEN = 0.2;
    /** How much of the values a direction must explain. */
    private static final double EXPLAINED = 0.6;
    /** What glows is at most this part of the work. */
    private static final double SMALL = 0.34;
    private static final double GREYISH = 0.02;

    /**
     * One effect and what was measured for it.
     *
     * @param found true if the limits are kept
     * @param words the measures
     */
    public record Reading(Effect effect, boolean found, String words) { }

    /** A patch as it is measured. */
    private record Spot(Point at, double area, double value, double chroma) { }

    public EffectReport {
        readings = List.copyOf(readings);
    }

    /** What a top has. */
    public static EffectReport of(Patchwork work) {
        Map<String, Spot> spots = new HashMap<>();
        List<Spot> all = new ArrayList<>();
        for (Patch p : work.patches()) {
            Spot spot = new Spot(p.shape().centroid(), p.shape().area().squareInches(), p.fabric().colour().value(), p.fabric().colour().oklch().chroma());
            spots.put(p.id(), spot);
            all.add(spot);
        }
        List<Seam> seams = Neighbours.of(work.patches());
        double step = 0;
        double length = 0;
        double largest = 0;
        for (Seam seam : seams) {
            double apart = Math.abs(spots.get(seam.one().id()).value() - spots.get(seam.other().id()).value());
            step += seam.length() * apart;
            length += seam.length();
            largest = Math.max(largest, apart);
        }
        step = length > 0 ? step / length : 0;
        double range = range(all);
        Line values = line(all, work.outline().bounds());
        List<Reading> readings = List.of(glow(all, work.outline().bounds(), values), lustre(range, step, largest, values), depth(all, range), light(range, step, values));
        return new EffectReport(work, readings);
    }

    /** What the values of a photograph have, reduced to a grid of squares; a photograph so reduced has no chroma. */
    public static EffectReport of(Photo photo, int across, int values) {
        return of(PhotoValues.of(photo, across, values).squares(Length.inches(1)));
    }

    /** True if the work has the effect. */
    public boolean has(Effect effect) {
        return readings.stream().anyMatch(r -> r.effect() == effect && r.found());
    }

    /** From the darkest to the lightest, a twentieth of the area left out at either end. */
    private static double range(List<Spot> spots) {
        List<Spot> sorted = spots.stream().sorted(Comparator.comparingDouble(Spot::value)).toList();
        double whole = spots.stream().mapToDouble(Spot::area).sum();
        return at(sorted, 0.95 * whole) - at(sorted, 0.05 * whole);
    }

    private static double at(List<Spot> sorted, double area) {
        double sum = 0;
        for (Spot s : sorted) {
            sum += s.area();
            if (sum >= area - 1e-9) {
                return s.value();
            }
        }
        return sorted.get(sorted.size() - 1).value();
    }

    /** How values change across the work: by so much from edge to edge each way, and how much of them that explains (R squared). */
    private record Line(double right, double down, double explained) { }

    private static Line line(List<Spot> spots, Box box) {
        double w = spots.stream().mapToDouble(Spot::area).sum();
        double mx = mean(spots, w, s -> s.at().x() / box.width());
        double my = mean(spots, w, s -> s.at().y() / box.height());
        double mv = mean(spots, w, Spot::value);
        double xx = 0, yy = 0, xy = 0, xv = 0, yv = 0, vv = 0;
        for (Spot s : spots) {
            double x = s.at().x() / box.width() - mx;
            double y = s.at().y() / box.height() - my;
            double v = s.value() - mv;
            xx += s.area() * x * x;
            yy += s.area() * y * y;
            xy += s.area() * x * y;
            xv += s.area() * x * v;
            yv += s.area() * y * v;
            vv += s.area() * v * v;
        }
        double det = xx * yy - xy * xy;
        if (vv < 1e-9 || det < 1e-12) {
            return new Line(0, 0, 0);
        }
        double right = (xv * yy - yv * xy) / det;
        double down = (yv * xx - xv * xy) / det;
        return new Line(right, down, (right * xv + down * yv) / vv);
    }

    private static double mean(List<Spot> spots, double whole, java.util.function.ToDoubleFunction<Spot> of) {
        return spots.stream().mapToDouble(s -> s.area() * of.applyAsDouble(s)).sum() / whole;
    }

    private static Reading glow(List<Spot> spots, Box box, Line values) {
        double whole = spots.stream().mapToDouble(Spot::area).sum();
        // The lightest part, up to the widest gap in value: what could be taken for a lamp.
        List<Spot> sorted = spots.stream().sorted(Comparator.comparingDouble(s -> -s.value())).toList();
        double area = 0;
        double gap = 0;
        int count = 0;
        double bright = 0;
        for (int i = 0; i + 1 < sorted.size(); i++) {
            area += sorted.get(i).area();
            double jump = sorted.get(i).value() - sorted.get(i + 1).value();
            if (area <= SMALL * whole && jump > gap + 1e-9) {
                gap = jump;
                count = i + 1;
                bright = area;
            }
        }
        if (count == 0) {
            return new Reading(Effect.LUMINOSITY, false, "no small part is lighter than the rest");
        }
        List<Spot> lamp = sorted.subList(0, count);
        List<Spot> rest = sorted.subList(count, sorted.size());
        double brightArea = bright;
        double lampChroma = mean(lamp, brightArea, Spot::chroma);
        double restChroma = mean(rest, whole - brightArea, Spot::chroma);
        Point middle = new Point(mean(lamp, brightArea, s -> s.at().x()), mean(lamp, brightArea, s -> s.at().y()));
        // Gathered in one place: a disc of that area about its middle would hold it, with room to spare.
        double spread = Math.sqrt(mean(lamp, brightArea, s -> Math.pow(s.at().distance(middle), 2)));
        double disc = Math.sqrt(brightArea / Math.PI / 2);
        boolean grey = lampChroma < GREYISH && restChroma < GREYISH;
        double lighter = mean(lamp, brightArea, Spot::value) - mean(rest, whole - brightArea, Spot::value);
        boolean found = lighter > RANGE / 2 && values.explained() < EXPLAINED && spread < 2.2 * disc + 0.02 * box.width() && (grey || lampChroma > 1.2 * restChroma);
        return new Reading(Effect.LUMINOSITY, found, String.format(Locale.ROOT, "%.0f %% of the work is %.0f lighter than the rest%s%s", 100 * brightArea / whole, lighter,
                grey ? "" : String.format(Locale.ROOT, " and %.1f times as clear", lampChroma / Math.max(0.005, restChroma)),
                spread < 2.2 * disc + 0.02 * box.width() ? ", in one place" : ", scattered"));
    }

    private static Reading lustre(double range, double step, double largest, Line values) {
        boolean found = range >= RANGE && step <= SHEEN * range && largest <= 2 * SHEEN * range && values.explained() < EXPLAINED;
        return new Reading(Effect.LUSTRE, found, String.format(Locale.ROOT, "values range over %.0f, neighbours differ by %.1f and at most by %.0f; a straight fall explains %.0f %% of them",
                range, step, largest, 100 * values.explained()));
    }

    private static Reading light(double range, double step, Line values) {
        boolean found = range >= RANGE && step <= SHEEN * range && values.explained() >= EXPLAINED;
        String from = values.explained() < EXPLAINED ? "no one side" : side(values.right(), values.down());
        return new Reading(Effect.LIGHT, found, String.format(Locale.ROOT, "values range over %.0f, lightest towards %s; a straight fall explains %.0f %% of them", range, from,
                100 * values.explained()));
    }

    private static Reading depth(List<Spot> spots, double range) {
        Box box = Box.around(spots.stream().map(Spot::at).toList());
        Line values = line(spots, box);
        Line chroma = line(spots.stream().map(s -> new Spot(s.at(), s.area(), s.chroma() * 100, 0)).toList(), box);
        boolean grey = spots.stream().allMatch(s -> s.chroma() < GREYISH);
        boolean upwards = values.down() < 0 && Math.abs(values.down()) > 2 * Math.abs(values.right()) && values.explained() >= EXPLAINED && range >= RANGE;
        boolean dulls = grey || chroma.down() > 0 && chroma.explained() >= 0.3;
        return new Reading(Effect.DEPTH, upwards && dulls, (upwards ? "values grow lighter upwards" : "values don't grow lighter upwards")
                + (grey ? "; there is no colour to judge" : dulls ? " and colours grow duller" : "; colours don't grow duller"));
    }

    private static String side(double right, double down) {
        String vertical = Math.abs(down) * 2 < Math.abs(right) ? "" : down > 0 ? "the bottom" : "the top";
        String horizontal = Math.abs(right) * 2 < Math.abs(down) ? "" : right > 0 ? "right" : "left";
        return vertical.isEmpty() ? "the " + horizontal : horizontal.isEmpty() ? vertical : vertical + " " + horizontal;
    }

    /** One row an effect. */
    public Table table() {
        Table table = Table.of("Effects", "effect", "seen", "measured");
        for (Reading r : readings) {
            table = table.row(r.effect().words(), r.found() ? "yes" : "", r.words());
        }
        return table;
    }

    @Override
    public Exhibit show() {
        String seen = String.join(", ", readings.stream().filter(Reading::found).map(r -> r.effect().words()).toList());
        return Exhibit.several(Exhibit.of(TopPicture.of(work, 6), seen.isEmpty() ? "None of the effects" : "Seen here: " + seen), Exhibit.of(table()));
    }
}
