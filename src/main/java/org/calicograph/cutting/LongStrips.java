package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Print;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LengthBound;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;

/**
 * The blanks of a fabric, those that can be joined from strips across the cloth apart: longer than the
 * cloth is wide and at least four times as long as wide, so borders, sashing and binding. A print that
 * must keep its direction is joined only where its length lies across the quilt, and there it must be.
 *
 * @param others whatever is not joined
 * @param ruled  of these, what is cut by ruler
 * @param traced the area within the cutting lines of what is traced round templates
 * @param strips the long ones, as they would be laid without joins
 * @param cloth  the usable width of the cloth
 */
record LongStrips(List<Blank> others, List<Blank> ruled, Area traced, List<Blank> strips, Length cloth, CuttingRules rules) {

    private static final int SLIM = 4;

    static LongStrips of(Fabric fabric, List<Piece> pieces, List<Blank> extras, CuttingRules rules) {
        boolean directed = fabric.print().direction() != Print.Direction.ANY;
        Length cloth = fabric.usableWidth();
        List<Blank> others = new ArrayList<>(extras);
        List<Blank> ruled = new ArrayList<>(extras);
        Area traced = Area.ZERO;
        List<Blank> strips = new ArrayList<>();
        for (Piece p : pieces) {
            for (CutMethod.Run run : p.method().runs(p.count(), cloth)) {
                Blank blank = new Blank(p.letter(), run.across(), run.along(), !directed);
                boolean joined = run.pieces() == 1 && p.isCutByRuler() && isLong(blank, cloth);
                (joined ? strips : others).add(blank);
                if (!joined && p.isCutByRuler()) {
                    ruled.add(blank);
                }
            }
            traced = p.isCutByRuler() ? traced : traced.plus(p.cutOutline(rules.seam()).area().times(p.count()));
        }
        return new LongStrips(List.copyOf(others), List.copyOf(ruled), traced, List.copyOf(strips), cloth, rules);
    }

    private static boolean isLong(Blank blank, Length cloth) {
        Length wide = width(blank);
        return length(blank).compareTo(cloth) > 0 && length(blank).compareTo(wide.times(SLIM)) >= 0
                && wide.times(2).compareTo(cloth) <= 0 && (blank.turnable() || blank.across().equals(length(blank)));
    }

    static Length length(Blank blank) {
        return Length.max(blank.across(), blank.along());
    }

    private static Length width(Blank blank) {
        return Length.min(blank.across(), blank.along());
    }

    boolean isEmpty() {
        return strips.isEmpty();
    }

    /** True if they can't be laid in one length, since the print would be turned. */
    boolean mustBeJoined() {
        return strips.stream().anyMatch(b -> !b.turnable());
    }

    /** Everything, nothing joined. */
    List<Blank> whole() {
        List<Blank> all = new ArrayList<>(strips);
        all.addAll(others);
        return all;
    }

    /** The long ones by cut width, widest first, in each the longest first. */
    List<BorderCloth> cloths() {
        Map<Length, List<Length>> byWidth = new TreeMap<>(Comparator.reverseOrder());
        strips.forEach(b -> byWidth.computeIfAbsent(width(b), w -> new ArrayList<>()).add(length(b)));
        return byWidth.entrySet().stream()
                .map(e -> new BorderCloth(e.getKey(), e.getValue().stream().sorted(Comparator.reverseOrder()).toList(), cloth, rules)).toList();
    }

    /** Everything, the long ones as strips across the cloth, each named after the pieces that it is for. */
    List<Blank> joined(BorderCloth.Way way) {
        List<Blank> all = new ArrayList<>();
        for (BorderCloth each : cloths()) {
            String name = String.join("+", strips.stream().filter(b -> width(b).equals(each.width())).map(Blank::name).distinct().toList());
            each.joined(way).strips().forEach(used -> all.add(new Blank(name,
                    Length.min(cloth, used.roundedUpTo(rules.rulerStep())), each.width(), !mustBeJoined())));
        }
        all.addAll(others);
        return all;
    }

    /** A length that no layout goes below, however the long ones are joined; it can't fall when a piece is added. */
    LengthBound leastJoined(BorderCloth.Way way) {
        double area = area(ruled);
        for (BorderCloth each : cloths()) {
            area += Area.of(each.width(), each.leastJoined(way)).squareInches();
        }
        return least(area, ruled);
    }

    /** A length that no layout of whole pieces goes below: what is traced counts by its cutting lines, since pieces may lie closer than on their strips. */
    LengthBound leastOf(Layout whole) {
        if (traced.squareInches() == 0) {
            return whole.bound();
        }
        List<Blank> rectangles = new ArrayList<>(strips);
        rectangles.addAll(ruled);
        return least(area(rectangles), rectangles);
    }

    private LengthBound least(double area, List<Blank> rectangles) {
        boolean any = traced.squareInches() > 0;
        LengthBound byArea = new LengthBound(Length.inches((area + traced.squareInches()) / cloth.inInches() * (1 - 1e-9)), any ? "area of the cut pieces over width" : "area over width");
        return rectangles.isEmpty() ? byArea : LengthBound.longer(byArea, LengthBound.of(cloth, rectangles));
    }

    private static double area(List<Blank> blanks) {
        return blanks.stream().mapToDouble(b -> b.area().squareInches()).sum();
    }
}
