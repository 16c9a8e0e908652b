package org.calicograph.quilting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Polygons;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.quilting.filling.Contour;
import org.calicograph.quilting.filling.Flood;
import org.calicograph.quilting.filling.Raster;
import org.calicograph.quilting.filling.Rooms;
import org.calicograph.quilting.filling.SmoothRound;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * A wandering line that fills a region evenly and never crosses itself (stippling, when small).
 *
 * <p>The region is shared out into rooms of one size, and a random tree of doors joins them. The line
 * runs half way between the ways through the doors and the walls left standing, holes and edge among
 * them: a tree has one outline, so the line is one round that closes on itself and can begin anywhere,
 * however many holes there are. Then it is smoothed, by less than half its distance from what it runs
 * between. The largest gap is measured, and the rooms made smaller until it holds. Costs n log n in the
 * area over the square of the gap.
 *
 * <p>Not promised: where the region is narrower than about a quarter of the gap allowed, the line does not
 * pass, and what lies beyond has a round of its own, or none where no gap above the limit is left.
 */
public final class Meander {

    /** Grid steps between the centres of rooms, try by try: another wandering first, then finer, where the round falls apart. */
    private static final int[] FINENESS = {12, 12, 12, 20, 32};
    private static final double MOST = 2e5;

    private static final int SPECK = 24;
    /** How often spurs are sent out, how far of the way, and how many grid steps they stay clear of what they must not meet. */
    private static final int MOST_SPURS = 6;
    private static final double SPUR = 0.72;
    private static final double CLEAR = 2.3;
    /** How far a line may lie out of its region, in inches, and how small a part of it is filled by itself, in gaps squared. */
    private static final double STRAY = 1e-3;
    private static final double SMALLEST = 0.2;

    private final Raster raster;
    private final int parts;
    private final Flood ways;
    private final Flood walls;

    private Meander(Raster raster, Rooms rooms) {
        this.raster = raster;
        this.parts = rooms.parts();
        this.ways = rooms.ways();
        this.walls = rooms.walls();
    }

