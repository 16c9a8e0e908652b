package org.calicograph.finishing;

import java.util.List;
import java.util.Optional;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;

/**
 * Backing, batting, binding and sleeve for a quilt of a finished size.
 *
 * @param width  of the quilt
 * @param height of the quilt
 * @param edge   what the binding goes round
 * @param backingCloth what the backing and the sleeve are cut from; empty if not chosen, quilting cotton of the usual width then
 * @param bindingCloth what the binding is cut from; empty if not chosen
 * @param how    what the amounts rest on
 */
public record Finishing(Length width, Length height, Edge edge, Optional<Fabric> backingCloth, Optional<Fabric> bindingCloth, CuttingRules rules, Assumptions how)
        implements Drawable {

    /**
     * The finished edge.
     *
     * @param round  its length, all the way round
     * @param curved true if it is not of straight lines alone; binding has to be cut on the bias then (common practice)
     */
    public record Edge(Length round, boolean curved) {

        static Edge of(Quilt quilt) {
            if (quilt.top().isRectangular()) {
                return rectangle(quilt.width(), quilt.height());
            }
            return new Edge(Length.inches(quilt.top().outline().perimeter()), !quilt.top().outline().isStraight());
        }

        static Edge rectangle(Length width, Length height) {
            return new Edge(width.plus(height).times(2), false);
        }
    }

    /**
     * @param overage   how much backing and batting stick out on each side
     * @param strip     cut width of double-fold binding
     * @param extra     binding beyond the perimeter, for corners and the last join
     * @param join      what each strip loses to joining
     * @param sleeve    cut height of a hanging sleeve, folded in two
     */
    public record Assumptions(Length overage, Length strip, Length extra, Length join, Length sleeve) {
        /** 10 cm each side; 6.5 cm strips; 30 cm extra; 6.5 cm a join; a 23 cm sleeve (common practice). */
        public static final Assumptions METRIC = new Assumptions(Length.cm(10), Length.mm(65), Length.cm(30), Length.mm(65), Length.cm(23));

        static Assumptions of(CuttingRules rules) {
            return rules.isMetric() ? METRIC : USUAL;
        }

        /** 4 in each side; 2 1/2 in strips; 12 in extra; 2 1/2 in a join sewn slantwise; a 9 in sleeve (common practice). */
        public static final Assumptions USUAL = new Assumptions(Length.inches(4), Length.inches("2 1/2"), Length.inches(12),
                Length.inches("2 1/2"), Length.inches(9));

        /**
         * The same with a double-fold binding of a finished width: folded in two, it is sewn on, turned and sewn down, so six
         * widths and 1/4 in for the quilt's thickness (common practice).
         */
        public Assumptions doubleFold(Length finished) {
            return stripOf(finished, 6, Length.inches(1, 4));
        }

        /** The same with a single-fold binding of a finished width: four widths and 1/8 in for the quilt's thickness (common practice). */
        public Assumptions singleFold(Length finished) {
            return stripOf(finished, 4, Length.inches(1, 8));
        }

        private Assumptions stripOf(Length finished, int times, Length thickness) {
            if (!finished.isPositive()) {
                throw new IllegalArgumentException("a binding " + finished + " wide covers no edge; use a finished width above 0, such as 3/8 in");
            }
            Length strip = finished.times((long) times).plus(thickness);
            return new Assumptions(overage, strip, extra, strip, sleeve);
        }
    }

    /**
     * Backing joined from lengths of cloth.
     *
     * @param upright true if the seams run down the quilt
     * @param widths  lengths of cloth side by side
     * @param each    the length of each
     */
    public record Backing(boolean upright, int widths, Length each) {
        /** The cloth that it takes in all. */
        public Length total() {
            return each.times((long) widths);
        }
    }

    /** Packaged battings as sold: the smallest that several shops' lists print, which differ by up to 8 in. */
    public record Batting(String name, Length width, Length height) { }

    /** Sizes in which batting is usually sold in packs (common practice). */
    public static final List<Batting> PACKAGED = List.of(
            new Batting("craft", Length.inches(46), Length.inches(36)), new Batting("crib", Length.inches(45), Length.inches(60)), new Batting("twin", Length.inches(72), Length.inches(90)),
            new Batting("full", Length.inches(81), Length.inches(96)), new Batting("queen", Length.inches(90), Length.inches(100)),
            new Batting("king", Length.inches(120), Length.inches(120)));

    /** With the rules of {@link CuttingRules#usual}. */
    public static Finishing of(Quilt quilt) {
        return of(quilt, CuttingRules.usual());
    }

    /** For a quilt, with its own cloths. */
    public static Finishing of(Quilt quilt, CuttingRules rules) {
        return new Finishing(quilt.width(), quilt.height(), Edge.of(quilt), quilt.backing(), quilt.binding(), rules, Assumptions.of(rules));
    }

    /** For a finished size, with cloths of the usual width. */
    public static Finishing of(Length width, Length height, CuttingRules rules) {
        return new Finishing(width, height, Edge.rectangle(width, height), Optional.empty(), Optional.empty(), rules, Assumptions.of(rules));
    }

    /** The same with backing and sleeve cut from a fabric. */
    public Finishing backed(Fabric fabric) {
        return new Finishing(width, height, edge, Optional.of(fabric), bindingCloth, rules, how);
    }

    /** The same with the binding cut from a fabric. */
    public Finishing bound(Fabric fabric) {
        return new Finishing(width, height, edge, backingCloth, Optional.of(fabric), rules, how);
    }

    private Length backingWidth() {
        return backingCloth.map(Fabric::usableWidth).orElse(Fabric.USABLE_WIDTH);
    }

    private Length bindingWidth() {
        return bindingCloth.map(Fabric::usableWidth).orElse(Fabric.USABLE_WIDTH);
    }

    /** The same with other assumptions. */
    public Finishing with(Assumptions other) {
        return new Finishing(width, height, edge, backingCloth, bindingCloth, rules, other);
    }

    /** The length of binding to make. */
    public Length bindingLength() {
        return edge.round().plus(how.extra());
    }

    /** Strips across the width for straight binding: the first gives itself, every other loses what a join takes. */
    public int bindingStrips() {
        return strips(bindingLength(), bindingWidth(), how.join());
    }

    private static int strips(Length total, Length strip, Length lost) {
        return (int) Math.max(1, 1 + Math.ceil(total.minus(strip).ratioTo(strip.minus(lost)) - 1e-9));
    }

    /** The length of cloth that the binding takes: its strips as they lie one below another, or the squares of a curved edge. */
    public Length bindingLaid() {
        if (edge.curved()) {
            long abreast = Math.max(1, bindingWidth().units() / biasSquare().units());
            return biasSquare().times((biasSquares() + abreast - 1) / abreast);
        }
        return how.strip().times((long) bindingStrips());
    }

    /** How many squares for bias binding: one, or as many alike as a cloth narrower than one asks for. */
    public int biasSquares() {
        int squares = 1;
        while (roundedUp(biasLeast(squares)).compareTo(bindingWidth()) > 0) {
            squares++;
        }
        return squares;
    }

    /**
     * The least square for continuous bias binding. Its two halves are sewn into a parallelogram and that into a tube
     * one strip's width out of step; only whole rounds of the tube count. A square of side S gives
     * floor((S - 2 seams) / root 2 / strip) rounds of (S - 2 seams) times root 2 (geometry).
     */
    public Length biasSquareLeast() {
        return biasLeast(biasSquares());
    }

    private Length biasLeast(int squares) {
        // Strips of several squares are joined, each join slantwise.
        double needed = (bindingLength().inInches() + (squares - 1) * how.join().inInches()) / squares;
        double strip = how.strip().inInches();
        double root = Math.sqrt(2);
        double least = Double.POSITIVE_INFINITY;
        // With n rounds the square must be wide enough for n strips and long enough for n rounds to reach.
        for (int n = 1; n <= 1 + needed / strip; n++) {
            least = Math.min(least, Math.max(n * strip * root, needed / n / root));
        }
        return Length.inches(least).plus(rules.seam().times(2));
    }

    /** A square to cut for continuous bias binding: the least, up to the next inch, or centimetre. */
    public Length biasSquare() {
        return roundedUp(biasSquareLeast());
    }

    private Length roundedUp(Length least) {
        return least.roundedUpTo(rules.isMetric() ? Length.cm(1) : Length.inches(1));
    }

    /** The bias strip that such a square gives, in whole rounds. */
    public Length biasFrom(Length square) {
        double inner = square.minus(rules.seam().times(2)).inInches();
        double rounds = Math.floor(inner / Math.sqrt(2) / how.strip().inInches() + 1e-9);
        return Length.inches(Math.max(0, rounds * inner * Math.sqrt(2)));
    }

    /** Backing with upright or level seams. */
    public Backing backing(boolean upright) {
        Length across = (upright ? width : height).plus(how.overage().times(2));
        Length each = (upright ? height : width).plus(how.overage().times(2));
        // The first width gives itself; every other loses two seam allowances to its join.
        Length first = backingWidth();
        Length more = backingWidth().minus(rules.seam().times(2));
        int widths = 1;
        for (Length have = first; have.compareTo(across) < 0; have = have.plus(more)) {
            widths++;
        }
        return new Backing(upright, widths, rules.taped(each));
    }

    /** The backing that takes less cloth. */
    public Backing backing() {
        Backing upright = backing(true);
        Backing level = backing(false);
        return level.total().compareTo(upright.total()) < 0 ? level : upright;
    }

    /** The smallest packaged batting that covers the quilt and its overage, either way round; empty if none does. */
    public Optional<Batting> batting() {
        Length w = Length.min(width, height).plus(how.overage().times(2));
        Length h = Length.max(width, height).plus(how.overage().times(2));
        return PACKAGED.stream().filter(b -> Length.min(b.width(), b.height()).compareTo(w) >= 0 && Length.max(b.width(), b.height()).compareTo(h) >= 0).findFirst();
    }

    /** Backing, batting, binding and sleeve, with what each takes. */
    public Table table() {
        Backing back = backing();
        Backing other = backing(!back.upright());
        String lengths = back.widths() + (back.widths() == 1 ? " length of " : " lengths of ") + rules.text(back.each());
        Table table = Table.of("Finishing", "What", "Amount", "How", "Rests on")
                .row("Backing", backingCloth.isPresent() ? "with " + backingCloth.get().name() : yards(back.total()), lengths + (back.widths() == 1 ? "" : back.upright() ? ", seams upright" : ", seams level"),
                        rules.text(how.overage()) + " beyond the quilt on each side; the other way takes " + yards(other.total()))
                .row("Batting", batting().map(Batting::name).orElse("joined or by the yard"),
                        rules.text(rules.taped(width.plus(how.overage().times(2)))) + " x " + rules.text(rules.taped(height.plus(how.overage().times(2)))),
                        "packaged sizes differ by a few inches: measure yours");
        String round = rules.text(rules.taped(bindingLength())) + " with " + rules.text(how.extra()) + " for corners and joins";
        String cloth = bindingCloth.map(c -> "with " + c.name()).orElse(yards(bindingLaid()));
        String squares = "of " + rules.text(biasSquare());
        String gives = biasSquares() == 1 ? "gives " + rules.text(biasFrom(biasSquare()).roundedTo(rules.rulerStep())) + " in whole rounds"
                : "each gives " + rules.text(biasFrom(biasSquare()).roundedTo(rules.rulerStep())) + " in whole rounds";
        if (edge.curved()) {
            table = table.row("Binding, bias", cloth, biasSquares() + (biasSquares() == 1 ? " square " : " squares ") + squares,
                    round + "; " + gives + "; straight strips won't go round a curve");
        } else {
            table = table.row("Binding, straight", cloth, bindingStrips() + " strips of " + rules.text(how.strip()), round)
                    .row("Binding, bias", biasSquares() + (biasSquares() == 1 ? " square" : " squares"), squares, gives + "; curved edges need bias");
        }
        return table
                .row("Sleeve", backingCloth.isPresent() ? "with " + backingCloth.get().name() : yards(how.sleeve().times((long) sleeveStrips())), sleeveStrips() + (sleeveStrips() == 1 ? " strip of " : " strips of ")
                        + rules.text(how.sleeve()), "as long as the quilt is wide, folded in two");
    }

    /** Strips across the cloth for the sleeve, which is as long as the quilt is wide, joins between them counted. */
    public int sleeveStrips() {
        return strips(width, backingWidth(), rules.seam().times(2));
    }

    /** Before washing, with the reserve, as it is sold. */
    private String yards(Length laid) {
        return rules.asked(rules.bought(laid));
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(table());
    }
}
