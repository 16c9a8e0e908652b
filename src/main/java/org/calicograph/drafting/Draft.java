package org.calicograph.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Arrangement;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;

/**
 * A sheet on which something is drafted with compass and straightedge, step by step.
 *
 * @param title   what is being drafted
 * @param sheet   the paper, in inches
 * @param figures everything drawn so far, by name, in drawing order
 * @param steps   how it was drawn
 */
public record Draft(String title, Box sheet, Map<String, Figure> figures, List<Step> steps) {

    public Draft {
        figures = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        steps = List.copyOf(steps);
    }

    /** A blank sheet of the given size, its top left corner at the origin. */
    public static Draft blank(String title, Length width, Length height) {
        return new Draft(title, Box.of(width, height), Map.of(), List.of());
    }

    private Draft with(Map<String, ? extends Figure> made, String words, String... used) {
        Map<String, Figure> all = new LinkedHashMap<>(figures);
        made.forEach((name, figure) -> {
            if (name.isBlank() || all.containsKey(name)) {
                throw new IllegalArgumentException("step " + (steps.size() + 1) + " would draw '" + name
                        + "', which is there already; choose another name than " + String.join(", ", figures.keySet()));
            }
            all.put(name, figure);
        });
        List<Step> more = new ArrayList<>(steps);
        more.add(new Step(words, List.of(used), List.copyOf(made.keySet())));
        return new Draft(title, sheet, all, more);
    }

    private Draft with(String name, Figure figure, String words, String... used) {
        return with(Map.of(name, figure), words, used);
    }

    private Figure figure(String name) {
        Figure figure = figures.get(name);
        if (figure == null) {
            throw new IllegalArgumentException("step " + (steps.size() + 1) + " uses '" + name + "', which is not on the sheet; there are "
                    + String.join(", ", figures.keySet()));
        }
        return figure;
    }

    /** Where the named point lies. */
    public Point at(String name) {
        if (figure(name) instanceof Figure.Dot dot) {
            return dot.at();
        }
        throw wrongKind(name, "a point");
    }

    private IllegalArgumentException wrongKind(String name, String wanted) {
        return new IllegalArgumentException("'" + name + "' in step " + (steps.size() + 1) + " is not " + wanted + "; name one that is");
    }

    private Figure.Rule rule(String name) {
        if (figure(name) instanceof Figure.Rule rule) {
            return rule;
        }
        throw wrongKind(name, "a straight line");
    }

    private Figure.Round round(String name) {
        if (figure(name) instanceof Figure.Round round) {
            return round;
        }
        throw wrongKind(name, "a circle");
    }

    /** Marks a point, in inches from the top left corner of the sheet. */
    public Draft point(String name, Length x, Length y) {
        return with(name, new Figure.Dot(Point.of(x, y)), "Mark " + name + ", " + x + " from the left and " + y + " from the top.");
    }

    /** Marks the middle of the sheet. */
    public Draft middle(String name) {
        return with(name, new Figure.Dot(sheet.centre()), "Mark the middle of the sheet, " + name + ".");
    }

    /** Draws the line between two points. */
    public Draft segment(String name, String from, String to) {
        return with(name, new Figure.Rule(at(from), at(to)), "Rule a line from " + from + " to " + to + ".", from, to);
    }

    /** Draws the line through two points, on beyond both. */
    public Draft line(String name, String from, String to) {
        return with(name, across(at(from), at(to).minus(at(from))), "Rule a line through " + from + " and " + to + ".", from, to);
    }

    /** A line long enough to cross the sheet, through a point. */
    private Figure.Rule across(Point through, Point direction) {
        Point reach = direction.unit().times(sheet.width() + sheet.height());
        return new Figure.Rule(through.minus(reach), through.plus(reach));
    }

    /** Sets the compass on one point and draws the circle through another. */
    public Draft circle(String name, String centre, String through) {
        return with(name, new Figure.Round(at(centre), at(centre).distance(at(through))),
                "Set the compass on " + centre + ", open it to " + through + ", and draw the circle.", centre, through);
    }

