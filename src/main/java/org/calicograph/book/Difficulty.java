package org.calicograph.book;

import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.Unit;

/**
 * How hard a quilt is to sew, by its hardest part.
 *
 * @param level  in two or three words
 * @param reason the part that decides it
 * @param before what one should have sewn first
 */
record Difficulty(String level, String reason, String before) {

    /** A patch this narrow is lost to its own seam allowances (common practice). */
    private static final Length TINY = Length.inches(1);

    /** @param rules whose units the reason is written in */
    static Difficulty of(Patchwork top, SewingPlan plan, CuttingRules rules) {
        Map<SeamKind, Long> seams = new TreeMap<>();
        plan.stages().forEach(s -> s.order().steps().forEach(step -> seams.merge(step.kind(), (long) s.count(), Long::sum)));
        long setIn = seams.getOrDefault(SeamKind.SET_IN, 0L);
        long curved = seams.getOrDefault(SeamKind.CURVED, 0L);
        long partial = seams.getOrDefault(SeamKind.PARTIAL, 0L);
        Patch least = top.patches().stream().min(Comparator.comparingDouble(Difficulty::narrow)).orElseThrow();
        boolean tiny = narrow(least) < TINY.inInches() - 1e-6;
        if (setIn > 0) {
            return new Difficulty("For the practised hand", counted(setIn, "set-in seam") + (curved > 0 ? " and " + counted(curved, "curved seam") : ""),
                    "a quilt of straight seams, and one set-in corner on scraps");
        }
        if (curved > 0) {
            return new Difficulty("For the practised hand", counted(curved, "curved seam"), "a quilt of straight seams, and one curve on scraps");
        }
        if (!plan.layings().isEmpty()) {
            return new Difficulty("For the practised hand", "shapes are laid on a ground and sewn down", "one leaf and one stem on scraps");
        }
        if (tiny) {
            return new Difficulty("Needs an exact seam", "the narrowest patch is " + rules.exact(Length.inches(narrow(least))) + " finished",
                    "a quilt with patches twice as large");
        }
        if (partial > 0) {
            return new Difficulty("With some practice", counted(partial, "seam") + " sewn in two goes", "a sampler of straight seams");
        }
        boolean bias = plan.stages().stream().flatMap(s -> s.order().singles().stream()).anyMatch(Difficulty::isSlanted);
        if (bias) {
            return new Difficulty("With some practice", "straight seams throughout, some along the bias", "a quilt of squares and strips");
        }
        return new Difficulty("A first quilt", "straight seams along the grain throughout", "a test seam");
    }

    private static String counted(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    /** The narrower side of a patch's box, in inches. */
    private static double narrow(Patch p) {
        return Math.min(p.shape().bounds().width(), p.shape().bounds().height());
    }

    private static boolean isSlanted(Unit.Single s) {
        return s.shape().outer().segments().stream().anyMatch(side -> Math.abs(side.from().x() - side.to().x()) > 1e-6
                && Math.abs(side.from().y() - side.to().y()) > 1e-6);
    }

}
