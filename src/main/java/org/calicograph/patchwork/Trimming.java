package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * A top trimmed to a rectangle: blocks that lie across the edge become partial blocks, their patches clipped.
 *
 * @param top     what is left, its finished edge the edge of the rectangle
 * @param whole   how many parts stay whole
 * @param partial the ids of the parts that were cut
 */
public record Trimming(Assembly top, int whole, List<String> partial) {

    public Trimming {
        partial = List.copyOf(partial);
    }

    /**
     * The part of a patchwork within a rectangle, in the patchwork's own inches.
     *
     * @throws DesignException if the rectangle reaches beyond the patchwork
     */
    public static Trimming of(Patchwork work, Box frame) {
        Box all = work.outline().bounds();
        double slack = Cover.TOLERANCE / 2;
        if (frame.left() < all.left() - slack || frame.right() > all.right() + slack || frame.top() < all.top() - slack
                || frame.bottom() > all.bottom() + slack) {
            throw new DesignException("'" + work.name() + "' is " + work.width() + " x " + work.height() + " and can't be trimmed to "
                    + Length.inches(frame.width()) + " x " + Length.inches(frame.height())
                    + "; trim it to less, or set more blocks");
        }
        List<Placed> parts = work instanceof Assembly a ? a.parts() : List.of(new Placed("block", work, Transform.IDENTITY));
        return of(work.name() + ", trimmed", frame, parts);
    }

    /** Parts that cover the rectangle and may reach beyond it, trimmed to it. */
    public static Trimming of(String name, Box frame, List<Placed> parts) {
        Shears shears = new Shears(frame);
        List<Placed> kept = new ArrayList<>();
        List<String> partial = new ArrayList<>();
        for (Placed part : parts) {
            List<Placed> left = shears.cut(part);
            if (!left.equals(List.of(part))) {
                left.forEach(p -> partial.add(p.id()));
            }
            kept.addAll(left);
        }
        return new Trimming(Assembly.of(name, Region.rectangle(frame), kept), kept.size() - partial.size(), partial);
    }

    /** What to mind at the edge, in plain words. */
    public String caution() {
        if (partial.isEmpty()) {
            return "No block is cut by the edge.";
        }
        return whole + " parts are whole, " + partial.size() + " are cut by the edge. The edge drawn is the finished edge: cut a seam allowance"
                + " outside it (1/4 in, common practice), or points that lie on the edge are lost in the binding or the next seam. Edges cut off the"
                + " grain stretch: stay-stitch just inside the line before you cut. Cut away from yourself and close the cutter's guard after"
                + " every cut; its maker's instructions come first.";
    }
}
