package org.calicograph.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * Blocks of unlike sizes in rows, filled out by coping strips: blocks lower than the highest of their row get strips above
 * and below, rows shorter than the longest get strips at both ends. What is to be filled is shared by both sides; where a
 * half would be narrower than the least strip, one side gets all.
 *
 * @param coping the cloth of the strips
 * @param rows   the blocks, row by row from above
 * @param least  no strip is narrower, finished
 */
public record SamplerRows(Fabric coping, List<List<Patchwork>> rows, Length least) {

    public SamplerRows {
        rows = rows.stream().map(List::copyOf).toList();
        if (!least.isPositive()) {
            throw new DesignException("coping strips of " + least + " can't be sewn; use a least width above 0, such as 1/2 in");
        }
    }

    /** Begins a sampler; no strip is narrower than 1/2 in. */
    public static SamplerRows coped(Fabric cloth) {
        return new SamplerRows(cloth, List.of(), Length.inches(1, 2));
    }

    /** One row more, below. */
    public SamplerRows row(Patchwork... blocks) {
        if (blocks.length == 0) {
            throw new DesignException("row " + (rows.size() + 1) + " of the sampler has no block; give it one or more");
        }
        List<List<Patchwork>> all = new ArrayList<>(rows);
        all.add(Arrays.asList(blocks));
        return new SamplerRows(coping, all, least);
    }

    /** The same with another least width of strips. */
    public SamplerRows least(Length width) {
        return new SamplerRows(coping, rows, width);
    }

    /**
     * The top.
     *
     * @throws DesignException naming the block or row that would need a strip narrower than the least, and by how much
     */
    public Assembly top() {
        if (rows.isEmpty()) {
            throw new DesignException("the sampler has no row; add one with .row(block, …)");
        }
        Length widest = rows.stream().map(SamplerRows::wide).reduce(Length.ZERO, Length::max);
        List<Placed> placed = new ArrayList<>();
        Length y = Length.ZERO;
        for (int r = 0; r < rows.size(); r++) {
            Length high = rows.get(r).stream().map(Patchwork::height).reduce(Length.ZERO, Length::max);
            List<Patchwork> parts = new ArrayList<>();
            Length[] ends = shares(widest.minus(wide(rows.get(r))), "row " + (r + 1) + " is", "shorter than the longest row");
            strip(ends[0], high).ifPresent(parts::add);
            for (Patchwork block : rows.get(r)) {
                parts.add(coped(block, high));
            }
            strip(ends[1], high).ifPresent(parts::add);
            placed.add(Placed.at("row" + (r + 1), line("row " + (r + 1), parts, false), 0, y.inInches()));
            y = y.plus(high);
        }
        return Assembly.of("sampler", Region.rectangle(Box.of(widest, y)), placed);
    }

    private static Length wide(List<Patchwork> row) {
        return row.stream().map(Patchwork::width).reduce(Length.ZERO, Length::plus);
    }

    private Patchwork coped(Patchwork block, Length high) {
        Length[] ends = shares(high.minus(block.height()), "'" + block.name() + "' is", "lower than the highest of its row");
        List<Patchwork> parts = new ArrayList<>();
        strip(block.width(), ends[0]).ifPresent(parts::add);
        parts.add(block);
        strip(block.width(), ends[1]).ifPresent(parts::add);
        return parts.size() == 1 ? block : line("coped " + block.name(), parts, true);
    }

    private java.util.Optional<Patchwork> strip(Length width, Length height) {
        return width.isPositive() && height.isPositive() ? java.util.Optional.of(Block.plain(coping, width, height)) : java.util.Optional.empty();
    }

    /** How much each of two sides gets; below a hundredth of a millimetre there is nothing to fill. */
    private Length[] shares(Length spare, String what, String how) {
        if (spare.compareTo(Length.mm(0.01)) < 0) {
            return new Length[] {Length.ZERO, Length.ZERO};
        }
        if (spare.compareTo(least) < 0) {
            throw new DesignException(what + " " + spare + " " + how + ", too little for a strip of " + least + "; make it larger by that, or smaller by " + least.minus(spare)
                    + " or more");
        }
        Length half = spare.half();
        return half.compareTo(least) < 0 ? new Length[] {Length.ZERO, spare} : new Length[] {half, spare.minus(half)};
    }

    /** Parts side by side, or one below another. */
    private static Assembly line(String name, List<Patchwork> parts, boolean down) {
        List<Placed> placed = new ArrayList<>();
        Length at = Length.ZERO;
        Length other = Length.ZERO;
        for (Patchwork p : parts) {
            Box box = p.outline().bounds();
            placed.add(Placed.at("part" + (placed.size() + 1), p, (down ? 0 : at.inInches()) - box.left(), (down ? at.inInches() : 0) - box.top()));
            at = at.plus(down ? p.height() : p.width());
            other = Length.max(other, down ? p.width() : p.height());
        }
        return Assembly.of(name, Region.rectangle(down ? Box.of(other, at) : Box.of(at, other)), placed);
    }
}
