package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Transform;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;

/**
 * The different works within a top, innermost first, each with how often it is made and a name of its own. A plain
 * patch is no work; an appliqué is told by its ground.
 */
final class KindsOfWork {

    /** One kind of work; works that look alike are one kind, however they are turned. */
    static final class Kind {
        private final Patchwork work;
        /** For each part its piece's letter, or the kind that it is. */
        private final Map<String, Object> parts;
        private int count;
        private String name;

        private final Marks marks;

        private Kind(Patchwork work, Map<String, Object> parts, Marks marks) {
            this.work = work;
            this.parts = parts;
            this.marks = marks;
        }

        Patchwork work() {
            return work;
        }

        int count() {
            return count;
        }

        String name() {
            return name;
        }

        /** The piece of every patch, or the name of every part. */
        Map<String, String> letters() {
            Map<String, String> letters = new HashMap<>();
            parts.forEach((id, part) -> letters.put(id, part instanceof Kind kind ? kind.name : (String) part));
            return letters;
        }
    }

    private final Map<String, String> letters;
    private final List<Kind> kinds = new ArrayList<>();
    private final Map<Patchwork, Kind> known = new IdentityHashMap<>();
    private final Map<String, List<Kind>> buckets = new HashMap<>();
    private final Map<Applique, Integer> laid = new LinkedHashMap<>();

    /** @param letters the piece of every patch of the top */
    KindsOfWork(Map<String, String> letters, Patchwork top) {
        this.letters = letters;
        Object whole = visit("", top, false);
        Set<String> taken = new HashSet<>();
        for (Kind kind : kinds) {
            String plain = kind == whole && kind.work instanceof Assembly ? "the top" : plainName(kind.work);
            String name = plain;
            for (int n = 2; !taken.add(name); n++) {
                name = plain + " (" + n + ")";
            }
            kind.name = name;
        }
    }

    Collection<Kind> all() {
        return kinds;
    }

    /** The different appliqués, and how often each is made. */
    Map<Applique, Integer> laid() {
        return laid;
    }

    /** A block's own name; what is joined from blocks is a row or a panel. */
    private static String plainName(Patchwork work) {
        if (!(work instanceof Assembly assembly)) {
            return work.name();
        }
        List<Box> boxes = assembly.parts().stream().map(p -> p.outline().bounds()).toList();
        Box all = work.outline().bounds();
        boolean level = boxes.stream().allMatch(b -> b.height() > all.height() - 1e-6);
        boolean upright = boxes.stream().allMatch(b -> b.width() > all.width() - 1e-6);
        return level ? "row" : upright ? "column" : "panel";
    }

    /** The kind of the work, or the letter or name by which it is called where it needs no stage. */
    private Object visit(String prefix, Patchwork placed, boolean mirrored) {
        // A work that lies mirrored in the top is sewn mirrored: it is another kind, unless it is its own mirror image.
        Patchwork work = mirrored ? mirrored(placed) : placed;
        if (work.patchCount() == 1) {
            return letters.get(prefix + work.patches().get(0).id());
        }
        if (work instanceof Block block && block.applique().isPresent()) {
            visit(prefix, block.applique().get().ground(), false);
            laid.merge(block.applique().get(), 1, Integer::sum);
            return work.name();
        }
        Map<String, Object> own = new HashMap<>();
        if (work instanceof Assembly assembly) {
            for (Placed part : assembly.parts()) {
                own.put(part.id(), visit(prefix + part.id() + "/", part.work(), part.place().mirrors()));
            }
        } else {
            ((Block) work).patches().forEach(p -> own.put(p.id(), letters.get(prefix + p.id())));
        }
        Kind kind = known.computeIfAbsent(work, w -> alike(w, own));
        kind.count++;
        return kind;
    }

    private final Map<Patchwork, Patchwork> mirrors = new IdentityHashMap<>();

    private Patchwork mirrored(Patchwork work) {
        return mirrors.computeIfAbsent(work, w -> w.transformed(Transform.mirrorAcross(0)));
    }

    /** The kind that looks like this work, however it is turned; a new one if there is none. */
    private Kind alike(Patchwork work, Map<String, Object> own) {
        Marks marks = Marks.of(work.patches().stream().map(p -> new Marks.Marked(cloth(p), p.shape())).toList());
        List<Kind> candidates = buckets.computeIfAbsent(work.name() + ": " + marks.bucket(), b -> new ArrayList<>());
        for (Kind kind : candidates) {
            if (kind.marks.alike(marks)) {
                return kind;
            }
        }
        Kind kind = new Kind(work, own, marks);
        candidates.add(kind);
        kinds.add(kind);
        return kind;
    }

    static String cloth(Patch patch) {
        return patch.fabric().name() + " " + patch.fabric().colour();
    }
}
