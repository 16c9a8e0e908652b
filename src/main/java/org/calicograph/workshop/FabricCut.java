package org.calicograph.workshop;

import java.util.List;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.workshop.layout.Layout;
import org.calicograph.workshop.layout.StripLayout;
import org.calicograph.workshop.pieces.CutMethod;
import org.calicograph.workshop.pieces.CuttingRules;
import org.calicograph.workshop.pieces.Dimension;
import org.calicograph.workshop.pieces.Piece;

/** Everything cut from one fabric. */
public record FabricCut(Fabric fabric, List<Piece> pieces, Layout layout, Yardage yardage) {

    public FabricCut {
        pieces = List.copyOf(pieces);
    }

    /** The area of the cloth used by the layout. */
    public Area areaCut() {
        return Area.of(layout.width(), layout.length());
    }

    /** The finished area of the pieces. */
    public Area areaSewn() {
        return pieces.stream().map(Piece::sewn).reduce(Area.ZERO, Area::plus);
    }

    /** The same pieces in strips across the cloth, which are easier to cut and take as much cloth or more. */
    public StripLayout inStrips() {
        return StripLayout.of(layout.width(), layout.spots().stream().map(s -> s.taken().blank()).toList());
    }

    /** The layout to cut by: in strips where that asks for no more cloth, or else the shortest found. */
    public Layout toCut(CuttingRules rules) {
        Layout strips = inStrips().layout();
        return bought(strips, rules).toBuy().compareTo(yardage.toBuy()) <= 0 ? strips : layout;
    }

    /** What is laid, and what it means for the purchase. */
    public String caption(CuttingRules rules) {
        Layout cut = toCut(rules);
        String text = fabric.name() + ": " + rules.text(cut.length().roundedUpTo(rules.rulerStep())) + " of cloth, "
                + Math.round(cut.waste() * 100) + " % offcuts";
        return cut.equals(layout) ? text
                : text + "; in strips, and " + yardage.asked(rules) + " as for the shortest layout, which takes " + shortest(rules);
    }

    private String shortest(CuttingRules rules) {
        return rules.text(layout.length().roundedUpTo(rules.rulerStep()));
    }

    /** This with its strips as the layout, and what they have one buy. */
    FabricCut ofStrips(CuttingRules rules) {
        Layout strips = inStrips().layout();
        return new FabricCut(fabric, pieces, strips, bought(strips, rules));
    }

    private Yardage bought(Layout other, CuttingRules rules) {
        return Yardage.of(other.length(), layout.bound(), rules);
    }

    /** The strips in the order of cutting: how many, how wide, and what each is cut into. */
    public Table strips(CuttingRules rules) {
        StripLayout strips = inStrips();
        Yardage bought = bought(strips.layout(), rules);
        Table table = Table.of(fabric.name() + " in strips: " + rules.text(strips.layout().length().roundedUpTo(rules.rulerStep())) + ", buy "
                + bought.asked(rules) + (bought.toBuy().compareTo(yardage.toBuy()) > 0 ? "; the layout below takes " + shortest(rules) + ", buy "
                + yardage.asked(rules) : ""), "Strips", "Width", "Cut", "Each strip gives");
        for (StripLayout.Strip s : strips.strips()) {
            table = table.row(s.count(), rules.text(s.width()), s.way() == StripLayout.Way.ACROSS ? s.way().toString()
                    : s.way() + ", " + rules.text(s.length()), gives(s, rules));
        }
        return table;
    }

    private static String gives(StripLayout.Strip strip, CuttingRules rules) {
        return strip.cuts().stream().map(c -> c.count() + " " + c.name() + " of " + rules.text(c.every())
                + (c.high().equals(strip.width()) ? "" : ", trimmed to " + rules.text(c.high()))).collect(java.util.stream.Collectors.joining("; "));
    }

    /** What to cut: exact and rounded sizes side by side. */
    public Table table(CuttingRules rules) {
        Table table = Table.of("Cutting: " + fabric.name(), "Piece", "Pieces", "Shape", "Finished", "Cut from", "Exact", "How");
        for (Piece p : pieces) {
            CutMethod m = p.method();
            boolean template = m instanceof CutMethod.Template || m instanceof CutMethod.Laid;
            String from = template ? "template " + p.letter() : sizes(m.dimensions(), rules, false);
            String exact = template ? "" : sizes(m.dimensions(), rules, true);
            table = table.row(p.letter(), p.count(), m.shape(), p.size(rules), count(p, rules) + from, exact, m.instruction());
        }
        return table;
    }

    private static String count(Piece p, CuttingRules rules) {
        int runs = p.method().runs(p.count(), rules.usableWidth()).size();
        if (p.method() instanceof CutMethod.Strips) {
            return runs + (runs == 1 ? " strip, " : " strips, ");
        }
        if (p.method() instanceof CutMethod.Blanks b) {
            return b.pieces() == 1 ? runs + " of " : runs + (runs == 1 ? " square, " : " squares, ");
        }
        return "";
    }

    private static String sizes(List<Dimension> dimensions, CuttingRules rules, boolean exact) {
        StringBuilder out = new StringBuilder();
        for (Dimension d : dimensions) {
            Length length = (exact ? d.exact() : d.ruler()).length();
            out.append(out.isEmpty() ? "" : " x ").append(exact && !rules.isMetric() && Length.System.ofProcess() == Length.System.INCH
                    ? String.format(java.util.Locale.ROOT, "%.3f in", length.inInches()) : rules.text(length));
        }
        return out.toString();
    }
}
