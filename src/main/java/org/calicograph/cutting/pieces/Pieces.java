package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.fabric.Fabric;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Applique;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.patchwork.Placed;
import org.calicograph.seams.Notch;

/** The pieces of a patchwork: its patches with congruent ones counted together. */
public final class Pieces {

    private record Kind(String fabric, Outline outline) { }

    private static final class Group {
        private final Fabric fabric;
        private final Region shape;
        private final List<Notch> notches;
        private final List<String> ids = new ArrayList<>();

        Group(Fabric fabric, Region shape, List<Notch> notches) {
            this.fabric = fabric;
            this.shape = shape;
            this.notches = notches;
        }

        Group transformed(Transform t) {
            return new Group(fabric, shape.transformed(t), notches.stream().map(n -> n.transformed(t)).toList());
        }

        Group atOrigin() {
            Box box = shape.bounds();
            return transformed(Transform.move(-box.left(), -box.top()));
        }
    }

    /** How far the edges of laid shapes are turned under unless told otherwise (common practice for needle-turn work). */
    public static final Length TURN_UNDER = Length.inches(3, 16);

    private final Map<Kind, Group> groups = new LinkedHashMap<>();
    private final Map<List<Object>, Group> laid = new LinkedHashMap<>();
    private final Map<Block, Map<String, List<Notch>>> notches = new IdentityHashMap<>();

    private Pieces() { }

    /** Every piece under the usual turning allowance; shapes laid on grounds come last. */
    public static List<Piece> of(Patchwork work, CuttingRules rules) {
        Pieces pieces = new Pieces();
        pieces.walk("", work, Transform.IDENTITY);
        return pieces.all(rules, TURN_UNDER);
    }

    /** Fabric by fabric in the order in which the fabrics first appear, the larger pieces first; then what is laid. */
    private List<Piece> all(CuttingRules rules, Length turnUnder) {
        List<Group> ordered = merged(rules);
        List<String> fabrics = ordered.stream().map(g -> g.fabric.name()).distinct().toList();
        ordered.sort(java.util.Comparator.comparingInt((Group g) -> fabrics.indexOf(g.fabric.name()))
                .thenComparingDouble(g -> -Math.rint(1000 * g.shape.area().squareInches())));
        List<Piece> out = new ArrayList<>();
        for (Group g : ordered) {
            Group at = g.atOrigin();
            out.add(new Piece(letter(out.size()), g.fabric, at.shape, RotaryRules.of(at.shape, rules), g.ids, at.notches));
        }
        for (Group g : laid.values()) {
            Group at = g.transformed(Lengthwise.turn(g.shape)).atOrigin();
            Box box = at.shape.bounds();
            double extra = 2 * turnUnder.inInches();
            CutMethod method = new CutMethod.Laid("laid shape", turnUnder, RotaryRules.onRuler(box.width() + extra, rules), RotaryRules.onRuler(box.height() + extra, rules));
            out.add(new Piece(letter(out.size()), g.fabric, at.shape, method, g.ids, List.of()));
        }
        return List.copyOf(out);
    }

    /**
     * The groups; those that need a template and differ in nothing but how they lie to the grain are one:
     * the same template serves them all. A template with no edge on the grain takes it along its own
     * length (common practice).
     */
    private List<Group> merged(CuttingRules rules) {
        Map<Object, List<Group>> alike = new LinkedHashMap<>();
        groups.forEach((kind, group) -> {
            alike.computeIfAbsent(isTemplate(group, rules) ? List.of(kind.fabric, kind.outline.steps()) : kind, k -> new ArrayList<>())
                    .add(group);
        });
        List<Group> out = new ArrayList<>();
        for (List<Group> same : alike.values()) {
            Group first = same.get(0);
            boolean stays = same.size() == 1 && (!isTemplate(first, rules) || Lengthwise.hasEdgeOnGrain(first.shape));
            Group one = stays ? first : first.transformed(Lengthwise.turn(first.shape));
            same.stream().filter(g -> g != one).forEach(g -> one.ids.addAll(g.ids));
            out.add(one);
        }
        return out;
    }

    private static boolean isTemplate(Group group, CuttingRules rules) {
        return RotaryRules.of(group.shape, rules) instanceof CutMethod.Template;
    }

    /**
     * The pieces of a ground, and after them the shapes laid on it: congruent ones of a fabric together,
     * however they lie, since their grain does not matter much.
     *
     * @param turnUnder the allowance around a shape; nothing where raw edges are fused
     * @throws IllegalArgumentException if the allowance is below 0
     */
    public static List<Piece> of(Applique applique, CuttingRules rules, Length turnUnder) {
        if (turnUnder.units() < 0) {
            throw new IllegalArgumentException("the allowance to turn under is " + turnUnder + "; use 0 or more");
        }
        Pieces pieces = new Pieces();
        pieces.walk("", applique, Transform.IDENTITY);
        return pieces.all(rules, turnUnder);
    }

    /** A to Z, then AA, AB and so on. */
    private static String letter(int index) {
        return (index < 26 ? "" : letter(index / 26 - 1)) + (char) ('A' + index % 26);
    }

    private void walk(String prefix, Patchwork work, Transform place) {
        if (work instanceof Assembly assembly) {
            for (Placed part : assembly.parts()) {
                walk(prefix + part.id() + "/", part.work(), part.place().then(place));
            }
            return;
        }
        Block block = (Block) work;
        if (block.applique().isPresent()) {
            walk(prefix, block.applique().get(), place);
            return;
        }
        Transform toGrain = toGrain(block, place);
        Map<String, List<Notch>> marks = notches.computeIfAbsent(block, Notch::of);
        for (Patch p : block.patches()) {
            Region lying = p.shape().transformed(toGrain);
            Kind kind = new Kind(p.fabric().name(), Outline.of(lying.outer()));
            groups.computeIfAbsent(kind, k -> new Group(p.fabric(), p.shape(), marks.getOrDefault(p.id(), List.of())).transformed(toGrain))
                    .ids.add(prefix + p.id());
        }
    }

    private void walk(String prefix, Applique applique, Transform place) {
        walk(prefix, applique.ground(), place);
        for (Patch p : applique.laid()) {
            Region lying = p.shape().transformed(place);
            laid.computeIfAbsent(List.of(p.fabric().name(), Outline.of(lying.outer()).steps()), k -> new Group(p.fabric(), lying, List.of()))
                    .ids.add(prefix + p.id());
        }
    }

    /** From the block's own coordinates to a frame with the grain along the axes; mirror images stay mirrored. */
    private static Transform toGrain(Block block, Transform place) {
        if (block.patchCount() == 1 && !block.isRectangular()) {
            return place;
        }
        Segment longest = block.outline().outer().joined().segments().stream()
                .max(java.util.Comparator.comparingDouble(s -> Math.rint(1000 * s.length()))).orElseThrow();
        Point edge = place.ofStep(longest.to().minus(longest.from()));
        boolean fourSquare = block.outline().outer().joined().segments().size() == 4;
        return fourSquare ? place.then(Transform.turn(new Angle(-edge.direction().degrees()))) : place;
    }
}
