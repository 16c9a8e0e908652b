package org.calicograph.quilting.filling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.calicograph.geometry.Point;

/**
 * The cells of a {@link Raster} shared out into rooms of about the same size, with doors between them
 * that form a tree: from any room there is just one way to any other.
 *
 * <p>Rooms begin about uneven honeycomb centres; each goes to its nearest centre within the region, and
 * the centres move to the middles of their rooms, a few times over (Lloyd 1982), so that the rooms come
 * out even and follow the region's edge.
 */
public final class Rooms {

    private static final int SETTLING = 6;
    private static final int MOST_DOORS = 3;

    private final Raster raster;
    private final Random random;
    private final double size;
    private final double leastClear;
    private Flood flood;
    private final Map<Long, Door> doors = new HashMap<>();
    private int parts;

    /** Two rooms side by side: how many cell sides they share, and the best one to walk through. */
    private static final class Door {
        private int sides;
        private int cell;
        private int step;
        private double length = Double.POSITIVE_INFINITY;
        private double order;
        private boolean open;
    }

    /**
     * @param size       between the centres of rooms, in inches
     * @param leastClear parts of the raster where no circle of this diameter fits get no room
     */
    public Rooms(Raster raster, double size, double leastClear, Random random) {
        this.raster = raster;
        this.random = random;
        this.size = size;
        this.leastClear = leastClear;
        List<Integer> centres = honeycomb();
        flood = flood(centres);
        for (int i = 0; i < SETTLING; i++) {
            flood = flood(settled());
        }
        openDoors();
    }

    private List<Integer> honeycomb() {
        double down = size * Math.sqrt(3) / 2;
        Map<Long, List<Integer>> byComb = new java.util.TreeMap<>();
        for (int v = 0; v < raster.size(); v++) {
            if (raster.isCell(v) && raster.isOpen(v)) {
                long row = Math.round(raster.y(v) / down);
                long column = Math.round(raster.x(v) / size + (row % 2 == 0 ? 0 : 0.5));
                byComb.computeIfAbsent(row << 32 | column & 0xffffffffL, k -> new ArrayList<>()).add(v);
            }
        }
        double full = size * down / (4 * raster.pitch * raster.pitch);
        List<Integer> centres = new ArrayList<>();
        for (List<Integer> cells : byComb.values()) {
            if (cells.size() > 0.45 * full) {
                centres.add(cells.get(random.nextInt(cells.size())));
            }
        }
        return centres;
    }

    /** The flood from the centres; a part of the region with none gets one, or is closed if it is too small. */
    private Flood flood(List<Integer> centres) {
        Flood f = new Flood(raster);
        centres.forEach(f::sourceAt);
        f.spreadOverCells();
        for (int v = 0; v < raster.size(); v++) {
            if (raster.isCell(v) && raster.isOpen(v) && f.owner(v) < 0) {
                List<Integer> part = part(v);
                int middle = part.stream().max(Comparator.comparingDouble(raster.edge::distance)).orElseThrow();
                if (2 * raster.edge.distance(middle) < leastClear) {
                    part.forEach(raster::close);
                } else {
                    f.sourceAt(middle);
                    f.spreadOverCells();
                }
            }
        }
        return f;
    }

    private List<Integer> part(int first) {
        List<Integer> part = new ArrayList<>(List.of(first));
        java.util.Set<Integer> seen = new java.util.HashSet<>(part);
        for (int i = 0; i < part.size(); i++) {
            for (int step : raster.steps()) {
                int to = part.get(i) + 2 * step;
                if (raster.joins(part.get(i), step) && seen.add(to)) {
                    part.add(to);
                }
            }
        }
        return part;
    }

