package org.calicograph.notebook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Line;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Segment;

/**
 * A path as one line of text: {@code M x y} to begin, then {@code L x y} for a line, {@code A bulge x y}
 * for an arc and {@code C x y x y x y} for a cubic, in inches to six decimals and bulges to nine.
 */
final class PathText {

    private PathText() { }

    static String write(Path path) {
        StringBuilder out = new StringBuilder("M");
        point(path.start(), out);
        for (Segment s : path.segments()) {
            if (s instanceof Arc a && !rounded(a.from()).equals(rounded(a.to())) && Math.abs(a.bulge()) > 1e-9) {
                out.append(" A ").append(decimal(a.bulge(), 9));
                point(a.to(), out);
            } else if (s instanceof Cubic c) {
                out.append(" C");
                point(c.lead(), out);
                point(c.trail(), out);
                point(c.to(), out);
            } else {
                out.append(" L");
                point(s.to(), out);
            }
        }
        return out.toString();
    }

    private static void point(Point p, StringBuilder out) {
        out.append(' ').append(number(p.x())).append(' ').append(number(p.y()));
    }

    private static Point rounded(Point p) {
        return new Point(Math.rint(p.x() * 1e6), Math.rint(p.y() * 1e6));
    }

    /** Six decimals at most, no zeros at the end. */
    static String number(double value) {
        return decimal(value, 6);
    }

    private static String decimal(double value, int places) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /** @throws IllegalArgumentException if the text is no path */
    static Path read(String text) {
        StringTokenizer words = new StringTokenizer(text, " ");
        if (!words.hasMoreTokens() || !words.nextToken().equals("M")) {
            throw new IllegalArgumentException("the path '" + Excerpt.of(text) + "' doesn't begin with M; begin it with M and a point");
        }
        List<Segment> segments = new ArrayList<>();
        Point here = point(words, text);
        while (words.hasMoreTokens()) {
            String step = words.nextToken();
            Segment next = switch (step) {
                case "L" -> new Line(here, point(words, text));
                case "A" -> {
                    double bulge = number(words, text);
                    yield new Arc(here, point(words, text), bulge);
                }
                case "C" -> new Cubic(here, point(words, text), point(words, text), point(words, text));
                default -> throw new IllegalArgumentException("the path '" + Excerpt.of(text) + "' has the step '" + Excerpt.of(step)
                        + "'; use L, A or C");
            };
            segments.add(next);
            here = next.to();
        }
        return new Path(segments);
    }

    private static Point point(StringTokenizer words, String text) {
        return new Point(number(words, text), number(words, text));
    }

    private static double number(StringTokenizer words, String text) {
        String word = words.hasMoreTokens() ? words.nextToken() : "";
        try {
            return Double.parseDouble(word);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("the path '" + Excerpt.of(text) + "' has '" + Excerpt.of(word) + "' where a number belongs; write a number of inches");
        }
    }
}
