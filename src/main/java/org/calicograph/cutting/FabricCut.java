package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Line;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.layout.LengthBound;
import org.calicograph.cutting.layout.StripLayout;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.cutting.pieces.Piece;

/**
 * Everything cut from one fabric.
 *
 * @param directed true if its print must stand the way it does in the quilt
 * @param joins    how long pieces are joined, by width; none if nothing is joined
 * @param choice   how long pieces are cut and what the other way would take, in words; empty if there are none
 */
public record FabricCut(Fabric fabric, List<Piece> pieces, boolean directed, Layout layout, Yardage yardage, List<StripJoins> joins,
                        String choice) {

    public FabricCut {
        pieces = List.copyOf(pieces);
        joins = List.copyOf(joins);
    }

    /** @param asked the way to cut long pieces; if empty, the one that takes less cloth, in one length where both take as much */
    static FabricCut of(Fabric fabric, List<Piece> pieces, boolean directed, CuttingRules rules, LayoutSearch search, Optional<BorderCloth.Way> asked) {
        LongStrips strips = LongStrips.of(pieces, directed, rules);
        Length width = rules.usableWidth();
        BorderCloth.Way joint = asked.filter(w -> w != BorderCloth.Way.LENGTHWISE).orElse(BorderCloth.Way.STRAIGHT_JOINS);
        if (strips.isEmpty() || asked.equals(Optional.of(BorderCloth.Way.LENGTHWISE)) && strips.mustBeJoined()) {
            Layout layout = search.lay(width, strips.whole());
            return new FabricCut(fabric, pieces, directed, layout, Yardage.of(layout.length(), layout.bound(), rules), List.of(), "");
        }
        Layout joined = search.lay(width, strips.joined(joint));
        LengthBound leastJoined = strips.leastJoined(joint);
        List<StripJoins> joins = strips.cloths().stream().map(c -> c.joined(joint)).toList();
        if (strips.mustBeJoined()) {
            return new FabricCut(fabric, pieces, directed, joined, Yardage.of(joined.length(), leastJoined, rules), joins,
                    joinedFrom(joins) + ", so that the print keeps its direction");
        }
        Layout whole = search.lay(width, strips.whole());
        LengthBound least = asked.isEmpty() ? LengthBound.shorter(leastJoined, whole.bound())
                : asked.get() == BorderCloth.Way.LENGTHWISE ? whole.bound() : leastJoined;
        Yardage across = Yardage.of(joined.length(), least, rules);
        Yardage along = Yardage.of(whole.length(), least, rules);
        boolean join = asked.map(w -> w != BorderCloth.Way.LENGTHWISE).orElse(across.toBuy().compareTo(along.toBuy()) < 0);
        return join
                ? new FabricCut(fabric, pieces, directed, joined, across, joins,
                        joinedFrom(joins) + "; " + takes("in one length they", along, across, rules))
                : new FabricCut(fabric, pieces, directed, whole, along, List.of(),
                        "in one length along the selvage; " + takes(joinedFrom(joins) + " they", across, along, rules));
    }

    private static String joinedFrom(List<StripJoins> joins) {
        int strips = joins.stream().mapToInt(j -> j.strips().size()).sum();
        return "joined " + (joins.get(0).way() == BorderCloth.Way.STRAIGHT_JOINS ? "straight" : "diagonally") + " from " + strips + " strips across";
    }

    private static String takes(String what, Yardage other, Yardage chosen, CuttingRules rules) {
        int order = other.toBuy().compareTo(chosen.toBuy());
        return what + " would take " + (order == 0 ? "as much"
                : Yardage.asked(other.toBuy().minus(chosen.toBuy()).abs(), rules) + (order > 0 ? " more" : " less"));
    }

    /** The same with its long pieces cut in another way; if there are none, the same. */
    FabricCut borders(BorderCloth.Way way, CuttingRules rules, LayoutSearch search) {
        return choice.isEmpty() ? this : of(fabric, pieces, directed, rules, search, Optional.of(way));
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
        return StripLayout.of(layout);
    }

    /** The layout to cut by: in strips where that asks for no more cloth, or else the shortest found. */
    public Layout toCut(CuttingRules rules) {
        Layout strips = inStrips().layout();
        return bought(strips, rules).toBuy().compareTo(yardage.toBuy()) <= 0 ? strips : layout;
    }

    /** The cuts that part a blank of this fabric into pieces: corner to corner, or slanted along a strip. */
    public List<Line> cutsWithin(Blank blank, CuttingRules rules) {
        for (Piece p : pieces) {
            if (p.letter().equals(blank.name())) {
                return p.method().runs(p.count(), rules.usableWidth()).stream()
                        .filter(r -> r.across().equals(blank.across()) && r.along().equals(blank.along())).findFirst()
                        .map(p.method()::cutsWithin).orElse(List.of());
            }
        }
        return List.of();
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
        return new FabricCut(fabric, pieces, directed, strips, bought(strips, rules), joins, choice);
    }

    private Yardage bought(Layout other, CuttingRules rules) {
        return Yardage.of(other.length(), yardage.bound(), rules);
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
            String from = p.isCutByRuler() ? sizes(m.dimensions(), rules, false) : "template " + p.letter();
            String exact = p.isCutByRuler() ? sizes(m.dimensions(), rules, true) : "";
            table = table.row(p.letter(), p.count(), m.shape(), p.size(rules), count(p, rules) + from, exact, joining(p, rules) + m.instruction());
        }
        return table;
    }

    /** Which parts a long piece is joined from before it is cut, in words; empty for others. */
    private String joining(Piece p, CuttingRules rules) {
        List<Length> lengths = LongStrips.of(List.of(p), directed, rules).strips().stream().map(LongStrips::length).distinct().toList();
        Map<String, Integer> ways = new LinkedHashMap<>();
        int near = 0;
        for (StripJoins join : joins) {
            for (StripJoins.Joined piece : join.pieces()) {
                if (lengths.contains(piece.length()) && ways.merge(parts(piece, rules), 1, Integer::sum) > 0) {
                    near += piece.near();
                }
            }
        }
        if (ways.isEmpty()) {
            return "";
        }
        List<String> each = new ArrayList<>();
        ways.forEach((parts, n) -> each.add(n == 1 ? parts : n + " of " + parts));
        return "First join strips " + (joins.get(0).way() == BorderCloth.Way.STRAIGHT_JOINS ? "with straight seams" : "with diagonal seams") + ": "
                + String.join("; ", each) + "." + (near == 0 ? " " : " A seam lies near a corner or the middle: moving it takes a strip more. ");
    }

    private static String parts(StripJoins.Joined piece, CuttingRules rules) {
        return String.join(" + ", piece.parts().stream().map(part -> rules.text(part.roundedUpTo(rules.rulerStep()))).toList());
    }

    private static String count(Piece p, CuttingRules rules) {
        int runs = p.method().runs(p.count(), rules.usableWidth()).size();
        if (p.method() instanceof CutMethod.Strips) {
            int most = p.method().runs(p.count(), rules.usableWidth()).get(0).pieces();
            String strips = runs + (runs == 1 ? " strip" : " strips");
            return strips + (most == 1 ? ", " : (runs == 1 ? " of " : " of up to ") + most + ", ");
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
