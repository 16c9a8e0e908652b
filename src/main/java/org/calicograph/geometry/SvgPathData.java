package org.calicograph.geometry;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.measure.Angle;

/**
 * Path data as SVG has it (W3C, SVG 2, chapter 9): M L H V C S Q T A and Z, absolute and relative. It is
 * read strictly: what the grammar does not allow is refused with its place, not drawn in part.
 *
 * <p>Lines, cubics and arcs of circles are exact. A quadratic becomes the cubic that is the same curve; an
 * arc of an ellipse becomes cubics within 1e-4 of its larger radius. One unit is one inch: scale what is
 * read.
 */
public final class SvgPathData {

    private final String text;
    private int at;
    private final List<Path> paths = new ArrayList<>();
    private List<Segment> run = new ArrayList<>();
    private Point start = Point.ORIGIN;
    private Point here = Point.ORIGIN;
    /** The last control point, where a smooth curve leads on from it. */
    private Point control = Point.ORIGIN;
    private char last = 'M';

    private SvgPathData(String text) {
        this.text = text;
    }

    /**
     * The paths that the data draws, one for each move; those without a segment are left out.
     *
     * @throws IllegalArgumentException naming the place and what belongs there, if the data is not in order
     */
    public static List<Path> read(String text) {
        SvgPathData data = new SvgPathData(text);
        data.space();
        if (data.at == text.length()) {
            return List.of();
        }
        if (text.charAt(data.at) != 'M' && text.charAt(data.at) != 'm') {
            throw data.fault("begins with '" + text.charAt(data.at) + "'; begin it with M and a point");
        }
        while (data.at < text.length()) {
            data.command(text.charAt(data.at));
        }
        data.finish();
        return List.copyOf(data.paths);
    }

    private IllegalArgumentException fault(String what) {
        int from = Math.max(0, Math.min(at, text.length()) - 20);
        return new IllegalArgumentException("the path data, at character " + (at + 1) + " behind '"
                + text.substring(from, Math.min(at, text.length())).replaceAll("\\s", " ") + "', " + what);
    }

    private void command(char letter) {
        if ("MmLlHhVvCcSsQqTtAaZz".indexOf(letter) < 0) {
            throw fault("has '" + letter + "'; use a command: M L H V C S Q T A or Z, or a number for the one before");
        }
        at++;
        space();
        boolean relative = Character.isLowerCase(letter);
        char kind = Character.toUpperCase(letter);
        if (kind == 'Z') {
            close();
            last = 'Z';
            return;
        }
        do {
            draw(kind, relative ? here : Point.ORIGIN);
            last = kind;
            if (kind == 'M') {
                kind = 'L';
            }
        } while (more());
    }

    private void draw(char kind, Point base) {
        if (kind != 'M' && last == 'Z') {
            start = here;
        }
        switch (kind) {
            case 'M' -> {
                finish();
                here = point(base);
                start = here;
            }
            case 'L' -> line(point(base));
            case 'H' -> line(new Point(base.x() + number(), here.y()));
            case 'V' -> line(new Point(here.x(), base.y() + number()));
            case 'C' -> cubic(point(base), point(base), point(base));
            case 'S' -> cubic(last == 'C' || last == 'S' ? reflected() : here, point(base), point(base));
            case 'Q' -> quadratic(point(base), point(base));
            case 'T' -> quadratic(last == 'Q' || last == 'T' ? reflected() : here, point(base));
            default -> arc(number(), number(), number(), flag(), flag(), point(base));
        }
    }

    private Point reflected() {
        return here.times(2).minus(control);
    }

    private void line(Point to) {
        if (!to.equals(here)) {
            run.add(new Line(here, to));
        }
        here = to;
    }

    private void cubic(Point lead, Point trail, Point to) {
        if (!(lead.equals(here) && trail.equals(here) && to.equals(here))) {
            run.add(new Cubic(here, lead, trail, to));
        }
        control = trail;
        here = to;
    }

    private void quadratic(Point by, Point to) {
        cubic(here.towards(by, 2.0 / 3), to.towards(by, 2.0 / 3), to);
        control = by;
    }

    /** By the standard's own rules: radii that are too small grow, and a radius of 0 is a line. */
    private void arc(double across, double down, double turned, boolean large, boolean clockwise, Point to) {
        double rx = Math.abs(across);
        double ry = Math.abs(down);
        if (to.equals(here)) {
            return;
        }
        if (rx == 0 || ry == 0) {
            line(to);
            return;
        }
        // In a frame where the ellipse is a circle of radius 1.
        Transform round = Transform.turn(Angle.degrees(-turned)).then(Transform.scale(1 / rx, 1 / ry));
        Point from = round.of(here);
        Point end = round.of(to);
        double half = from.distance(end) / 2;
        double angle = half >= 1 ? Math.PI / 2 : Math.asin(half);
        double sweep = large ? 2 * Math.PI - 2 * angle : 2 * angle;
        double bulge = (clockwise ? 1 : -1) * Math.tan(sweep / 4);
        if (Math.abs(bulge) < 1e-9) {
            line(to);
        } else if (rx == ry) {
            run.add(new Arc(here, to, bulge));
        } else {
            Transform back = round.inverse();
            List<Cubic> pieces = new Arc(from, end, bulge).asCubics();
            for (int i = 0; i < pieces.size(); i++) {
                Point next = i == pieces.size() - 1 ? to : back.of(pieces.get(i).to());
                cubic(back.of(pieces.get(i).lead()), back.of(pieces.get(i).trail()), next);
            }
        }
        here = to;
    }

    private void close() {
        line(start);
        if (!run.isEmpty()) {
            paths.add(new Path(run));
        }
        run = new ArrayList<>();
        here = start;
    }

    private void finish() {
        if (!run.isEmpty()) {
            paths.add(new Path(run));
        }
        run = new ArrayList<>();
    }

    private void space() {
        while (at < text.length() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private void separator() {
        space();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            space();
        }
    }

    private boolean more() {
        space();
        if (at == text.length() || Character.isLetter(text.charAt(at))) {
            return false;
        }
        separator();
        return true;
    }

    private Point point(Point base) {
        double x = number();
        separator();
        return new Point(base.x() + x, base.y() + number());
    }

    private double number() {
        separator();
        int from = at;
        if (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        int whole = digits();
        int parts = 0;
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            parts = digits();
        }
        if (whole + parts == 0) {
            at = from;
            throw fault(at == text.length() ? "ends where a number belongs; write it" : "has '" + text.charAt(at) + "' where a number belongs; write a number");
        }
        if (at < text.length() && "eE".indexOf(text.charAt(at)) >= 0) {
            int before = at;
            at++;
            if (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
                at++;
            }
            if (digits() == 0) {
                at = before;
            }
        }
        double value = Double.parseDouble(text.substring(from, at));
        if (!(Math.abs(value) < 1e9)) {
            throw fault("has a number beyond all measure, " + text.substring(from, at) + "; use less than 1e9");
        }
        return value;
    }

    private int digits() {
        int from = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from;
    }

    private boolean flag() {
        separator();
        if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
            return text.charAt(at++) == '1';
        }
        throw fault("has no flag of an arc where one belongs; write 0 or 1");
    }
}
