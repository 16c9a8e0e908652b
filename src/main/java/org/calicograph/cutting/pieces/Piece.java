package org.calicograph.cutting.pieces;

import java.util.List;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.OwnBox;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.seams.Notch;

/**
 * Congruent patches of one fabric, cut alike.
 *
 * @param letter   what it is called in the instructions
 * @param finished the finished shape, grain along the axes, top left corner at the origin
 * @param method   how it is cut
 * @param patches  the ids of the patches, in the quilt's order
 * @param notches  marks on its curved edges that its neighbours have too, as round the first of its patches
 */
public record Piece(String letter, Fabric fabric, Region finished, CutMethod method, List<String> patches, List<Notch> notches) {

    public Piece {
        patches = List.copyOf(patches);
        notches = List.copyOf(notches);
    }

    /** How many are cut. */
    public int count() {
        return patches.size();
    }

    /** True if no template is needed. */
    public boolean isCutByRuler() {
        return !(method instanceof CutMethod.Traced);
    }

    /** The cutting line, with the seam allowance on; a shape to be laid on a ground has its own allowance instead. */
    public Region cutOutline(Length seam) {
        if (method instanceof CutMethod.Laid laid) {
            return laid.turnUnder().isZero() ? finished : CutOutline.turned(finished, laid.turnUnder());
        }
        return CutOutline.of(finished, seam);
    }

    /** The same, traced on strips whose ends are used so; if it is cut by ruler, the same. */
    public Piece nested(Nesting.Ends ends) {
        CutMethod other = method instanceof CutMethod.Traced traced ? traced.ending(ends) : method;
        return new Piece(letter, fabric, finished, other, patches, notches);
    }

    /** True if one template serves both, grain and notches too. */
    public boolean hasShapeOf(Piece other) {
        return Outline.of(finished.outer()).equals(Outline.of(other.finished.outer())) && isMarkedLike(other);
    }

    /** True if the other's template, turned over, serves for this. */
    public boolean isMirrorOf(Piece other) {
        return Outline.of(finished.outer()).equals(Outline.of(other.finished.outer().transformed(Transform.mirrorAcross(0)))) && isMarkedLike(other);
    }

    /** The notches of shapes that are alike lie alike if they are as far from the middle. */
    private boolean isMarkedLike(Piece other) {
        double[] own = reaches();
        double[] others = other.reaches();
        boolean alike = own.length == others.length;
        for (int i = 0; alike && i < own.length; i++) {
            alike = Math.abs(own[i] - others[i]) < 0.005;
        }
        return alike;
    }

    private double[] reaches() {
        return notches.stream().mapToDouble(n -> n.at().distance(finished.centroid())).sorted().toArray();
    }

    /** The finished area of all of them. */
    public Area sewn() {
        return finished.area().times(count());
    }

    /** Finished width and height of the piece along itself, in words: {@code 3 x 3 in}, also where it stands on its point. */
    public String size(CuttingRules rules) {
        OwnBox box = OwnBox.of(finished);
        return rules.exact(Length.inches(box.width())) + " x " + rules.exact(Length.inches(box.height()));
    }

    /** The same as a ruler shows it: to the nearest eighth of an inch, or the nearest millimetre, and {@code about} where that is not exact. */
    public String ruled(CuttingRules rules) {
        OwnBox box = OwnBox.of(finished);
        Length wide = Length.inches(box.width());
        Length high = Length.inches(box.height());
        Length step = rules.isMetric() ? Length.mm(1) : Length.inches(1, 8);
        // Sizes come from doubles; a hundredth of a millimetre is seen by nobody.
        boolean exact = java.util.stream.Stream.of(wide, high).allMatch(l -> l.minus(l.roundedTo(step)).abs().compareTo(Length.mm(0.01)) <= 0);
        String one = rules.text(wide.roundedTo(step));
        String other = rules.text(high.roundedTo(step));
        return (exact ? "" : "about ") + (one.endsWith(" in") && other.endsWith(" in") ? one.substring(0, one.length() - 3) : one) + " x " + other;
    }

    /** How it is cut, in a few words with the ruler's sizes: {@code cut squares of 3 7/8 in, each once corner to corner}. */
    public String cut(CuttingRules rules) {
        if (!isCutByRuler()) {
            return "cut by template " + letter;
        }
        List<Dimension> sizes = method.dimensions();
        String first = rules.text(sizes.get(0).ruler());
        if (method instanceof CutMethod.Blanks b && b.pieces() > 1 || method.shape().contains("square triangle")) {
            return "cut squares of " + first + ", each " + (method.shape().startsWith("half") ? "once" : "twice") + " corner to corner";
        }
        if (method instanceof CutMethod.Strips) {
            return "cut strips " + first + " wide" + (sizes.size() > 1 ? ", then the " + sizes.get(1).name() + " " + rules.text(sizes.get(1).ruler()) : ", then at their angles");
        }
        String last = rules.text(sizes.get(sizes.size() - 1).ruler());
        String large = method.instruction().contains("cut it large") ? ", which is large, sew it on and trim it" : "";
        return "cut " + (first.endsWith(" in") && last.endsWith(" in") ? first.substring(0, first.length() - 3) : first) + " x " + last + large;
    }
}
