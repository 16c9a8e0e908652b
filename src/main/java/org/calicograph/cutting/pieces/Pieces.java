package org.calicograph.cutting.pieces;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Print;
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

    /** @param lie how a directed piece stands in the quilt; empty where it may be turned */
    private record Kind(Fabric.Bolt cloth, Outline outline, List<String> lie) { }

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
        List<Fabric.Bolt> cloths = ordered.stream().map(g -> g.fabric.bolt()).distinct().toList();
        ordered.sort(java.util.Comparator.comparingInt((Group g) -> cloths.indexOf(g.fabric.bolt()))
                .thenComparingDouble(g -> -Math.rint(1000 * g.shape.area().squareInches())));
        List<Piece> out = new ArrayList<>();
        for (Group g : ordered) {
            Group at = g.atOrigin();
            out.add(new Piece(letter(out.size()), g.fabric, at.shape, method(at, rules), g.ids, at.notches));
        }
        for (Group g : laid.values()) {
            Group at = (isDirected(g.fabric) ? g : g.transformed(Lengthwise.turn(g.shape))).atOrigin();
            Region cut = turnUnder.isZero() ? at.shape : CutOutline.turned(at.shape, turnUnder);
            CutMethod method = new CutMethod.Laid("laid shape", turnUnder, Nesting.of(cut, rules).running(g.fabric.print().direction()));
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
            alike.computeIfAbsent(isTemplate(group, rules) && !isDirected(group.fabric) ? List.of(kind.cloth, kind.outline.steps()) : kind, k -> new ArrayList<>())
                    .add(group);
        });
        List<Group> out = new ArrayList<>();
        for (List<Group> same : alike.values()) {
            Group first = same.get(0);
            boolean stays = isDirected(first.fabric) || same.size() == 1 && (!isTemplate(first, rules) || Lengthwise.hasEdgeOnGrain(first.shape));
            Group one = stays ? first : first.transformed(Lengthwise.turn(first.shape));
            same.stream().filter(g -> g != one).forEach(g -> one.ids.addAll(g.ids));
            out.add(one);
        }
        return out;
    }

    private static boolean isTemplate(Group group, CuttingRules rules) {
        return method(group, rules) instanceof CutMethod.Template;
    }

    private static CutMethod method(Group group, CuttingRules rules) {
        boolean square = group.shape.outer().joined().segments().stream().map(side -> side.to().minus(side.from()))
                .allMatch(side -> Math.min(Math.abs(side.x()), Math.abs(side.y())) < 1e-6);
        return RotaryRules.of(group.shape, rules).running(group.fabric.print().direction(), square, RotaryRules.nesting(group.shape, rules));
    }

    private static boolean isDirected(Fabric fabric) {
        return fabric.print().direction() != Print.Direction.ANY;
    }

    /** The corners of a shape as it stands in the quilt; for a print that runs two ways, whichever of the two ways up comes first. */
    private static List<String> lie(Fabric fabric, Region standing) {
        if (!isDirected(fabric)) {
            return List.of();
        }
        List<String> up = corners(standing);
        if (fabric.print().direction() == Print.Direction.ONE_WAY) {
            return up;
        }
        List<String> down = corners(standing.transformed(Transform.turn(Angle.degrees(180))));
        return up.toString().compareTo(down.toString()) <= 0 ? up : down;
    }

    private static List<String> corners(Region shape) {
        Box box = shape.bounds();
        return shape.outer().joined().segments().stream().map(side -> side.from().minus(new Point(box.left(), box.top())))
                .map(at -> Math.round(at.x() * 200) + " " + Math.round(at.y() * 200)).sorted().toList();
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
            // A print that runs one way stands upright in the quilt, whatever the grain of the block.
            Transform how = isDirected(p.fabric()) ? place : toGrain;
            Region lying = p.shape().transformed(how);
            Kind kind = new Kind(p.fabric().bolt(), Outline.of(lying.outer()), lie(p.fabric(), lying));
            groups.computeIfAbsent(kind, k -> new Group(p.fabric(), p.shape(), marks.getOrDefault(p.id(), List.of())).transformed(how))
                    .ids.add(prefix + p.id());
        }
    }

    private void walk(String prefix, Applique applique, Transform place) {
        walk(prefix, applique.ground(), place);
        for (Patch p : applique.laid()) {
            Region lying = p.shape().transformed(place);
            laid.computeIfAbsent(List.of(p.fabric().bolt(), Outline.of(lying.outer()).steps(), lie(p.fabric(), lying)), k -> new Group(p.fabric(), lying, List.of()))
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
