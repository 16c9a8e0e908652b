package org.calicograph.scaling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;

/**
 * A top of one block side by side, at one size.
 *
 * @param block  at its size
 * @param across blocks across
 * @param down   blocks down
 */
public record Make(Patchwork block, int across, int down, CuttingRules rules) {

    /** As many blocks as cover a width and a height. */
    static Make covering(Patchwork block, Length width, Length height, CuttingRules rules) {
        return new Make(block, fewest(width, block.width()), fewest(height, block.height()), rules);
    }

    private static int fewest(Length whole, Length part) {
        // Blocks scaled by a real number may be a unit or two off.
        return (int) Math.max(1, Math.ceil(whole.ratioTo(part) - 1e-9));
    }

    /** How many blocks there are. */
    public int blocks() {
        return across * down;
    }

    /** The finished width of all blocks. */
    public Length width() {
        return block.width().times((long) across);
    }

    /** The finished height of all blocks. */
    public Length height() {
        return block.height().times((long) down);
    }

    /** How many patches there are. */
    public int patches() {
        return block.patchCount() * blocks();
    }

    /** The finished length of all seams, those between the blocks included. */
    public Length seams() {
        double within = block.patches().stream().map(Patch::shape).mapToDouble(Region::perimeter).sum() - block.outline().perimeter();
        Length between = block.height().times((across - 1L) * down).plus(block.width().times((down - 1L) * across));
        return Length.inches(within / 2 * blocks()).plus(between);
    }

    /** Different pieces of one block, as they are cut. */
    public List<Piece> pieces() {
        return Pieces.of(block, rules);
    }

    /**
     * The straight finished sides of a piece that are no whole step of the ruler, each once. A triangle is cut by
     * its two short sides or by its long one, so it is off the ruler only if both ways are.
     */
    public List<Length> offTheRuler(Piece piece) {
        List<Length> sides = piece.finished().outer().joined().segments().stream().filter(Line.class::isInstance).map(s -> Length.inches(s.length()))
                .sorted().toList();
        if (piece.finished().isStraight() && sides.size() == 3) {
            return off(sides.subList(2, 3)).isEmpty() ? List.of() : off(sides.subList(0, 2));
        }
        return off(sides);
    }

    private List<Length> off(List<Length> sides) {
        List<Length> off = new ArrayList<>();
        for (Length side : sides) {
            if (!near(side, side.roundedTo(rules.rulerStep())) && off.stream().noneMatch(o -> near(o, side))) {
                off.add(side);
            }
        }
        return List.copyOf(off);
    }

    private static boolean near(Length a, Length b) {
        return a.minus(b).abs().compareTo(Length.mm(0.02)) <= 0;
    }

    /** The cloth of every fabric by area: the pieces with their seam allowances, and the waste, as a length at its usable width. */
    public Map<String, Length> cloth(double waste) {
        Map<String, Area> areas = new LinkedHashMap<>();
        for (Piece p : pieces()) {
            areas.merge(p.fabric().name(), p.cutOutline(rules.seam()).area().times(p.count()), Area::plus);
        }
        Map<String, Length> widths = new LinkedHashMap<>();
        pieces().forEach(p -> widths.putIfAbsent(p.fabric().name(), p.fabric().usableWidth()));
        Map<String, Length> cloth = new LinkedHashMap<>();
        areas.forEach((fabric, area) -> cloth.put(fabric, Length.inches(area.squareInches() * blocks() * (1 + waste) / widths.get(fabric).inInches())
                .roundedUpTo(rules.buyingStep())));
        return cloth;
    }
}