    /** Opens the compass to a radius and draws the circle. */
    public Draft circle(String name, String centre, Length radius) {
        return with(name, new Figure.Round(at(centre), radius.inInches()),
                "Open the compass to " + radius + ", set it on " + centre + ", and draw the circle.", centre);
    }

    /**
     * Marks where two figures meet; where they meet more than once, the meeting nearest to a point.
     *
     * @throws IllegalArgumentException if they don't meet, meet off the sheet, or two meetings are equally near
     */
    public Draft crossing(String name, String one, String other, String nearest) {
        Point near = at(nearest);
        List<Point> all = new ArrayList<>(meetings(one, other));
        all.sort(java.util.Comparator.comparingDouble(near::distance));
        if (all.size() > 1 && all.get(1).distance(near) - all.get(0).distance(near) < Point.TOLERANCE) {
            throw new IllegalArgumentException("'" + one + "' and '" + other + "' in step " + (steps.size() + 1) + " meet in two places equally near to "
                    + nearest + ": " + told(all.get(0)) + " and " + told(all.get(1)) + "; name a point that is nearer to the one that you mean");
        }
        Point found = onSheet(all.get(0), one, other);
        return with(name, new Figure.Dot(found), "Mark " + name + " where " + one + " meets " + other + ", near " + nearest + ".", one, other);
    }

    /**
     * Marks the one place where two figures meet.
     *
     * @throws IllegalArgumentException if they meet nowhere, more than once, or off the sheet
     */
    public Draft crossing(String name, String one, String other) {
        List<Point> found = meetings(one, other);
        if (found.size() > 1) {
            throw new IllegalArgumentException("'" + one + "' and '" + other + "' in step " + (steps.size() + 1) + " meet in " + found.size()
                    + " places; name a point that the wanted one is near to");
        }
        return with(name, new Figure.Dot(onSheet(found.get(0), one, other)), "Mark " + name + " where " + one + " meets " + other + ".", one, other);
    }

    private Point onSheet(Point found, String one, String other) {
        if (!sheet.grownBy(Point.TOLERANCE).contains(found)) {
            throw new IllegalArgumentException("'" + one + "' and '" + other + "' in step " + (steps.size() + 1) + " meet at " + told(found)
                    + ", off the sheet of " + Length.inches(sheet.width()) + " x " + Length.inches(sheet.height()) + "; take a larger sheet, or draw them otherwise");
        }
        return found;
    }

    /** A point in inches from the sheet's top left corner. */
    private static String told(Point p) {
        return String.format(java.util.Locale.ROOT, "(%.3f, %.3f)", p.x(), p.y());
    }

    private List<Point> meetings(String one, String other) {
        List<Point> found = path(one).meetings(path(other));
        if (found.isEmpty()) {
            throw new IllegalArgumentException("'" + one + "' and '" + other + "' in step " + (steps.size() + 1) + " don't meet; draw one of them longer");
        }
        return found;
    }

    private Path path(String name) {
        Figure figure = figure(name);
        if (figure instanceof Figure.Rule rule) {
            return rule.path();
        }
        if (figure instanceof Figure.Round round) {
            return round.path();
        }
        if (figure instanceof Figure.Bow bow) {
            return bow.path();
        }
        if (figure instanceof Figure.Ink ink) {
            return ink.path();
        }
        throw wrongKind(name, "a line or circle");
    }

    /** Divides a circle into equal parts from a point on it, clockwise; the points are the name with 1, 2, 3 and so on. */
    public Draft divide(String name, String circle, int parts, String start) {
        Figure.Round round = round(circle);
        if (parts < 2) {
            throw new IllegalArgumentException("'" + circle + "' can't be divided into " + parts + " parts; use 2 or more");
        }
        Point from = at(start);
        if (Math.abs(from.distance(round.centre()) - round.radius()) > 1e-6) {
            throw new IllegalArgumentException("'" + start + "' does not lie on '" + circle + "'; divide from a point on the circle");
        }
        Map<String, Figure> dots = new LinkedHashMap<>();
        for (int i = 0; i < parts; i++) {
            dots.put(name + (i + 1), new Figure.Dot(Transform.turn(Angle.turn(i, parts), round.centre()).of(from)));
        }
        return with(dots, "Divide " + circle + " into " + parts + " equal parts of " + Angle.turn(1, parts) + " from " + start + " on, and mark "
                + name + "1 to " + name + parts + ".", circle, start);
    }

