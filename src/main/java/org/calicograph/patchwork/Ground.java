package org.calicograph.patchwork;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.covering.Cover;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.Segment;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Length;

/**
 * The ground between a block and the square that it is set in.
 *
 * <p>The ground is parted along rays from the middle through the block's tips, so that a star whose
 * points are split along their middles can be sewn in wedges with straight seams. A block without tips,
 * such as a circle, has its ground parted towards the middles of the square's sides.
 */
final class Ground {

    private Ground() { }

    static Block square(Block block, Length side, Role role) {
        Box box = block.outline().bounds();
        double s = side.inInches();
        if (box.width() > s + Cover.TOLERANCE || box.height() > s + Cover.TOLERANCE) {
            throw new DesignException("'" + block.name() + "' is " + block.width() + " x " + block.height()
                    + " and can't be set in a square of " + side + "; make the square larger or scale the block down");
        }
        Box sheet = new Box(0, 0, s, s);
        Block moved = block.moved(Transform.move(sheet.centre().minus(middle(block, s))));
        List<Patch> patches = new ArrayList<>(moved.patches());
        int number = patches.size();
        for (Region ground : pieces(moved.outline().outer(), sheet)) {
            patches.add(Patch.of("ground" + (patches.size() - number + 1), role, ground));
        }
        return Block.of(block.name(), Region.rectangle(sheet), patches);
    }

    /** A star of an odd number of points turns about its centre of gravity; other blocks are centred by their bounds. */
    private static Point middle(Block block, double side) {
        Box box = block.outline().bounds();
        Point gravity = block.outline().centroid();
        double reach = side / 2 + Cover.TOLERANCE / 4;
        boolean fits = gravity.x() - box.left() <= reach && box.right() - gravity.x() <= reach
                && gravity.y() - box.top() <= reach && box.bottom() - gravity.y() <= reach;
        return fits ? gravity : box.centre();
    }

    private static List<Region> pieces(Path outline, Box sheet) {
        List<Segment> run = outline.segments();
        List<Integer> tips = tips(run, sheet.centre());
        List<Region> pieces = new ArrayList<>();
        for (int t = 0; t < tips.size(); t++) {
            int from = tips.get(t);
            int to = tips.get((t + 1) % tips.size());
            List<Segment> inner = new ArrayList<>();
            for (int i = from; i != to || inner.isEmpty(); i = (i + 1) % run.size()) {
                inner.add(run.get(i));
            }
            piece(inner, sheet, pieces);
        }
        return pieces;
    }

    /** One piece: out along the first tip's ray, round the sheet's edge, in along the other's, and back along the block. */
    private static void piece(List<Segment> inner, Box sheet, List<Region> into) {
        Point first = inner.get(0).from();
        Point last = inner.get(inner.size() - 1).to();
        List<Point> rim = new ArrayList<>();
        Point out = exit(first, sheet);
        Point in = exit(last, sheet);
        rim.add(first);
        add(rim, out);
        double start = along(out, sheet);
        double end = along(in, sheet);
        if (end <= start) {
            end += 4;
        }
        for (int corner = (int) Math.floor(start) + 1; corner < end; corner++) {
            add(rim, corner(corner % 4, sheet));
        }
        add(rim, in);
        add(rim, last);
        List<Segment> around = new ArrayList<>();
        for (int i = 1; i < rim.size(); i++) {
            around.add(new Line(rim.get(i - 1), rim.get(i)));
        }
        for (int i = inner.size() - 1; i >= 0; i--) {
            around.add(inner.get(i).reversed());
        }
        Path path = new Path(around);
        if (Math.abs(path.signedArea()) > 1e-6) {
            into.add(Region.of(path.joined()));
        }
    }

    private static void add(List<Point> rim, Point next) {
        Point last = rim.get(rim.size() - 1);
        if (!last.near(next, 1e-7)) {
            rim.add(next);
        } else if (rim.size() > 1) {
            rim.set(rim.size() - 1, next);
        }
    }

    /** Indices of the segments that begin at a tip: a sharp corner that no neighbour outreaches. */
    private static List<Integer> tips(List<Segment> run, Point middle) {
        int n = run.size();
        List<Integer> tips = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point in = run.get((i + n - 1) % n).heading(1).unit();
            Point out = run.get(i).heading(0).unit();
            if (in.cross(out) > 1e-6) {
                tips.add(i);
            }
        }
        if (tips.size() >= 3) {
            return tips;
        }
        List<Integer> nearest = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            Point towards = new Point[] {new Point(0, -1), new Point(1, 0), new Point(0, 1), new Point(-1, 0)}[side];
            int best = 0;
            for (int i = 1; i < n; i++) {
                if (run.get(i).from().minus(middle).unit().dot(towards) > run.get(best).from().minus(middle).unit().dot(towards) + 1e-9) {
                    best = i;
                }
            }
            if (!nearest.contains(best)) {
                nearest.add(best);
            }
        }
        nearest.sort(null);
        return nearest;
    }

    /** Where the ray from the middle of the sheet through a point leaves the sheet. */
    private static Point exit(Point through, Box sheet) {
        Point m = sheet.centre();
        Point d = through.minus(m);
        double reach = Math.min(sheet.width() / 2 / Math.max(Math.abs(d.x()), 1e-300), sheet.height() / 2 / Math.max(Math.abs(d.y()), 1e-300));
        return m.plus(d.times(reach));
    }

    /** How far round the edge a point lies, clockwise from the top left corner, in sides. */
    private static double along(Point p, Box sheet) {
        double x = (p.x() - sheet.left()) / sheet.width();
        double y = (p.y() - sheet.top()) / sheet.height();
        if (Math.abs(y) < 1e-9) {
            return x;
        }
        if (Math.abs(x - 1) < 1e-9) {
            return 1 + y;
        }
        if (Math.abs(y - 1) < 1e-9) {
            return 3 - x;
        }
        return 4 - y;
    }

    private static Point corner(int index, Box sheet) {
        return switch (index) {
            case 0 -> new Point(sheet.left(), sheet.top());
            case 1 -> new Point(sheet.right(), sheet.top());
            case 2 -> new Point(sheet.right(), sheet.bottom());
            default -> new Point(sheet.left(), sheet.bottom());
        };
    }
}
