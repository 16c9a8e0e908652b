package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Path;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutPicture;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.layout.LengthBound;
import org.calicograph.cutting.layout.StripLayout;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Dimension;
import org.calicograph.cutting.pieces.Nesting;
import org.calicograph.cutting.pieces.Piece;

/**
 * Everything cut from one cloth, by one plan: what is bought, the strips, the drawing and the pieces are read off the same
 * {@link #layout}.
 *
 * @param name     what it is called in this plan; cloths of one name are numbered
 * @param pieces   what is sewn into the top
 * @param finish   rectangles for backing, binding and sleeve, by those names; whole strips or lengths of the cloth
 * @param layout   the plan
 * @param inStrips true if the plan is cut in strips, which is easier; that is taken where it has one buy at most a twentieth or one buying step more
 * @param other    the plan that was not taken: the shortest that was found where this one is in strips, and the other way about
 * @param joins    how long pieces are joined, by width; none if nothing is joined
 * @param choice   how long pieces are cut and what the other way would take, in words; empty if there are none
 */
public record FabricCut(String name, Fabric fabric, List<Piece> pieces, List<Blank> finish, Layout layout, boolean inStrips, Layout other, Yardage yardage,
                        List<StripJoins> joins, String choice) {

    public FabricCut {
        pieces = List.copyOf(pieces);
        finish = List.copyOf(finish);
        joins = List.copyOf(joins);
    }

    /** @param asked the way to cut long pieces; if empty, the one that takes less cloth, in one length where both take as much */
    static FabricCut of(String name, Fabric fabric, List<Piece> listed, List<Blank> finish, CuttingRules rules, LayoutSearch search,
                        Optional<BorderCloth.Way> asked) {
        List<Piece> pieces = nested(fabric, listed, finish, rules);
        LongStrips strips = LongStrips.of(fabric, pieces, finish, rules);
        Length width = fabric.usableWidth();
        FabricCut bare = new FabricCut(name, fabric, pieces, finish, NOTHING, false, NOTHING, Yardage.of(Length.ZERO, NOTHING.bound(), rules), List.of(), "");
        BorderCloth.Way joint = asked.filter(w -> w != BorderCloth.Way.LENGTHWISE).orElse(BorderCloth.Way.STRAIGHT_JOINS);
        if (strips.isEmpty() || asked.equals(Optional.of(BorderCloth.Way.LENGTHWISE)) && strips.mustBeJoined()) {
            Layout layout = search.lay(width, strips.whole());
            return bare.planned(layout, strips.leastOf(layout), rules, List.of(), "");
        }
        LengthBound leastJoined = strips.leastJoined(joint);
        List<StripJoins> joins = strips.cloths().stream().map(c -> c.joined(joint)).toList();
        Layout joined = search.lay(width, strips.joined(joint));
        if (strips.mustBeJoined()) {
            return bare.planned(joined, leastJoined, rules, joins, joinedFrom(joins) + ", so that the print keeps its direction");
        }
        Layout whole = search.lay(width, strips.whole());
        LengthBound least = asked.isEmpty() ? LengthBound.shorter(leastJoined, strips.leastOf(whole))
                : asked.get() == BorderCloth.Way.LENGTHWISE ? strips.leastOf(whole) : leastJoined;
        FabricCut across = bare.planned(joined, least, rules, joins, "");
        FabricCut along = bare.planned(whole, least, rules, List.of(), "");
        boolean join = asked.map(w -> w != BorderCloth.Way.LENGTHWISE)
                .orElse(across.yardage.toBuy().compareTo(along.yardage.toBuy()) < 0);
        return join ? across.choosing(joinedFrom(joins) + "; " + takes("in one length they", along.yardage, across.yardage, rules))
                : along.choosing("in one length along the selvedge; " + takes(joinedFrom(joins) + " they", across.yardage, along.yardage, rules));
    }

    /** The pieces, those of templates nested in the way that takes least beside the others, as far as rows of strips tell. */
    private static List<Piece> nested(Fabric fabric, List<Piece> pieces, List<Blank> finish, CuttingRules rules) {
        if (pieces.stream().allMatch(p -> p.isCutByRuler() || p.count() == 1)) {
            return pieces;
        }
        List<Piece> best = pieces;
        Length least = Length.inches(Integer.MAX_VALUE);
        for (Nesting.Ends ends : Nesting.Ends.values()) {
            List<Piece> so = pieces.stream().map(p -> p.nested(ends)).toList();
            Length length = LayoutSearch.QUICK.lay(fabric.usableWidth(), LongStrips.of(fabric, so, finish, rules).whole()).length();
            if (length.compareTo(least) < 0) {
                least = length;
                best = so;
            }
        }
        return best;
    }

    /** What strips may take more of the cloth and be taken all the same, as a share; one buying step in any case. */
    private static final double EASE = 0.05;

    private static final Layout NOTHING = new Layout(Length.inches(1), new org.calicograph.cutting.layout.Panel.Offcut(Length.inches(1), Length.ZERO),
            new LengthBound(Length.ZERO, "nothing is cut"));

    /** With a layout as the plan: the same blanks in strips where that has one buy little more, else the layout itself. */
    private FabricCut planned(Layout shortest, LengthBound least, CuttingRules rules, List<StripJoins> how, String words) {
        Layout strips = StripLayout.of(shortest).layout();
        Yardage easier = Yardage.of(strips.length(), least, rules);
        Yardage shorter = Yardage.of(shortest.length(), least, rules);
        Length little = Length.max(rules.buyingStep(), shorter.toBuy().times(EASE));
        boolean easy = easier.toBuy().minus(shorter.toBuy()).compareTo(little) <= 0;
        return new FabricCut(name, fabric, pieces, finish, easy ? strips : shortest, easy, easy ? shortest : strips, easy ? easier : shorter, how, words);
    }

    private FabricCut choosing(String words) {
        return new FabricCut(name, fabric, pieces, finish, layout, inStrips, other, yardage, joins, words);
    }

    private static String joinedFrom(List<StripJoins> joins) {
        int strips = joins.stream().mapToInt(j -> j.strips().size()).sum();
        return "joined " + (joins.get(0).way() == BorderCloth.Way.STRAIGHT_JOINS ? "straight" : "diagonally") + " from " + strips + " strips across";
    }

    private static String takes(String what, Yardage other, Yardage chosen, CuttingRules rules) {
        int order = other.toBuy().compareTo(chosen.toBuy());
        return what + " would take " + (order == 0 ? "as much"
                : rules.asked(other.toBuy().minus(chosen.toBuy()).abs()) + (order > 0 ? " more" : " less"));
    }

    /** The same with its long pieces cut in another way; if there are none, the same. */
    FabricCut borders(BorderCloth.Way way, CuttingRules rules, LayoutSearch search) {
        return choice.isEmpty() ? this : of(name, fabric, pieces, finish, rules, search, Optional.of(way));
    }

    /** The area of the cloth used by the layout. */
    public Area areaCut() {
        return Area.of(layout.width(), layout.length());
    }

    /** The finished area of the pieces. */
    public Area areaSewn() {
        return pieces.stream().map(Piece::sewn).reduce(Area.ZERO, Area::plus);
    }

    /** The cuts that part a blank of this fabric into pieces: corner to corner, slanted along a strip, or the outlines of templates. */
    public List<Path> cutsWithin(Blank blank) {
        for (Piece p : pieces) {
            if (p.letter().equals(blank.name())) {
                return p.method().runs(p.count(), fabric.usableWidth()).stream()
                        .filter(r -> r.across().equals(blank.across()) && r.along().equals(blank.along())).findFirst()
                        .map(r -> p.method().drawnOn(r, p.count(), fabric.usableWidth())).orElse(List.of());
            }
        }
        return List.of();
    }

    /** What is laid, in words. */
    public String caption(CuttingRules rules) {
        return name + ": " + rules.text(layout.length().roundedUpTo(rules.rulerStep())) + " of cloth, " + Math.round(layout.waste() * 100) + " % offcuts";
    }

    /** This cut in strips, also where that has one buy more. */
    FabricCut ofStrips(CuttingRules rules) {
        return inStrips ? this : otherWay(rules);
    }

    /** This cut by the shortest layout that was found, also where strips are easier. */
    FabricCut ofLeastCloth(CuttingRules rules) {
        return inStrips && other.length().compareTo(layout.length()) < 0 ? otherWay(rules) : this;
    }

    private FabricCut otherWay(CuttingRules rules) {
        return new FabricCut(name, fabric, pieces, finish, other, !inStrips, layout, Yardage.of(other.length(), yardage.bound(), rules), joins, choice);
    }

    /** How the cloth is cut, and what the other way would take. */
    String way(CuttingRules rules) {
        Length otherwise = Yardage.of(other.length(), yardage.bound(), rules).toBuy();
        int order = otherwise.compareTo(yardage.toBuy());
        String far = rules.asked(otherwise.minus(yardage.toBuy()).abs());
        return inStrips ? "in strips" + (order < 0 ? "; " + far + " less would do, in a layout that is harder to cut" : "")
                : "as drawn" + (order > 0 ? "; in strips it would take " + far + " more" : "");
    }

    /** The strips in the order of cutting: how many, how wide, and what each is cut into. */
    public Table strips(CuttingRules rules) {
        Table table = Table.of(name + ": " + rules.text(layout.length().roundedUpTo(rules.rulerStep())) + ", buy " + yardage.asked(rules),
                "Strips", "Width", "Cut", "Each strip gives");
        if (inStrips) {
            for (StripLayout.Strip s : StripLayout.of(layout).strips()) {
                table = table.row(s.count(), rules.text(s.width()), s.way() == StripLayout.Way.ACROSS ? s.way().toString()
                        : s.way() + ", " + rules.text(s.length()), gives(s, rules));
            }
            return table;
        }
        Map<Layout.Band, Integer> alike = new LinkedHashMap<>();
        layout.bands().forEach(band -> alike.merge(band, 1, Integer::sum));
        for (Layout.Band band : alike.keySet()) {
            table = table.row(alike.get(band), rules.text(band.along()), StripLayout.Way.ACROSS.toString(), band.blanks().stream()
                    .map(b -> b.count() + " " + b.name() + " of " + rules.text(b.across()) + " x " + rules.text(b.along()))
                    .collect(java.util.stream.Collectors.joining("; ")) + "; as drawn");
        }
        return table;
    }

    private static String gives(StripLayout.Strip strip, CuttingRules rules) {
        return strip.cuts().stream().map(c -> c.count() + " " + c.name() + " of " + rules.text(c.every())
                + (c.pile() > 1 ? ", " + c.pile() + " of " + rules.text(c.high()) + " from each" : c.high().equals(strip.width()) ? "" : ", trimmed to " + rules.text(c.high()))).collect(java.util.stream.Collectors.joining("; "));
    }

    /** What to cut: exact and rounded sizes side by side. */
    public Table table(CuttingRules rules) {
        Table table = Table.of("Cutting: " + name, "Piece", "Pieces", "Shape", "Finished", "Cut from", "Exact", "How");
        for (Piece p : pieces) {
            CutMethod m = p.method();
            String from = p.isCutByRuler() ? sizes(m.dimensions(), rules, false) : "template " + p.letter();
            String exact = p.isCutByRuler() ? sizes(m.dimensions(), rules, true) : "";
            table = table.row(p.letter(), p.count(), m.shape(), p.size(rules), count(p) + from, exact, joining(p, rules) + m.instruction() + m.lying(p.count(), fabric.usableWidth()));
        }
        for (Layout.Counted b : Layout.counted(finish)) {
            table = table.row(b.name(), b.count(), "rectangle", "", b.count() + " of " + rules.text(b.across()) + " x " + rules.text(b.along()), "", "For the " + b.name() + ".");
        }
        return table;
    }

    /**
     * For each piece, how it is cut, in a line to be read beside the quilt: shape, finished size, cut size, how many there are, and from how
     * many strips of this plan; such as {@code quarter-square triangle, 3 x 6 in finished; cut squares of 7 1/4 in, each twice corner to
     * corner; 12 of them from 3 squares, on 1 strip}. Finished sizes off the ruler's lines are told to the nearest, as {@code about}.
     */
    public Map<Piece, String> spoken(CuttingRules rules) {
        Map<String, Integer> strips = new LinkedHashMap<>();
        if (inStrips) {
            StripLayout.of(layout).strips().forEach(s -> s.cuts().stream().map(StripLayout.Cut::name).distinct()
                    .forEach(name -> strips.merge(name, s.count(), Integer::sum)));
        } else {
            layout.bands().forEach(band -> band.blanks().stream().map(Layout.Counted::name).distinct().forEach(name -> strips.merge(name, 1, Integer::sum)));
        }
        Map<Piece, String> words = new LinkedHashMap<>();
        for (Piece p : pieces) {
            // Strips that several long pieces are joined from are named after all of them.
            int on = strips.entrySet().stream().filter(e -> List.of(e.getKey().split("\\+")).contains(p.letter())).mapToInt(Map.Entry::getValue).sum();
            boolean joined = joining(p, rules).contains(" + ");
            String many = p.count() == 1 ? "the only one" : p.count() + " of them";
            String from = p.method() instanceof CutMethod.Blanks b && b.pieces() > 1 ? many + " from " + count(p).replaceAll(",? ?$", "") + ", on " : many + " from ";
            words.put(p, p.method().shape() + ", " + p.ruled(rules) + " finished; " + p.cut(rules) + "; " + from + on
                    + (on == 1 ? " strip" : " strips") + (joined ? " joined end to end" : inStrips ? "" : ", as drawn"));
        }
        return words;
    }

    /** What is cut of this cloth, as it is shown in a list: the pieces, the strips, and how they lie. */
    public Exhibit.Several list(CuttingRules rules) {
        return new Exhibit.Several(List.of(Exhibit.of(table(rules)), Exhibit.of(strips(rules)), Exhibit.of(picture(rules), caption(rules))));
    }

    /** How the blanks lie on the cloth, parted into their pieces. */
    public Picture picture(CuttingRules rules) {
        return LayoutPicture.of(layout, fabric.colour(), rules::text, this::cutsWithin);
    }

    /** Which parts a long piece is joined from before it is cut, in words; empty for others. */
    private String joining(Piece p, CuttingRules rules) {
        List<Length> lengths = LongStrips.of(fabric, List.of(p), List.of(), rules).strips().stream().map(LongStrips::length).distinct().toList();
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

    private String count(Piece p) {
        List<CutMethod.Run> all = p.method().runs(p.count(), fabric.usableWidth());
        int runs = all.size();
        int most = all.get(0).pieces();
        if (p.method() instanceof CutMethod.Strips || !p.isCutByRuler() && most > 1) {
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
            Length length = exact ? d.exact() : d.ruler();
            out.append(out.isEmpty() ? "" : " x ").append(exact && !rules.isMetric() && Length.System.ofProcess() == Length.System.INCH
                    ? String.format(java.util.Locale.ROOT, "%.3f in", length.inInches()) : rules.text(length));
        }
        return out.toString();
    }
}
