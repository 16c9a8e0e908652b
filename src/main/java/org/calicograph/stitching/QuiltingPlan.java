package org.calicograph.stitching;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.calicograph.colour.Colour;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Trim;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilting.Batting;
import org.calicograph.quilting.Density;
import org.calicograph.quilting.Gap;

/**
 * What is to be quilted where, in which thread, on which batting.
 *
 * @param top     what is quilted
 * @param layers  in the order of sewing
 * @param batting whose limit the gaps are held against
 * @param thread  the stitch
 */
public record QuiltingPlan(Patchwork top, List<Layer> layers, Batting batting, Lockstitch thread) implements Drawable {

    /** What is shown with every plan. */
    public static final String CAUTION = "Needles hurt: keep fingers clear of a running machine, switch it off to change the needle, "
            + "and follow its maker's instructions. Baste and press as your batting's maker says.";

    /**
     * Lines sewn in one thread.
     *
     * @param lent lines that may be travelled along to get from one to the other without a new start
     */
    public record Layer(String name, Colour thread, List<Path> lines, List<Path> lent) {
        public Layer {
            lines = List.copyOf(lines);
            lent = List.copyOf(lent);
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("the quilting '" + name + "' has no lines; leave it out, or make its spacing smaller");
            }
        }

        /** The fewest starts. */
        public Route route() {
            return Route.over(lines, lent, Point.ORIGIN);
        }

