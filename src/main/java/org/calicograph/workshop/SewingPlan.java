package org.calicograph.workshop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Colour;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Transform;
import org.calicograph.quilt.Assembly;
import org.calicograph.quilt.Block;
import org.calicograph.quilt.Patch;
import org.calicograph.quilt.Patchwork;
import org.calicograph.quilt.Placed;
import org.calicograph.quilt.Quilt;
import org.calicograph.workshop.piecing.AssemblyOrder;
import org.calicograph.workshop.piecing.Pressing;
import org.calicograph.workshop.piecing.SeamKind;
import org.calicograph.workshop.piecing.Unit;
import org.calicograph.workshop.pieces.CuttingRules;
import org.calicograph.workshop.pieces.Piece;
import org.calicograph.workshop.pieces.Pieces;

/** The order of sewing: every different block once, with how often it is made, and then what joins them. */
public record SewingPlan(String title, List<Stage> stages) implements Drawable {

    /** Goes with every sewing plan. */
    public static final String CAUTION = "Keep fingers clear of the needle, and switch the machine off to thread it. The iron "
            + "and its steam burn: set it on its heel, and let the seam cool before you handle it. The makers' instructions "
            + "come before these.";

    /**
     * One kind of block, or one assembly of parts.
     *
     * @param count   how often it is made
     * @param letters the piece of every patch, or the name of every part
     */
    public record Stage(String name, int count, Patchwork work, Unit order, Map<String, String> letters) {

        /** The joinings, alike ones together: what is sewn, how, and how often in this stage. */
        public List<Batch> batches() {
            Map<String, Batch> found = new LinkedHashMap<>();
            for (Unit.Sewn s : order.steps()) {
                List<String> parts = s.parts().stream().map(this::described).toList();
                String what = repeated(parts);
                found.merge(what + s.kind(), new Batch(what, s.kind(), count), (a, b) -> new Batch(a.what(), a.kind(), a.times() + b.times()));
            }
            return List.copyOf(found.values());
        }

        private static String repeated(List<String> parts) {
            TreeMap<String, Integer> tally = new TreeMap<>();
            parts.forEach(p -> tally.merge(p, 1, Integer::sum));
            if (parts.size() <= 4 && tally.size() > 1) {
                return String.join(" + ", parts);
            }
            List<String> out = new ArrayList<>();
            tally.forEach((p, n) -> out.add(n == 1 ? p : n + " x " + p));
            return String.join(" + ", out);
        }

        private String described(Unit unit) {
            if (unit instanceof Unit.Single s) {
                return letters.getOrDefault(s.id(), s.id());
            }
            TreeMap<String, Integer> tally = new TreeMap<>();
            unit.singles().forEach(s -> tally.merge(letters.getOrDefault(s.id(), s.id()), 1, Integer::sum));
            List<String> out = new ArrayList<>();
            tally.forEach((p, n) -> out.add(n == 1 ? p : p.length() > 2 ? n + " " + p : n + p));
            return "(" + String.join(" ", out) + ")";
        }

        /** The stage with its parts drawn apart. */
        public Picture exploded() {
            Map<String, Picture> pictures = new HashMap<>();
            double whole = Math.max(work.width().inInches(), work.height().inInches());
            if (work instanceof Assembly assembly) {
                for (Placed part : assembly.parts()) {
                    List<Picture> all = new ArrayList<>();
                    for (Patch p : part.work().patches()) {
                        all.add(Exploded.patch(p.shape().transformed(part.place()), p.fabric().colour(), whole));
                    }
                    if (part.work().patchCount() == 1) {
                        Patch only = part.work().patches().get(0);
                        all.add(lettered(letters.getOrDefault(part.id(), ""), only.shape().transformed(part.place()), only.fabric().colour(), whole));
                    }
                    pictures.put(part.id(), Picture.group(all));
                }
            } else {
                work.patches().forEach(p -> pictures.put(p.id(), lettered(letters.getOrDefault(p.id(), ""), p.shape(), p.fabric().colour(), whole)
                        .over(Exploded.patch(p.shape(), p.fabric().colour(), whole))));
            }
            return Exploded.of(order, pictures);
        }

