package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.seams.AssemblyOrder;

/**
 * The order of sewing: every different block once, with how often it is made, and then what joins them.
 *
 * @param layings the different appliqués, whose pieced grounds are among the stages
 */
public record SewingPlan(String title, List<Stage> stages, List<Laid> layings) implements Drawable {

    /** An appliqué and how often it is made. */
    public record Laid(Laying laying, int count) {
        /** What it is, and where it is told. */
        public String caption() {
            return laying.applique().name() + ", " + (count == 1 ? "laid once" : "laid " + count + " times") + ", shapes in the order of their numbers";
        }
    }

    /** Goes with every sewing plan. */
    public static final String CAUTION = "Keep fingers clear of the needle, and switch the machine off to thread it. The iron "
            + "and its steam burn: set it on its heel, and let the seam cool before you handle it. The makers' instructions "
            + "come before these.";

    public SewingPlan {
        stages = List.copyOf(stages);
        layings = List.copyOf(layings);
    }

    /** How the top of a quilt is sewn. */
    public static SewingPlan of(Quilt quilt) {
        return of(quilt.title(), quilt.top(), CuttingRules.usual());
    }

    /** How a piece of work is sewn. */
    public static SewingPlan of(Patchwork work) {
        return of(work.name(), work, CuttingRules.usual());
    }

    /** The rules only decide on the letters, which are those of {@link Cutting} under the same rules. */
    public static SewingPlan of(String title, Patchwork work, CuttingRules rules) {
        Map<String, String> letters = new HashMap<>();
        for (Piece p : Pieces.of(work, rules)) {
            p.patches().forEach(id -> letters.put(id, p.letter()));
        }
        KindsOfWork kinds = new KindsOfWork(letters, work);
        List<Stage> stages = new ArrayList<>();
        for (KindsOfWork.Kind kind : kinds.all()) {
            stages.add(new Stage(kind.name(), kind.count(), kind.work(), AssemblyOrder.of(kind.work()), kind.letters()));
        }
        List<Laid> layings = new ArrayList<>();
        kinds.laid().forEach((applique, count) -> layings.add(new Laid(Laying.of(applique), count)));
        return new SewingPlan(title, stages, layings);
    }

    @Override
    public Exhibit show() {
        List<Exhibit> parts = new ArrayList<>();
        parts.add(Exhibit.words(CAUTION));
        for (Stage s : stages) {
            String caption = s.name() + ", " + (s.count() == 1 ? "made once" : "made " + s.count() + " times");
            parts.add(Exhibit.of(s.exploded(), s.warnings().isEmpty() ? caption : caption + ". " + s.warnings()));
            String nesting = s.pressing().words();
            parts.add(Exhibit.of(s.pressed(), nesting.isEmpty() ? "press as the arrows point; all seams nest" : nesting));
            parts.add(Exhibit.of(s.table()));
        }
        for (Laid l : layings) {
            parts.add(Exhibit.of(l.laying().placement(), l.caption()));
            parts.add(Exhibit.of(l.laying().table()));
        }
        if (!layings.isEmpty()) {
            parts.add(Exhibit.words(Laying.ORDER + " " + Laying.CAUTION));
        }
        return new Exhibit.Several(parts);
    }
}
