package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.cutting.pieces.Pieces;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
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

    public static SewingPlan of(Quilt quilt) {
        return of(quilt.title(), quilt.top(), CuttingRules.INCH);
    }

    public static SewingPlan of(Patchwork work) {
        return of(work.name(), work, CuttingRules.INCH);
    }

    /** The rules only decide on the letters, which are those of {@link Cutting} under the same rules. */
    public static SewingPlan of(String title, Patchwork work, CuttingRules rules) {
        Map<String, String> letters = new HashMap<>();
        for (Piece p : Pieces.of(work, rules)) {
            p.patches().forEach(id -> letters.put(id, p.letter()));
        }
        Finder finder = new Finder(letters);
        finder.visit("", work);
        List<Stage> stages = new ArrayList<>();
        for (Kind kind : finder.kinds.values()) {
            stages.add(new Stage(kind.work.name(), kind.count, kind.work, AssemblyOrder.of(kind.work), kind.letters));
        }
        List<Laid> layings = new ArrayList<>();
        finder.laid.forEach((applique, count) -> layings.add(new Laid(Laying.of(applique), count)));
        return new SewingPlan(title, stages, layings);
    }

    private static final class Kind {
        private final Patchwork work;
        private final Map<String, String> letters;
        private int count;

        Kind(Patchwork work, Map<String, String> letters) {
            this.work = work;
            this.letters = letters;
        }
    }

    /** Walks the assembly, innermost first; a plain patch needs no stage. */
    private static final class Finder {
        private final Map<String, String> letters;
        private final Map<Object, Kind> kinds = new LinkedHashMap<>();
        private final Map<Patchwork, Object> keys = new IdentityHashMap<>();
        private final Map<Applique, Integer> laid = new LinkedHashMap<>();

        Finder(Map<String, String> letters) {
            this.letters = letters;
        }

        void visit(String prefix, Patchwork work) {
            if (work.patchCount() == 1) {
                return;
            }
            if (work instanceof Block block && block.applique().isPresent()) {
                visit(prefix, block.applique().get().ground());
                laid.merge(block.applique().get(), 1, Integer::sum);
                return;
            }
            Map<String, String> own = new HashMap<>();
            if (work instanceof Assembly assembly) {
                for (Placed part : assembly.parts()) {
                    visit(prefix + part.id() + "/", part.work());
                    String first = part.work().patches().get(0).id();
                    own.put(part.id(), part.work().patchCount() == 1 ? letters.get(prefix + part.id() + "/" + first) : part.work().name());
                }
            } else {
                ((Block) work).patches().forEach(p -> own.put(p.id(), letters.get(prefix + p.id())));
            }
            Object key = keys.computeIfAbsent(work, w -> key(w, own));
            kinds.computeIfAbsent(key, k -> new Kind(work, own)).count++;
        }

        /** Works that look alike in place are one kind, whatever their ids. */
        private static Object key(Patchwork work, Map<String, String> own) {
            List<Object> key = new ArrayList<>(List.of(work.name()));
            for (Patch p : work.transformed(Transform.IDENTITY).patches()) {
                key.add(p.fabric().name());
                key.add(Math.round(p.shape().bounds().left() * 1000) + "," + Math.round(p.shape().bounds().top() * 1000) + ","
                        + Math.round(p.shape().area().squareInches() * 1000));
            }
            return key;
        }
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