        /** Which way the seams go. */
        public Pressing pressing() {
            Map<String, Double> light = new HashMap<>();
            if (work instanceof Assembly assembly) {
                assembly.parts().forEach(part -> light.put(part.id(), lightness(part.work().patches().get(0).fabric().colour())));
            } else {
                work.patches().forEach(p -> light.put(p.id(), lightness(p.fabric().colour())));
            }
            return Pressing.of(order, id -> light.getOrDefault(id, 0.5));
        }

        /** The stage whole, with an arrow across each seam for the way it is pressed. */
        public Picture pressed() {
            double whole = Math.max(work.width().inInches(), work.height().inInches());
            List<Picture> parts = new ArrayList<>();
            for (Patch p : work.patches()) {
                parts.add(Exploded.patch(p.shape(), p.fabric().colour().mixed(Colour.WHITE, work instanceof Block ? 0.55 : 0.8), whole));
            }
            double arm = whole / 36;
            for (Pressing.Pressed seam : pressing().seams()) {
                Point tip = seam.seam().middle().plus(seam.toward().times(arm));
                Point tail = seam.seam().middle().minus(seam.toward().times(arm));
                Point side = seam.toward().quarterTurned().times(arm * 0.45);
                Point back = tip.minus(seam.toward().times(arm * 0.7));
                Pen pen = Pen.of(Colour.hex("#8e3b25"), whole / 220);
                parts.add(new Picture.Shape(List.of(Path.through(tail, tip), Path.through(back.plus(side), tip, back.minus(side))), Paint.NONE, pen));
            }
            return Picture.group(parts);
        }

        private static double lightness(Colour c) {
            return c.red() * 0.3 + c.green() * 0.6 + c.blue() * 0.1;
        }

        /** The letter of a piece where it has room; nothing where it has none. */
        private static Picture lettered(String letter, Region shape, Colour ground, double whole) {
            Point at = shape.inside();
            double room = Math.min(shape.bounds().width(), shape.bounds().height());
            double size = Math.min(whole / 24, room / 2.6);
            if (letter.isEmpty() || size < whole / 90) {
                return Picture.EMPTY;
            }
            Colour ink = lightness(ground) > 0.5 ? Colour.hex("#2b2b2b") : Colour.WHITE;
            return new Picture.Lettering(letter, at.plus(0, size * 0.35), size, Picture.Anchor.MIDDLE, Picture.Weight.REGULAR, ink);
        }

        /** Set-in, partial and curved seams, in words; empty if every seam is straight. */
        public String warnings() {
            Map<SeamKind, Long> tally = new TreeMap<>();
            order.steps().stream().filter(s -> s.kind() != SeamKind.STRAIGHT).forEach(s -> tally.merge(s.kind(), 1L, Long::sum));
            List<String> out = new ArrayList<>();
            tally.forEach((k, n) -> out.add(n + " " + k + (n == 1 ? "" : "s")));
            return out.isEmpty() ? "" : "No straight order exists: " + String.join(", ", out) + ".";
        }
    }

    /**
     * Joinings that are all alike, to be sewn in one chain.
     *
     * @param times in the whole quilt
     */
    public record Batch(String what, SeamKind kind, int times) { }

    public SewingPlan {
        stages = List.copyOf(stages);
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
        return new SewingPlan(title, stages);
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

        Finder(Map<String, String> letters) {
            this.letters = letters;
        }

        void visit(String prefix, Patchwork work) {
            if (work.patchCount() == 1) {
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
            org.calicograph.drawing.Table table = org.calicograph.drawing.Table.of("Sewing " + s.name(), "Step", "Sew", "Seam", "Times in a chain");
            int n = 1;
            for (Batch b : s.batches()) {
                table = table.row(n++, b.what(), b.kind().toString(), b.times());
            }
            parts.add(Exhibit.of(table));
        }
        return new Exhibit.Several(parts);
    }
}