    /** Divides the line between two points into equal parts; the points between are the name with 1, 2, 3 and so on. */
    public Draft divide(String name, String from, String to, int parts) {
        if (parts < 2) {
            throw new IllegalArgumentException("the line from " + from + " to " + to + " can't be divided into " + parts + " parts; use 2 or more");
        }
        Map<String, Figure> dots = new LinkedHashMap<>();
        for (int i = 1; i < parts; i++) {
            dots.put(name + i, new Figure.Dot(at(from).towards(at(to), (double) i / parts)));
        }
        return with(dots, "Lay a ruler slantwise from " + from + ", mark " + parts + " equal steps on it, join the last to " + to
                + ", and bring the others across by parallels: " + name + "1 to " + name + (parts - 1) + ".", from, to);
    }

    /**
     * Marks equal steps of a ruler along the line from one point towards another; the marks are the name with 1, 2, 3 and so on.
     *
     * @throws IllegalArgumentException if there is no step, the step has no length, or the last mark would lie beyond the second point
     */
    public Draft stepOff(String name, String from, String to, Length step, int count) {
        if (count < 1 || step.inInches() <= 0) {
            throw new IllegalArgumentException("'" + name + "' can't be stepped off " + count + " times by " + step + "; use 1 or more steps longer than nothing");
        }
        Point start = at(from);
        double whole = start.distance(at(to));
        double last = step.times(count).inInches();
        // A share of a length may be rounded up by less than the tolerance; each step carries that on, and the last mark ends on the point.
        if (last > whole + (count + 1) * Point.TOLERANCE) {
            throw new IllegalArgumentException("'" + name + "' in step " + (steps.size() + 1) + " can't be stepped off: " + count + " steps of " + step + " reach "
                    + step.times(count) + ", but from " + from + " to " + to + " it is " + distance(from, to) + "; use fewer or shorter steps");
        }
        Map<String, Figure> dots = new LinkedHashMap<>();
        for (int i = 1; i <= count; i++) {
            dots.put(name + i, new Figure.Dot(start.towards(at(to), Math.min(1, step.times(i).inInches() / whole))));
        }
        return with(dots, "Lay the ruler's zero on " + from + " and its edge along to " + to + ", and mark every " + step + ": " + name + "1"
                + (count > 1 ? " to " + name + count : "") + ".", from, to);
    }

    /** Draws the line that halves the distance between two points at a right angle. */
    public Draft bisector(String name, String from, String to) {
        Point middle = at(from).midway(at(to));
        return with(name, across(middle, at(to).minus(at(from)).quarterTurned()), "Open the compass more than halfway from " + from + " to " + to
                + ", strike arcs from both, and rule a line through their two crossings.", from, to);
    }

    /** Draws the line that halves the angle at a point. */
    public Draft angleBisector(String name, String one, String vertex, String other) {
        Point v = at(vertex);
        Point direction = at(one).minus(v).unit().plus(at(other).minus(v).unit());
        if (direction.norm() < 1e-9) {
            direction = at(one).minus(v).quarterTurned();
        }
        return with(name, across(v, direction), "Strike equal arcs from " + vertex + " across both arms, one arc from each crossing, and rule a line from "
                + vertex + " through where they meet.", one, vertex, other);
    }

    /** Draws the line at a right angle to another, through a point. */
    public Draft perpendicular(String name, String line, String through) {
        Figure.Rule rule = rule(line);
        return with(name, across(at(through), rule.to().minus(rule.from()).quarterTurned()),
                "Rule a line through " + through + " at a right angle to " + line + ".", line, through);
    }