    /** For each room its cell nearest to its middle. */
    private List<Integer> settled() {
        int n = flood.sources();
        double[] x = new double[n];
        double[] y = new double[n];
        int[] count = new int[n];
        for (int v = 0; v < raster.size(); v++) {
            int room = room(v);
            if (room >= 0) {
                x[room] += raster.x(v);
                y[room] += raster.y(v);
                count[room]++;
            }
        }
        int[] best = new int[n];
        double[] nearest = new double[n];
        java.util.Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (int v = 0; v < raster.size(); v++) {
            int room = room(v);
            if (room >= 0) {
                double d = Math.hypot(raster.x(v) - x[room] / count[room], raster.y(v) - y[room] / count[room]);
                if (d < nearest[room]) {
                    nearest[room] = d;
                    best[room] = v;
                }
            }
        }
        List<Integer> centres = new ArrayList<>();
        for (int room = 0; room < n; room++) {
            if (count[room] > 0) {
                centres.add(best[room]);
            }
        }
        return centres;
    }

    private void openDoors() {
        for (int v = 0; v < raster.size(); v++) {
            for (int step : raster.isCell(v) && raster.isOpen(v) ? new int[] {1, raster.columns} : new int[0]) {
                if (raster.joins(v, step) && room(v) != room(v + 2 * step)) {
                    Door door = doors.computeIfAbsent(pair(room(v), room(v + 2 * step)), k -> new Door());
                    door.sides++;
                    double length = flood.distance(v) + flood.distance(v + 2 * step);
                    if (length < door.length) {
                        door.length = length;
                        door.cell = v;
                        door.step = step;
                    }
                }
            }
        }
        double narrow = 0.35 * size / (2 * raster.pitch);
        List<Map.Entry<Long, Door>> all = new ArrayList<>(new java.util.TreeMap<>(doors).entrySet());
        all.forEach(e -> e.getValue().order = (e.getValue().sides < narrow ? 10 : 0) + random.nextDouble());
        all.sort(Comparator.comparingDouble(e -> e.getValue().order));
        Groups groups = new Groups(flood.sources());
        int[] doorsOf = new int[flood.sources()];
        List<Map.Entry<Long, Door>> later = new ArrayList<>();
        for (Map.Entry<Long, Door> e : all) {
            int one = (int) (e.getKey() >> 32);
            int other = (int) (long) e.getKey();
            if (doorsOf[one] >= MOST_DOORS || doorsOf[other] >= MOST_DOORS || e.getValue().order >= 10) {
                later.add(e);
            } else if (groups.join(one, other)) {
                doorsOf[one]++;
                doorsOf[other]++;
                e.getValue().open = true;
            }
        }
        parts = flood.sources();
        for (Map.Entry<Long, Door> e : later) {
            e.getValue().open = groups.join((int) (e.getKey() >> 32), (int) (long) e.getKey());
        }
        for (Door door : doors.values()) {
            if (door.open) {
                parts--;
            }
        }
    }

    private static long pair(int one, int other) {
        return (long) Math.min(one, other) << 32 | Math.max(one, other);
    }

    /** The room of a cell, or -1. */
    private int room(int point) {
        return raster.isCell(point) && raster.isOpen(point) ? flood.owner(point) : -1;
    }

    /** How many parts of the region there are that hang together. */
    public int parts() {
        return parts;
    }

    /**
     * The distance from each point to the ways through the doors, from centre to centre: all of a part's
     * ways form one tree. A way is straight where it then stays in its room.
     */
    public Flood ways() {
        Flood ways = new Flood(raster);
        for (int v = 0; v < raster.size(); v++) {
            if (room(v) >= 0 && flood.before(v) < 0) {
                ways.sourceAt(v);
            }
        }
        for (Door door : doors.values()) {
            for (int cell : door.open ? new int[] {door.cell, door.cell + 2 * door.step} : new int[0]) {
                ways.sourceAt(door.cell + door.step);
                List<Point> straight = straight(cell);
                straight.forEach(p -> ways.sourceAt(p.x(), p.y()));
                int v = cell;
                while (straight.isEmpty() && flood.before(v) >= 0) {
                    ways.sourceAt(v);
                    ways.sourceAt((v + flood.before(v)) / 2);
                    v = flood.before(v);
                }
            }
        }
        ways.spreadEverywhere();
        return ways;
    }