        /** Starts weighed against line sewn twice, as the way of sewing asks. */
        public Route route(Sewing sewing) {
            return Route.over(lines, lent, Point.ORIGIN, sewing.start());
        }
    }

    public QuiltingPlan {
        layers = List.copyOf(layers);
    }

    /** An empty plan for a top. */
    public static QuiltingPlan on(Patchwork top) {
        return new QuiltingPlan(top, List.of(), Batting.UNKNOWN, Lockstitch.MACHINE);
    }

    /** One more set of lines, sewn after the others. */
    public QuiltingPlan with(String name, Colour colour, List<Path> lines) {
        return with(name, colour, lines, List.of());
    }

    /** One more design in a thread of this colour; it may also travel along the lines lent, unseen. */
    public QuiltingPlan with(String name, Colour colour, List<Path> lines, List<Path> lent) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(new Layer(name, colour, lines, lent));
        return new QuiltingPlan(top, more, batting, thread);
    }

    /**
     * Another thread wherever a line runs through some regions: one fabric's patches, or where a shadow or
     * a patch of light falls. Lines are cut at the edge; what shares a thread is then sewn together.
     *
     * @param where  added to the names of what is cut off, such as 'in shadow'
     * @param thread from the thread outside to the thread within
     */
    public QuiltingPlan threaded(String where, Collection<Region> over, UnaryOperator<Colour> thread) {
        List<Trim> trims = over.stream().map(Trim::within).toList();
        Map<Colour, List<Layer>> byThread = new LinkedHashMap<>();
        for (Layer layer : layers) {
            List<Path> rest = layer.lines();
            List<Path> within = new ArrayList<>();
            for (Trim trim : trims) {
                within.addAll(trim.of(rest));
                rest = trim.outside(rest);
            }
            if (!rest.isEmpty()) {
                byThread.computeIfAbsent(layer.thread(), k -> new ArrayList<>()).add(new Layer(layer.name(), layer.thread(), rest, layer.lent()));
            }
            if (!within.isEmpty()) {
                Colour other = thread.apply(layer.thread());
                byThread.computeIfAbsent(other, k -> new ArrayList<>()).add(new Layer(layer.name() + " " + where, other, within, layer.lent()));
            }
        }
        return new QuiltingPlan(top, byThread.values().stream().flatMap(List::stream).toList(), batting, this.thread);
    }

    /** Every set may travel along the seams, in the ditch, where a line sewn does not show. */
    public QuiltingPlan travellingAlongSeams() {
        List<Path> seams = top.patches().stream().flatMap(p -> p.shape().paths().stream()).toList();
        return lending(l -> seams);
    }

    /** Every set may travel along the lines of the others in the same thread. */
    public QuiltingPlan travellingAlongOthers() {
        return lending(l -> layers.stream().filter(o -> o != l && o.thread().equals(l.thread())).flatMap(o -> o.lines().stream()).toList());
    }

    private QuiltingPlan lending(Function<Layer, List<Path>> lines) {
        return new QuiltingPlan(top, layers.stream().map(l -> {
            List<Path> lent = new ArrayList<>(l.lent());
            lent.addAll(lines.apply(l));
            return new Layer(l.name(), l.thread(), l.lines(), lent);
        }).toList(), batting, thread);
    }

    /** The same plan on another batting. */
    public QuiltingPlan on(Batting other) {
        return new QuiltingPlan(top, layers, other, thread);
    }

    /** The same plan in another stitch. */
    public QuiltingPlan stitched(Lockstitch other) {
        return new QuiltingPlan(top, layers, batting, other);
    }

    /** Every line to be quilted. */
    public List<Path> lines() {
        return layers.stream().flatMap(l -> l.lines().stream()).toList();
    }

    /** The whole top. */
    public Region area() {
        return top.outline();
    }

    /** The largest circle of the top without a line in it. */
    public Gap gap() {
        return Gap.largest(area(), lines());
    }

    /** The gap as a sentence, against the batting's limit. */
    public String gapReport() {
        Gap gap = gap();
        String size = "The largest unquilted circle is " + gap.told() + " across";
        return gap.isWithin(batting.widestGap())
                ? size + "; " + batting.name() + " allows " + batting.widestGap() + "."
                : size + ", more than the " + batting.widestGap() + " that " + batting.name() + " allows: quilt closer at ("
                        + near(gap.centre().x()) + ", " + near(gap.centre().y()) + ").";
    }

    /**
     * Where the quilting is too open for the batting, and what to add there: circles on the quilt without a line in them, the widest
     * first, at most 40. Empty if there is none.
     */
    public Table toAdd() {
        Table table = Table.of("To add, for " + batting.name(), "place", "from the left", "from the top", "open circle", "quilt there");
        int n = 1;
        for (Gap gap : Gap.wider(area(), lines(), batting.widestGap(), 40)) {
            List<Path> rings = gap.filled(batting.widestGap());
            String widths = rings.stream().map(r -> Length.inches(r.bounds().width()).roundedTo(Length.inches(1, 4)).toString()).collect(java.util.stream.Collectors.joining(", "));
            table = table.row(n++, Length.inches(gap.centre().x()).roundedTo(Length.inches(1, 4)), Length.inches(gap.centre().y()).roundedTo(Length.inches(1, 4)),
                    gap.told(), (rings.size() == 1 ? "a ring " : "rings ") + widths + " across, or a motif as large as the circle");
        }
        return table;
    }

    /** The lines with what to add drawn in: see {@link #toAdd}. */
    public QuiltingPlan filledUp(Colour thread) {
        List<Path> rings = new ArrayList<>();
        Gap.wider(area(), lines(), batting.widestGap(), 400).forEach(g -> rings.addAll(g.filled(batting.widestGap())));
        return rings.isEmpty() ? this : with("added", thread, rings);
    }

    /**
     * Every line as plain points, for a machine's own software; docs/quilting.md says how they are written. A line is curved less than the
     * accuracy between two points. Sewn in this order, each set is in the order of its route.
     *
     * @param accuracy how far a straight line between two points may lie off the line, above 0
     */
    public Table points(Length accuracy) {
        if (!accuracy.isPositive()) {
            throw new IllegalArgumentException("lines can't be given as points within " + accuracy + "; use an accuracy above 0, such as 1/64 in");
        }
        Table table = Table.of("Lines as points", "set", "run", "point", "x (in)", "y (in)");
        for (Layer layer : layers) {
            int run = 1;
            for (Path path : layer.route().paths()) {
                int n = 1;
                for (Point p : path.flattened(accuracy.inInches())) {
                    table = table.row(layer.name(), run, n++, String.format(java.util.Locale.ROOT, "%.4f", p.x()), String.format(java.util.Locale.ROOT, "%.4f", p.y()));
                }
                run++;
            }
        }
        return table;
    }

    /** Where each set of lines lies on the quilt. */
    public Picture placement() {
        return PlanPicture.placement(this);
    }

    /** A layer's runs with their starts numbered and arrows in the direction of sewing. */
    public Picture route(int layer) {
        return PlanPicture.route(this, layer);
    }

    /** How densely it is quilted, in squares of this side. */
    public Density density(Length square) {
        return Density.of(area(), lines(), square.inInches());
    }

    /** Per layer: length, starts, length gone over again, thread. */
    public Table table() {
        Table table = Table.of("Quilting", "quilting", "thread", "line, in", "starts", "sewn again, in", "least possible", "thread, yd");
        for (Layer layer : layers) {
            Route route = layer.route();
            String least = leastPossible(route);
            table = table.row(layer.name(), layer.thread().hex(), tenths(route.length() - route.retraced()), route.starts(),
                    tenths(route.retraced()), least, tenths(thread.needed(route).inInches() / 36));
        }
        return table;
    }

    /**
     * Whether the quilting goes through a machine, set by set, each run sewn in the direction that leaves
     * less to the right of the needle; and how often the quilt turns with the line.
     */
    public Table through(Throat throat) {
        String kind = throat.freeMotion() ? "free motion" : "walking foot";
        Table table = Table.of("Through a throat of " + throat.space() + ", " + kind, "quilting", "goes through", "thickest roll", "at", "whole turns of the quilt");
        for (Layer layer : layers) {
            Route route = throat.eased(layer.route(), area());
            List<Throat.Tight> tight = throat.tight(route, area());
            String at = tight.stream().max(Comparator.comparing(Throat.Tight::roll)).map(t -> near(t.at().x()) + ", " + near(t.at().y())).orElse("");
            String roll = tight.stream().map(Throat.Tight::roll).max(Comparator.naturalOrder()).map(r -> near(r.inInches())).orElse("");
            table = table.row(layer.name(), tight.isEmpty() ? "yes" : "no: quilt it by hand, in parts, or in free motion", roll, at,
                    tenths(throat.turns(route)));
        }
        return table;
    }

    /** By hand or by machine: the starts, and what limits that way of sewing. */
    public Table sewn(Sewing sewing) {
        boolean byHand = sewing instanceof Sewing.ByHand;
        Table table = Table.of(byHand ? "Quilted by hand" : "Quilted by machine", "quilting", "starts", "sewn again, in", "least possible", "thread, yd", "limit");
        for (Layer layer : layers) {
            Route route = layer.route(sewing);
            String limit;
            if (sewing instanceof Sewing.ByHand hand) {
                limit = tenths(hand.toTheInch()) + " stitches to the inch; " + hand.threads(route) + " threads of " + hand.length() + ", each sews " + near(hand.reach().inInches());
            } else {
                Throat throat = ((Sewing.ByMachine) sewing).throat();
                limit = throat.tight(throat.eased(route, area()), area()).isEmpty() ? "goes through a throat of " + throat.space()
                        : "does not go through a throat of " + throat.space() + ": by hand, in parts, or in free motion";
            }
            table = table.row(layer.name(), route.starts(), tenths(route.retraced()), leastPossible(route), tenths(sewing.thread(route).inInches() / 36), limit);
        }
        return table;
    }

    private static String leastPossible(Route route) {
        return route.exact() ? "yes" : "within " + tenths((route.length() / route.bound() - 1) * 100) + " %";
    }

    private static double tenths(double x) {
        return Math.round(x * 10) / 10.0;
    }

    private static String near(double inches) {
        return Length.inches(inches).roundedTo(Length.inches(1, 8)).toString();
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(placement(), "the quilting on the quilt"), Exhibit.of(table()), Exhibit.words(gapReport()),
                Exhibit.words(CAUTION));
    }
}
