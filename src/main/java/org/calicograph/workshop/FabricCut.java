package org.calicograph.workshop;

import java.util.List;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.workshop.layout.Layout;
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