    /** The lines, and the gap that they leave. */
    public record Fill(List<Path> lines, Gap gap) {
        public Fill {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param widest no circle wider than this fits between the lines and the region's edge
     * @param seed   another one gives another wandering
     */
    public static Fill fill(Region region, Length widest, long seed) {
        if (!widest.isPositive()) {
            throw new IllegalArgumentException("a meander with gaps of at most " + widest + " can't be sewn; use a width above 0");
        }
        Box b = region.bounds();
        double limit = widest.inInches();
        if (b.width() * b.height() / (limit * limit) > MOST) {
            throw new IllegalArgumentException("a meander with gaps of at most " + widest + " over " + Length.inches(b.width()) + " x "
                    + Length.inches(b.height()) + " is too fine to draw at once; allow wider gaps, or fill it part by part");
        }
        Length accuracy = widest.times(0.02);
        double aim = limit - 2 * accuracy.inInches();
        double size = limit * 1.02;
        while (true) {
            List<Path> lines = within(region, size, aim, seed);
            Gap gap = Gap.largest(region, lines, accuracy);
            if (gap.diameter() <= aim) {
                return new Fill(lines, gap);
            }
            size *= Math.max(0.75, Math.min(0.98, aim / gap.diameter()));
        }
    }

    /** Lines that stay in the region: where the rounding of a turn would leave it, as in a point with hardly room to turn, they keep off its edge. */
    private static List<Path> within(Region region, double size, double aim, long seed) {
        List<Path> lines = lines(region, size, aim, seed);
        Polygon ground = Polygons.of(region, STRAY);
        double out = out(lines, ground);
        for (double off = Math.max(0.01, 1.5 * out); out > STRAY && off < size; off *= 1.6) {
            List<Path> closer = new ArrayList<>();
            for (Region part : Polygons.regions(ground.buffer(-off, 4))) {
                if (part.area().squareInches() > SMALLEST * size * size) {
                    closer.addAll(lines(part, size, aim, seed));
                }
            }
            if (!closer.isEmpty()) {
                lines = closer;
                out = out(closer, ground);
            }
        }
        return lines;
    }

    /** How far lines stray out of the ground, in inches. */
    private static double out(List<Path> lines, Polygon ground) {
        PreparedGeometry near = PreparedGeometryFactory.prepare(ground.buffer(STRAY));
        double most = 0;
        for (Path line : lines) {
            Geometry drawn = Polygons.FACTORY.createLineString(Polygons.coordinates(line.flattened(STRAY)));
            if (!near.covers(drawn)) {
                for (Coordinate c : drawn.getCoordinates()) {
                    most = Math.max(most, ground.distance(Polygons.FACTORY.createPoint(c)));
                }
                most = Math.max(most, 1.01 * STRAY);
            }
        }
        return most;
    }

    private static List<Path> lines(Region region, double size, double aim, long seed) {
        List<SmoothRound> lines = List.of();
        for (int i = 0; i < FINENESS.length; i++) {
            Raster raster = new Raster(region, size / FINENESS[i]);
            Rooms rooms = new Rooms(raster, size, 0.85 * aim, new Random(seed + i * 7919L));
            lines = new Meander(raster, rooms).wander(aim);
            if (lines.size() <= rooms.parts()) {
                break;
            }
        }
        return lines.stream().map(SmoothRound::path).toList();
    }

    /** The rounds, with spurs sent out to where they leave too much room. */
    private List<SmoothRound> wander(double aim) {
        Contour contour = new Contour(raster, ways, walls);
        List<SmoothRound> rounds = rounds(contour);
        for (int i = 0; i < MOST_SPURS && rounds.size() <= parts; i++) {
            List<Integer> gaps = gaps(rounds, aim);
            if (gaps.isEmpty()) {
                break;
            }
            for (int v : gaps) {
                spur(v, contour.isWallSide(v));
            }
            contour = new Contour(raster, ways, walls);
            List<SmoothRound> more = rounds(contour);
            if (more.size() > parts) {
                break; // a spur has cut something off: the rounds before it stand
            }
            rounds = more;
        }
        return rounds;
    }

    /** The rounds of a contour, less specks smaller than a room where a way and a wall come within a grid step. */
    private List<SmoothRound> rounds(Contour contour) {
        List<SmoothRound> rounds = new ArrayList<>(contour.rounds());
        rounds.sort(Comparator.comparingInt(r -> -r.points().size()));
        while (rounds.size() > parts && rounds.get(rounds.size() - 1).points().size() < SPECK) {
            rounds.remove(rounds.size() - 1);
        }
        return rounds;
    }

    /** The middles of gaps wider than the aim, widest first, none near another. */
    private List<Integer> gaps(List<SmoothRound> rounds, double aim) {
        Flood lines = new Flood(raster);
        rounds.forEach(r -> r.points().forEach(p -> lines.sourceAt(p.x(), p.y())));
        lines.spreadEverywhere();
        double[] clear = new double[raster.size()];
        List<Integer> wide = new ArrayList<>();
        for (int v = 0; v < clear.length; v++) {
            clear[v] = raster.isInside(v) ? Math.min(lines.distance(v), raster.edge.distance(v)) : 0;
            if (clear[v] > aim / 2 - raster.pitch / 4) {
                wide.add(v);
            }
        }
        wide.sort(Comparator.comparingDouble(v -> -clear[v]));
        List<Integer> gaps = new ArrayList<>();
        Set<Long> taken = new HashSet<>();
        for (int v : wide) {
            long column = Math.round(raster.x(v) / aim * 2);
            long row = Math.round(raster.y(v) / aim * 2);
            boolean free = true;
            for (long c = column - 1; c <= column + 1; c++) {
                for (long r = row - 1; r <= row + 1; r++) {
                    free &= !taken.contains(c << 32 | r & 0xffffffffL);
                }
            }
            if (free) {
                gaps.add(v);
                taken.add(column << 32 | row & 0xffffffffL);
            }
        }
        return gaps;
    }

    /**
     * A blind way (or a wall) from one near by towards the middle of a gap, as near as may be without
     * meeting a wall (or a way).
     */
    private void spur(int point, boolean wallSide) {
        Point gap = raster.at(point);
        double reach = (wallSide ? ways : walls).distance(point);
        if (!Double.isFinite(reach)) {
            return; // a single room has no walls that a spur could keep clear of; smaller rooms will
        }
        List<Point> best = List.of();
        double nearest = reach;
        for (int i = 0; i <= 8; i++) {
            Point look = i == 0 ? gap : gap.plus(Point.polar(0.6 * reach, Angle.turn(i, 8)));
            int at = raster.before(look.x(), look.y());
            if (at < 0 || at >= raster.size() || !raster.isInside(at)) {
                continue;
            }
            Flood from = wallSide ? ways : raster.edge.distance(at) < walls.distance(at) ? raster.edge : walls;
            List<Point> spur = spur(from.sourceOf(at), gap, wallSide);
            if (!spur.isEmpty() && spur.get(spur.size() - 1).distance(gap) < nearest - raster.pitch) {
                nearest = spur.get(spur.size() - 1).distance(gap);
                best = spur;
            }
        }
        Flood own = wallSide ? ways : walls;
        best.forEach(p -> own.sourceAt(p.x(), p.y()));
        own.spreadEverywhere();
    }

    private List<Point> spur(Point from, Point gap, boolean wallSide) {
        Flood opposite = wallSide ? walls : ways;
        double length = from.distance(gap);
        int steps = (int) Math.ceil(2 * SPUR * length / raster.pitch);
        List<Point> spur = new ArrayList<>();
        for (int i = 1; i <= steps; i++) {
            Point p = from.towards(gap, SPUR * i / steps);
            int at = raster.before(p.x(), p.y());
            if (opposite.distance(at) < CLEAR * raster.pitch || wallSide && raster.edge.distance(at) < CLEAR * raster.pitch) {
                break;
            }
            spur.add(p);
        }
        return spur;
    }
}
