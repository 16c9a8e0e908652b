package org.calicograph.workshop.pieces;

import java.util.ArrayList;
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
import org.calicograph.quilt.Assembly;
import org.calicograph.quilt.Block;
import org.calicograph.quilt.Patch;
import org.calicograph.quilt.Patchwork;
import org.calicograph.quilt.Placed;

/** The pieces of a patchwork: its patches with congruent ones counted together. */
public final class Pieces {

    private record Kind(String fabric, Outline outline) { }

    private static final class Group {
        private final Fabric fabric;
        private final Region shape;
        private final List<String> ids = new ArrayList<>();

        Group(Fabric fabric, Region shape) {
            this.fabric = fabric;
            this.shape = shape;
        }
    }

    private final Map<Kind, Group> groups = new LinkedHashMap<>();

    private Pieces() { }

    /** Every piece, fabric by fabric in the order in which the fabrics first appear, the larger pieces first. */
    public static List<Piece> of(Patchwork work, CuttingRules rules) {
        Pieces pieces = new Pieces();
        pieces.walk("", work, Transform.IDENTITY);
        List<Group> ordered = new ArrayList<>(pieces.groups.values());
        List<String> fabrics = ordered.stream().map(g -> g.fabric.name()).distinct().toList();
        ordered.sort(java.util.Comparator.comparingInt((Group g) -> fabrics.indexOf(g.fabric.name()))
                .thenComparingDouble(g -> -Math.rint(1000 * g.shape.area().squareInches())));
        List<Piece> out = new ArrayList<>();
        for (Group g : ordered) {
            Box box = g.shape.bounds();
            Region at = g.shape.transformed(Transform.move(-box.left(), -box.top()));
            out.add(new Piece(letter(out.size()), g.fabric, at, RotaryRules.of(at, rules), g.ids));
        }
        return List.copyOf(out);
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
        Transform toGrain = toGrain(block, place);
        for (Patch p : block.patches()) {
            Region lying = p.shape().transformed(toGrain);
            Kind kind = new Kind(p.fabric().name(), Outline.of(lying.outer()));
            groups.computeIfAbsent(kind, k -> new Group(p.fabric(), lying)).ids.add(prefix + p.id());
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
