package org.calicograph.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.SvgPathData;
import org.calicograph.geometry.Transform;
import org.calicograph.measure.Angle;
import org.w3c.dom.Element;

/** The shapes and transforms of SVG's elements (W3C, SVG 2, chapters 8 to 10). */
final class SvgShape {

    private static final Set<String> KEPT_BACK = Set.of("defs", "symbol", "clipPath", "mask", "marker", "pattern", "linearGradient",
            "radialGradient", "filter", "metadata", "title", "desc", "style", "script");
    private static final Pattern STEP = Pattern.compile("\\G[\\s,]*(matrix|translate|scale|rotate|skewX|skewY)\\s*\\(([^)]*)\\)[\\s,]*");

    private SvgShape() { }

    /** True for what is only defined, or drawn nowhere. */
    static boolean isKeptBack(Element element) {
        return KEPT_BACK.contains(String.valueOf(element.getLocalName())) || "none".equals(element.getAttribute("display"));
    }

    static List<Path> paths(Element e) {
        return switch (String.valueOf(e.getLocalName())) {
            case "path" -> SvgPathData.read(e.getAttribute("d"));
            case "rect" -> rectangle(e);
            case "circle" -> ellipse(e, number(e, "r"), number(e, "r"));
            case "ellipse" -> ellipse(e, number(e, "rx"), number(e, "ry"));
            case "line" -> SvgPathData.read("M" + number(e, "x1") + " " + number(e, "y1") + "L" + number(e, "x2") + " " + number(e, "y2"));
            case "polyline" -> points(e, "");
            case "polygon" -> points(e, "Z");
            default -> List.of();
        };
    }

    private static List<Path> points(Element e, String end) {
        String points = e.getAttribute("points").trim();
        return points.isEmpty() ? List.of() : SvgPathData.read("M" + points + end);
    }

    private static List<Path> rectangle(Element e) {
        double w = number(e, "width");
        double h = number(e, "height");
        double x = number(e, "x");
        double y = number(e, "y");
        if (!(w > 0 && h > 0)) {
            return List.of();
        }
        double rx = Math.min(w / 2, number(e, e.hasAttribute("rx") ? "rx" : "ry"));
        double ry = Math.min(h / 2, number(e, e.hasAttribute("ry") ? "ry" : "rx"));
        if (rx <= 0 || ry <= 0) {
            return List.of(Path.rectangle(new Box(x, y, x + w, y + h)));
        }
        String corner = "a" + rx + " " + ry + " 0 0 1 ";
        return SvgPathData.read("M" + (x + rx) + " " + y + "H" + (x + w - rx) + corner + rx + " " + ry + "V" + (y + h - ry) + corner + -rx + " " + ry
                + "H" + (x + rx) + corner + -rx + " " + -ry + "V" + (y + ry) + "A" + rx + " " + ry + " 0 0 1 " + (x + rx) + " " + y + "Z");
    }

    private static List<Path> ellipse(Element e, double rx, double ry) {
        if (!(rx > 0 && ry > 0)) {
            return List.of();
        }
        Point middle = new Point(number(e, "cx"), number(e, "cy"));
        if (rx == ry) {
            return List.of(Path.circle(middle, rx));
        }
        return List.of(Path.circle(Point.ORIGIN, 1).transformed(Transform.scale(rx, ry).then(Transform.move(middle))));
    }

    private static double number(Element e, String attribute) {
        String text = e.getAttribute(attribute).trim();
        try {
            double value = text.isEmpty() ? 0 : Double.parseDouble(text.replaceAll("px$", ""));
            if (Math.abs(value) < 1e9) {
                return value;
            }
        } catch (NumberFormatException no) {
            // Said below.
        }
        throw new IllegalArgumentException("a <" + e.getLocalName() + "> has the " + attribute + " '" + text + "'; write a number without a unit");
    }

    /** What the element's transform does; nothing if it has none. */
    static Transform transform(Element e) {
        String text = e.getAttribute("transform").trim();
        Transform all = Transform.IDENTITY;
        Matcher step = STEP.matcher(text);
        int end = 0;
        while (end < text.length() && step.find()) {
            all = one(step.group(1), numbers(step.group(2), text)).then(all);
            end = step.end();
        }
        if (end < text.length()) {
            throw new IllegalArgumentException("a <" + e.getLocalName() + "> has the transform '" + text
                    + "', which is not in order; use matrix, translate, scale, rotate, skewX and skewY");
        }
        return all;
    }

    private static Transform one(String kind, List<Double> n) {
        int count = n.size();
        boolean fits = switch (kind) {
            case "matrix" -> count == 6;
            case "rotate" -> count == 1 || count == 3;
            case "skewX", "skewY" -> count == 1;
            default -> count == 1 || count == 2;
        };
        if (!fits) {
            throw new IllegalArgumentException("a transform has " + kind + " with " + count + " numbers; see the SVG standard for how many it takes");
        }
        return switch (kind) {
            case "matrix" -> new Transform(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
            case "translate" -> Transform.move(n.get(0), count == 2 ? n.get(1) : 0);
            case "scale" -> Transform.scale(n.get(0), count == 2 ? n.get(1) : n.get(0));
            case "rotate" -> Transform.turn(Angle.degrees(n.get(0)), count == 3 ? new Point(n.get(1), n.get(2)) : Point.ORIGIN);
            case "skewX" -> new Transform(1, 0, Angle.degrees(n.get(0)).tan(), 1, 0, 0);
            default -> new Transform(1, Angle.degrees(n.get(0)).tan(), 0, 1, 0, 0);
        };
    }

    private static List<Double> numbers(String text, String whole) {
        List<Double> numbers = new ArrayList<>();
        for (String word : text.trim().split("[\\s,]+")) {
            try {
                numbers.add(Double.parseDouble(word));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException("the transform '" + whole + "' has '" + word + "' where a number belongs; write a number", e);
            }
        }
        return numbers;
    }
}