    /** Points from a cell straight to its room's centre, none if that leaves the room. */
    private List<Point> straight(int cell) {
        Point from = raster.at(cell);
        Point to = flood.sourceOf(cell);
        int steps = (int) Math.ceil(2 * from.distance(to) / raster.pitch);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            Point p = from.towards(to, (double) i / steps);
            for (int side = 0; side < 4; side++) {
                double dx = (side % 2 == 0 ? 0.8 : -0.8) * raster.pitch;
                double dy = (side < 2 ? 0.8 : -0.8) * raster.pitch;
                if (room(cellAt(p.x() + dx, p.y() + dy)) != room(cell)) {
                    return List.of();
                }
            }
            points.add(p);
        }
        return points;
    }

    /** Every square of the grid has just one cell at its corners. */
    private int cellAt(double x, double y) {
        int at = raster.before(x, y);
        return at + at % raster.columns % 2 + at / raster.columns % 2 * raster.columns;
    }

    /**
     * The distance from each point to the walls: sides between rooms with no door, and so many more that every wall hangs
     * together with the region's edge, holes and all. What is left between walls has no way round.
     */
    public Flood walls() {
        int w = raster.columns;
        // The sides that no shortest way crosses join the corners of cells, and the region's edge, to a tree.
        boolean[] side = new boolean[raster.size()];
        int[] degree = new int[raster.size()];
        for (int v = 0; v < raster.size(); v++) {
            for (int step : raster.isCell(v) && raster.isOpen(v) ? new int[] {1, w} : new int[0]) {
                int other = v + 2 * step;
                if (raster.joins(v, step) && flood.before(v) != other && flood.before(other) != v && !isDoorway(v, step)) {
                    side[v + step] = true;
                    int across = step == 1 ? w : 1;
                    degree[v + step + across]++;
                    degree[v + step - across]++;
                }
            }
        }
        // Loose ends within a room, or in an open door, are no walls.
        int[] stack = new int[raster.size() / 2];
        int height = 0;
        for (int v = 0; v < raster.size(); v++) {
            if (degree[v] == 1) {
                stack[height++] = v;
            }
        }
        while (height > 0) {
            int corner = stack[--height];
            if (degree[corner] != 1 || !isFree(corner)) {
                continue;
            }
            for (int step : raster.steps()) {
                if (side[corner + step] && isSoft(corner + step)) {
                    side[corner + step] = false;
                    degree[corner]--;
                    if (--degree[corner + 2 * step] == 1) {
                        stack[height++] = corner + 2 * step;
                    }
                }
            }
        }
        Flood walls = new Flood(raster);
        for (int v = 0; v < raster.size(); v++) {
            if (side[v] || degree[v] > 0) {
                walls.sourceAt(v);
            }
        }
        walls.spreadEverywhere();
        return walls;
    }

    private boolean isDoorway(int cell, int step) {
        int one = room(cell);
        int other = room(cell + 2 * step);
        Door door = one == other ? null : doors.get(pair(one, other));
        return door != null && door.open && door.cell == cell && door.step == step;
    }

    /** Within one room, or between two with an open door. */
    private boolean isSoft(int side) {
        int step = side % raster.columns % 2 == 1 ? 1 : raster.columns;
        int one = room(side - step);
        int other = room(side + step);
        return one == other || doors.get(pair(one, other)).open;
    }

    /** True if the corner and all round it is clear of the region's edge. */
    private boolean isFree(int corner) {
        int w = raster.columns;
        for (int step : new int[] {0, 1, -1, w, -w, w + 1, w - 1, -w + 1, -w - 1}) {
            if (step != 0 && !raster.isOpen(corner + step)) {
                return false;
            }
        }
        return true;
    }
}
