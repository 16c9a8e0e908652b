package org.calicograph.piecing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Placed;
import org.calicograph.seams.PartSeams;
import org.calicograph.seams.SeamKind;
import org.calicograph.seams.Unit;

/** What is made within a stage: each different unit once, from which parts, and how often. */
final class Recipes {

    /** One unit, made as its sample is. */
    private static final class Recipe {
        private final Unit.Sewn sample;
        private final Marks marks;
        private final List<Object> parts;
        private final int number;
        private int times;

        Recipe(Unit.Sewn sample, Marks marks, List<Object> parts, int number) {
            this.sample = sample;
            this.marks = marks;
            this.parts = parts;
            this.number = number;
        }

        String letter() {
            return Chain.letter(number);
        }
    }

    private final Stage stage;
    private final Map<String, Placed> placed = new HashMap<>();
    private final List<Recipe> recipes = new ArrayList<>();
    private final Map<String, List<Recipe>> buckets = new HashMap<>();

    Recipes(Stage stage) {
        this.stage = stage;
        if (stage.work() instanceof Assembly assembly) {
            assembly.parts().forEach(part -> placed.put(part.id(), part));
        }
        if (stage.order() instanceof Unit.Sewn whole) {
            recipe(whole).times = stage.count();
            // What is made last is sewn from what is made before it, so each count is whole when its parts are counted.
            for (int i = recipes.size() - 1; i >= 0; i--) {
                Recipe each = recipes.get(i);
                each.parts.forEach(part -> {
                    if (part instanceof Recipe inner) {
                        inner.times += each.times;
                    }
                });
            }
        }
    }

    List<Chain> chains() {
        List<Chain> chains = new ArrayList<>();
        for (Recipe r : recipes) {
            String name = r.number == recipes.size() ? stage.name() : r.letter();
            List<String> parts = r.parts.stream().map(p -> p instanceof Recipe inner ? inner.letter() : (String) p).toList();
            chains.add(new Chain(r.number, name, repeated(parts), how(r.sample), r.sample, r.times));
        }
        return List.copyOf(chains);
    }

    /** The recipe by which the unit is made. */
    private Recipe recipe(Unit.Sewn unit) {
        Marks marks = Marks.of(marked(unit));
        List<Recipe> candidates = buckets.computeIfAbsent(unit.kind() + " " + marks.bucket(), b -> new ArrayList<>());
        for (Recipe each : candidates) {
            if (each.marks.alike(marks)) {
                return each;
            }
        }
        List<Object> parts = new ArrayList<>();
        for (Unit part : unit.parts()) {
            parts.add(part instanceof Unit.Sewn inner ? recipe(inner) : stage.letters().getOrDefault(((Unit.Single) part).id(), ((Unit.Single) part).id()));
        }
        Recipe own = new Recipe(unit, marks, parts, recipes.size() + 1);
        recipes.add(own);
        candidates.add(own);
        return own;
    }

    private List<Marks.Marked> marked(Unit unit) {
        List<Marks.Marked> all = new ArrayList<>();
        for (Unit.Single s : unit.singles()) {
            String letter = stage.letters().getOrDefault(s.id(), s.id());
            Placed part = placed.get(s.id());
            if (part == null || part.work().patchCount() == 1) {
                all.add(new Marks.Marked(letter, s.shape()));
            } else {
                for (Patch p : part.work().patches()) {
                    Region shape = p.shape().transformed(part.place());
                    all.add(new Marks.Marked(letter + " " + KindsOfWork.cloth(p), shape));
                }
            }
        }
        return all;
    }

    /** What a seam that isn't straight asks for; empty for a straight one. */
    private String how(Unit.Sewn s) {
        return switch (s.kind()) {
            case STRAIGHT -> "";
            case CURVED -> "pin at the notches, then ease";
            case SET_IN -> "stop a seam allowance short of every corner and turn there";
            case PARTIAL -> PartSeams.completed(s, stage.order()).map(e -> "sew the whole seam, then complete the seam that was begun at " + recipe(e).letter())
                    .orElse("sew each edge up to the corner");
            case BEGUN -> stage.order().steps().stream().filter(l -> l.kind() == SeamKind.PARTIAL && PartSeams.completed(l, stage.order()).filter(e -> e == s).isPresent())
                    .findFirst().map(l -> "sew only part of the way: leave the end open for the seam at " + recipe(l).letter()).orElse("");
        };
    }

    private static String repeated(List<String> parts) {
        TreeMap<String, Integer> tally = new TreeMap<>();
        parts.forEach(p -> tally.merge(p, 1, Integer::sum));
        if (parts.size() <= 4 && tally.size() > 1) {
            return String.join(" + ", parts);
        }
        List<String> out = new ArrayList<>();
        tally.forEach((p, n) -> out.add(n == 1 ? p : n + " × " + p));
        return String.join(" + ", out);
    }
}