    /** Draws the line beside another, through a point. */
    public Draft parallel(String name, String line, String through) {
        Figure.Rule rule = rule(line);
        return with(name, across(at(through), rule.to().minus(rule.from())), "Rule a line through " + through + " parallel to " + line + ".", line, through);
    }

    /** Draws a copy of a figure, turned clockwise about a point. */
    public Draft turned(String name, String what, String about, Angle angle) {
        return with(name, moved(figure(what), Transform.turn(angle, at(about))), "Turn " + what + " by " + angle + " about " + about + ".", what, about);
    }

    /** Draws the mirror image of a figure in a line. */
    public Draft mirrored(String name, String what, String line) {
        Figure.Rule rule = rule(line);
        return with(name, moved(figure(what), Transform.mirror(rule.from(), rule.to().minus(rule.from()).direction())),
                "Fold along " + line + " and trace " + what + ".", what, line);
    }

    private static Figure moved(Figure figure, Transform t) {
        if (figure instanceof Figure.Dot dot) {
            return new Figure.Dot(t.of(dot.at()));
        }
        if (figure instanceof Figure.Rule rule) {
            return new Figure.Rule(t.of(rule.from()), t.of(rule.to()));
        }
        if (figure instanceof Figure.Round round) {
            return new Figure.Round(t.of(round.centre()), round.radius());
        }
        if (figure instanceof Figure.Bow bow) {
            return new Figure.Bow(bow.path().transformed(t));
        }
        return new Figure.Ink(((Figure.Ink) figure).path().transformed(t));
    }

    /** Draws the arc from one point by a second to a third. */
    public Draft arc(String name, String from, String by, String to) {
        Path arc = new Path(List.of(Arc.through(at(from), at(by), at(to))));
        return with(name, new Figure.Bow(arc), "Draw the arc from " + from + " by " + by + " to " + to + ".", from, by, to);
    }

    /** Inks the pattern line through points in turn; it closes if the last point is the first. */
    public Draft ink(String name, String... through) {
        if (through.length < 2) {
            throw new IllegalArgumentException("'" + name + "' can't be inked through " + through.length + " points; name at least 2");
        }
        List<Point> points = new ArrayList<>();
        for (String point : through) {
            points.add(at(point));
        }
        return with(name, new Figure.Ink(Path.through(points)), "Ink " + String.join(" - ", through) + ".", through);
    }

    /** Inks a circle or arc. */
    public Draft inkCurve(String name, String curve) {
        return with(name, new Figure.Ink(path(curve)), "Ink " + curve + ".", curve);
    }

    /** The distance between two points. */
    public Length distance(String one, String other) {
        return Length.inches(at(one).distance(at(other)));
    }

    /** The angle at a point between two others, from 0 to 180 degrees. */
    public Angle angle(String one, String vertex, String other) {
        Point u = at(one).minus(at(vertex));
        Point v = at(other).minus(at(vertex));
        return Angle.radians(Math.atan2(Math.abs(u.cross(v)), u.dot(v)));
    }

    /** The draft as it stood after so many steps. */
    public Draft after(int count) {
        if (count < 0 || count > steps.size()) {
            throw new IllegalArgumentException("the draft '" + title + "' has " + steps.size() + " steps, not " + count + "; use 0 to " + steps.size());
        }
        Map<String, Figure> drawn = new LinkedHashMap<>();
        steps.subList(0, count).forEach(s -> s.made().forEach(n -> drawn.put(n, figures.get(n))));
        return new Draft(title, sheet, drawn, steps.subList(0, count));
    }

    /** The inked lines. */
    public List<Path> inked() {
        return figures.values().stream().filter(Figure.Ink.class::isInstance).map(f -> ((Figure.Ink) f).path()).toList();
    }

    /** The faces between the inked lines. */
    public Arrangement faces() {
        return Arrangement.of(inked());
    }

    @Override
    public String toString() {
        return title + ", drafted in " + steps.size() + " steps";
    }
}
