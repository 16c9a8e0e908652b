package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Cuts paths at the edge of a region and keeps what lies within. Lines stay lines and arcs stay arcs;
 * what runs along the edge itself is left out. Meetings with the edge are found as in an
 * {@link Arrangement}; within and without are told apart within {@link Region#ACCURACY}.
 */
public final class Trim {

    private final Region region;
    private final STRtree edges = new STRtree();
    private final IndexedPointInAreaLocator area;

    private Trim(Region region) {
        this.region = region;
        for (Path path : region.paths()) {
            for (Segment s : path.segments()) {
                edges.insert(envelope(s.bounds()), s);
            }
        }
        edges.build();
        area = new IndexedPointInAreaLocator(Polygons.of(region, Region.ACCURACY));
    }

    /** Keeps what lies within the region. */
    public static Trim within(Region region) {
        return new Trim(region);
    }

    /** What lies within an upright box, its edge included; a path that does not leave the box stays as it is. */
    public static List<Path> within(Box box, Collection<Path> paths) {
        Box reach = box.grownBy(Point.TOLERANCE);
        Trim trim = within(Region.rectangle(reach));
        List<Path> all = new ArrayList<>();
        for (Path path : paths) {
            Box b = path.bounds();
            if (reach.contains(b.topLeft()) && reach.contains(new Point(b.right(), b.bottom()))) {
                all.add(path);
            } else {
                all.addAll(trim.of(path));
            }
        }
        return all;
    }

    /** True if the point lies within the region, or on its edge as far as a polygon can tell. */
    public boolean covers(Point p) {
        return area.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR;
    }

    /** The parts of the lines that lie inside, in the order of the lines; a line may give several. */
    public List<Path> of(Collection<Path> paths) {
        List<Path> all = new ArrayList<>();
        paths.forEach(p -> all.addAll(of(p)));
        return all;
    }

    /** The parts of the path within, in the order in which the path runs through them. */
    public List<Path> of(Path path) {
        return path.bounds().touches(region.bounds()) ? parts(path, true) : List.of();
    }

    /** What {@link #of} leaves: the parts outside, and those along the edge. */
    public List<Path> outside(Collection<Path> paths) {
        List<Path> all = new ArrayList<>();
        paths.forEach(p -> all.addAll(p.bounds().touches(region.bounds()) ? parts(p, false) : List.of(p)));
        return all;
    }

    private List<Path> parts(Path path, boolean within) {
        List<List<Segment>> runs = new ArrayList<>();
        boolean running = false;
        for (Segment s : path.segments()) {
            double last = 0;
            for (double share : cuts(s)) {
                if (share == 0) {
                    continue;
                }
                if (isWithin(s, last, share) != within) {
                    running = false;
                } else {
                    if (!running) {
                        runs.add(new ArrayList<>());
                    }
                    runs.get(runs.size() - 1).add(last == 0 && share == 1 ? s : s.between(last, share));
                    running = true;
                }
                last = share;
            }
        }
        int count = runs.size();
        if (count > 1 && path.isClosed() && end(runs.get(count - 1)).equals(runs.get(0).get(0).from())) {
            List<Segment> joined = runs.remove(count - 1);
            joined.addAll(runs.get(0));
            runs.set(0, joined);
        }
        return runs.stream().map(Path::new).filter(p -> p.length() > Point.TOLERANCE).toList();
    }

    private static Point end(List<Segment> run) {
        return run.get(run.size() - 1).to();
    }

    private TreeSet<Double> cuts(Segment s) {
        TreeSet<Double> shares = new TreeSet<>(List.of(0.0, 1.0));
        double slack = Math.min(0.25, 1e-9 / Math.max(s.length(), 1e-9));
        for (Object edge : edges.query(envelope(s.bounds()))) {
            for (Crossing c : Crossing.of(s, (Segment) edge)) {
                if (c.first() > slack && c.first() < 1 - slack) {
                    shares.add(c.first());
                }
            }
        }
        return shares;
    }

    /** Looks in two places, since a stretch that is not cut may still graze the edge in one of them. */
    private boolean isWithin(Segment s, double from, double to) {
        return isWithin(s.at((from + to) / 2)) || isWithin(s.at(from + (to - from) * 0.27));
    }

    private boolean isWithin(Point p) {
        Envelope near = new Envelope(p.x() - Point.TOLERANCE, p.x() + Point.TOLERANCE, p.y() - Point.TOLERANCE, p.y() + Point.TOLERANCE);
        for (Object o : edges.query(near)) {
            Segment edge = (Segment) o;
            if (edge.at(Foot.of(p, edge)).same(p)) {
                return false;
            }
        }
        return covers(p);
    }

    private static Envelope envelope(Box box) {
        return new Envelope(box.left() - Point.TOLERANCE, box.right() + Point.TOLERANCE, box.top() - Point.TOLERANCE, box.bottom() + Point.TOLERANCE);
    }
}
