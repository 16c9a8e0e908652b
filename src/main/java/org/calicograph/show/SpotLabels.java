package org.calicograph.show;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.drafting.Draft;
import org.calicograph.drafting.Figure;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;

/**
 * Where the names of a draft's points stand: beside their points, on the sheet, clear of lines and of each other as far as there is room.
 *
 * <p>Every name is tried in sixteen directions and at two distances, and goes where it covers least; after all are placed, each is
 * tried again with the others in place. A point keeps its place from the first step to the last, since the whole draft is looked at.
 */
final class SpotLabels {

    private static final int DIRECTIONS = 16;
    private static final int ROUNDS = 3;
    private static final double NEAR = 1e-6;
    private static final double AIR = 0.16;

    /** Where a name is written: its start, middle or end, on its base line. */
    record Place(Point base, Picture.Anchor anchor) { }

    private record Stroke(List<Point> way, Box bounds, double weight) { }

    /** One place, with the names of all the points that coincide there. */
    private static final class Spot {
        private final Point at;
        private String names;
        private Point middle;

        Spot(Point at, String names) {
            this.at = at;
            this.names = names;
            this.middle = at;
        }
    }

    private final double size;
    private final Box sheet;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();

    private SpotLabels(Draft draft, double size) {
        this.size = size;
        this.sheet = draft.sheet();
        draft.figures().forEach((name, figure) -> {
            if (figure instanceof Figure.Dot dot) {
                join(name, dot.at());
            } else {
                List<Point> way = path(figure).flattened(size / 8);
                strokes.add(new Stroke(way, Box.around(way), figure instanceof Figure.Ink ? 2 : 1));
            }
        });
    }

    /**
     * Where each name is written, by the place that it names.
     *
     * @param size the height of the letters, in inches
     */
    static Map<Point, Place> places(Draft draft, double size) {
        SpotLabels labels = new SpotLabels(draft, size);
        for (int round = 0; round < ROUNDS; round++) {
            for (Spot spot : labels.spots) {
                spot.middle = labels.best(spot, round > 0);
            }
        }
        Map<Point, Place> places = new LinkedHashMap<>();
        labels.spots.forEach(s -> places.put(s.at, labels.place(s)));
        return places;
    }

    /** A name beside its point begins or ends there, however wide it is written. */
    private Place place(Spot spot) {
        double aside = spot.middle.x() - spot.at.x();
        double half = half(spot.names).x() - size * AIR;
        double base = spot.middle.y() + size * 0.36;
        return aside > half ? new Place(new Point(spot.middle.x() - half, base), Picture.Anchor.START)
                : aside < -half ? new Place(new Point(spot.middle.x() + half, base), Picture.Anchor.END)
                : new Place(new Point(spot.middle.x(), base), Picture.Anchor.MIDDLE);
    }

    private void join(String name, Point at) {
        for (Spot spot : spots) {
            if (spot.at.near(at, NEAR)) {
                spot.names += ", " + name;
                return;
            }
        }
        spots.add(new Spot(at, name));
    }

    private static Path path(Figure figure) {
        if (figure instanceof Figure.Rule rule) {
            return rule.path();
        }
        if (figure instanceof Figure.Round round) {
            return round.path();
        }
        return figure instanceof Figure.Bow bow ? bow.path() : ((Figure.Ink) figure).path();
    }

    /** Half of the room that a name takes, with a little air around it; capitals and figures are about two thirds as wide as high. */
    private Point half(String names) {
        return new Point(size * (0.33 * names.length() + AIR), size * (0.38 + AIR));
    }

    private Point best(Spot spot, boolean othersStand) {
        Point half = half(spot.names);
        Point out = spot.at.minus(sheet.centre());
        Point wish = out.norm() < sheet.width() / 50 ? new Point(0.7, -0.7) : out.unit();
        Point found = spot.at;
        double least = Double.POSITIVE_INFINITY;
        for (int far = 0; far < 2; far++) {
            double gap = size * (0.2 + 0.4 * far);
            for (int i = 0; i < DIRECTIONS; i++) {
                Point way = new Point(Math.cos(2 * Math.PI * i / DIRECTIONS), Math.sin(2 * Math.PI * i / DIRECTIONS));
                double reach = Math.min((half.x() + gap) / Math.max(1e-9, Math.abs(way.x())), (half.y() + gap) / Math.max(1e-9, Math.abs(way.y())));
                Point middle = spot.at.plus(way.times(reach));
                double cost = 0.6 * far + 0.4 * (1 - way.dot(wish)) + covered(spot, middle, half, othersStand);
                if (cost < least - 1e-9) {
                    least = cost;
                    found = middle;
                }
            }
        }
        return found;
    }

    /** How much a name would cover or leave the sheet by. */
    private double covered(Spot spot, Point middle, Point half, boolean othersStand) {
        Box box = around(middle, half);
        double cost = sheet.contains(new Point(box.left(), box.top())) && sheet.contains(new Point(box.right(), box.bottom())) ? 0 : 40;
        for (Stroke stroke : strokes) {
            double inside = stroke.bounds.touches(box) ? inside(stroke.way, box) : 0;
            cost += inside > 0 ? stroke.weight * (1.5 + inside / size) : 0;
        }
        for (Spot other : spots) {
            if (other == spot) {
                if (!othersStand) {
                    break;
                }
                continue;
            }
            cost += around(other.middle, half(other.names)).touches(box) ? 12 : 0;
        }
        for (Spot other : spots) {
            cost += other != spot && box.grownBy(size / 6).contains(other.at) ? 8 : 0;
        }
        return cost;
    }

    private static Box around(Point middle, Point half) {
        return new Box(middle.x() - half.x(), middle.y() - half.y(), middle.x() + half.x(), middle.y() + half.y());
    }

    private static double inside(List<Point> way, Box box) {
        double inside = 0;
        for (int i = 1; i < way.size(); i++) {
            inside += inside(way.get(i - 1), way.get(i), box);
        }
        return inside;
    }

    /** How long a straight line runs within the box, by clipping it at each side in turn. */
    private static double inside(Point from, Point to, Box box) {
        Point way = to.minus(from);
        double enters = 0;
        double leaves = 1;
        double[] towards = {-way.x(), way.x(), -way.y(), way.y()};
        double[] room = {from.x() - box.left(), box.right() - from.x(), from.y() - box.top(), box.bottom() - from.y()};
        for (int i = 0; i < 4; i++) {
            if (towards[i] == 0 && room[i] < 0) {
                return 0;
            }
            if (towards[i] < 0) {
                enters = Math.max(enters, room[i] / towards[i]);
            } else if (towards[i] > 0) {
                leaves = Math.min(leaves, room[i] / towards[i]);
            }
        }
        return leaves > enters ? (leaves - enters) * way.norm() : 0;
    }
}
