package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.covering.Cover;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;

/**
 * Cuts patchwork at the edge of an upright rectangle. Patches with straight sides are cut as polygons,
 * those with curves in an {@link Arrangement}, so that lines stay lines and arcs stay arcs. What is cut
 * alike is cut once, and its copies are one block.
 */
final class Shears {

    /** How far a part may reach over the edge and still be whole, in inches. */
    private static final double SLACK = 1e-6;

    private final Box frame;
    /** By the work itself, and by the corners and the middles of the sides of what is left of its outline, to a millionth of an inch. */
    private final Map<Patchwork, Map<List<Long>, List<Cutting>>> done = new IdentityHashMap<>();

    /** A piece of a work, and where its top left corner lay on it. */
    private record Cutting(Patchwork work, Point corner) { }

    Shears(Box frame) {
        this.frame = frame;
    }

    /** What is left of a part: itself if it lies within, nothing if it lies outside, else its pieces. */
    List<Placed> cut(Placed part) {
        return cut(part.id(), part.work(), part.place());
    }

    private List<Placed> cut(String id, Patchwork work, Transform place) {
        Box box = work.outline().transformed(place).bounds();
        if (box.left() >= frame.left() - SLACK && box.right() <= frame.right() + SLACK
                && box.top() >= frame.top() - SLACK && box.bottom() <= frame.bottom() + SLACK) {
            return List.of(new Placed(id, work, place));
        }
        if (box.right() <= frame.left() + SLACK || box.left() >= frame.right() - SLACK
                || box.bottom() <= frame.top() + SLACK || box.top() >= frame.bottom() - SLACK) {
            return List.of();
        }
        Region edge = Region.rectangle(frame).transformed(place.inverse());
        List<Region> outlines = clip(work.outline(), edge);
        Map<List<Long>, List<Cutting>> known = done.computeIfAbsent(work, w -> new HashMap<>());
        List<Long> looks = corners(outlines);
        List<Cutting> pieces = known.get(looks);
        if (pieces == null) {
            pieces = pieces(work, outlines, edge, place);
            known.put(looks, pieces);
        }
        List<Placed> placed = new ArrayList<>();
        for (Cutting piece : pieces) {
            String name = pieces.size() == 1 ? id : id + "-" + (placed.size() + 1);
            placed.add(new Placed(name, piece.work(), Transform.move(piece.corner()).then(place)));
        }
        return placed;
    }

    private static List<Long> corners(List<Region> outlines) {
        List<Long> corners = new ArrayList<>();
        for (Region outline : outlines) {
            for (Segment s : outline.outer().segments()) {
                // The middle tells an arc from another between the same corners.
                for (Point p : List.of(s.from(), s.middle())) {
                    corners.add(Math.round(p.x() * 1e6));
                    corners.add(Math.round(p.y() * 1e6));
                }
            }
        }
        return corners;
    }

    private List<Cutting> pieces(Patchwork work, List<Region> outlines, Region edge, Transform place) {
        List<Cutting> pieces = new ArrayList<>();
        for (Region outline : outlines) {
            boolean only = outlines.size() == 1;
            Patchwork piece = work instanceof Assembly a ? piece(a, outline, place, only) : piece((Block) work, outline, edge, only);
            pieces.add(new Cutting(piece, outline.bounds().topLeft()));
        }
        return pieces;
    }

    private Patchwork piece(Assembly work, Region outline, Transform place, boolean only) {
        List<Placed> parts = new ArrayList<>();
        for (Placed part : work.parts()) {
            for (Placed p : cut(part.id(), part.work(), part.place().then(place))) {
                Placed own = new Placed(p.id(), p.work(), p.place().then(place.inverse()));
                if (only || outline.contains(own.outline().inside())) {
                    parts.add(own);
                }
            }
        }
        return Assembly.of(partial(work), outline, parts);
    }

    private static Patchwork piece(Block work, Region outline, Region edge, boolean only) {
        List<Patch> patches = new ArrayList<>();
        for (Patch patch : work.patches()) {
            List<Region> left = clip(patch.shape(), edge);
            for (int i = 0; i < left.size(); i++) {
                if (only || outline.contains(left.get(i).inside())) {
                    patches.add(new Patch(left.size() == 1 ? patch.id() : patch.id() + "-" + (i + 1), patch.role(), patch.fabric(), left.get(i)));
                }
            }
        }
        return Block.of(partial(work), outline, patches);
    }

    private static String partial(Patchwork work) {
        return work.name().endsWith(", partial") ? work.name() : work.name() + ", partial";
    }

    /** What lies in both; slivers that the covering law doesn't count are left out. */
    private static List<Region> clip(Region shape, Region edge) {
        if (!shape.bounds().touches(edge.bounds())) {
            return List.of();
        }
        List<Region> both;
        if (shape.isStraight()) {
            both = shape.intersection(edge);
        } else {
            List<Path> lines = new ArrayList<>(shape.paths());
            lines.addAll(edge.paths());
            both = Arrangement.of(lines).faces().stream().filter(f -> {
                Point inside = f.inside();
                return shape.contains(inside) && edge.contains(inside);
            }).toList();
        }
        return both.stream().filter(r -> 2 * r.area().squareInches() / r.perimeter() > Cover.TOLERANCE / 2)
                .map(r -> new Region(begun(r.outer().joined()), r.holes().stream().map(Shears::begun).toList())).toList();
    }

    /** The same closed path begun at its topmost corner, the leftmost of those: faces come with no order of their own. */
    private static Path begun(Path path) {
        List<Segment> run = path.segments();
        int first = 0;
        for (int i = 1; i < run.size(); i++) {
            Point p = run.get(i).from();
            Point best = run.get(first).from();
            if (p.y() < best.y() - SLACK || p.y() < best.y() + SLACK && p.x() < best.x() - SLACK) {
                first = i;
            }
        }
        List<Segment> turned = new ArrayList<>(run.subList(first, run.size()));
        turned.addAll(run.subList(0, first));
        return new Path(turned);
    }
}
